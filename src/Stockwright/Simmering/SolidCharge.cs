namespace Stockwright.Simmering;

/// <summary>One solid as it stands in the pot, in SI units. It hands liquor and fat over as the exchange progresses.</summary>
/// <param name="MassKilograms">Mass when it goes in, after roasting or blanching.</param>
/// <param name="VolumeCubicMetres">Volume it displaces when it goes in.</param>
/// <param name="PackVolumeCubicMetres">Volume it takes up as heaped, gaps included.</param>
/// <param name="HeatCapacityJoulesPerKelvin">Heat capacity of the whole of it.</param>
/// <param name="Release">What it gives.</param>
internal sealed record SolidCharge(
    double MassKilograms,
    double VolumeCubicMetres,
    double PackVolumeCubicMetres,
    double HeatCapacityJoulesPerKelvin,
    SolidRelease Release)
{
    public SolidCharge Scaled(double factor) => new(
        MassKilograms * factor,
        VolumeCubicMetres * factor,
        PackVolumeCubicMetres * factor,
        HeatCapacityJoulesPerKelvin * factor,
        Release.Scaled(factor));
}
