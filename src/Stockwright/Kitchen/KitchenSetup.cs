namespace Stockwright.Kitchen;

/// <summary>Everything the planner knows of one kitchen.</summary>
public sealed record KitchenSetup
{
    /// <summary>What the cook calls the kitchen.</summary>
    public required string Name { get; init; }

    /// <summary>Air, room and tap.</summary>
    public required KitchenSite Site { get; init; }

    /// <summary>IANA name of the time zone, for instance <c>Europe/London</c>.</summary>
    public string TimeZoneId { get; init; } = "UTC";

    /// <summary>Pots, in the cook's order.</summary>
    public required IReadOnlyList<Pot> Pots { get; init; }

    /// <summary>Burners and plates.</summary>
    public required IReadOnlyList<Hob> Hobs { get; init; }

    /// <summary>The oven, or null when there is none.</summary>
    public Oven? Oven { get; init; }

    /// <summary>Trays.</summary>
    public IReadOnlyList<Tray> Trays { get; init; } = [];
}
