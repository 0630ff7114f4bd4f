using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Numerics;
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
        SampleModel.Draw[] results = SampleBands.Run(draws, SampleModel.Dimensions, (ulong)seed, model.Run, threads, cancellationToken);
        SampleModel.Draw[] wet = [.. results.Where(draw => draw.YieldKilograms > 0)];
        SampleModel.Draw[] strong = wet.Length > 0 ? wet : results;
        int[] counts = new int[Enum.GetValues<BodyClass>().Length];
        foreach (SampleModel.Draw draw in strong)
        {
            counts[(int)BodyClasses.Of(draw.EffectivePercent, draw.GelatinPercent)]++;
        }

        DateTimeOffset ready = plan.Timeline.Ready;
        Mass hundred = Volume.FromMilliliters(100) * PredictionMaker.Predict(plan, settings).Composition.Density;
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

/// <summary>One plan with its uncertain figures, ready to be run at any point of the sample; safe for several threads.</summary>
internal sealed class SampleModel
{
    /// <summary>Uncertain figures.</summary>
    public const int Dimensions = 18;

    /// <summary>How near a cook keeps the simmer to what was asked, ten to ninety, K (estimate).</summary>
    private const double SimmerKelvins = 2;

    private readonly PredictionCase made;
    private readonly Spread[] spreads;
    private readonly Solutes solutes;

    // One deviation serves sugars, sodium and the fat beaten in: each is shown by itself, so only their own ranges matter.
    private readonly Spread small = Spread.ByFactor(0.6, 1, 1.6);
    private readonly Spread beatenIn = Spread.ByFactor(
        DefatMethods.Emulsified.Low.DecimalFractions, DefatMethods.Emulsified.Value.DecimalFractions, DefatMethods.Emulsified.High.DecimalFractions);
    private readonly double hottestShift;

    public SampleModel(PredictionCase made)
    {
        this.made = made;
        solutes = made.Solutes;
        PlanRequest request = made.Plan.Request;
        PlanWorkings workings = made.Plan.Workings;
        (double lidLess, double lidMore) = LossSpread.Lid(workings.Environment, request.Lid);
        hottestShift = Math.Max(0, workings.Environment.HottestReachableCelsius - workings.Central.FinalCelsius);
        (double lowX, double highX) = made.Spread((cut, ingredient) => Parts(made.CollagenOf(ingredient), value => value.DecimalFractions));
        (double lowSoft, double highSoft) = made.Spread((cut, _) => Parts(cut.Cut.SoftRate, value => value.PerSecond));
        (double lowHard, double highHard) = made.Spread((cut, _) => Parts(cut.Cut.HardRate, value => value.PerSecond));
        (double lowFat, double highFat) = made.Spread((cut, _) => Parts(cut.Cut.FreedFat, value => value.DecimalFractions));
        Stated<double> film = SurfaceFilm.For(request.Site);
        Stated<double> kitchen = made.Settings.KitchenFactor;
        spreads =
        [
            Spread.ByFactor(film.Low, film.Value, film.High),
            Spread.ByFactor(lidLess, 1, lidMore),
            Share(request.Heat.Efficiency),
            Share(ClingingLiquor.For(request.Site)),
            Spread.ByDifference(-1, 0, 1),
            Share(LiquorExchange.StrainLoss),
            Share(LiquorExchange.DefatLoss),
            Spread.ByFactor(lowX, 1, highX),
            Spread.ByFactor(lowSoft, 1, highSoft),
            Spread.ByFactor(lowHard, 1, highHard),
            Difference(ExtractionRates.CollagenActivation),
            Spread.ByFactor(ExtractionRates.BreakdownPerHour.Low, ExtractionRates.BreakdownPerHour.Value, ExtractionRates.BreakdownPerHour.High),
            Difference(ExtractionRates.BreakdownActivation),
            Spread.ByFactor(kitchen.Low, kitchen.Value, kitchen.High),
            Spread.ByFactor(lowFat, 1, highFat),
            Spread.ByDifference(-SimmerKelvins, 0, SimmerKelvins),
            Spread.ByFactor(0.6, 1, 1.6),
            Spread.ByDifference(-1, 0, 1),
        ];
    }

    public Draw Run(double[] deviations)
    {
        double At(int index) => spreads[index].At(deviations[index]);
        PlanWorkings workings = made.Plan.Workings;
        double lidFactor = LossSpread.OfLid(workings.Environment, At(1), At(0));
        double efficiency = Math.Min(At(2), 0.95);
        SimmerScript script = WithReleased(workings, deviations[4]);
        SimmerOutcome outcome = workings.Belief is { } belief
            ? belief.Run(workings.Environment, script, Math.Clamp(deviations[0], -Spread.MostDeviations, Spread.MostDeviations), sampled: false)
            : SimmerRun.Execute(workings.Environment, script, At(0), lidFactor, efficiency, sampled: false);
        double heatUp = workings.Central.HeatUpSeconds;
        double later = outcome.TotalSeconds - workings.Central.TotalSeconds;
        double fatFreed = Math.Min(solutes.FreedFat * At(14), FatCeiling());
        double yield = Measured(workings, At(6)) ?? (workings.Fitter.YieldKilograms(outcome, At(3), At(5), At(6)) + workings.Fitted.LetDownKilograms);
        double liquor = PredictionCase.Liquor(outcome) * made.LetDown(yield);
        double emulsified = Math.Min(beatenIn.At(deviations[17]) * liquor, 0.1 * fatFreed);
        double floating = fatFreed - emulsified;
        double cap = floating / FatPrediction.Density.KilogramsPerCubicMeter / made.ContainerSquareMetres;
        double fat = floating * DefatMethods.Share(made.Defat).Value.DecimalFractions;
        if (yield <= 0)
        {
            return new Draw(0, 0, 0, 0, cap, fat, later, default);
        }

        double control = workings.Environment.IsSealed ? 0 : Math.Min(At(15), hottestShift);
        ExtractionFigures figures = new(
            At(10),
            At(12),
            At(11),
            ExtractionRates.Acid(made.Settings.Ph),
            At(7),
            At(13),
            At(8),
            At(9),
            outcome.HeatUpSeconds / heatUp,
            outcome.FinalCelsius - workings.Central.FinalCelsius + control);
        ExtractionTotals totals = made.Engine.Run(figures);
        double gelatin = totals.Gelatin / 10 / liquor;
        double sugars = solutes.Sugars * small.At(deviations[17]);
        double others = ((solutes.Juices + solutes.Minerals) * At(16) * StockComposition.BrixPerSaltPercent) + sugars;
        double brix = (StockComposition.BrixPerGelatinPercent * gelatin) + (100 * others / liquor);
        double fatLeft = floating - fat + (emulsified * yield / liquor);
        Nutrients nutrients = new(
            (gelatin / 100) + (solutes.Juices * At(16) / liquor),
            fatLeft / yield,
            sugars / liquor,
            solutes.Sodium * small.At(deviations[17]) / liquor);
        return new Draw(yield, gelatin, GelStrength.EffectivePercent(gelatin, totals.Bloom), brix, cap, fat, later, nutrients);
    }

    /// <summary>No more fat comes free than is in the pot.</summary>
    /// <summary>Stock as measured, less what goes with the fat, kg; null before it is measured.</summary>
    private double? Measured(PlanWorkings workings, double defatLoss) =>
        workings.Belief?.PortionedKilograms
        ?? ((workings.Belief?.StrainedKilograms * (made.Plan.Request.Recipe.ChillsAndDefats ? 1 - defatLoss : 1)) + workings.Fitted.LetDownKilograms);

    private double FatCeiling() => Math.Max(
        solutes.FreedFat, made.Items.Sum(item => item.RawKilograms * item.Ingredient.Fat.Value.DecimalFractions) - solutes.DrainedFat);

    /// <summary>The script with every solid giving as much liquor as its range allows at one deviation: pieces of one pot err together.</summary>
    private static SimmerScript WithReleased(PlanWorkings workings, double deviations)
    {
        Dictionary<SolidCharge, SolidCharge> other = new(ReferenceEqualityComparer.Instance);
        double lean = Math.Clamp(deviations, -Spread.MostDeviations, Spread.MostDeviations) / NormalQuantile.Ninety;
        foreach (LoadItem item in workings.Fitted.Load.Items)
        {
            if (item.Charge is { } charge)
            {
                other[charge] = charge with { Release = charge.Release.Leaning(lean) };
            }
        }

        SolidCharge Of(SolidCharge charge) => other.GetValueOrDefault(charge, charge);
        return workings.Script with
        {
            StartSolids = [.. workings.Script.StartSolids.Select(Of)],
            Stages = [.. workings.Script.Stages.Select(stage => stage with
            {
                Actions = [.. stage.Actions.Select(Acted)],
            })],
            // Nothing is looked at in a draw, and each look would be a stop of its own.
            Events = [.. workings.Script.Events.Where(one => one.Kind != PotEventKind.Look).Select(one => one.Action is { } action ? one with { Action = Acted(action) } : one)],
        };

        PotAction Acted(PotAction action) => action.Solids is { } solids ? action with { Solids = [.. solids.Select(Of)] } : action;
    }

    private static (double Low, double Value, double High) Parts<T>(Stated<T> stated, Func<T, double> number) =>
        (number(stated.Low), number(stated.Value), number(stated.High));

    private static Spread Factor(Stated<Ratio> stated) =>
        Spread.ByFactor(stated.Low / stated.Value, 1, stated.High / stated.Value);

    private static Spread Share(Stated<Ratio> stated) =>
        Spread.ByFactor(stated.Low.DecimalFractions, stated.Value.DecimalFractions, stated.High.DecimalFractions);

    private static Spread Difference(Stated<double> stated) => Spread.ByDifference(stated.Low, stated.Value, stated.High);

    /// <summary>What one draw gave.</summary>
    internal readonly record struct Draw(
        double YieldKilograms,
        double GelatinPercent,
        double EffectivePercent,
        double Brix,
        double FatCapMetres,
        double FatKilograms,
        double LaterSeconds,
        Nutrients Nutrients);

    /// <summary>Nutrients of one draw, as shares of the stock's mass.</summary>
    internal readonly record struct Nutrients(double Protein, double Fat, double Sugars, double Sodium)
    {
        public NutritionFacts In(Mass mass) => new(
            UnitsNet.Energy.FromKilocalories(mass.Grams * ((4 * Protein) + (9 * Fat) + (4 * Sugars))), mass * Protein, mass * Fat, mass * Sugars, mass * Sodium);
    }
}
