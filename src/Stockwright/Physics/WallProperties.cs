using Stockwright.Evidence;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Physics;

/// <summary>Specific heat and emissivity of pot walls.</summary>
internal static class WallProperties
{
    /// <summary>Specific heat of a wall; handbook figures, alloys differ by a few percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The material is unknown.</exception>
    public static Stated<SpecificEntropy> SpecificHeat(WallMaterial material)
    {
        double value = SpecificHeatJoulesPerKilogramKelvin(material);
        return new Stated<SpecificEntropy>(
            SpecificEntropy.FromJoulesPerKilogramKelvin(value),
            SpecificEntropy.FromJoulesPerKilogramKelvin(value * 0.95),
            SpecificEntropy.FromJoulesPerKilogramKelvin(value * 1.05),
            Provenance.FromMemory,
            "handbook figures of heat transfer texts (Incropera and others)");
    }

    /// <summary>Total emissivity of a used wall; bare metal depends much on how bright it is kept.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The material is unknown.</exception>
    public static Stated<Ratio> Emissivity(WallMaterial material)
    {
        (double low, double high) = material switch
        {
            WallMaterial.StainlessSteel => (0.15, 0.5),
            WallMaterial.EnamelledIron or WallMaterial.Stoneware => (0.85, 0.95),
            _ => (0.05, 0.4),
        };
        return new Stated<Ratio>(
            Ratio.FromDecimalFractions(EmissivityFraction(material)),
            Ratio.FromDecimalFractions(low),
            Ratio.FromDecimalFractions(high),
            Provenance.FromMemory,
            "emissivity tables of heat transfer texts (Incropera and others)");
    }

    internal static double SpecificHeatJoulesPerKilogramKelvin(WallMaterial material) => material switch
    {
        WallMaterial.StainlessSteel => 500,
        WallMaterial.Aluminium => 900,
        WallMaterial.Copper => 385,
        WallMaterial.EnamelledIron => 480,
        WallMaterial.Stoneware => 850,
        _ => throw Unknown(material),
    };

    internal static double EmissivityFraction(WallMaterial material) => material switch
    {
        WallMaterial.StainlessSteel => 0.3,
        WallMaterial.Aluminium => 0.15,
        WallMaterial.Copper => 0.15,
        WallMaterial.EnamelledIron or WallMaterial.Stoneware => 0.9,
        _ => throw Unknown(material),
    };

    private static ArgumentOutOfRangeException Unknown(WallMaterial material) =>
        new(nameof(material), material, "Unknown wall material.");
}
