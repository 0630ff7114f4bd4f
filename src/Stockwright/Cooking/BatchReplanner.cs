using Stockwright.Evidence;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>Works out how a batch stands from its plan and its log. Pure: the same plan, log and moment give the same answer.</summary>
public static class BatchReplanner
{
    private static readonly TimeSpan Grace = TimeSpan.FromMinutes(10);

    /// <summary>Works out a batch at a moment.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="log">What was entered.</param>
    /// <param name="now">The present; entries later than this are left out.</param>
    public static BatchCourse Replan(Batch batch, BatchLog log, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(log);
        BatchPlan plan = batch.Planned;
        List<CourseStep> steps = [];
        foreach (PlanStep step in plan.Timeline.Steps)
        {
            LogEntry? entry = log.Done(step.Key);
            StepStanding standing = entry is not null ? StepStanding.Done
                : now < step.At ? StepStanding.Ahead
                : now <= step.At + Grace ? StepStanding.Due
                : StepStanding.Overdue;
            steps.Add(new CourseStep(step, step.At, standing, entry));
        }

        IReadOnlyList<CoursePoint> points = Points(plan, plan.Timeline.HeatOn);
        return new BatchCourse
        {
            Batch = batch,
            Log = log,
            Now = now,
            Phase = log.IsClosed ? BatchPhase.Closed : now < plan.Timeline.Start ? BatchPhase.NotBegun : BatchPhase.Preparing,
            Expected = plan,
            Steps = steps,
            LossOverPlan = new Band<double>(1, 1, 1),
            PlannedPoints = points,
            ExpectedPoints = points,
        };
    }

    private static List<CoursePoint> Points(BatchPlan plan, DateTimeOffset heatOn)
    {
        Length rim = plan.Request.Pot.InnerHeight;
        return [.. plan.Simmer.Samples.Select((SimmerSample sample) => new CoursePoint(heatOn + sample.At, sample.Temperature, rim - sample.Level))];
    }
}
