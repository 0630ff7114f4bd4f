namespace Stockwright.Planning;

/// <summary>Finds the stretches of the simmer the cook sleeps through.</summary>
internal static class NightWindows
{
    /// <summary>The pot is put away this long before bed, so that nothing is left for the night.</summary>
    private static readonly TimeSpan BeforeBed = TimeSpan.FromMinutes(15);

    /// <summary>More stops than this are not a plan.</summary>
    private const int MostStops = 14;

    /// <summary>With no more than this to go a batch is finished rather than put away.</summary>
    private static readonly TimeSpan WorthFinishing = TimeSpan.FromHours(1);

    /// <summary>A pot that takes longer than this to come back is not stopped: it would spend its days warming up.</summary>
    private static readonly TimeSpan LongestReheat = TimeSpan.FromHours(3);

    /// <summary>Cooling a pot and heating it again is not worth it for less.</summary>
    private static readonly TimeSpan ShortestStop = TimeSpan.FromHours(2);

    /// <summary>Windows on the simmer's clock.</summary>
    /// <param name="schedule">When the cook sleeps, and what is done then.</param>
    /// <param name="simmerStart">Moment the main simmer begins.</param>
    /// <param name="simmer">Its length.</param>
    /// <param name="reheat">Time to bring a cold pot back.</param>
    public static IReadOnlyList<NightWindow> Find(PlanSchedule schedule, DateTimeOffset simmerStart, TimeSpan simmer, TimeSpan reheat)
    {
        List<NightWindow> windows = [];
        if (schedule.Night is NightPlan.GetUp or NightPlan.KeepFree)
        {
            return windows;
        }

        DateTimeOffset wall = simmerStart;
        TimeSpan clock = TimeSpan.Zero;
        while (clock < simmer)
        {
            DateTimeOffset bed = wall;
            if (schedule.IsAwake(wall))
            {
                DateTimeOffset handsFree = Next(schedule, wall, schedule.SleepsAt) - BeforeBed;
                bed = handsFree > wall ? handsFree : wall;
            }

            clock += bed - wall;
            if (clock >= simmer - WorthFinishing)
            {
                // It is finished rather than put away for so little.
                break;
            }

            DateTimeOffset wake = Next(schedule, bed, schedule.WakesAt);
            bool stops = schedule.Night == NightPlan.StopAndCool && wake - bed > ShortestStop && reheat <= LongestReheat;
            if (stops && windows.Count > 0 && (bed == wall || windows.Count >= MostStops))
            {
                // Bringing it back up takes all day on this hob: stopping again would never end.
                break;
            }

            if (stops || schedule.Night == NightPlan.OvenHold)
            {
                windows.Add(new NightWindow(clock.TotalSeconds, (wake - bed).TotalSeconds, schedule.Night));
            }

            clock += stops ? TimeSpan.Zero : wake - bed;
            wall = wake + (stops ? reheat : TimeSpan.Zero);
        }

        return windows;
    }

    /// <summary>The next moment the kitchen's clock shows a time, strictly after a moment.</summary>
    public static DateTimeOffset Next(PlanSchedule schedule, DateTimeOffset after, TimeOnly time)
    {
        DateTimeOffset local = TimeZoneInfo.ConvertTime(after, schedule.Zone);
        for (int day = 0; day <= 2; day++)
        {
            DateTime wanted = local.Date.AddDays(day) + time.ToTimeSpan();
            if (schedule.Zone.IsInvalidTime(wanted))
            {
                // The hour the clock jumps over in spring: take the moment after it.
                wanted = wanted.AddHours(1);
            }

            DateTimeOffset moment = new(wanted, schedule.Zone.GetUtcOffset(wanted));
            if (moment > after)
            {
                return moment;
            }
        }

        return after + TimeSpan.FromDays(1);
    }
}
