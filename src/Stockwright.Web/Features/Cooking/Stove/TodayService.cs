using Stockwright.Cooking;

namespace Stockwright.Web.Features.Cooking.Stove;

/// <summary>What one of the batches that are on needs of the cook now.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Matter">What.</param>
public sealed record TodayMatter(BatchView Batch, CourseMatter Matter);

/// <summary>A step of one of the batches that are on.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Step">The step.</param>
public sealed record TodayStep(BatchView Batch, CourseStep Step);

/// <summary>Everything that is on.</summary>
/// <param name="Open">Every open batch: what cools or stands on the heat first, forgotten ones last, those begun last first among them.</param>
/// <param name="Forgotten">How many of them nobody has touched for a week; their steps are not called due.</param>
/// <param name="Urgent">What stands above every step, the most urgent first: pots that run dry, cooling, solids that stand out, heat away.</param>
/// <param name="Due">What else is due, the most urgent first; of one kind, the longest overdue.</param>
/// <param name="Next">What comes, the soonest first.</param>
/// <param name="Now">The present.</param>
public sealed record TodayView(
    IReadOnlyList<BatchView> Open, int Forgotten, IReadOnlyList<TodayMatter> Urgent, IReadOnlyList<TodayMatter> Due, IReadOnlyList<TodayStep> Next, DateTimeOffset Now);

/// <summary>Looks over all open batches.</summary>
internal sealed class TodayService(BatchStore batches, BatchService desk, TimeProvider clock)
{
    /// <summary>Nobody entered anything for so long (common practice, no source): forgotten, not waiting for the cook.</summary>
    private static readonly TimeSpan Forgotten = TimeSpan.FromDays(7);

    private const int MostNext = 6;

    /// <summary>Looks over every open batch, however many there are: none that cools or stands on the heat may be missed.</summary>
    public async Task<TodayView> LookAsync(UnitSystem units, CancellationToken cancellationToken)
    {
        List<BatchView> open = [];
        foreach (BatchSummary summary in await batches.OpenAsync(cancellationToken))
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
        ILookup<bool, BatchView> forgotten = open.ToLookup(view => IsForgotten(view, now));
        return new TodayView(
            [.. forgotten[false].OrderByDescending(IsWatched), .. forgotten[true]],
            forgotten[true].Count(),
            [.. Matters(open).Where(one => one.Matter.IsUrgent)],
            [.. Matters(forgotten[false]).Where(one => !one.Matter.IsUrgent)],
            [.. Known(forgotten[false]).SelectMany(view => view.Course!.Steps.Where(step => step.Standing == StepStanding.Ahead).Select(step => new TodayStep(view, step))).OrderBy(one => one.Step.Step.At).Take(MostNext)],
            now);
    }

    private static IEnumerable<BatchView> Known(IEnumerable<BatchView> views) => views.Where(view => view.Course is not null);

    private static IEnumerable<TodayMatter> Matters(IEnumerable<BatchView> views) => Known(views)
        .SelectMany(view => view.Course!.Matters.Select(matter => new TodayMatter(view, matter)))
        .OrderBy(one => one.Matter.Kind)
        .ThenBy(one => one.Matter.At);

    /// <summary>True for a batch that cools or stands on the heat.</summary>
    private static bool IsWatched(BatchView view) =>
        view.Course?.Phase is BatchPhase.HeatingUp or BatchPhase.Simmering or BatchPhase.HeatAway or BatchPhase.Straining or BatchPhase.Cooling;

    private static bool IsForgotten(BatchView view, DateTimeOffset now) =>
        !IsWatched(view)
        && now - view.Stored.Summary.Begins > Forgotten
        && now - view.Stored.Summary.Started > Forgotten
        && view.Log.All.All(entry => now - entry.ReceivedAt > Forgotten);
}
