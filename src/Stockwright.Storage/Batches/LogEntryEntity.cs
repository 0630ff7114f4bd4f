namespace Stockwright.Storage.Batches;

/// <summary>One entry of a log. Rows are only ever added; triggers of the database refuse anything else.</summary>
internal sealed class LogEntryEntity
{
    /// <summary>Order of receipt over all batches, given by the database.</summary>
    public long Sequence { get; set; }

    /// <summary>Made by the device; unique, so that the same entry delivered twice is stored once.</summary>
    public Guid Id { get; set; }

    public Guid BatchId { get; set; }

    public DateTime HappenedUtc { get; set; }

    public DateTime ReceivedUtc { get; set; }

    public required string Who { get; set; }

    public double? DeviceOffsetSeconds { get; set; }

    public required string DeviceZone { get; set; }

    /// <summary>Word of the fact, as in <see cref="Logbook.FactDocument"/>.</summary>
    public required string Kind { get; set; }

    /// <summary>The fact, as written by <see cref="Logbook.FactDocument"/>.</summary>
    public required string Body { get; set; }

    public Guid? Corrects { get; set; }
}
