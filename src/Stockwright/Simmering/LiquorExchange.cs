using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>
/// What passes between solids and liquor, and what is lost on the way from pot to portion.
/// No published measurement per cut was found; the figures are estimates with the ranges of the trade notes (equations S.6 to S.8 in docs/equations.md).
/// </summary>
public static class LiquorExchange
{
    /// <summary>Liquor held by spent solids, kilograms per kilogram of wet spent solids.</summary>
    public static Stated<Ratio> Retained { get; } = State(0.22, 0.15, 0.35, "estimate; range of 0.15 to 0.35 L per kg of wet spent solids");

    /// <summary>Share of the liquid lifted off as scum in the first hour.</summary>
    public static Stated<Ratio> Skimmed { get; } = State(0.01, 0.005, 0.02, "estimate; 0.5 to 2 % of the liquid");

    /// <summary>Share of the strained liquor left in cloth, strainer, vessels and spoon.</summary>
    public static Stated<Ratio> StrainLoss { get; } = State(0.025, 0.01, 0.05, "estimate; transfer 1 to 2 %, cloth and tasting on top");

    /// <summary>Share of the liquor that goes with the fat when it is lifted.</summary>
    public static Stated<Ratio> DefatLoss { get; } = State(0.02, 0.01, 0.03, "estimate; 1 to 3 %");

    /// <summary>Depth of liquid wanted over the solids at the start; 2 to 5 cm.</summary>
    public static Stated<Length> CoverDepth { get; } = new(
        Length.FromCentimeters(2.5), Length.FromCentimeters(2), Length.FromCentimeters(5), Provenance.CommonPractice, "common practice, no source: covered by 2 to 5 cm");

    /// <summary>Least cover before water is added when the rule is to keep the solids covered.</summary>
    public static Length LeastCover { get; } = Length.FromCentimeters(1);

    /// <summary>
    /// Share of its mass a solid gives up to the liquor over a long simmer; negative when it swells.
    /// Raw meaty bones give juice (thoroughly cooked meat gives about 40 % of its weight, McGee 2004; bone itself next to none);
    /// roasting has already driven most of it off.
    /// </summary>
    public static Stated<Ratio> Released(Ingredient ingredient, Preparation preparation)
    {
        if (ingredient.Water.Value.DecimalFractions < 0.2)
        {
            return ingredient.Group switch
            {
                IngredientGroup.Vegetable => State(-4, -6, -3, "estimate: dried mushrooms swell to four to seven times their weight"),
                IngredientGroup.DriedSeafood => State(-2.5, -4, -1.5, "estimate: dried kelp and fish flakes swell to three to five times their weight"),
                IngredientGroup.Beef => State(0.02, 0, 0.08, "estimate: marrow bone has little juice to give"),
                _ => State(-1, -2, 0, "estimate: dry herbs and spices take up their own weight"),
            };
        }

        return (ingredient.Group, preparation) switch
        {
            (IngredientGroup.Vegetable or IngredientGroup.Aromatic, Preparation.Roast) => State(0, -0.3, 0.1, "estimate: roasted vegetables take some liquor back"),
            (IngredientGroup.Vegetable or IngredientGroup.Aromatic, _) => State(0.08, 0, 0.2, "estimate: simmered vegetables slump a little"),
            (IngredientGroup.Shellfish, _) => State(0.03, 0, 0.1, "estimate: shells hold little juice"),
            (_, Preparation.Roast) => State(0.04, -0.03, 0.12, "estimate: roasting has driven most of the juice off"),
            _ => State(0.12, 0.05, 0.2, "estimate; meat gives about 40 % of its weight (McGee 2004), bone next to none"),
        };
    }

    private static Stated<Ratio> State(double value, double low, double high, string source) =>
        new(Ratio.FromDecimalFractions(value), Ratio.FromDecimalFractions(low), Ratio.FromDecimalFractions(high), Provenance.Estimate, source);
}
