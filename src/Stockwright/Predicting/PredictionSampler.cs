using Stockwright.Evidence;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>
/// Runs the pot and the extraction many times with the uncertain figures drawn from their ranges (B.23, B.24). Quasi-random and seeded:
/// the same plan, settings, number and seed give the same answer on any machine with any number of cores.
/// </summary>
public static class PredictionSampler
{
    /// <summary>Fewest and most draws accepted.</summary>
    public static readonly (int Least, int Most) DrawRange = (500, 20_000);

    /// <summary>Draws unless told otherwise: a power of two suits the sequence.</summary>
    public const int UsualDraws = 512;

    /// <summary>Samples a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="settings">What else is known; null for the defaults.</param>
    /// <param name="draws">500 to 20 000.</param>
    /// <param name="seed">Any number.</param>
    /// <param name="cancellationToken">Ends it between two draws.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of draws lies outside its range.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    /// <exception cref="ArgumentException">A setting lies outside its range.</exception>
    public static PredictionSample Sample(BatchPlan plan, PredictionSettings? settings = null, int draws = UsualDraws, int seed = 1, CancellationToken cancellationToken = default) =>
        Sample(plan, settings ?? new PredictionSettings(), draws, seed, threads: -1, cancellationToken);

    internal static PredictionSample Sample(BatchPlan plan, PredictionSettings settings, int draws, int seed, int threads, CancellationToken cancellationToken = default)
    {
        if (draws < DrawRange.Least || draws > DrawRange.Most)
        {
            throw new ArgumentOutOfRangeException(nameof(draws), draws, "Draw between 500 and 20 000 times.");
        }

        SampleModel model = new(PredictionCase.Of(plan, settings));
        SampleModel.Draw[] results = SampleBands.Run(draws, UncertainInput.All.Count, (ulong)seed, model.Run, threads, cancellationToken);
        SampleModel.Draw[] wet = [.. results.Where(draw => draw.YieldKilograms > 0)];
        SampleModel.Draw[] strong = wet.Length > 0 ? wet : results;
        int[] counts = new int[Enum.GetValues<BodyClass>().Length];
        foreach (SampleModel.Draw draw in strong)
        {
            counts[(int)BodyClasses.Of(draw.EffectivePercent, draw.GelatinPercent)]++;
        }

        DateTimeOffset ready = plan.Timeline.Ready;
        Mass hundred = Volume.FromMilliliters(100) * Predictor.Predict(plan, settings).Composition.Density;
        IReadOnlyList<NutritionFacts> facts = [.. strong.Select(draw => draw.Nutrients.In(hundred))];
        Band<T> Fact<T>(Func<NutritionFacts, double> read, Func<double, T> unit) => SampleBands.Band(facts.Select(read), unit);
        return new PredictionSample
        {
            Draws = draws,
            Seed = seed,
            Yield = SampleBands.Band(results.Select(draw => draw.YieldKilograms), SimmerForecaster.Cold),
            Gelatin = SampleBands.Band(strong.Select(draw => draw.GelatinPercent), static value => Ratio.FromPercent(value)),
            Effective = SampleBands.Band(strong.Select(draw => draw.EffectivePercent), static value => Ratio.FromPercent(value)),
            Brix = SampleBands.Band(strong.Select(draw => draw.Brix), static value => value),
            FatCap = SampleBands.Band(results.Select(draw => draw.FatCapMetres), static value => Length.FromMeters(value)),
            FatRecovered = SampleBands.Band(results.Select(draw => draw.FatKilograms), static value => Mass.FromKilograms(value)),
            PerHundredMillilitres = new NutritionBands(
                Fact(one => one.Energy.Joules, static value => Energy.FromJoules(value)),
                Fact(one => one.Protein.Kilograms, static value => Mass.FromKilograms(value)),
                Fact(one => one.Fat.Kilograms, static value => Mass.FromKilograms(value)),
                Fact(one => one.Carbohydrate.Kilograms, static value => Mass.FromKilograms(value)),
                Fact(one => one.Sodium.Kilograms, static value => Mass.FromKilograms(value))),
            Ready = SampleBands.Band(results.Select(draw => draw.LaterSeconds), seconds => ready + TimeSpan.FromSeconds(Math.Round(seconds))),
            Body = [.. counts.Select((count, index) => new BodyChance((BodyClass)index, Ratio.FromDecimalFractions((double)count / strong.Length)))],
            BoilsDry = Ratio.FromDecimalFractions((double)(results.Length - wet.Length) / results.Length),
        };
    }
}
