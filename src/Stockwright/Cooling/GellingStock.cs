using Stockwright.Physics.Conduction;

namespace Stockwright.Cooling;

/// <summary>
/// Stock that conducts: its own convection, written as a larger conductivity, fades as it sets (equation C.11 in
/// docs/equations-cooling.md), and where the air is cold enough it freezes (C.50 to C.52). Enthalpy is counted from 0 °C.
/// </summary>
internal readonly struct GellingStock : IConductionMaterial
{
    /// <summary>Width of the fading, K.</summary>
    internal const double WidthKelvins = 1.5;

    private readonly double heatCapacity;
    private readonly double conductivity;
    private readonly double nusselt;
    private readonly double settingCelsius;
    private readonly FreezingStock ice;
    private readonly double iceStart;

    /// <summary>Stock that sets.</summary>
    /// <param name="heatCapacity">J/(m3 K), vessel wall included.</param>
    /// <param name="conductivity">W/(m K) at rest.</param>
    /// <param name="nusselt">Conductivity while liquid over that at rest.</param>
    /// <param name="settingCelsius">Where half the convection is gone.</param>
    /// <param name="ice">How it freezes, of the same heat capacity while unfrozen; null where nothing around it is that cold.</param>
    internal GellingStock(double heatCapacity, double conductivity, double nusselt, double settingCelsius, FreezingStock? ice = null)
    {
        this.heatCapacity = heatCapacity;
        this.conductivity = conductivity;
        this.nusselt = nusselt;
        this.settingCelsius = settingCelsius;
        this.ice = ice ?? default;
        IsLinear = ice is null;
        iceStart = heatCapacity * this.ice.FreezingCelsius;
    }

    public bool IsLinear { get; }

    public double Celsius(double joulesPerCubicMetre) => IsUnfrozen(joulesPerCubicMetre)
        ? joulesPerCubicMetre / heatCapacity
        : ice.Celsius(joulesPerCubicMetre - iceStart);

    public double JoulesPerCubicMetre(double celsius) => IsLinear || celsius >= ice.FreezingCelsius
        ? celsius * heatCapacity
        : iceStart + ice.JoulesPerCubicMetre(celsius);

    public double KelvinsPerJoulePerCubicMetre(double joulesPerCubicMetre) => IsUnfrozen(joulesPerCubicMetre)
        ? 1 / heatCapacity
        : ice.KelvinsPerJoulePerCubicMetre(joulesPerCubicMetre - iceStart);

    public double ConductivityWattsPerMetreKelvin(double celsius) => IsLinear || celsius >= ice.FreezingCelsius
        ? conductivity * (1 + ((nusselt - 1) * Liquid(celsius)))
        : ice.ConductivityWattsPerMetreKelvin(celsius);

    /// <summary>Share still moving, one well above the setting temperature.</summary>
    internal double Liquid(double celsius) => 1 / (1 + Math.Exp((settingCelsius - celsius) / WidthKelvins));

    /// <summary>Share of the water that is ice.</summary>
    internal double Frozen(double celsius) => IsLinear ? 0 : ice.FrozenShare(celsius);

    private bool IsUnfrozen(double joulesPerCubicMetre) => IsLinear || joulesPerCubicMetre >= iceStart;
}
