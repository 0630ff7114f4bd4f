using Stockwright.Physics.Conduction;

namespace Stockwright.Tests.Physics.Conduction;

/// <summary>The common material of the reference problems: k 0.58, rho 1000, cp 4150.</summary>
internal readonly struct ConstantMaterial : IConductionMaterial
{
    internal const double Conductivity = 0.58;
    internal const double HeatCapacity = 1000 * 4150.0;
    internal const double Diffusivity = Conductivity / HeatCapacity;

    public bool IsLinear => true;

    public double Celsius(double joulesPerCubicMetre) => joulesPerCubicMetre / HeatCapacity;

    public double JoulesPerCubicMetre(double celsius) => celsius * HeatCapacity;

    public double KelvinsPerJoulePerCubicMetre(double joulesPerCubicMetre) => 1 / HeatCapacity;

    public double ConductivityWattsPerMetreKelvin(double celsius) => Conductivity;
}
