using Stockwright.Planning;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using Stockwright.Web.Shell;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Planning;

/// <summary>Where links become plans: reads the form, asks the planner, and keeps the problems of both.</summary>
internal sealed class PlanService(IKitchenSource kitchens, PlanBatch planBatch, JudgeStock judgeStock, TimeProvider clock)
{
    /// <summary>Plans what a form asks for.</summary>
    /// <param name="typed">Everything that was sent.</param>
    /// <param name="units">Measures where the form does not say.</param>
    /// <param name="cancellationToken">Ends the loading of the kitchen, and what is worked out of the stock.</param>
    public async ValueTask<PlanView> PlanAsync(TypedForm typed, UnitSystem units, CancellationToken cancellationToken)
    {
        PlanningInputs book = await kitchens.LoadAsync(cancellationToken);
        return Plan(typed, units, book, isForNow: true, cancellationToken: cancellationToken);
    }

    /// <summary>Plans from a given kitchen, for instance the one a saved plan was worked out from.</summary>
    /// <param name="typed">Everything that was sent.</param>
    /// <param name="units">Measures where the form does not say.</param>
    /// <param name="book">Recipes, larder and kitchen.</param>
    /// <param name="startAt">When the cook begins, whatever the form says; null for what it says.</param>
    /// <param name="isForNow">True when it is planned to be cooked from now on, so that nothing begins in the past.</param>
    /// <param name="cancellationToken">Ends what is worked out of the stock; none for a plan that is kept.</param>
    public PlanView Plan(TypedForm typed, UnitSystem units, PlanningInputs book, DateTimeOffset? startAt = null, bool isForNow = false, CancellationToken cancellationToken = default)
    {
        DateTimeOffset now = clock.GetUtcNow();
        PlanQueryResult result = PlanQuery.Parse(typed, book, units, now);
        if (startAt is { } begins && result.Request is { } asked)
        {
            // A form has minutes only, and an hour that comes twice is its first; a batch begins at a moment.
            DateTimeOffset local = TimeZoneInfo.ConvertTime(begins, book.Zone);
            result = result with { Request = asked with { Schedule = asked.Schedule with { StartAt = local, ReadyBy = null } } };
        }

        else if (isForNow && result.Request is { } coming)
        {
            DateTimeOffset minute = now - TimeSpan.FromTicks(now.Ticks % TimeSpan.TicksPerMinute);
            result = result with { Request = coming with { Schedule = coming.Schedule with { Now = TimeZoneInfo.ConvertTime(minute, book.Zone) } } };
        }

        if (result.Request is null)
        {
            return new PlanView(result, null, result.Problems, book, now);
        }

        PlanResult answer = planBatch(result.Request);
        return new PlanView(result, answer.Plan, [.. answer.Problems.Select(problem => AtTheField(problem, result.Units))], book, now)
        {
            Judged = answer.Plan is { } plan ? new Lazy<StockOutlook?>(() => WorkStoppedException.Run(() => judgeStock(plan, result.Questions, result.Units, cancellationToken), cancellationToken)) : null,
        };
    }

    private static InputProblem AtTheField(Problem problem, UnitSystem units) =>
        new(PartFields.Of(problem.Part, problem.Row, units), TextTable.Of(problem, units));
}
