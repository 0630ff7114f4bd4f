namespace Stockwright.Journeys.Running;

/// <summary>A clock that runs as usual from a chosen moment and can be moved on.</summary>
internal sealed class MovableClock(DateTimeOffset start) : TimeProvider
{
    private readonly long begun = System.GetTimestamp();
    private TimeSpan moved;

    public override DateTimeOffset GetUtcNow() => start + moved + System.GetElapsedTime(begun);

    /// <summary>Moves on to a moment; never back.</summary>
    /// <returns>How far.</returns>
    public TimeSpan MoveTo(DateTimeOffset moment)
    {
        TimeSpan ahead = moment - GetUtcNow();
        Assert.True(ahead >= TimeSpan.Zero, $"The clock is past {moment:u} already.");
        moved += ahead;
        return ahead;
    }
}
