using Stockwright.Cooking;
using Stockwright.Storage;

namespace Stockwright.Web.Batches;

/// <summary>What one of the batches that are on needs of the cook now.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Matter">What.</param>
public sealed record TodayMatter(BatchView Batch, CourseMatter Matter);

/// <summary>A step of one of the batches that are on.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Step">The step.</param>
public sealed record TodayStep(BatchView Batch, CourseStep Step);

/// <summary>Everything that is on.</summary>
/// <param name="Open">Open batches, those begun last first.</param>
/// <param name="Urgent">What stands above every step, the most urgent first: pots that run dry, cooling, solids that stand out, heat away.</param>
/// <param name="Due">What else is due, the most urgent first; of one kind, the longest overdue.</param>
/// <param name="Next">What comes, the soonest first.</param>
/// <param name="Now">The present.</param>
public sealed record TodayView(
    IReadOnlyList<BatchView> Open, IReadOnlyList<TodayMatter> Urgent, IReadOnlyList<TodayMatter> Due, IReadOnlyList<TodayStep> Next, DateTimeOffset Now);

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
        List<BatchView> known = [.. open.Where(view => view.Course is not null)];
        List<TodayMatter> matters = [.. known.SelectMany(view => view.Course!.Matters.Select(matter => new TodayMatter(view, matter))).OrderBy(one => one.Matter.Kind).ThenBy(one => one.Matter.At)];
        return new TodayView(
            open,
            [.. matters.Where(one => one.Matter.IsUrgent)],
            [.. matters.Where(one => !one.Matter.IsUrgent)],
            [.. known.SelectMany(view => view.Course!.Steps.Where(step => step.Standing == StepStanding.Ahead).Select(step => new TodayStep(view, step))).OrderBy(one => one.Step.Step.At).Take(MostNext)],
            now);
    }
}
