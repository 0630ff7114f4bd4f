using Stockwright.Larder;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>
/// What passes between solids and liquor (equations S.6 and S.7 in docs/equations.md); its figures are those of <see cref="SimmerAssumptions"/>.
/// </summary>
public static class LiquorExchange
{
    /// <summary>Kelp and fish flakes are thin and wet through in minutes, per hour (estimate; set so that a litre of water gives 0.85 to 0.9 L).</summary>
    private const double FlakesPerHour = 18;

    /// <summary>Dried things swell in half an hour rather than in two, per hour (estimate).</summary>
    private const double DriedPerHour = 2.4;

    /// <summary>No more than this of the water that is not the meat's goes with the gelatin (estimate).</summary>
    private const double WaterShareForGelatin = 0.7;

    /// <summary>Least cover before water is added when the rule is to keep the solids covered.</summary>
    public static Length LeastCover { get; } = Length.FromCentimeters(1);

    /// <summary>What a solid gives, by what it is made of (S.6).</summary>
    /// <param name="ingredient">The larder row.</param>
    /// <param name="preparation">What was done to it first.</param>
    /// <param name="cuts">Classes of cuts.</param>
    /// <param name="raw">What it was made of.</param>
    /// <param name="inPot">What of that goes in the pot.</param>
    /// <param name="fatDrained">Fat left on the roasting tray, kg.</param>
    /// <param name="assumptions">The figures.</param>
    /// <param name="piece">Size of the pieces; null for the usual one of the cut.</param>
    internal static SolidRelease Release(
        Ingredient ingredient, Preparation preparation, CutTable cuts, Matter raw, Matter inPot, double fatDrained, SimmerAssumptions assumptions, Length? piece = null)
    {
        SolidGiving gives = SolidGiving.Of(ingredient, cuts, raw.Kilograms, preparation == Preparation.Blanch, fatDrained);
        SolidRelease release = new(assumptions)
        {
            Dissolved = gives.Juices + gives.Minerals + gives.Sugars,
            DissolvedPerHour = gives.PerHour,
            Fat = gives.Fat,
            FatPerHour = gives.FatPerHour,
        };
        if (Swelling(ingredient) is { } swelling)
        {
            // Dried things take up liquor faster than meat gives it: in half an hour rather than in two, thin ones in minutes.
            return release with { OtherWater = assumptions.Range(swelling) * inPot.Kilograms, OtherPerHour = ingredient.Group is IngredientGroup.DriedSeafood ? FlakesPerHour : DriedPerHour, Clings = assumptions.Get("clings-to-vegetables").Value };
        }

        return ingredient.Group switch
        {
            IngredientGroup.Vegetable or IngredientGroup.Aromatic => release with
            {
                OtherWater = assumptions.Range(preparation == Preparation.Roast ? "roasted-vegetables-give" : "vegetables-give") * inPot.Kilograms,
                OtherPerHour = ExtractionRates.VegetablesPerHour,
                Clings = assumptions.Get("clings-to-vegetables").Value,
            },
            IngredientGroup.Shellfish => release with { OtherWater = assumptions.Range("shells-give") * inPot.Kilograms, Clings = assumptions.Get("clings-to-fish").Value },
            _ => Flesh(ingredient, cuts, release, raw, inPot, assumptions, piece),
        };
    }

    private static SolidRelease Flesh(Ingredient ingredient, CutTable cuts, SolidRelease release, Matter raw, Matter inPot, SimmerAssumptions assumptions, Length? piece)
    {
        double collagen = Math.Min(raw.Protein, raw.Kilograms * cuts.CollagenOf(ingredient).Value.DecimalFractions);
        CutClass? cut = cuts.ClassOf(ingredient);

        // Bones that have simmered once, and what is no flesh, have no meat water left to lose.
        bool fish = ingredient.Group is IngredientGroup.Fish;
        double meatWater = ingredient.Group is IngredientGroup.Other ? 0 : Math.Min(raw.Water, assumptions.Get("meat-water-per-protein").Value * (raw.Protein - collagen));
        double drivenOff = Math.Min(meatWater, raw.Water - inPot.Water);
        double otherWater = Math.Max(0, inPot.Water - (meatWater - drivenOff));
        release = release with
        {
            MeatWater = meatWater,
            Clings = fish ? assumptions.Get("clings-to-fish").Value : release.Clings,
            MeatFactor = fish ? assumptions.Get("fish-loss").Value : 1,
            DrivenOff = drivenOff,
            MeatPerHour = cut is null ? assumptions.Get("meat-loss-per-hour").Value : assumptions.MeatWater.PerHour(piece ?? cut.ReferencePiece, cut.ReferencePiece),
            OtherWater = assumptions.Range("bone-loss") * otherWater,
        };
        if (cut is null || !(collagen > 0))
        {
            return release;
        }

        double drawn = collagen * (cut.IsGelatin ? 1 : assumptions.KitchenFactor.Value);
        double most = WaterShareForGelatin * otherWater / drawn;
        return release with
        {
            SoftCollagen = drawn * cut.SoftShare.Value.DecimalFractions,
            HardCollagen = drawn * (1 - cut.SoftShare.Value.DecimalFractions),
            SoftPerHour = cut.SoftRate.Value.PerSecond * 3600,
            HardPerHour = cut.HardRate.Value.PerSecond * 3600 * ExtractionRates.Piece((piece ?? cut.ReferencePiece).Meters, cut.ReferencePiece.Meters),
            MostWaterWithGelatin = most,
            WaterWithGelatin = Math.Min(assumptions.GelatinLean.Value, most),
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
}
