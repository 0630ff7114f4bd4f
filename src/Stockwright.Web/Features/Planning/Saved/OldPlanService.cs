using System.Text.Json;
using Microsoft.AspNetCore.WebUtilities;
using Stockwright.Planning;
using Stockwright.Storage;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning.Saved;

/// <summary>
/// Turns what earlier versions kept of a plan, the address of the planner's page and what it named, into a document, once. What cannot be turned
/// stays as it is: the log of such a batch can be read and taken away, such a plan can be planned again.
/// </summary>
internal sealed partial class OldPlanService(PlanStore plans, BatchStore batches, ILogger<OldPlanService> logger)
{
    /// <summary>Turns all there are.</summary>
    public async Task TurnAsync(CancellationToken cancellationToken = default)
    {
        foreach (OldPlan old in await plans.OldAsync(cancellationToken))
        {
            if (Turned(old) is { } kept)
            {
                await plans.TurnAsync(old.Id, kept, cancellationToken);
            }
        }

        foreach (OldPlan old in await batches.OldAsync(cancellationToken))
        {
            if (Turned(old) is { Plan: not null } kept)
            {
                await batches.TurnAsync(old.Id, kept, cancellationToken);
            }
        }
    }

    /// <summary>An old plan as a document, with the figures of this version: those it was planned with were not kept. Null where it cannot be read.</summary>
    internal StoredPlan? Turned(OldPlan old)
    {
        try
        {
            PlanSnapshot snapshot = PlanSnapshot.Parse(old.Snapshot);
            PlanningInputs inputs = new(snapshot.Recipes, snapshot.Larder, snapshot.Kitchen);
            PlanQueryResult asked = PlanQuery.Parse(TypedForm.From(QueryHelpers.ParseQuery(old.Query)), inputs, UnitSystem.Metric, old.Begins ?? DateTimeOffset.UnixEpoch);
            if (asked.Request is not { } request)
            {
                LogKept(old.Id, string.Join(' ', asked.Problems.Select(problem => problem.Message)));
                return null;
            }

            System.Text.Json.Nodes.JsonNode questions = PlanJson.Write(asked.Questions.ToKeep());
            if (old is not { Begins: { } begins, PlanText: { } text })
            {
                return StoredPlan.Of(request, snapshot.Kitchen.Name, questions);
            }

            PlanResult answer = BatchPlanner.Plan(request with { Schedule = request.Schedule with { StartAt = TimeZoneInfo.ConvertTime(begins, inputs.Zone), ReadyBy = null } });
            if (answer.Plan is not { } plan)
            {
                LogKept(old.Id, string.Join(' ', answer.Problems.Select(problem => problem.Code.ToString())));
                return null;
            }

            return StoredPlan.Of(AsGiven(old.Id, plan.ForOnePot(), text), snapshot.Kitchen.Name, questions);
        }
        catch (Exception trouble) when (trouble is StoredDocumentException or ArithmeticException or InvalidOperationException or ArgumentException or KeyNotFoundException)
        {
            LogKept(old.Id, trouble.Message);
            return null;
        }
    }

    private BatchPlan AsGiven(Guid id, BatchPlan plan, string text)
    {
        try
        {
            return OldPlanText.Over(plan, text);
        }
        catch (JsonException trouble)
        {
            LogWorkedOut(id, trouble.Message);
            return plan;
        }
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "The plan {Id} of an earlier version stays as it was kept: {Why}")]
    private partial void LogKept(Guid id, string why);

    [LoggerMessage(Level = LogLevel.Warning, Message = "What was given as the plan of batch {Id} cannot be read, so it is worked out anew: {Why}")]
    private partial void LogWorkedOut(Guid id, string why);
}
