using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Stockwright.Planning;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Features.Planning.Answer;
using Stockwright.Web.Fields;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Planning;

/// <summary>Parts of the page on a made-up plan, so that every branch is seen whatever the planner says today.</summary>
public class FakePlanTests
{
    [Fact]
    public async Task Steps_in_the_night_are_marked_and_choices_are_links()
    {
        string html = await RenderAsync<Day>();
        Assert.Contains("One step falls", html, StringComparison.Ordinal);
        Assert.Contains("Start three hours earlier</a>", html, StringComparison.Ordinal);
        Assert.Contains("date=2026-11-26&amp;time=05%3A00", html, StringComparison.Ordinal);
        Assert.Contains("in the night", html, StringComparison.Ordinal);
        Assert.Contains("Hot fat runs in the tray", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_ledger_shows_equal_totals()
    {
        string html = await RenderAsync<Ledger>(plan => plan with
        {
            Ledger = new WaterLedger(
                [new LedgerEntry("line", "Water to the line", Volume(5), ""), new LedgerEntry("top", "Top-ups", Volume(1), "")],
                [new LedgerEntry("steam", "Gone as steam", Volume(2), ""), new LedgerEntry("yield", "Stock", Volume(4), "")]),
        });
        Assert.Contains("In, all told</th><td class=\"number\">6\u00A0L</td>", html.Replace("&#xA0;", "\u00A0", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("Out, all told</th><td class=\"number\">6\u00A0L</td>", html.Replace("&#xA0;", "\u00A0", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_batch_that_does_not_fit_says_how_many_rounds_and_where_it_would()
    {
        string html = await RenderAsync<FirstAnswer>(plan => plan with { Fit = plan.Fit with { Verdict = FitVerdict.NeedsRounds, Potfuls = 3 } });
        Assert.Contains("3 potfuls: 3 rounds, one after the other", html, StringComparison.Ordinal);
        Assert.Contains("24 L pot", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_hob_too_weak_is_told()
    {
        string html = await RenderAsync<Heat>(plan => plan with { HeatUp = plan.HeatUp with { IsReached = false } });
        Assert.Contains("cannot bring this pot to the simmer", html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_step_in_a_row_is_said_once()
    {
        BatchPlan plan = FakePlan.For(Request());
        PlanStep skim = plan.Timeline.Steps.Single(step => step.Kind == StepKind.Skim);
        StepGroup group = Assert.Single(StepGroup.Of([skim, skim with { At = skim.At.AddMinutes(15) }, skim with { At = skim.At.AddMinutes(30) }]));
        Assert.Equal(2, group.Again.Count);
        Assert.Equal(plan.Timeline.Steps.Count, StepGroup.Of(plan.Timeline.Steps).Sum(each => 1 + each.Again.Count));
    }

    private static Evidence.Band<UnitsNet.Volume> Volume(double litres) =>
        new(UnitsNet.Volume.FromLiters(litres), UnitsNet.Volume.FromLiters(litres), UnitsNet.Volume.FromLiters(litres));

    private static PlanRequest Request() => PlanQuery.Parse(TypedForm.Empty, TestBook.London, UnitSystem.Metric, TestBook.Now).Request!;

    private static async Task<string> RenderAsync<TComponent>(Func<BatchPlan, BatchPlan>? change = null)
        where TComponent : IComponent
    {
        PlanQueryResult result = PlanQuery.Parse(TypedForm.Empty, TestBook.London, UnitSystem.Metric, TestBook.Now);
        BatchPlan made = FakePlan.For(result.Request!);
        BatchPlan plan = change is null ? made : change(made);
        PlanView view = new(result, plan, [], TestBook.London, TestBook.Now);
        await using ServiceProvider services = new ServiceCollection().BuildServiceProvider();
        await using HtmlRenderer renderer = new(services, NullLoggerFactory.Instance);
        return await renderer.Dispatcher.InvokeAsync(async () =>
            (await renderer.RenderComponentAsync<TComponent>(ParameterView.FromDictionary(new Dictionary<string, object?>(StringComparer.Ordinal)
            {
                ["View"] = view,
                ["Plan"] = plan,
            }))).ToHtmlString());
    }
}
