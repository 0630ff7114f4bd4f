using System.Globalization;
using Stockwright.Cooling.Limits;
using Stockwright.Measures;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Verdicts as a cook reads them.</summary>
internal static class VerdictText
{
    /// <summary>One word or two.</summary>
    public static string Outcome(CoolingOutcome outcome) => outcome switch
    {
        CoolingOutcome.Meets => "meets",
        CoolingOutcome.MayFail => "may fail",
        CoolingOutcome.Fails => "fails",
        _ => "not decided",
    };

    /// <summary>The verdict in the fewest words: whether, at which stage, by how long.</summary>
    public static string Head(BandVerdict verdict)
    {
        switch (verdict.Outcome)
        {
            case CoolingOutcome.Meets:
                return $"Meets the limit{(Spare(verdict.Slow) is { } spare ? $", with {KitchenFormat.Text(spare)} to spare even at its slowest" : "")}";
            case CoolingOutcome.Fails when verdict.Central.StartsTooLate && verdict.Central.FailedStage is null:
                return "Fails the limit: chilling starts too late";
            case CoolingOutcome.Fails:
                return $"Fails the limit{(verdict.Central.FailedStage is { } failed ? $" at stage {Number(failed)}, by {Over(failed)}" : "")}";
            case CoolingOutcome.MayFail when verdict.Central.FailedStage is { } likely:
                return $"May fail the limit: likely over at stage {Number(likely)}, by {Over(likely)}";
            case CoolingOutcome.MayFail when verdict.Slow.FailedStage is { } slow:
                return $"May fail the limit: at its slowest it is over at stage {Number(slow)}, by {Over(slow)}";
            case CoolingOutcome.MayFail:
                return "May fail the limit";
            case CoolingOutcome.Unfinished when verdict.Central.ClockStartedAt is null:
                return "Far too slow to judge: in the time looked at it does not even cool to where the clock starts";
            default:
                return "Not decided: the time looked at ends before the limit's does";
        }
    }

    /// <summary>The same of readings.</summary>
    public static string Head(CoolingVerdict verdict) => verdict.Outcome switch
    {
        CoolingOutcome.Meets => $"As measured it meets the limit{(Spare(verdict) is { } spare ? $", with {KitchenFormat.Text(spare)} to spare" : "")}",
        CoolingOutcome.Fails when verdict.FailedStage is { } failed => $"As measured it missed stage {Number(failed)}, by {Over(failed)}",
        CoolingOutcome.Fails => "As measured, chilling started too late",
        _ when verdict.ClockStartedAt is null => "The clock has not started yet",
        _ => "As measured so far, nothing is missed yet",
    };

    /// <summary>Least time to spare among the stages.</summary>
    public static TimeSpan? Spare(CoolingVerdict verdict) =>
        verdict.Stages.Where(stage => stage.Outcome == CoolingOutcome.Meets).Min(stage => stage.TimeLeft);

    /// <summary>How long a stage took on one course, counted as the code counts it; null when it never ended.</summary>
    public static TimeSpan? Took(StageVerdict stage) => stage.ReachedAt is { } reached && stage.DueAt is { } due ? reached - (due - stage.Stage.Within) : null;

    public static string Number(StageVerdict stage) => stage.Number.ToString(CultureInfo.InvariantCulture);

    private static string Over(StageVerdict stage) => stage.OverBy is { } over
        ? $"{(stage.IsOverByAtLeast ? "at least " : "")}{KitchenFormat.Text(over)}"
        : "more than can be calculated";
}
