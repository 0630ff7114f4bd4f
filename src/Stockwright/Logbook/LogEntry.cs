namespace Stockwright.Logbook;

/// <summary>
/// One entry of a batch's log. Never changed once stored: a correction or a withdrawal is a new entry that points to the old one.
/// </summary>
public sealed record LogEntry
{
    /// <summary>A clock may be ahead by this much (estimate: a minute hand read a little ahead is no mistake).</summary>
    public static readonly TimeSpan ClockSlack = TimeSpan.FromMinutes(2);

    /// <summary>Made where the entry was made, so that the same entry delivered twice is known again.</summary>
    public required Guid Id { get; init; }

    /// <summary>Place in the log, from one, in order of receipt; zero while it is not stored.</summary>
    public int Number { get; init; }

    /// <summary>When it happened, by the server's clock.</summary>
    public required DateTimeOffset HappenedAt { get; init; }

    /// <summary>When the server stored it.</summary>
    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary>Who says so: name or initials.</summary>
    public required string Who { get; init; }

    /// <summary>
    /// How far the device's clock was ahead of the server's when it sent the entry; null when it did not say.
    /// <see cref="HappenedAt"/> has it taken off already.
    /// </summary>
    public TimeSpan? DeviceOffset { get; init; }

    /// <summary>IANA name of the time zone the device was set to; empty when it did not say.</summary>
    public string DeviceZone { get; init; } = "";

    /// <summary>What happened.</summary>
    public required LogFact Fact { get; init; }

    /// <summary>The entry this one replaces or takes back, or null.</summary>
    public Guid? Corrects { get; init; }
}
