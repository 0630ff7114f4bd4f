using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Measures;
using Stockwright.Web.Features.Cooling;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Cooking.Stove;

/// <summary>What a batch needs of the cook, in words: what is wrong, what to do, and what may hurt.</summary>
internal sealed class MatterText(BatchCourse course, KitchenClock clock)
{
    private const string Steam = "Steam scalds: lift the lid away from you, and keep face and arms back.";

    /// <summary>The matter as a headline.</summary>
    public string Title(CourseMatter matter) => matter.Kind switch
    {
        MatterKind.RunsDry => matter.At > course.Now ? "The pot is about to boil dry"
            : CourseMatters.IsDry(course) ? "The pot has probably boiled dry"
            : "The pot may have boiled dry",
        MatterKind.Uncovered => "The solids probably stand out of the liquid",
        MatterKind.HeatAway => "The heat is away",
        MatterKind.CoolingAlarm => Missed ? $"{StoveText.Of(course.Cooling!.Action!.Step)}: the cooling limit is missed"
            : course.Cooling!.Warning is not null ? "Cool it faster now"
            : "Measure the cooling stock now",
        MatterKind.Cooling => matter.Step?.Step.Title ?? (course.Cooling!.Measured is null ? "It is cooling: take a reading" : "It is cooling: keep measuring"),
        _ => matter.Step!.Step.Title,
    };

    /// <summary>What to do about it, a sentence or more each.</summary>
    public IEnumerable<string> Do(CourseMatter matter) => matter.Kind switch
    {
        MatterKind.RunsDry when matter.At > course.Now => ["Look now. If there is little left, turn the heat off; while liquid still covers the base, add hot water, a little at a time.", "Then read the level and enter it."],
        MatterKind.RunsDry => ["Turn the heat off now, and look. If it is dry, leave it to cool before you move it or put anything in.", "If it is not dry, read the level and enter it: what is said here follows it."],
        MatterKind.Uncovered when HeatOffDue is { } due => [$"The heat is due off since {clock.Near(due, course.Now)}: turn it off now, and look.", "Then read the level and enter it."],
        MatterKind.Uncovered => ["Look now, and read the level before you add anything.", matter.Cover is { } cover ? $"Up to {KitchenFormat.Text(cover, clock.Units)} of hot water covers them again." : "Hot water, a cup at a time, covers them again."],
        MatterKind.HeatAway => HeatAway(),
        MatterKind.CoolingAlarm or MatterKind.Cooling => Cooling(matter),
        _ => [],
    };

    /// <summary>What may hurt at it.</summary>
    public static IEnumerable<string> Cautions(CourseMatter matter) => matter.Kind switch
    {
        MatterKind.RunsDry => ["Never pour cold water into a dry, overheated pot: it flashes into steam, spits fat and can crack the pot. If fat smokes or burns, heat off, lid on, no water.", Steam],
        MatterKind.Uncovered => [Steam],
        _ => [],
    };

    private DateTimeOffset? HeatOffDue => course.Matters.FirstOrDefault(matter => matter.Kind == MatterKind.HeatOff)?.At;

    private bool Missed => course.Cooling?.Action?.Step is CorrectiveStep.Discard or CorrectiveStep.ReheatAndCoolAgain;

    private IEnumerable<string> HeatAway()
    {
        HeatGap? gap = course.HeatGaps.LastOrDefault(one => one.Until is null);
        return gap is null ? ["Bring it back to a full simmer, or cool it fast; enter which."] : [gap.Meaning, gap.Advice];
    }

    private IEnumerable<string> Cooling(CourseMatter matter)
    {
        CoolingWatch watch = course.Cooling!;
        if (watch.Warning is { } warning)
        {
            yield return warning;
        }

        if (watch.StoodTooLong is { } stood)
        {
            yield return stood;
        }

        if (watch.Measured?.Points is [.., var last])
        {
            yield return $"Last read {KitchenFormat.Text(last.Temperature, clock.Units)}, at {clock.Near(watch.Began + last.At, course.Now)}.";
        }

        if (Missed)
        {
            yield return watch.Action!.Text;
        }
        else if (matter.Step is { } step)
        {
            yield return step.Step.Detail;
        }

        if (watch.Cold is null)
        {
            yield return $"It counts as cold once a reading of {CoolingText.Degrees(course.Batch.Limit.Stages[^1].To, clock.Units)} or less is entered, taken where it cools slowest.";
        }
    }

    /// <summary>What the cooling must have reached next, and by when; null while no stage's clock runs.</summary>
    public string? Deadline(CourseMatter matter) => course.Cooling is { Running: { } stage, DueAt: { } due } && matter.Kind is MatterKind.Cooling or MatterKind.CoolingAlarm
        ? $"{CoolingText.Degrees(stage.Stage.To, clock.Units)} by {clock.Near(due, course.Now)}"
        : null;
}
