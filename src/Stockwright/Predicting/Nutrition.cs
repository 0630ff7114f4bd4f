using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>Energy and nutrients of an amount of stock.</summary>
/// <param name="Energy">Energy by the general factors 4, 9 and 4 kcal/g.</param>
/// <param name="Protein">Protein: gelatin and meat juices.</param>
/// <param name="Fat">Fat left after defatting.</param>
/// <param name="Carbohydrate">Sugars from the vegetables. Not by difference: that would count the chitin of shells and the alcohol of wine.</param>
/// <param name="Sodium">Sodium, added salt included.</param>
public sealed record NutritionFacts(Energy Energy, Mass Protein, Mass Fat, Mass Carbohydrate, Mass Sodium)
{
    /// <summary>Salt as labels in the EU and UK count it: sodium times 2.5 (Regulation (EU) 1169/2011, Annex I).</summary>
    public Mass SaltEquivalent => Sodium * 2.5;

    /// <summary>Facts of a mass of stock (B.21).</summary>
    internal static NutritionFacts Of(StockComposition composition, Mass mass)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return new NutritionFacts(
            composition.EnergyPer(mass),
            mass * composition.Protein.DecimalFractions,
            mass * composition.Fat.DecimalFractions,
            mass * composition.Sugars.DecimalFractions,
            mass * composition.Sodium.DecimalFractions);
    }
}

/// <summary>Energy and nutrients of the stock, defatted, before any salt at the table.</summary>
/// <param name="PerHundredMillilitres">Per 100 mL at 20 °C.</param>
/// <param name="Portion">Size of a portion.</param>
/// <param name="PerPortion">Per portion.</param>
public sealed record Nutrition(NutritionFacts PerHundredMillilitres, Volume Portion, NutritionFacts PerPortion)
{
    /// <summary>Nutrition of a stock.</summary>
    internal static Nutrition Of(StockComposition composition, Volume portion)
    {
        ArgumentNullException.ThrowIfNull(composition);
        Density density = composition.Density;
        return new Nutrition(
            NutritionFacts.Of(composition, Volume.FromMilliliters(100) * density),
            portion,
            NutritionFacts.Of(composition, portion * density));
    }
}
