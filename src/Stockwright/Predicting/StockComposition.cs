using Stockwright.Physics;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>What a finished stock is made of, by mass; the rest is water (B.15 to B.17 in docs/equations-body.md).</summary>
public sealed record StockComposition
{
    /// <summary>Refractometer reading per per cent of gelatin: dn/dc 0.187 mL/g over sucrose's 0.00144 per per cent [from memory].</summary>
    internal const double BrixPerGelatinPercent = 1.30;

    /// <summary>Reading per per cent of salts and juices: NaCl 0.00175 per per cent over sucrose's 0.00144 [from memory].</summary>
    internal const double BrixPerSaltPercent = 1.2;

    /// <summary>Protein per mass of nitrogenous juices, as food tables count it (nitrogen times 6.25): one (estimate).</summary>
    private const double ProteinPerJuice = 1;

    /// <summary>Gelatin.</summary>
    public required Ratio Gelatin { get; init; }

    /// <summary>Other nitrogenous matter: meat juices.</summary>
    public required Ratio Juices { get; init; }

    /// <summary>Sugars.</summary>
    public required Ratio Sugars { get; init; }

    /// <summary>Minerals, salt included.</summary>
    public required Ratio Minerals { get; init; }

    /// <summary>Fat left after defatting.</summary>
    public required Ratio Fat { get; init; }

    /// <summary>Sodium, part of the minerals.</summary>
    public required Ratio Sodium { get; init; }

    /// <summary>Protein as a food table counts it.</summary>
    public Ratio Protein => Gelatin + (Juices * ProteinPerJuice);

    /// <summary>Water: the rest.</summary>
    public Ratio Water => Ratio.FromDecimalFractions(1 - Gelatin.DecimalFractions - Juices.DecimalFractions - Sugars.DecimalFractions - Minerals.DecimalFractions - Fat.DecimalFractions);

    /// <summary>Reading of a refractometer at 20 °C, defatted (B.16): degrees Brix, to about 0.3 with 15 % more for real stock.</summary>
    public double Brix => (BrixPerGelatinPercent * Gelatin.Percent) + Sugars.Percent + (BrixPerSaltPercent * (Juices.Percent + Minerals.Percent));

    /// <summary>Density at 20 °C from the make-up (B.17; Choi and Okos 1986, P.18 in docs/equations-physics.md).</summary>
    public Density Density => FoodProperties.Density(
        new FoodComposition(Water, Protein, Fat, Sugars, Ratio.Zero, Minerals), Temperature.FromDegreesCelsius(20));

    /// <summary>Energy by the general factors: protein 4, fat 9, carbohydrate 4 kcal/g.</summary>
    internal Energy EnergyPer(Mass mass) => Energy.FromKilocalories(
        mass.Grams * ((4 * Protein.DecimalFractions) + (9 * Fat.DecimalFractions) + (4 * Sugars.DecimalFractions)));
}
