using Stockwright.Physics.Conduction;

namespace Stockwright.Cooling;

/// <summary>
/// A dilute solution that freezes over a range: ice forms below the freezing point in the share 1 - Tf/T of its water
/// (equations C.50 to C.52 in docs/equations-cooling.md). Enthalpy is counted from the freezing point, unfrozen.
/// </summary>
internal readonly struct FreezingStock : IConductionMaterial
{
    internal const double LatentHeat = 333600;

    /// <summary>Specific heat of stock frozen through, J/(kg K).</summary>
    internal const double FrozenHeat = 2060;

    /// <summary>Conductivity of stock frozen through, W/(m K).</summary>
    internal const double FrozenConductivity = 2.1;

    /// <summary>Where ice begins to form in a light stock, C.</summary>
    internal const double StockFreezingCelsius = -0.5;

    private readonly double density;
    private readonly double unfrozenHeat;
    private readonly double frozenHeat;
    private readonly double unfrozenConductivity;
    private readonly double frozenConductivity;
    private readonly double freezing;
    private readonly double latent;

    internal FreezingStock(
        double freezingCelsius,
        double water,
        double density,
        double unfrozenHeat,
        double frozenHeat,
        double unfrozenConductivity,
        double frozenConductivity)
    {
        freezing = freezingCelsius;
        latent = water * LatentHeat;
        this.density = density;
        this.unfrozenHeat = unfrozenHeat;
        this.frozenHeat = frozenHeat;
        this.unfrozenConductivity = unfrozenConductivity;
        this.frozenConductivity = frozenConductivity;
    }

    /// <summary>Stock of 97 % water, freezing from -0.5 °C.</summary>
    internal static FreezingStock Stock { get; } = Thawing(1);

    /// <summary>The same, with what is not frozen carrying some times what it conducts, because it moves.</summary>
    internal static FreezingStock Thawing(double times) => new(StockFreezingCelsius, 0.97, 1000, 4100, FrozenHeat, 0.57 * times, FrozenConductivity);

    public bool IsLinear => false;

    /// <summary>Where ice begins to form, C.</summary>
    internal double FreezingCelsius => freezing;

    public double Celsius(double joulesPerCubicMetre)
    {
        double h = joulesPerCubicMetre / density;
        if (h >= 0)
        {
            return freezing + (h / unfrozenHeat);
        }

        // The negative root of cf T^2 - (cf Tf + L + h) T + L Tf = 0, in the form that does not cancel.
        double b = (frozenHeat * freezing) + latent + h;
        double root = Math.Sqrt((b * b) - (4 * frozenHeat * latent * freezing));
        return b > 0 ? 2 * latent * freezing / (b + root) : (b - root) / (2 * frozenHeat);
    }

    public double JoulesPerCubicMetre(double celsius) => celsius >= freezing
        ? density * unfrozenHeat * (celsius - freezing)
        : density * ((frozenHeat * (celsius - freezing)) - (latent * (1 - (freezing / celsius))));

    public double KelvinsPerJoulePerCubicMetre(double joulesPerCubicMetre)
    {
        if (joulesPerCubicMetre >= 0)
        {
            return 1 / (density * unfrozenHeat);
        }

        double celsius = Celsius(joulesPerCubicMetre);
        return 1 / (density * (frozenHeat - (latent * freezing / (celsius * celsius))));
    }

    /// <summary>Share of the water that is ice (C.50).</summary>
    internal double FrozenShare(double celsius) => celsius >= freezing ? 0 : 1 - (freezing / celsius);

    public double ConductivityWattsPerMetreKelvin(double celsius) => celsius >= freezing
        ? unfrozenConductivity
        : unfrozenConductivity + ((frozenConductivity - unfrozenConductivity) * (1 - (freezing / celsius)));
}
