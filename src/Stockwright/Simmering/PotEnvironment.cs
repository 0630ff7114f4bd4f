using Stockwright.Kitchen;
using Stockwright.Physics;

namespace Stockwright.Simmering;

/// <summary>
/// Pot, hob and room as the simmer equations need them: tables over temperature made once per plan, in SI units.
/// </summary>
internal sealed class PotEnvironment
{
    private const int HottestCelsius = 130;

    private readonly EvaporationTable evaporation;
    private readonly double[] lossWatts;

    public PotEnvironment(Pot pot, Hob hob, LidPosition lid, KitchenSite site, double airPascals, SimmerAssumptions? assumptions = null)
    {
        Assumptions = assumptions ?? SimmerAssumptions.Standard;
        Pot = pot;
        IsSealed = pot.Kind == PotKind.PressureCooker && lid.Kind == LidKind.On;
        HobWatts = (double)hob.RatedPower.Watts;
        AirPascals = airPascals;
        RoomCelsius = site.Room.DegreesCelsius;
        CleanOverCovered = SurfaceFilm.CleanOverCovered(site, Assumptions);
        evaporation = new EvaporationTable(RoomCelsius, site.Humidity.DecimalFractions, airPascals);
        BoilingCelsius = SaturationLine.SaturationKelvins(airPascals) - 273.15;
        HottestReachableCelsius = IsSealed
            ? SaturationLine.SaturationKelvins(airPascals + (pot.GaugePressure ?? Pot.UsualGaugePressure).Pascals) - 273.15
            : BoilingCelsius;
        PotHeatCapacity = pot.EmptyMass.Kilograms * WallProperties.SpecificHeatJoulesPerKilogramKelvin(pot.Material);
        OpenEscape = LidEscape.CentralFraction(LidPosition.Off);
        LidEscapeFraction = LidEscape.CentralFraction(lid);
        SeatedEscape = LidEscape.CentralFraction(LidPosition.On);
        lossWatts = MakeLossTable(pot, airPascals);
    }

    /// <summary>The figures it is worked out with.</summary>
    public SimmerAssumptions Assumptions { get; }

    public Pot Pot { get; }

    public bool IsSealed { get; }

    public double HobWatts { get; }

    public double AirPascals { get; }

    public double RoomCelsius { get; }

    /// <summary>How many times as much the clean surface loses as the one fat covers (S.3).</summary>
    public double CleanOverCovered { get; }

    public double BoilingCelsius { get; }

    public double HottestReachableCelsius { get; }

    public double PotHeatCapacity { get; }

    public double OpenEscape { get; }

    public double LidEscapeFraction { get; }

    public double SeatedEscape { get; }

    /// <summary>Clean-water flux at a surface temperature, kg/(m2 s) (P.23 in docs/equations-physics.md).</summary>
    public double CleanFlux(double celsius) => evaporation.FluxKilogramsPerSquareMetreSecond(celsius);

    /// <summary>Heat lost by wall and surface without evaporation, W (P.31, P.32).</summary>
    public double LossWatts(double celsius)
    {
        double position = Math.Clamp(celsius, 0, HottestCelsius - 1e-9);
        int index = (int)position;
        double fraction = position - index;
        return lossWatts[index] + (fraction * (lossWatts[index + 1] - lossWatts[index]));
    }

    private double[] MakeLossTable(Pot pot, double airPascals)
    {
        if (pot.Kind == PotKind.SlowCooker)
        {
            // Its shell keeps the room's air off the crock, so one conductance stands for all of it (S.10).
            return [.. Enumerable.Range(0, HottestCelsius + 1).Select(celsius => Assumptions.SlowLoss.Value * (celsius - RoomCelsius))];
        }

        // A pot is filled to about three quarters; the dry rim above is cool and gives off little.
        double wetted = 0.75 * pot.InnerHeight.Meters;
        double diameter = 2 * pot.RadiusAtMetres(wetted / 2);
        double top = 2 * pot.RadiusAtMetres(wetted);
        double emissivity = WallProperties.EmissivityFraction(pot.Material);
        double[] table = new double[HottestCelsius + 1];
        for (int celsius = 0; celsius <= HottestCelsius; celsius++)
        {
            table[celsius] = PotLosses.SideWatts(diameter, wetted, celsius, RoomCelsius, emissivity, airPascals)
                + PotLosses.TopConvectionRadiationWatts(top, celsius, RoomCelsius, PotLosses.WaterEmissivity, airPascals);
        }

        return table;
    }
}
