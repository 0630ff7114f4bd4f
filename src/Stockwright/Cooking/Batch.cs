using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Planning;

namespace Stockwright.Cooking;

/// <summary>One making of a recipe: the plan it was started from, as it was, and the rules it is cooled by.</summary>
public sealed record Batch
{
    /// <summary>Permanent id.</summary>
    public required Guid Id { get; init; }

    /// <summary>What the cook calls it.</summary>
    public required string Name { get; init; }

    /// <summary>The plan as it was when the batch was started.</summary>
    public required BatchPlan Planned { get; init; }

    /// <summary>The cooling limit chosen for it.</summary>
    public required CoolingLimit Limit { get; init; }

    /// <summary>Hobs of the kitchen it may be moved to, besides the planned one.</summary>
    public IReadOnlyList<Hob> Hobs { get; init; } = [];

    /// <summary>When the batch was stored (not when cooking began).</summary>
    public required DateTimeOffset StartedAt { get; init; }

    /// <summary>The kitchen's time zone: every clock time on pages and sheets is in it.</summary>
    public TimeZoneInfo Zone => Planned.Request.Schedule.Zone;
}
