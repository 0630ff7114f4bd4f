using System.Globalization;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>A cut the cook could add.</summary>
/// <param name="IngredientId">Stable name of the ingredient.</param>
/// <param name="PricePerKilogram">Price of a kilogram, in the cook's money; null when not known.</param>
/// <param name="AtHand">Most there is; null for as much as is wanted.</param>
public sealed record AvailableCut(string IngredientId, double? PricePerKilogram, Mass? AtHand = null)
{
    /// <summary>Lowest and highest price of a kilogram accepted, in any money worth counting.</summary>
    public static readonly (double Least, double Most) PriceRange = (0, 1e6);
}

/// <summary>Powder gelatin the cook could stir in at the end.</summary>
/// <param name="Bloom">Bloom strength on the packet, 50 to 300 g.</param>
/// <param name="PricePerKilogram">Price of a kilogram; null when not known.</param>
/// <param name="AtHand">Most there is; null for as much as is wanted.</param>
public sealed record AvailablePowder(Mass Bloom, double? PricePerKilogram, Mass? AtHand = null)
{
    /// <summary>Weakest and strongest powder accepted, by its Bloom.</summary>
    public static readonly (Mass Least, Mass Most) BloomRange = (Mass.FromGrams(50), Mass.FromGrams(300));
}

/// <summary>One thing to add.</summary>
/// <param name="IngredientId">Ingredient, or <see cref="MakeItSet.PowderId"/>.</param>
/// <param name="Mass">How much.</param>
/// <param name="Cost">What it costs.</param>
public sealed record SetAddition(string IngredientId, Mass Mass, double Cost);

/// <summary>The cheapest change that reaches a class, or how far the best falls short.</summary>
public sealed record SetAdvice
{
    /// <summary>Class asked for.</summary>
    public required BodyClass Wanted { get; init; }

    /// <summary>True when the additions reach it.</summary>
    public required bool IsReached { get; init; }

    /// <summary>What to add; empty when it stands there already. When out of reach: all of everything.</summary>
    public required IReadOnlyList<SetAddition> Additions { get; init; }

    /// <summary>Cost of the additions.</summary>
    public required double Cost { get; init; }

    /// <summary>Effective concentration now.</summary>
    public required Ratio Now { get; init; }

    /// <summary>Effective concentration with the additions.</summary>
    public required Ratio Then { get; init; }

    /// <summary>Least effective concentration of the class.</summary>
    public required Ratio Needed { get; init; }

    /// <summary>Volume to boil the strained stock down to instead; null when it stands there already or has no gelatin.</summary>
    public Volume? OrReduceTo { get; init; }

    /// <summary>Room the added cuts take in the pot, beyond what is left under the safe maximum; zero when they fit.</summary>
    public required Volume TooMuchForPot { get; init; }

    /// <summary>Plain sentences: prices missing, out of reach and by how much, no room.</summary>
    public required IReadOnlyList<WordedProblem> Problems { get; init; }
}

/// <summary>
/// Finds the cheapest additions that bring the stock to a body class (B.26). The masses of gelatin and of gelatin times Bloom
/// are linear in what is added and the effective concentration is the root of their product, so the problem is convex; it is
/// solved exactly as a chain of fractional knapsacks.
/// </summary>
public static class MakeItSet
{
    /// <summary>Name powder gelatin goes by in the additions.</summary>
    public const string PowderId = "gelatin-powder";

    /// <summary>Gelatin in powder by mass (USDA SR28 19177: 85.6 % protein).</summary>
    internal const double PowderProtein = 0.856;

    /// <summary>Most cuts accepted.</summary>
    public const int MostCuts = 40;

    /// <summary>The cheapest way to a class. All added cuts go in at the start; powder at the end.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="wanted">Class wanted.</param>
    /// <param name="cuts">Cuts at hand; those without a price are left out and said so. <see cref="PowderId"/> among them is powder of <paramref name="powder"/>'s Bloom, or of 225 g.</param>
    /// <param name="powder">Powder gelatin, or null.</param>
    /// <param name="settings">What else is known; null for the defaults.</param>
    /// <exception cref="ArgumentException">More than 40 cuts, a negative price or mass, or a Bloom outside 50 to 300 g.</exception>
    /// <exception cref="KeyNotFoundException">An ingredient is not in the plan's larder.</exception>
    public static SetAdvice Cheapest(
        BatchPlan plan, BodyClass wanted, IReadOnlyList<AvailableCut> cuts, AvailablePowder? powder = null, PredictionSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(cuts);
        Check(cuts, powder);
        PredictionCase made = PredictionCase.Of(plan, settings ?? new PredictionSettings());
        List<WordedProblem> problems = [];
        List<SetOption> options = Options(made, cuts, powder, problems);
        ExtractionTotals now = made.Engine.Run(made.Central);
        double liquor = made.LiquorKilograms;
        double needed = BodyClasses.LeastPercent(wanted);

        // sqrt(gelatin x gelatin*Bloom) in grams that stands for the class in this much liquor.
        double target = needed * 10 * liquor * Math.Sqrt(GelStrength.ReferenceBloomGrams);
        SetSolution solution = SetSolver.Solve(now.Gelatin, now.BloomNow, target, options);
        double Effective(double root) => root / 10 / liquor / Math.Sqrt(GelStrength.ReferenceBloomGrams);
        double before = Effective(Math.Sqrt(now.Gelatin * now.BloomNow));
        double after = Effective(solution.Reached);
        if (!solution.IsReached)
        {
            problems.Add(new WordedProblem("target", FormattableString.Invariant(
                $"Out of reach with what is at hand: all of it gives {after:0.0} % where {BodyClasses.Name(wanted)} needs {needed:0.0} %, short by {needed - after:0.0} %.")));
        }

        double tooMuch = TooMuch(made, solution, options);
        if (tooMuch > 1e-5)
        {
            problems.Add(new WordedProblem("pot", FormattableString.Invariant(
                $"What is added needs {tooMuch * 1000:0.0} L more room than this pot has: take out that much of the other bones, or use a bigger pot.")));
        }

        return new SetAdvice
        {
            Wanted = wanted,
            IsReached = solution.IsReached,
            Additions = Additions(solution, options),
            Cost = solution.Cost,
            Now = Ratio.FromPercent(before),
            Then = Ratio.FromPercent(after),
            Needed = Ratio.FromPercent(needed),
            OrReduceTo = before > 0 && before < needed ? plan.Yield.Central * (before / needed) : null,
            TooMuchForPot = Volume.FromCubicMeters(Math.Max(0, tooMuch)),
            Problems = problems,
        };
    }

    private static List<SetOption> Options(PredictionCase made, IReadOnlyList<AvailableCut> cuts, AvailablePowder? powder, List<WordedProblem> problems)
    {
        List<SetOption> options = [];
        for (int i = 0; i < cuts.Count; i++)
        {
            AvailableCut cut = cuts[i];
            Larder.Ingredient ingredient = made.Plan.Request.Larder.Get(cut.IngredientId);
            string field = string.Create(CultureInfo.InvariantCulture, $"cuts-{i}-price");
            if (cut.PricePerKilogram is { } powderPrice && string.Equals(cut.IngredientId, PowderId, StringComparison.Ordinal))
            {
                // Named among the cuts it is still the powder: it dissolves whole and is not simmered out.
                options.Add(Powder(powder?.Bloom ?? Mass.FromGrams(GelStrength.ReferenceBloomGrams), powderPrice, cut.AtHand));
            }
            else if (cut.PricePerKilogram is not { } price)
            {
                problems.Add(new WordedProblem(field, $"No price for {ingredient.Name.ToLowerInvariant()}: it is left out."));
            }
            else if (made.CutTable.ClassOf(ingredient) is null || made.CollagenOf(ingredient).Value <= Ratio.Zero)
            {
                problems.Add(new WordedProblem(field, $"{ingredient.Name} gives no gelatin: it is left out."));
            }
            else
            {
                // A kilogram's worth, by the same equations as the plan's own cuts.
                PredictionCase one = PredictionCase.Of(made.Plan, made.Settings, [new CutChange(cut.IngredientId, Mass.FromKilograms(1))]);
                ExtractionTotals[] totals = new ExtractionTotals[one.Cuts.Count];
                one.Engine.Run(one.Central, totals);
                options.Add(new SetOption(cut.IngredientId, price, totals[^1].Gelatin, totals[^1].BloomNow, cut.AtHand?.Kilograms ?? double.PositiveInfinity));
            }
        }

        if (powder is { PricePerKilogram: null })
        {
            problems.Add(new WordedProblem("powder-price", "No price for powder gelatin: it is left out."));
        }
        else if (powder is { PricePerKilogram: { } price })
        {
            options.Add(Powder(powder.Bloom, price, powder.AtHand));
        }

        if (options.Count == 0)
        {
            problems.Add(new WordedProblem("cuts", "Nothing to choose from: give at least one cut with its price."));
        }

        return options;
    }

    private static SetOption Powder(Mass bloom, double price, Mass? atHand) =>
        new(PowderId, price, 1000 * PowderProtein, 1000 * PowderProtein * bloom.Grams, atHand?.Kilograms ?? double.PositiveInfinity);

    private static List<SetAddition> Additions(SetSolution solution, List<SetOption> options)
    {
        List<SetAddition> additions = [];
        for (int i = 0; i < options.Count; i++)
        {
            if (solution.Kilograms[i] > 1e-9)
            {
                additions.Add(new SetAddition(options[i].Id, Mass.FromKilograms(solution.Kilograms[i]), solution.Kilograms[i] * options[i].PricePerKilogram));
            }
        }

        return additions;
    }

    /// <summary>Volume of the added cuts less the room under the safe maximum, m3; the stock's volume stays.</summary>
    private static double TooMuch(PredictionCase made, SetSolution solution, List<SetOption> options)
    {
        Kitchen.Pot pot = made.Plan.Request.Pot;
        double room = pot.VolumeAtMetres(made.Plan.Fit.SafeMaximum.Meters) - pot.VolumeAtMetres(made.Plan.Fit.PeakLevel.Meters);
        double volume = 0;
        for (int i = 0; i < options.Count; i++)
        {
            if (!string.Equals(options[i].Id, PowderId, StringComparison.Ordinal))
            {
                volume += solution.Kilograms[i] / made.Plan.Request.Larder.Get(options[i].Id).TrueDensity.Value.KilogramsPerCubicMeter;
            }
        }

        return volume > 0 ? volume - Math.Max(0, room) : 0;
    }

    private static void Check(IReadOnlyList<AvailableCut> cuts, AvailablePowder? powder)
    {
        if (cuts.Count > MostCuts)
        {
            throw new ArgumentException("Name at most 40 cuts.", nameof(cuts));
        }

        if (cuts.Any(cut => cut.PricePerKilogram is < 0 || cut.AtHand < Mass.Zero) || powder is { PricePerKilogram: < 0 } || powder?.AtHand < Mass.Zero)
        {
            throw new ArgumentException("A price or amount must not be below zero.", nameof(cuts));
        }

        if (powder is { } given && (given.Bloom < AvailablePowder.BloomRange.Least || given.Bloom > AvailablePowder.BloomRange.Most))
        {
            throw new ArgumentException("The Bloom of powder gelatin lies between 50 and 300.", nameof(powder));
        }
    }
}
