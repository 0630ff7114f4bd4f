namespace Stockwright.Simmering;

/// <summary>One solid as it stands in the pot, in SI units. It hands liquor over as the exchange progresses.</summary>
/// <param name="MassKilograms">Mass when it goes in, after roasting or blanching.</param>
/// <param name="VolumeCubicMetres">Volume it displaces when it goes in.</param>
/// <param name="PackVolumeCubicMetres">Volume it takes up as heaped, gaps included.</param>
/// <param name="HeatCapacityJoulesPerKelvin">Heat capacity of the whole of it.</param>
/// <param name="ReleasedKilograms">Liquor it gives up in the end; negative when it swells.</param>
/// <param name="ExchangePace">How fast, against the meat juice the exchange rate was fitted to.</param>
internal sealed record SolidCharge(
    double MassKilograms,
    double VolumeCubicMetres,
    double PackVolumeCubicMetres,
    double HeatCapacityJoulesPerKelvin,
    double ReleasedKilograms,
    double ExchangePace)
{
    /// <summary>Share of the exchange done when the progress integral has grown by so much since it went in (S.6).</summary>
    public double ExchangeDone(double progress) => 1 - Math.Exp(-ExchangePace * progress);

    public SolidCharge Scaled(double factor) => this with
    {
        MassKilograms = MassKilograms * factor,
        VolumeCubicMetres = VolumeCubicMetres * factor,
        PackVolumeCubicMetres = PackVolumeCubicMetres * factor,
        HeatCapacityJoulesPerKelvin = HeatCapacityJoulesPerKelvin * factor,
        ReleasedKilograms = ReleasedKilograms * factor,
    };
}
