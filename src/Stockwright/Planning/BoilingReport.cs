using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What the air pressure does to this batch.</summary>
public sealed record BoilingReport
{
    /// <summary>Air pressure at the kitchen.</summary>
    public required Pressure Pressure { get; init; }

    /// <summary>True when it was measured, false when worked out from the altitude.</summary>
    public required bool PressureIsMeasured { get; init; }

    /// <summary>Boiling point at that pressure.</summary>
    public required Temperature BoilingPoint { get; init; }

    /// <summary>Hottest the pot gets here: the boil, or its pressure behind a locked lid.</summary>
    public required Temperature Hottest { get; init; }

    /// <summary>Simmer temperature asked for.</summary>
    public required Temperature Asked { get; init; }

    /// <summary>Simmer temperature the plan runs at.</summary>
    public required Temperature Reached { get; init; }

    /// <summary>True when the asked temperature cannot be reached in this pot here.</summary>
    public bool IsOutOfReach => Reached < Asked;

    /// <summary>Simmer time asked for, or the recipe's.</summary>
    public required TimeSpan AskedTime { get; init; }

    /// <summary>Simmer time the plan uses; longer than asked when the pot runs cooler and the cook left the time to the recipe.</summary>
    public required TimeSpan PlannedTime { get; init; }

    /// <summary>How many times longer the same extraction takes at the reached temperature; one when it was reached.</summary>
    public required Band<double> Stretch { get; init; }
}
