using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>
/// Works out how a batch stands from its plan and its log (R.1 to R.13 in docs/equations-cooking.md). Pure: the same plan, log and moment give the same answer.
/// </summary>
public static class BatchReplanner
{
    /// <summary>Works out a batch at a moment.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="log">What was entered.</param>
    /// <param name="now">The present; entries later than this are left out.</param>
    public static BatchCourse Replan(Batch batch, BatchLog log, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(log);
        LogView view = new(batch, log, now);
        HeatTimes times = HeatTimes.Of(view);
        CourseScript course = CourseScript.Of(view, times);
        ExpectedPlan expected = ExpectedPlan.Of(view, times, course);
        CoolingWatch? cooling = CoolingWatcher.Of(view, times);
        BatchPhase phase = Phase(view, times, course, expected, cooling);
        bool onTheHeat = phase is BatchPhase.HeatingUp or BatchPhase.Simmering;
        return new BatchCourse
        {
            Batch = batch,
            Log = log,
            Now = now,
            Phase = phase,
            Expected = expected.Plan,
            Steps = new CourseSteps(view, times, course, expected.Plan.Timeline, TimeSpan.FromSeconds(expected.Runs.Central.StagesEndSeconds), cooling?.Cold).List(),
            Pot = onTheHeat || phase is BatchPhase.HeatAway or BatchPhase.Straining ? expected.Now() : null,
            Risk = onTheHeat ? DryRiskFinder.Of(view, times, expected) : null,
            LossOverPlan = expected.LossOverPlan,
            PlannedPoints = Points(batch.Planned, batch.Planned.Timeline.HeatOn),
            ExpectedPoints = Points(expected.Plan, times.HeatOn),
            HeatGaps = HeatGapReader.Of(view, times, course, expected.Runs.Central),
            Cooling = cooling,
            HeatAwaySince = course.Absences.FirstOrDefault(absence => absence is { IsOpen: true, IsNightStop: false } && absence.From <= now)?.From,
            Notices = expected.Notices,
        };
    }

    private static BatchPhase Phase(LogView view, HeatTimes times, CourseScript course, ExpectedPlan expected, CoolingWatch? cooling)
    {
        if (view.Closing is not null)
        {
            return BatchPhase.Closed;
        }

        if (!times.IsOn)
        {
            return view.Entries.Count == 0 && view.Now < view.Plan.Timeline.Start ? BatchPhase.NotBegun : BatchPhase.Preparing;
        }

        if (times.HeatOff is not null)
        {
            return cooling is null ? BatchPhase.Straining : cooling.Cold is null ? BatchPhase.Cooling : BatchPhase.Finishing;
        }

        if (course.Absences.Any(absence => absence.From <= view.Now && (absence.IsOpen || view.Now < absence.Until)))
        {
            return BatchPhase.HeatAway;
        }

        return times.Seconds(view.Now) < expected.Runs.Central.HeatUpSeconds ? BatchPhase.HeatingUp : BatchPhase.Simmering;
    }

    private static List<CoursePoint> Points(BatchPlan plan, DateTimeOffset heatOn)
    {
        Length rim = plan.Request.Pot.InnerHeight;
        return [.. plan.Simmer.Samples.Select((SimmerSample sample) => new CoursePoint(heatOn + sample.At, sample.Temperature, rim - sample.Level))];
    }
}
