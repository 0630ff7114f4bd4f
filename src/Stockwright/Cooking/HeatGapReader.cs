using System.Globalization;
using Stockwright.Cooling;
using Stockwright.Cooling.Growth;
using Stockwright.Cooling.Limits;
using Stockwright.Measures;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>What a stretch without heat did, and what it means (R.12). Never says that food is safe.</summary>
internal static class HeatGapReader
{
    /// <summary>Below the hot line for less than this: heat it at once and go on.</summary>
    public static readonly TimeSpan Short = TimeSpan.FromHours(2);

    /// <summary>Below it for this long, or longer: like a missed stage of cooling.</summary>
    public static readonly TimeSpan Long = TimeSpan.FromHours(4);

    /// <summary>Hot line where the limit counts from the start of chilling and so names none: the colder of the usual 57 to 63 °C would be less careful.</summary>
    private static readonly Temperature UsualHotLine = Temperature.FromDegreesCelsius(60);

    private const string Reheating = "Bringing food back to 74 °C (165 °F) within 2 h is the reheating rule of US FDA Food Code 3-403.11 (from memory; the figures stand in food handlers' manuals)";
    private const string FourHours = "4 h out of temperature control is the most US FDA Food Code 3-501.19 allows, for food then served or discarded (read as adopted by several states)";

    public static IReadOnlyList<HeatGap> Of(LogView view, HeatTimes times, CourseScript course, SimmerOutcome central)
    {
        Temperature line = HotLine(view.Batch.Limit);
        List<HeatGap> gaps = [];
        foreach (HeatAbsence absence in course.Absences.Where(absence => !absence.IsNightStop))
        {
            double from = times.Seconds(absence.From);
            int index = central.Gaps.FindIndex(gap => Math.Abs(gap.AwaySeconds - from) < 1);
            if (index >= 0)
            {
                gaps.Add(Write(view, absence, line, central, central.Gaps[index]));
            }
        }

        return gaps;
    }

    /// <summary>The temperature hot food is held at, by the limit: where its clock starts.</summary>
    public static Temperature HotLine(CoolingLimit limit) => limit.ClockStart == ClockStart.FallsThrough ? limit.Stages[0].From.Value : UsualHotLine;

    private static HeatGap Write(LogView view, HeatAbsence absence, Temperature line, SimmerOutcome central, SimmerOutcome.Gap gap)
    {
        List<SimmerOutcome.PointInTime> points = [.. central.Points.Where(point => point.Seconds >= gap.AwaySeconds - 1e-6 && point.Seconds <= gap.AgainSeconds + 1e-6)];
        double coldest = points.Count > 0 ? points.Min(point => point.Celsius) : line.DegreesCelsius;
        TimeSpan below = TimeSpan.FromSeconds(Below(points, line.DegreesCelsius));
        TimeSpan delay = TimeSpan.FromSeconds(gap.AgainSeconds - gap.AwaySeconds);
        (string meaning, string advice, string source, bool serious) = Say(view.Batch.Limit, line, coldest, below, delay, absence.IsOpen, points);
        return new HeatGap(
            absence.From, absence.IsOpen ? null : absence.Until, Temperature.FromDegreesCelsius(coldest), below, line, delay, meaning, advice, source, serious);
    }

    /// <summary>Seconds below a temperature, straight between points.</summary>
    internal static double Below(IReadOnlyList<SimmerOutcome.PointInTime> points, double celsius)
    {
        double sum = 0;
        for (int i = 1; i < points.Count; i++)
        {
            double seconds = points[i].Seconds - points[i - 1].Seconds;
            double low = Math.Min(points[i].Celsius, points[i - 1].Celsius);
            double high = Math.Max(points[i].Celsius, points[i - 1].Celsius);
            sum += high < celsius ? seconds : low >= celsius ? 0 : seconds * (celsius - low) / (high - low);
        }

        return sum;
    }

    private static (string Meaning, string Advice, string Source, bool IsSerious) Say(
        CoolingLimit limit, Temperature line, double coldest, TimeSpan below, TimeSpan delay, bool isOpen, List<SimmerOutcome.PointInTime> points)
    {
        string cold = KitchenFormat.Both(Temperature.FromDegreesCelsius(coldest));
        string hot = KitchenFormat.Both(line);
        string supposing = isOpen ? "It is still without heat; if the heat came back now, " : "";
        if (below <= TimeSpan.Zero)
        {
            return (
                Sentence($"{supposing}it stayed hot: it fell to about {cold} and never below {hot}."),
                $"Carry on. The rest moves by {KitchenFormat.Text(delay)}, so that it has its time at the simmer.",
                $"Hot line: {limit.Clause}. Calculated temperature, not a reading: a thermometer in the pot overrules it.",
                false);
        }

        string spent = Sentence($"{supposing}it fell to about {cold} and spent about {KitchenFormat.Text(below)} below {hot}, warming up again included.") + Growth(points);
        string reheat = limit.Correction.ReheatTo is { } to ? $" Full heat until all of it has passed {KitchenFormat.Both(to.Value)}, within 2 h." : "";
        if (below < Short)
        {
            return (spent, $"Bring it to a full simmer at once and carry on.{reheat} The rest moves by {KitchenFormat.Text(delay)}.", $"Common practice, no source. {Reheating}. Hot line: {limit.Clause}.", false);
        }

        if (below < Long)
        {
            return (
                spent,
                $"This is a border case: full heat at once, and ask your local authority before you keep it.{reheat} Reboiling does not undo toxin. If it cannot be hot again within 4 h in all, discard it.",
                $"{FourHours}. {Reheating}. Hot line: {limit.Clause}.",
                true);
        }

        return (
            spent,
            "Treat it like a missed stage of cooling: to discard it is the careful answer. Ask your local authority. Boiling it again kills growing cells, but neither spores nor the toxins of B. cereus and of staphylococci.",
            $"{FourHours}. {limit.Correction.Clause}. Toxins: general food microbiology, from memory.",
            true);
    }

    /// <summary>Growth while it was away, as an indicator, when it is worth a word.</summary>
    private static string Growth(List<SimmerOutcome.PointInTime> points)
    {
        List<CoolingPoint> curve = [];
        foreach (SimmerOutcome.PointInTime point in points)
        {
            TimeSpan at = TimeSpan.FromSeconds(point.Seconds);
            if (curve.Count == 0 || at > curve[^1].At)
            {
                curve.Add(new CoolingPoint(at, Temperature.FromDegreesCelsius(point.Celsius)));
            }
        }

        // No credit for the reheating itself: toxin and spores stay.
        double worst = curve.Count > 1 ? GrowthIndicator.Assess(new CoolingCurve(curve), GrowthModel.ClostridiumPerfringens).Worst : 0;
        return worst < 0.1 ? "" : string.Create(CultureInfo.InvariantCulture, $" Growth of C. perfringens on the way by the model, at worst: {worst:0.0} log (indicator only; a low figure does not make it safe).");
    }

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
