using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Storage;

namespace Stockwright.Web.Batches;

/// <summary>A step of one of the batches that are on.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Step">The step.</param>
public sealed record TodayStep(BatchView Batch, CourseStep Step);

/// <summary>A batch that is cooling.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Watch">Its cooling.</param>
/// <param name="DueAt">Next deadline of the limit; null when its clock has not started.</param>
/// <param name="Stage">Number of the stage it ends.</param>
public sealed record TodayCooling(BatchView Batch, CoolingWatch Watch, DateTimeOffset? DueAt, int? Stage);

/// <summary>Everything that is on.</summary>
/// <param name="Open">Open batches, those begun last first.</param>
/// <param name="Due">What is overdue or due, the longest overdue first.</param>
/// <param name="Next">What comes, the soonest first.</param>
/// <param name="Cooling">What is cooling, the nearest deadline first.</param>
/// <param name="Now">The present.</param>
public sealed record TodayView(
    IReadOnlyList<BatchView> Open, IReadOnlyList<TodayStep> Due, IReadOnlyList<TodayStep> Next, IReadOnlyList<TodayCooling> Cooling, DateTimeOffset Now);

/// <summary>Looks over all open batches.</summary>
internal sealed class TodayDesk(BatchStore batches, BatchDesk desk, TimeProvider clock)
{
    /// <summary>More than any kitchen has on at once; a book left with more open shows the latest begun.</summary>
    private const int MostOpen = 24;

    private const int MostNext = 6;

    public async Task<TodayView> LookAsync(UnitSystem units, CancellationToken cancellationToken)
    {
        List<BatchView> open = [];
        foreach (BatchSummary summary in await batches.ListAsync(open: true, MostOpen, cancellationToken))
        {
            if (await desk.OpenAsync(summary.Id, units, cancellationToken) is { } view)
            {
                open.Add(view);
            }
        }

        return Arrange(open, clock.GetUtcNow());
    }

    internal static TodayView Arrange(IReadOnlyList<BatchView> open, DateTimeOffset now)
    {
        List<TodayStep> steps = [.. open.Where(view => view.Course is not null).SelectMany(view => view.Course!.Steps.Select(step => new TodayStep(view, step)))];
        return new TodayView(
            open,
            [.. steps.Where(step => step.Step.Standing is StepStanding.Overdue or StepStanding.Due)
                .OrderByDescending(step => step.Step.Standing == StepStanding.Overdue).ThenBy(step => step.Step.Step.At)],
            [.. steps.Where(step => step.Step.Standing == StepStanding.Ahead).OrderBy(step => step.Step.Step.At).Take(MostNext)],
            [.. open.Where(view => view.Course?.Cooling is not null).Select(Cools).OrderBy(cooling => cooling.DueAt ?? DateTimeOffset.MaxValue)],
            now);
    }

    private static TodayCooling Cools(BatchView view)
    {
        CoolingWatch watch = view.Course!.Cooling!;
        StageVerdict? running = watch.Verdict?.Stages.FirstOrDefault(stage => stage.ReachedAt is null && stage.DueAt is not null);
        return new TodayCooling(view, watch, running?.DueAt is { } due ? watch.Began + due : null, running?.Number);
    }
}
