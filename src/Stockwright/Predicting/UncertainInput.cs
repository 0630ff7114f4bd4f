using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>One uncertain input of a draw: how far it stands from its middle.</summary>
/// <param name="Spread">Its range in this plan.</param>
/// <param name="StandardDeviations">Deviations as drawn.</param>
internal readonly record struct DrawnInput(Spread Spread, double StandardDeviations)
{
    /// <summary>The value.</summary>
    public double Value => Spread.At(StandardDeviations);

    /// <summary>Deviations, brought in to where a draw still makes sense.</summary>
    public double Deviations => Math.Clamp(StandardDeviations, -Spread.MostDeviations, Spread.MostDeviations);
}

/// <summary>
/// One uncertain input of the sample (B.24). Each has a coordinate of its own in the sequence of points, in the order of <see cref="All"/>: put
/// a new one at the end, and the others are drawn as before.
/// </summary>
/// <param name="Name">What it is.</param>
/// <param name="Range">Its range in a plan.</param>
/// <param name="Set">Where the drawn value goes.</param>
internal sealed record UncertainInput(string Name, Func<PredictionCase, Spread> Range, Func<DrawnFigures, DrawnInput, DrawnFigures> Set)
{
    /// <summary>How near a cook keeps the simmer to what was asked, ten to ninety, K (estimate).</summary>
    private const double SimmerKelvins = 2;

    /// <summary>For what is moved in deviations rather than by a figure.</summary>
    private static readonly Spread Standard = Spread.ByDifference(-1, 0, 1);

    /// <summary>Of what is dissolved beside gelatin (estimate).</summary>
    private static readonly Spread Dissolved = Spread.ByFactor(0.6, 1, 1.6);

    private static readonly Spread BeatenIn = Share(DefatMethods.Emulsified);

    /// <summary>All of them, one row each.</summary>
    public static IReadOnlyList<UncertainInput> All { get; } =
    [
        new("film", made => Factor(SurfaceFilm.For(made.Plan.Request.Site, made.Assumptions)), (drawn, one) => drawn with { Film = one.Value, LossDeviations = one.Deviations }),
        new("lid", Lid, (drawn, one) => drawn with { Lid = one.Value }),
        new("hob", made => Share(made.Plan.Request.Heat.Efficiency), (drawn, one) => drawn with { Efficiency = one.Value }),
        new("clinging liquor", made => Share(ClingingLiquor.For(made.Plan.Request.Site, made.Assumptions)), (drawn, one) => drawn with { Clinging = one.Value }),
        new("water of the solids", _ => Standard, (drawn, one) => drawn with { ReleaseDeviations = one.Deviations }),
        new("strain loss", made => Share(made.Assumptions.StrainLoss), (drawn, one) => drawn with { StrainLoss = one.Value }),
        new("defat loss", made => Share(made.Assumptions.DefatLoss), (drawn, one) => drawn with { DefatLoss = one.Value }),
        new("collagen", made => OverCuts(made, (cut, ingredient) => Parts(made.CollagenOf(ingredient), value => value.DecimalFractions)), (drawn, one) => drawn with { Collagen = one.Value }),
        new("soft rate", made => OverCuts(made, (cut, _) => Parts(cut.Cut.SoftRate, value => value.PerSecond)), (drawn, one) => drawn with { SoftRate = one.Value }),
        new("hard rate", made => OverCuts(made, (cut, _) => Parts(cut.Cut.HardRate, value => value.PerSecond)), (drawn, one) => drawn with { HardRate = one.Value }),
        new("activation of the drawing", made => Difference(made.Assumptions.CollagenActivation), (drawn, one) => drawn with { CollagenActivation = one.Value }),
        new("breakdown", made => Factor(made.Assumptions.BreakdownPerHour), (drawn, one) => drawn with { BreakdownPerHour = one.Value }),
        new("activation of the breakdown", made => Difference(made.Assumptions.BreakdownActivation), (drawn, one) => drawn with { BreakdownActivation = one.Value }),
        new("kitchen", made => Factor(made.Settings.KitchenFactor), (drawn, one) => drawn with { Kitchen = one.Value }),
        new("freed fat", made => OverCuts(made, (cut, _) => Parts(cut.Cut.FreedFat, value => value.DecimalFractions)), (drawn, one) => drawn with { FreedFat = one.Value }),
        new("simmer temperature", _ => Spread.ByDifference(-SimmerKelvins, 0, SimmerKelvins), (drawn, one) => drawn with { SimmerKelvins = one.Value }),
        new("other dissolved matter", _ => Dissolved, (drawn, one) => drawn with { OtherMatter = one.Value }),

        // One draw serves sugars, sodium and the fat beaten in: each is shown by itself, so only their own ranges matter.
        new("sugars, sodium, fat beaten in", _ => Dissolved, (drawn, one) => drawn with { SmallMatter = one.Value, BeatenInFat = BeatenIn.At(one.Deviations) }),
    ];

    private static Spread Lid(PredictionCase made)
    {
        (double less, double more) = LossSpread.Lid(made.Plan.Workings.Environment, made.Plan.Request.Lid);
        return Spread.ByFactor(less, 1, more);
    }

    private static Spread OverCuts(PredictionCase made, Func<CutInPot, Ingredient, (double Low, double Value, double High)> figure)
    {
        (double low, double high) = made.Spread(figure);
        return Spread.ByFactor(low, 1, high);
    }

    private static (double Low, double Value, double High) Parts<T>(Stated<T> stated, Func<T, double> number) =>
        (number(stated.Low), number(stated.Value), number(stated.High));

    private static Spread Share(Stated<Ratio> stated) =>
        Spread.ByFactor(stated.Low.DecimalFractions, stated.Value.DecimalFractions, stated.High.DecimalFractions);

    private static Spread Factor(Stated<double> stated) => Spread.ByFactor(stated.Low, stated.Value, stated.High);

    private static Spread Difference(Stated<double> stated) => Spread.ByDifference(stated.Low, stated.Value, stated.High);
}
