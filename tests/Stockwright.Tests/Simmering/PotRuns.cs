using Stockwright.Kitchen;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;

namespace Stockwright.Tests.Simmering;

/// <summary>Plain runs of a pot of water, without recipe or planner.</summary>
internal static class PotRuns
{
    internal static PotEnvironment Kitchen(Pot pot, double kilowatts = 3.5, LidPosition? lid = null, KitchenSite? site = null)
    {
        KitchenSite where = site ?? new KitchenSite();
        return new PotEnvironment(pot, PlanRequests.Hob(HobKind.Induction, kilowatts), lid ?? LidPosition.Off, where, Air.PressurePascals(where));
    }

    /// <summary>Water brought to a temperature and held there.</summary>
    internal static SimmerScript Water(double kilograms, double celsius, double hours = 1.0 / 3600, double fromCelsius = 15) => new(
        [],
        kilograms,
        fromCelsius,
        [new StageScript(celsius, hours * 3600, Climbs: false, LiftsOut: false, [])],
        TopUpRule.None,
        fromCelsius,
        LineMetres: 0,
        HoldCelsius: 93,
        SkimShare: 0);

    /// <summary>Loss at a temperature, kg/h.</summary>
    internal static double LossKilogramsPerHour(double diameterCentimetres, double celsius, LidPosition lid, double film)
    {
        Pot pot = PlanRequests.Straight(diameterCentimetres, 30);
        PotEnvironment environment = Kitchen(pot, lid: lid);
        PotSystem system = new(environment, film, 1, 0.8) { Surface = pot.SurfaceAtMetres(0), Escape = environment.LidEscapeFraction };
        return system.VapourRate(celsius) * 3600;
    }
}
