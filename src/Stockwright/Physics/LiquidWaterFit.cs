namespace Stockwright.Physics;

/// <summary>
/// Cheap polynomials for the inner loops, 0 to 100 °C, fitted to <see cref="SaturatedWater"/>
/// (equations P.13 and P.14 in docs/equations-physics.md).
/// </summary>
internal static class LiquidWaterFit
{
    /// <summary>P.13.</summary>
    internal static double LatentHeatJoulesPerKilogram(double celsius) =>
        2500.36e3 - (celsius * (2299.77 + (1.32520 * celsius)));

    /// <summary>P.14.</summary>
    internal static double DensityKilogramsPerCubicMetre(double celsius) =>
        999.842 + (celsius * (0.0491599 + (celsius * (-7.43515e-3 + (celsius * (4.04980e-5 - (1.25894e-7 * celsius)))))));
}
