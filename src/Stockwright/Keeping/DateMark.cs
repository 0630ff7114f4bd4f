namespace Stockwright.Keeping;

/// <summary>Days in the freezer.</summary>
/// <param name="In">Day it went in.</param>
/// <param name="Out">Day it came out, or null while it is there.</param>
public readonly record struct FrozenSpell(DateOnly In, DateOnly? Out);

/// <summary>
/// Use-by days (rule C.60 in docs/equations-cooling.md). The day of making is day one; whole days in the freezer do not count, the
/// days it goes in and comes out do.
/// </summary>
public static class DateMark
{
    /// <summary>Last day of use, or null while it lies frozen: the clock then stands still.</summary>
    /// <param name="made">Day of making.</param>
    /// <param name="days">Days allowed, one or more.</param>
    /// <param name="frozen">Spells in the freezer, in order, not overlapping.</param>
    /// <exception cref="ArgumentOutOfRangeException">No days are allowed.</exception>
    /// <exception cref="ArgumentException">The spells are out of order, or one began after the time was up.</exception>
    public static DateOnly? LastDay(DateOnly made, int days, params IReadOnlyList<FrozenSpell> frozen)
    {
        ArgumentNullException.ThrowIfNull(frozen);
        if (days < 1)
        {
            throw new ArgumentOutOfRangeException(nameof(days), days, "At least the day of making is allowed.");
        }

        DateOnly last = made.AddDays(days - 1);
        DateOnly from = made;
        foreach (FrozenSpell spell in frozen)
        {
            if (spell.In < from || spell.Out < spell.In)
            {
                throw new ArgumentException("The days in the freezer are out of order.", nameof(frozen));
            }

            if (spell.In > last)
            {
                throw new ArgumentException("It was frozen after its time was up: freezing does not give back days.", nameof(frozen));
            }

            if (spell.Out is not { } thawed)
            {
                return null;
            }

            last = last.AddDays(WholeDays(spell.In, thawed));
            from = thawed;
        }

        return last;
    }

    /// <summary>Days left on a day, that day counted; zero when its time is up. While frozen, what is left on thawing.</summary>
    /// <param name="made">Day of making.</param>
    /// <param name="days">Days allowed.</param>
    /// <param name="today">The day asked about.</param>
    /// <param name="frozen">Spells in the freezer.</param>
    internal static int DaysLeft(DateOnly made, int days, DateOnly today, params IReadOnlyList<FrozenSpell> frozen)
    {
        FrozenSpell[] closed = [.. frozen.Select(spell => spell.Out is null ? spell with { Out = today > spell.In ? today : spell.In } : spell)];
        return Math.Max(0, LastDay(made, days, closed)!.Value.DayNumber - today.DayNumber + 1);
    }

    private static int WholeDays(DateOnly into, DateOnly outOf) => Math.Max(0, outOf.DayNumber - into.DayNumber - 1);
}
