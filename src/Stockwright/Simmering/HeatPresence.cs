namespace Stockwright.Simmering;

/// <summary>Whether the pot has its heat, and the stretches it had not: gone, come back, and at its temperature again.</summary>
internal sealed class HeatPresence(SimmerScript script, SimmerOutcome outcome)
{
    public const double LongestHeatUpSeconds = 48 * 3600;

    /// <summary>A simmer entered later than this after the heat came back is not the return to it.</summary>
    private const double LongestSeenSeconds = 3 * 3600;

    private double awaySince;
    private double backSince;

    /// <summary>True while there is no heat.</summary>
    public bool IsAway { get; private set; }

    /// <summary>True from the heat's coming back until the pot is at its temperature.</summary>
    public bool IsReturning { get; private set; }

    /// <summary>True when the clock of the stage stands still.</summary>
    public bool IsMissed => IsAway || IsReturning;

    /// <summary>True when the cook will see it simmer again: that overrules the calculation.</summary>
    public bool IsSeenAgain { get; private set; }

    /// <summary>When waiting for the temperature ends, s.</summary>
    public double ReturnBySeconds { get; private set; }

    public void Leave(double now)
    {
        if (!IsAway)
        {
            Again(now);
            IsAway = true;
            awaySince = now;
        }
    }

    /// <summary>The heat comes back; true when it was away.</summary>
    /// <param name="now">When, s after it first went on.</param>
    /// <param name="coming">What happens from then on.</param>
    public bool Return(double now, IEnumerable<PotEvent> coming)
    {
        if (!IsAway)
        {
            return false;
        }

        IsAway = false;
        IsReturning = true;
        backSince = now;
        ReturnBySeconds = now + LongestHeatUpSeconds;
        IsSeenAgain = coming
            .TakeWhile(one => one.Kind != PotEventKind.HeatAway && one.AtSeconds < now + LongestSeenSeconds)
            .Any(one => one.Kind == PotEventKind.SimmersAgain && one.AtSeconds < script.EndsAtSeconds);
        return true;
    }

    /// <summary>It is at its temperature again.</summary>
    public void Again(double now)
    {
        if (IsReturning)
        {
            IsReturning = false;
            outcome.Gaps.Add(new(awaySince, now));
        }
    }

    /// <summary>Enters a stretch without heat that the end of the run cuts off.</summary>
    public void Close(double now)
    {
        if (IsMissed)
        {
            outcome.Gaps.Add(new(awaySince, now));
        }
    }
}
