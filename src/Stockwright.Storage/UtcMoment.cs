namespace Stockwright.Storage;

/// <summary>Stored moments are UTC by the context's converter; this says so to the type system.</summary>
internal static class UtcMoment
{
    public static DateTimeOffset Of(DateTime utc) => new(utc, TimeSpan.Zero);
}
