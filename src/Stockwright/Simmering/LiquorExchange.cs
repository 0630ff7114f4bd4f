using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>
/// What passes between solids and liquor, and what is lost on the way from pot to portion (equations S.6 to S.8 in docs/equations.md).
/// What leaves the solids and what clings to them is in <see cref="SimmerAssumptions"/>.
/// </summary>
public static class LiquorExchange
{
    /// <summary>Liquor that clings to drained bones and meat, kilograms per kilogram (S.7).</summary>
    public static Stated<Ratio> Clinging { get; } = SimmerAssumptions.Share("clings-to-bones");

    /// <summary>Share of the liquid lifted off as scum in the first hour.</summary>
    public static Stated<Ratio> Skimmed { get; } = State(0.01, 0.005, 0.02, "estimate; 0.5 to 2 % of the liquid");

    /// <summary>Share of the strained liquor left in cloth, strainer, vessels and spoon.</summary>
    public static Stated<Ratio> StrainLoss { get; } = State(0.025, 0.01, 0.05, "estimate; transfer 1 to 2 %, cloth and tasting on top");

    /// <summary>Share of the liquor that goes with the fat when it is lifted.</summary>
    public static Stated<Ratio> DefatLoss { get; } = State(0.02, 0.01, 0.03, "estimate; 1 to 3 %");

    /// <summary>Depth of liquid wanted over the solids at the start; 2 to 5 cm.</summary>
    public static Stated<Length> CoverDepth { get; } = new(
        Length.FromCentimeters(2.5), Length.FromCentimeters(2), Length.FromCentimeters(5), Provenance.CommonPractice, "common practice, no source: covered by 2 to 5 cm");

    /// <summary>Kelp and fish flakes are thin and wet through in minutes, per hour (estimate; set so that a litre of water gives 0.85 to 0.9 L).</summary>
    private const double FlakesPerHour = 18;

    /// <summary>Dried things swell in half an hour rather than in two, per hour (estimate).</summary>
    private const double DriedPerHour = 2.4;

    /// <summary>No more than this of the water that is not the meat's goes with the gelatin (estimate).</summary>
    private const double WaterShareForGelatin = 0.7;

    /// <summary>Least cover before water is added when the rule is to keep the solids covered.</summary>
    public static Length LeastCover { get; } = Length.FromCentimeters(1);

    /// <summary>The meat's loss of water against its likeliest: one, and the ends of eight in ten.</summary>
    internal static WaterRange MeatLean { get; } = new(MeatWater.Hot.Low / MeatWater.Hot.Value, 1, MeatWater.Hot.High / MeatWater.Hot.Value);

    /// <summary>Water that leaves with gelatin, kg per kg.</summary>
    internal static WaterRange GelatinLean { get; } = Range("water-with-gelatin");

    /// <summary>What a solid gives, by what it is made of (S.6).</summary>
    /// <param name="ingredient">The larder row.</param>
    /// <param name="preparation">What was done to it first.</param>
    /// <param name="cuts">Classes of cuts.</param>
    /// <param name="raw">What it was made of.</param>
    /// <param name="inPot">What of that goes in the pot.</param>
    /// <param name="fatDrained">Fat left on the roasting tray, kg.</param>
    /// <param name="piece">Size of the pieces; null for the usual one of the cut.</param>
    internal static SolidRelease Release(Ingredient ingredient, Preparation preparation, CutTable cuts, Matter raw, Matter inPot, double fatDrained, Length? piece = null)
    {
        SolidGiving gives = SolidGiving.Of(ingredient, cuts, raw.Kilograms, preparation == Preparation.Blanch, fatDrained);
        SolidRelease release = new()
        {
            Dissolved = gives.Juices + gives.Minerals + gives.Sugars,
            DissolvedPerHour = gives.PerHour,
            Fat = gives.Fat,
            FatPerHour = gives.FatPerHour,
        };
        if (Swelling(ingredient) is { } swelling)
        {
            // Dried things take up liquor faster than meat gives it: in half an hour rather than in two, thin ones in minutes.
            return release with { OtherWater = Range(swelling) * inPot.Kilograms, OtherPerHour = ingredient.Group is IngredientGroup.DriedSeafood ? FlakesPerHour : DriedPerHour, Clings = SimmerAssumptions.Get("clings-to-vegetables").Value };
        }

        return ingredient.Group switch
        {
            IngredientGroup.Vegetable or IngredientGroup.Aromatic => release with
            {
                OtherWater = Range(preparation == Preparation.Roast ? "roasted-vegetables-give" : "vegetables-give") * inPot.Kilograms,
                OtherPerHour = ExtractionRates.VegetablesPerHour,
                Clings = SimmerAssumptions.Get("clings-to-vegetables").Value,
            },
            IngredientGroup.Shellfish => release with { OtherWater = Range("shells-give") * inPot.Kilograms, Clings = SimmerAssumptions.Get("clings-to-fish").Value },
            _ => Flesh(ingredient, cuts, release, raw, inPot, piece),
        };
    }

    private static SolidRelease Flesh(Ingredient ingredient, CutTable cuts, SolidRelease release, Matter raw, Matter inPot, Length? piece)
    {
        double collagen = Math.Min(raw.Protein, raw.Kilograms * cuts.CollagenOf(ingredient).Value.DecimalFractions);
        CutClass? cut = cuts.ClassOf(ingredient);

        // Bones that have simmered once, and what is no flesh, have no meat water left to lose.
        bool fish = ingredient.Group is IngredientGroup.Fish;
        double meatWater = ingredient.Group is IngredientGroup.Other ? 0 : Math.Min(raw.Water, SimmerAssumptions.Get("meat-water-per-protein").Value * (raw.Protein - collagen));
        double drivenOff = Math.Min(meatWater, raw.Water - inPot.Water);
        double otherWater = Math.Max(0, inPot.Water - (meatWater - drivenOff));
        release = release with
        {
            MeatWater = meatWater,
            Clings = fish ? SimmerAssumptions.Get("clings-to-fish").Value : release.Clings,
            MeatFactor = fish ? SimmerAssumptions.Get("fish-loss").Value : 1,
            DrivenOff = drivenOff,
            MeatPerHour = cut is null ? SimmerAssumptions.Get("meat-loss-per-hour").Value : MeatWater.PerHour(piece ?? cut.ReferencePiece, cut.ReferencePiece),
            OtherWater = Range("bone-loss") * otherWater,
        };
        if (cut is null || !(collagen > 0))
        {
            return release;
        }

        double drawn = collagen * (cut.IsGelatin ? 1 : ExtractionRates.UsualKitchenFactor.Value);
        double most = WaterShareForGelatin * otherWater / drawn;
        return release with
        {
            SoftCollagen = drawn * cut.SoftShare.Value.DecimalFractions,
            HardCollagen = drawn * (1 - cut.SoftShare.Value.DecimalFractions),
            SoftPerHour = cut.SoftRate.Value.PerSecond * 3600,
            HardPerHour = cut.HardRate.Value.PerSecond * 3600 * ExtractionRates.Piece((piece ?? cut.ReferencePiece).Meters, cut.ReferencePiece.Meters),
            MostWaterWithGelatin = most,
            WaterWithGelatin = Math.Min(GelatinLean.Value, most),
        };
    }

    private static string? Swelling(Ingredient ingredient)
    {
        bool dry = ingredient.Water.Value.DecimalFractions < 0.2;
        return ingredient.Group switch
        {
            IngredientGroup.DriedSeafood => "dried-seafood-gives",
            IngredientGroup.Vegetable when dry => "dried-mushrooms-give",
            IngredientGroup.Aromatic when dry => "dry-herbs-give",
            _ => null,
        };
    }

    private static WaterRange Range(string key)
    {
        Stated<double> figure = SimmerAssumptions.Get(key);
        return new WaterRange(figure.Low, figure.Value, figure.High);
    }

    private static Stated<Ratio> State(double value, double low, double high, string source) =>
        new(Ratio.FromDecimalFractions(value), Ratio.FromDecimalFractions(low), Ratio.FromDecimalFractions(high), Provenance.Estimate, source);
}
