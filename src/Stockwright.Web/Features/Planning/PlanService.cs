using Microsoft.AspNetCore.WebUtilities;
using Stockwright.Planning;
using Stockwright.Recipes;
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
    public PlanView Plan(TypedForm typed, UnitSystem units, PlanningInputs book, DateTimeOffset? startAt = null, bool isForNow = false, CancellationToken cancellationToken = default) =>
        Plan(PlanQuery.Parse(typed, book, units, clock.GetUtcNow()), book, startAt, isForNow, cancellationToken);

    /// <summary>Plans what was read before.</summary>
    /// <param name="result">What the codec made of a form, or of a plan that was kept.</param>
    /// <param name="book">Recipes, larder and kitchen.</param>
    /// <param name="startAt">When the cook begins, whatever was asked; null for what was asked.</param>
    /// <param name="isForNow">True when it is planned to be cooked from now on, so that nothing begins in the past.</param>
    /// <param name="cancellationToken">Ends what is worked out of the stock; none for a plan that is kept.</param>
    public PlanView Plan(PlanQueryResult result, PlanningInputs book, DateTimeOffset? startAt = null, bool isForNow = false, CancellationToken cancellationToken = default)
    {
        DateTimeOffset now = clock.GetUtcNow();
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

        return result.Request is { } request
            ? View(result, planBatch(request), book, now, cancellationToken)
            : new PlanView(result, null, result.Problems, book, now);
    }

    /// <summary>Opens a plan that was kept: as it was planned then, or planned now from what was asked then where no plan is kept with it.</summary>
    /// <param name="kept">The plan.</param>
    /// <param name="units">Measures of the reader.</param>
    /// <param name="cancellationToken">Ends what is worked out of the stock.</param>
    public PlanView Open(StoredPlan kept, UnitSystem units, CancellationToken cancellationToken = default)
    {
        PlanningInputs inputs = InputsOf(kept);
        return kept.Plan is { } plan
            ? View(Read(kept, units), new PlanResult(plan, []), inputs, clock.GetUtcNow(), cancellationToken)
            : Plan(Read(kept, units), inputs, cancellationToken: cancellationToken);
    }

    /// <summary>What a plan that was kept may refer to: its own recipe, larder and kitchen.</summary>
    public static PlanningInputs InputsOf(StoredPlan kept) => new(new RecipeBook([kept.Request.Recipe]), kept.Request.Larder, kept.Kitchen);

    /// <summary>What was asked of a plan that was kept, as if it had just been read from a form.</summary>
    public static PlanQueryResult Read(StoredPlan kept, UnitSystem units)
    {
        PlanQuestions questions = kept.Questions is { } asked ? PlanJson.Read<PlanQuestions>(asked) : PlanQuestions.None;
        TypedForm form = TypedForm.From(QueryHelpers.ParseQuery(PlanQuery.ToQuery(kept.Request, kept.Kitchen, units, questions)));
        return new PlanQueryResult(kept.Request, questions, [], [], form, units);
    }

    private PlanView View(PlanQueryResult result, PlanResult answer, PlanningInputs book, DateTimeOffset now, CancellationToken cancellationToken) =>
        new(result, answer.Plan, [.. answer.Problems.Select(problem => AtTheField(problem, result.Units))], book, now)
        {
            Judged = answer.Plan is { } plan ? new Lazy<StockOutlook?>(() => WorkStoppedException.Run(() => judgeStock(plan, result.Questions, result.Units, cancellationToken), cancellationToken)) : null,
        };

    private static InputProblem AtTheField(Problem problem, UnitSystem units) =>
        new(PartFields.Of(problem.Part, problem.Row, units), TextTable.Of(problem, units));
}
