using Stockwright.Numerics;

namespace Stockwright.Cooling;

/// <summary>
/// Stock that conducts: its own convection, written as a larger conductivity, fades as it sets (equation C.11 in
/// docs/equations-cooling.md).
/// </summary>
/// <param name="heatCapacity">J/(m3 K), vessel wall included.</param>
/// <param name="conductivity">W/(m K) at rest.</param>
/// <param name="nusselt">Conductivity while liquid over that at rest.</param>
/// <param name="settingCelsius">Where half the convection is gone.</param>
internal readonly struct GellingStock(double heatCapacity, double conductivity, double nusselt, double settingCelsius) : IConductionMaterial
{
    /// <summary>Width of the fading, K.</summary>
    internal const double WidthKelvins = 1.5;

    public bool IsLinear => true;

    public double Celsius(double joulesPerCubicMetre) => joulesPerCubicMetre / heatCapacity;

    public double JoulesPerCubicMetre(double celsius) => celsius * heatCapacity;

    public double KelvinsPerJoulePerCubicMetre(double joulesPerCubicMetre) => 1 / heatCapacity;

    public double ConductivityWattsPerMetreKelvin(double celsius) => conductivity * (1 + ((nusselt - 1) * Liquid(celsius)));

    /// <summary>Share still moving, one well above the setting temperature.</summary>
    internal double Liquid(double celsius) => 1 / (1 + Math.Exp((settingCelsius - celsius) / WidthKelvins));
}
