using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Planning;

/// <summary>One plan as a page shows it: what was typed, what is wrong with it, and the answer if there is one.</summary>
/// <param name="Typed">What the codec made of the link.</param>
/// <param name="Plan">The answer, or null when something has to be put right.</param>
/// <param name="Problems">Problems of the codec or, when it found none, of the planner.</param>
/// <param name="Book">What the plan refers to.</param>
/// <param name="Now">The present.</param>
public sealed record PlanView(PlanQueryResult Typed, BatchPlan? Plan, IReadOnlyList<InputProblem> Problems, PlanningInputs Book, DateTimeOffset Now) : IFieldView
{
    private PlanRequest? blank;

    /// <summary>What the stock will be like; null when there is no plan. Worked out when first asked for: it takes far longer than the plan.</summary>
    public StockOutlook? Outlook => Judged?.Value;

    internal Lazy<StockOutlook?>? Judged { get; init; }

    /// <summary>What can be done about a wish that does not fit at once; none where it fits.</summary>
    public IReadOnlyList<WishWay> Ways => Plan is { } plan ? WishWays.Of(plan) : [];

    public PlanQuestions Questions => Typed.Questions;

    public UnitSystem Units => Typed.Units;

    public TypedForm Form => Typed.Form;

    public FormState State => new(
        Form,
        Problems,
        [
            .. (Plan?.Notices ?? []).Where(notice => notice.Part is not null).Select(notice => new InputProblem(PartFields.Of(notice.Part!, null, Units), TextTable.Of(notice, Units))),
            .. Outlook?.Remarks ?? [],
        ]);

    /// <summary>The recipe asked for, also while something else is still wrong; null when it is unknown.</summary>
    public StockRecipe? Recipe => Typed.Request?.Recipe
        ?? (!Form.Has(PlanFields.Recipe.Name) ? PlanQuery.DefaultRecipe(Book.Recipes)
            : Book.Recipes.TryFind(Form[PlanFields.Recipe.Name].Trim(), out StockRecipe? found) ? found : null);

    public KitchenSetup Kitchen => Book.Kitchen;

    /// <summary>The whole plan spelled out as a query string, the day it starts included; as typed when there is none.</summary>
    public string Query => Typed.Request is { } request ? PlanQuery.ToQuery(request, Kitchen, Units, Questions) : Form.ToQuery();

    /// <summary>Moment the fields of day and time show when nothing is typed in them.</summary>
    internal DateTime StandingMoment => Typed.Request?.Schedule is { } schedule && (schedule.StartAt ?? schedule.ReadyBy) is { } moment
        ? TimeZoneInfo.ConvertTime(moment, Book.Zone).DateTime
        : ScheduleReader.NextLocal(Book.Zone, Now, ScheduleReader.UsualStart);

    /// <summary>What counts when a field is left blank: as the recipe, the pot and the kitchen have it.</summary>
    public string? Usual(FieldBinding field) => field is FieldBinding<PlanRequest> asked && Blank is { } usual ? asked.Text(usual, Units, NumberRow.Short) : null;

    /// <summary>The plan that nothing is said of; with some pot and hob while those are not told.</summary>
    private PlanRequest? Blank => blank ??= (Recipe ?? PlanQuery.DefaultRecipe(Book.Recipes)) is { } recipe
        ? PlanQuery.Usual(recipe, Book.Larder, Kitchen, Typed.Request?.Pot ?? SomePot, Typed.Request?.Hob ?? SomeHob)
        : null;

    private static readonly Pot SomePot = Pot.Straight("", "", UnitsNet.Length.FromCentimeters(20), UnitsNet.Length.FromCentimeters(20));

    private static readonly Hob SomeHob = new() { Id = "", Name = "", Kind = HobKind.Gas, RatedPower = UnitsNet.Power.FromKilowatts(2) };

    /// <summary>Link to another plan.</summary>
    public string LinkTo(PlanRequest request) => LinkTo(request, Questions);

    /// <summary>Link to another plan with other questions.</summary>
    public string LinkTo(PlanRequest request, PlanQuestions questions) => $"{PlanLinks.Page}?{PlanQuery.ToQuery(request, Kitchen, Units, questions)}";

    /// <summary>The kitchen's clock, as this reader reads it.</summary>
    public KitchenClock Clocks => new(Book.Zone, Units);

    /// <summary>Time of day at the kitchen: <c>17:45</c>, or <c>5:45 pm</c> for readers of US measures.</summary>
    public string Clock(DateTimeOffset moment) => Clocks.Clock(moment);

    /// <summary>Time of day.</summary>
    public string Clock(TimeOnly time) => Clocks.Clock(time);

    /// <summary>Day at the kitchen: <c>Thu 26 Nov</c>.</summary>
    public string Day(DateTimeOffset moment) => Clocks.Day(moment);

    public string Day(DateOnly date) => Clocks.Day(date);

    /// <summary>Day and time at the kitchen.</summary>
    public string Moment(DateTimeOffset moment) => Clocks.Moment(moment);

    /// <summary>The step under way or the next one.</summary>
    public PlanStep? NextStep => Plan is null ? null : Plan.Timeline.Steps.FirstOrDefault(step => step.End > Now) ?? (Plan.Timeline.Steps is [.., var last] ? last : null);
}
