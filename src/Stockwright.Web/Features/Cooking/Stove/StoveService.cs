using Stockwright.Cooking;
using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking.Stove;

/// <summary>Puts together what the stove page shows of a batch.</summary>
internal sealed class StoveService(IKitchenSource kitchens, JudgeStock judgeStock, OutlookCache outlooks)
{
    private const int MostByHand = 60;

    /// <summary>A batch for the stove page; null when its plan cannot be worked out any more.</summary>
    /// <param name="view">The batch.</param>
    /// <param name="context">The request: who, what is being corrected or taken back.</param>
    /// <param name="units">Measures of the reader.</param>
    public async Task<StoveView?> ShowAsync(BatchView view, HttpContext context, UnitSystem units)
    {
        if (view is not { Course: { } course, Plan: { } plan })
        {
            return null;
        }

        IReadOnlyList<Hob> hobs = await HobsAsync(view, context.RequestAborted);
        return new StoveView(view, course, plan, units)
        {
            Who = CookName.Of(context.Request),
            Words = new FactText(view, units, hobs),
            Hobs = hobs,
            Heats =
            [
                .. hobs.Select(hob => new ChoiceOption(hob.Id, hob.Name)),
                new ChoiceOption(LogFact.HeatMoved.Oven, "The oven, or a slow appliance"),
                new ChoiceOption(LogFact.HeatMoved.NoHeat, "No heat"),
            ],
            Outlook = course.Phase is BatchPhase.Closed ? null
                : outlooks.Take(view.Id, Telling(view.Log), units, () => judgeStock(course.Expected, plan.Questions.ToKeep(), units, CancellationToken.None)),
            Correcting = Named(view, context.Request.Query["correct"]),
            TakingBack = Named(view, context.Request.Query["take-back"]),
            IsPuttingAside = context.Request.Query.ContainsKey("put-aside") && !view.Log.IsClosed,
        };
    }

    /// <summary>After a form was not taken: shown again, the entry it corrects with it.</summary>
    public static StoveView WithRefused(StoveView view, SentEntry refused)
    {
        LogEntry? old = Named(view.Batch, refused.Typed[EntryFields.Corrects]);
        bool isTakenBack = string.Equals(refused.Kind, "withdrawn", StringComparison.Ordinal);
        return view with { Refused = refused, Correcting = isTakenBack ? null : old, TakingBack = isTakenBack ? old : null, IsPuttingAside = old is null && refused.Kind is "never-cooked" };
    }

    /// <summary>Hobs the pot may stand on: the plan's, and those of the kitchen as it is now.</summary>
    public async Task<IReadOnlyList<Hob>> HobsAsync(BatchView view, CancellationToken cancellationToken)
    {
        PlanningInputs now = await kitchens.LoadAsync(cancellationToken);
        return [.. (view.Plan?.Kitchen.Hobs ?? []).Concat(now.Kitchen.Hobs).DistinctBy(hob => hob.Id, StringComparer.Ordinal)];
    }

    /// <summary>
    /// Entries that make a new prediction. What one more of a probe's readings changes is within the bound they are followed to (R.15), so from the point
    /// on where nobody enters them by hand any more, the prediction follows them every two minutes.
    /// </summary>
    internal static int Telling(BatchLog log)
    {
        int readings = log.All.Count(entry => entry is { Fact: LogFact.TemperatureRead, Corrects: null });
        return log.All.Count - (readings > MostByHand ? readings : 0);
    }

    private static LogEntry? Named(BatchView view, string? text) =>
        Guid.TryParse(text, out Guid id) && view.Log.Find(id) is { } entry && view.Log.SupersededBy(entry) is null ? entry : null;
}
