namespace Stockwright.Physics;

/// <summary>
/// Evaporation of clean, bubble-free water into a quiet room (equation P.23 in docs/equations-physics.md).
/// Source: Shah 2002 [from memory]: the constant and the reading of the density
/// as mass of dry air per cubic metre are recalled, and chosen for agreement with tank tables. The abstract states a mean
/// deviation of 18 % over 11 data sets, water 7 to 94 °C.
/// </summary>
internal static class Evaporation
{
    /// <summary>Hottest room taken.</summary>
    internal const double MostRoomKelvins = 333.15;

    /// <summary>P.23 without range checks.</summary>
    internal static double CleanWaterKilogramsPerSquareMetreSecond(double waterKelvins, double roomKelvins, double humidity, double airPascals)
    {
        double roomVapourPascals = humidity * SaturationLine.SaturationPressurePascals(roomKelvins);
        double roomAir = MoistAir.DryAirKilogramsPerCubicMetre(airPascals, roomVapourPascals, roomKelvins);
        double roomRatio = MoistAir.VapourKilogramsPerCubicMetre(roomVapourPascals, roomKelvins) / roomAir;

        double waterVapourPascals = SaturationLine.SaturationPressurePascals(waterKelvins);
        double waterAir = MoistAir.DryAirKilogramsPerCubicMetre(airPascals, waterVapourPascals, waterKelvins);

        // rho_w (W_w - W_r) written with the vapour density, so that nothing divides by the dry air, which is nil at the boil.
        double drive = MoistAir.VapourKilogramsPerCubicMetre(waterVapourPascals, waterKelvins) - (waterAir * roomRatio);
        double lift = roomAir - waterAir;
        if (lift <= 0 || drive <= 0)
        {
            return 0;
        }

        // Shah's constant is 40 under weak buoyancy and 35 otherwise; the step is spread so that an integrator meets no jump.
        double constant = lift >= 0.03 ? 35 : lift <= 0.02 ? 40 : 40 - (500 * (lift - 0.02));
        return constant / 3600 * Math.Cbrt(lift) * drive;
    }
}
