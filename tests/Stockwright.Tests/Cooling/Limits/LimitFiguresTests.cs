using System.Globalization;
using Stockwright.Cooling.Limits;
using Xunit;

namespace Stockwright.Tests.Cooling.Limits;

/// <summary>
/// Every figure of every cooling limit, written here from its source: standing and grade, stages in the units printed (hours from
/// the clock, or after the stage before with a plus), the wait before chilling, the total, where it is kept then, the reheating.
/// </summary>
/// <remarks>
/// FDA Food Code 3-501.14(A) (Delaware title 16). Standard 3.2.2 cl. 7(3) (Access Canberra). Canada: Eastern Ontario Health Unit and a
/// food handlers' course. UK cook-chill, Department of Health 1989 [from memory]. Arrêté of 21 December 2009 (hotel trade's journal,
/// 8 July 2022). CXC 39-1993 [from memory]. New Zealand: the plan's "Cooling freshly cooked food" (copy). FSIS Stabilization Guideline
/// December 2021, 86 FR 71007; numbers as in Appendix B 1999.
/// </remarks>
public sealed class LimitFiguresTests
{
    [Fact]
    public void Nine_limits_figure_by_figure() => Assert.Equal(
        [
            "us-food-code: model, read; 57 C/135 F to 21 C/70 F 2 h, 21 C/70 F to 5 C/41 F 6 h; 6 h; reheat 74 C/165 F 15 s in 2 h",
            "au-3-2-2: law, read; 60 C to 21 C 2 h, 21 C to 5 C +4 h; 6 h",
            "ca-food-code: guidance, read; 60 C/140 F to 20 C/68 F 2 h, 20 C/68 F to 4 C/40 F +4 h; 6 h",
            "uk-cook-chill: guidance, recalled; wait 30 min, 70 C to 3 C 1.5 h; 1.5 h",
            "fr-2009: law, read; 63 C to 10 C 2 h; 2 h; kept at 3 C",
            "codex-39: guidance, recalled; 60 C to 10 C 2 h; 2 h; kept at 4 C",
            "nz-template: guidance, read; 60 C to 21 C 2 h, 21 C to 5 C +4 h; 6 h",
            "fsis-1: yardstick, read; 130 F to 80 F 1.5 h, 80 F to 40 F +5 h; 6.5 h",
            "fsis-2: yardstick, read; wait 90 min, 120 F to 80 F 1 h, 80 F to 55 F +5 h; 6 h; kept at 4.4 C",
        ],
        StandardLimits.All.Select(Written),
        StringComparer.Ordinal);

    // What each says of itself: a model code, an exception, what it replaced, how its days count.
    [Theory]
    [InlineData("us-food-code", "law only in the states and counties that adopted it")]
    [InlineData("fr-2009", "Unless the operator's own hazard analysis")]
    [InlineData("codex-39", "the day of cooking and the day of eating counted")]
    [InlineData("uk-cook-chill", "the day of cooking and the day of eating counted")]
    [InlineData("uk-cook-chill", "cool within 90 minutes to 2 hours")]
    [InlineData("au-3-2-2", "only if the business shows that it is microbiologically safe")]
    [InlineData("fsis-1", "86 FR 71007")]
    [InlineData("fsis-2", "86 FR 71007")]
    public void What_a_limit_is_and_what_it_lets_pass(string id, string words) =>
        Assert.Contains(words, string.Join(' ', StandardLimits.Find(id)!.Notes), StringComparison.Ordinal);

    private static string Written(CoolingLimit limit)
    {
        string standing = limit.Standing switch
        {
            LimitStanding.Law => "law",
            LimitStanding.ModelCode => "model",
            LimitStanding.Guidance => "guidance",
            _ => "yardstick",
        };
        string wait = limit.ChillingStartsWithin is { } most ? Text($"wait {most.TotalMinutes} min, ") : "";
        string stages = string.Join(", ", limit.Stages.Select(stage =>
            Text($"{Degrees(stage.From)} to {Degrees(stage.To)} {(stage.Clock == StageClock.FromStage ? "+" : "")}{stage.Within.TotalHours} h")));
        string kept = limit.ThenStoreAt is { } store ? Text($"; kept at {store.DegreesCelsius:0.#} C") : "";
        CorrectionRule correction = limit.Correction;
        string reheat = correction.ReheatTo is { } hot ? Text($"; reheat {Degrees(hot)} {correction.Hold.TotalSeconds} s in {correction.ReheatWithin.TotalHours} h") : "";
        return Text($"{limit.Id}: {standing}, {(limit.NeedsChecking ? "recalled" : "read")}; {wait}{stages}; {limit.Total.TotalHours} h{kept}{reheat}");
    }

    private static string Degrees(PrintedTemperature printed) => string.Join('/', new[]
    {
        printed.Celsius is { } celsius ? Text($"{celsius} C") : "",
        printed.Fahrenheit is { } fahrenheit ? Text($"{fahrenheit} F") : "",
    }.Where(text => text.Length > 0));

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
