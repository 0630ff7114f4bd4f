using UnitsNet;

namespace Stockwright.Physics;

/// <summary>At what temperature a pot boils (equations P.2 and P.16 in docs/equations-physics.md).</summary>
public static class BoilingPoint
{
    private const double GasConstant = 8.31446261815324;

    /// <summary>Boiling point of water under an air pressure (P.2, IAPWS R7-97(2012) region 4).</summary>
    /// <param name="air">10 kPa to 1 MPa: any kitchen and any pressure cooker.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure lies outside that range.</exception>
    public static Temperature At(Pressure air) =>
        Temperature.FromKelvins(SaturationLine.SaturationKelvins(PhysicsRange.Within(
            air.Pascals, 1e4, 1e6, "Pa", "The pressure over the pot", nameof(air))));

    /// <summary>
    /// How much dissolved matter lifts the boiling point (P.16, ideal dilute solution); 0.15 K for 9 g/kg of salt, so it is
    /// left out of the plans.
    /// </summary>
    /// <param name="solute">Moles of solute per mass of water, 0 to 2 mol/kg.</param>
    /// <param name="particlesPerMole">Van 't Hoff factor: 1 for sugar, about 1.86 for cooking salt.</param>
    /// <param name="boilingPoint">Boiling point of the pure water, 40 to 180 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static TemperatureDelta Elevation(Molality solute, double particlesPerMole, Temperature boilingPoint)
    {
        double molesPerKilogram = PhysicsRange.Within(solute.MolesPerKilogram, 0, 2, "mol/kg", "The dissolved amount", nameof(solute));
        PhysicsRange.Within(particlesPerMole, 0, 5, "particles", "The number of particles a mole splits into", nameof(particlesPerMole));
        double kelvins = PhysicsRange.Kelvins(boilingPoint, 313.15, 453.15, "The boiling point", nameof(boilingPoint));
        double constant = GasConstant * kelvins * kelvins / SaturatedWater.LatentHeatJoulesPerKilogram(kelvins);
        return TemperatureDelta.FromKelvins(particlesPerMole * constant * molesPerKilogram);
    }
}
