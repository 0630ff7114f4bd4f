namespace Stockwright.Physics;

/// <summary>Dry air and vapour as ideal gases (equations P.21 and P.22 in docs/equations-physics.md).</summary>
internal static class MoistAir
{
    /// <summary>R over the molar mass of dry air, 28.9644 g/mol (ISO 2533).</summary>
    internal const double DryAirGasConstant = 287.055;

    /// <summary>R over the molar mass of water, 18.015268 g/mol.</summary>
    internal const double VapourGasConstant = 461.523;

    /// <summary>P.21: mass of dry air in a cubic metre of moist air; negative above the boil, where steam presses harder than the air.</summary>
    internal static double DryAirKilogramsPerCubicMetre(double airPascals, double vapourPascals, double kelvins) =>
        (airPascals - vapourPascals) / (DryAirGasConstant * kelvins);

    /// <summary>P.22: mass of vapour in a cubic metre of moist air.</summary>
    internal static double VapourKilogramsPerCubicMetre(double vapourPascals, double kelvins) =>
        vapourPascals / (VapourGasConstant * kelvins);
}
