namespace Stockwright.Physics;

/// <summary>
/// Density, enthalpy and latent heat of water and its steam on the boiling line
/// (equations P.3 to P.10 in docs/equations-physics.md).
/// Source: IAPWS SR1-86.
/// </summary>
/// <remarks>
/// All methods take 0 to 373.946 °C (the release starts at the triple point, 0.01 °C; the last hundredth is a smooth
/// continuation). At ordinary kitchen pressure liquid water below the boil differs from these figures by less than 0.01 %.
/// </remarks>
internal static class SaturatedWater
{
    private const double CriticalKelvins = PhysicsRange.CriticalKelvins;
    private const double CriticalPascals = 22.064e6;
    private const double CriticalDensity = 322;

    /// <summary>Saturation pressure (P.3); <see cref="SaturationLine"/> is the one used elsewhere, the two agree to 0.01 %.</summary>
    internal static double PressurePascals(double kelvins) =>
        CriticalPascals * Math.Exp(LogReducedPressure(1 - (kelvins / CriticalKelvins), kelvins));

    /// <summary>Slope of the boiling line (P.4).</summary>
    internal static double PressureSlopePascalsPerKelvin(double kelvins)
    {
        double tau = 1 - (kelvins / CriticalKelvins);
        double root = Math.Sqrt(Math.Max(tau, 0));
        double square = tau * tau;
        double log = LogReducedPressure(tau, kelvins);
        double slope = -7.85951783
            + (1.5 * 1.84408259 * root)
            + (3 * -11.7866497 * square)
            + (3.5 * 22.6807411 * square * root)
            + (4 * -15.9618719 * square * tau)
            + (7.5 * 1.80122502 * square * square * square * root);
        return -CriticalPascals * Math.Exp(log) / kelvins * (log + slope);
    }

    internal static double LiquidDensityKilogramsPerCubicMetre(double kelvins)
    {
        double third = Math.Cbrt(1 - (kelvins / CriticalKelvins));
        double two = third * third;
        double five = two * two * third;
        double sixteen = five * five * five * third;
        double forty3 = sixteen * sixteen * five * five * third;
        double hundred10 = forty3 * forty3 * sixteen * five * two * third;
        return CriticalDensity * (1
            + (1.99274064 * third)
            + (1.09965342 * two)
            + (-0.510839303 * five)
            + (-1.75493479 * sixteen)
            + (-45.5170352 * forty3)
            + (-6.74694450e5 * hundred10));
    }

    internal static double VapourDensityKilogramsPerCubicMetre(double kelvins)
    {
        double sixth = Math.Sqrt(Math.Cbrt(Math.Max(1 - (kelvins / CriticalKelvins), 0)));
        double two = sixth * sixth;
        double four = two * two;
        double eight = four * four;
        double eighteen = eight * eight * two;
        double thirty7 = eighteen * eighteen * sixth;
        double seventy1 = thirty7 * eighteen * eight * eight;
        return CriticalDensity * Math.Exp(
            (-2.03150240 * two)
            + (-2.68302940 * four)
            + (-5.38626492 * eight)
            + (-17.2991605 * eighteen)
            + (-44.7586581 * thirty7)
            + (-63.9201063 * seventy1));
    }

    /// <summary>The auxiliary function alpha of the release (P.7).</summary>
    internal static double AlphaJoulesPerKilogram(double kelvins)
    {
        double theta = kelvins / CriticalKelvins;
        double two = theta * theta;
        double four = two * two;
        double half = Math.Sqrt(theta);
        return 1000 * (-1135.905627715
            + (-5.65134998e-8 * Math.Pow(theta, -19))
            + (2690.66631 * theta)
            + (127.287297 * four * half)
            + (-135.003439 * four * theta)
            + (0.981825814 * Math.Pow(theta, 54.5)));
    }

    internal static double LiquidEnthalpyJoulesPerKilogram(double kelvins) =>
        AlphaJoulesPerKilogram(kelvins)
        + (kelvins / LiquidDensityKilogramsPerCubicMetre(kelvins) * PressureSlopePascalsPerKelvin(kelvins));

    internal static double VapourEnthalpyJoulesPerKilogram(double kelvins) =>
        AlphaJoulesPerKilogram(kelvins)
        + (kelvins / VapourDensityKilogramsPerCubicMetre(kelvins) * PressureSlopePascalsPerKelvin(kelvins));

    internal static double LatentHeatJoulesPerKilogram(double kelvins) =>
        kelvins * PressureSlopePascalsPerKelvin(kelvins)
        * ((1 / VapourDensityKilogramsPerCubicMetre(kelvins)) - (1 / LiquidDensityKilogramsPerCubicMetre(kelvins)));

    internal static double LiquidSpecificHeatJoulesPerKilogramKelvin(double kelvins)
    {
        // A central difference: the enthalpy is smooth, and 0.1 K leaves both rounding and curvature below 1e-6.
        const double step = 0.1;
        return (LiquidEnthalpyJoulesPerKilogram(kelvins + step) - LiquidEnthalpyJoulesPerKilogram(kelvins - step)) / (2 * step);
    }

    private static double LogReducedPressure(double tau, double kelvins)
    {
        double root = Math.Sqrt(Math.Max(tau, 0));
        double square = tau * tau;
        double cube = square * tau;
        return CriticalKelvins / kelvins * (
            (-7.85951783 * tau)
            + (1.84408259 * tau * root)
            + (-11.7866497 * cube)
            + (22.6807411 * cube * root)
            + (-15.9618719 * square * square)
            + (1.80122502 * cube * cube * tau * root));
    }
}
