using System.Globalization;
using Stockwright.Cooking;
using Stockwright.Evidence;
using Stockwright.Logbook;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Web.Planner;
using UnitsNet;

namespace Stockwright.Web.Batches;

/// <summary>One line of plan against reality.</summary>
/// <param name="Name">What.</param>
/// <param name="Planned">As planned.</param>
/// <param name="Range">Its likely range; empty where there is none.</param>
/// <param name="Really">As it was; empty when nobody measured it.</param>
/// <param name="Difference">The one against the other.</param>
public sealed record ComparedRow(string Name, string Planned, string Range, string Really, string Difference);

/// <summary>Plan and reality of a batch side by side, from its course and its log.</summary>
internal sealed class PlanAgainstReality(BatchCourse course, StockOutlook? planned, KitchenClock clock)
{
    private readonly BatchPlan plan = course.Batch.Planned;
    private readonly BatchLog log = course.Log;

    private UnitSystem Units => clock.Units;

    public IEnumerable<ComparedRow> Rows()
    {
        yield return Amount("Stock kept", plan.Yield, Sum<LogFact.Portioned>(fact => fact.Volume.Liters));
        yield return Amount("Strained, with its fat", Strained(), Sum<LogFact.Strained>(fact => fact.Volume.Liters));
        yield return Amount("Gone as steam", plan.Simmer.Evaporated, log.Last<LogFact.LevelRead>() is null ? null : course.Expected.Simmer.Evaporated.Central.Liters, "by your readings");
        yield return Amount("Water added", plan.Simmer.ToppedUp, Sum<LogFact.WaterAdded>(fact => fact.Volume.Liters));
        if (planned is not null)
        {
            foreach (ComparedRow row in Stock(planned))
            {
                yield return row;
            }
        }

        foreach (ComparedRow row in Times())
        {
            yield return row;
        }

        LogFact.Closed? closed = log.Last<LogFact.Closed>()?.Fact as LogFact.Closed;
        yield return Time("Your own time", plan.Timeline.HandsOn, null, closed?.Attended);
        yield return new ComparedRow(
            "Energy",
            KitchenFormat.Text(plan.Simmer.HobEnergy.Central, Units),
            KitchenFormat.Band(plan.Simmer.HobEnergy, Units),
            closed?.Metered is { } metered ? KitchenFormat.Text(metered, Units) : "",
            closed?.Metered is { } read ? Percent(read.Joules, plan.Simmer.HobEnergy.Central.Joules) : "");
    }

    private IEnumerable<ComparedRow> Stock(StockOutlook outlook)
    {
        yield return new ComparedRow(
            "Body, cold",
            BodyClasses.Name(outlook.Likely.Class),
            BodyWords.Others(outlook.Sure),
            log.Last<LogFact.SetFelt>()?.Fact is LogFact.SetFelt felt ? BodyClasses.Name(felt.Body) : "",
            "");
        double? brix = (log.Last<LogFact.RefractometerRead>()?.Fact as LogFact.RefractometerRead)?.Brix;
        Band<double> reading = outlook.Sure.Brix;
        yield return new ComparedRow("Refractometer", Brix(reading.Central), $"{Brix(reading.Low)} to {Brix(reading.High)}", brix is { } read ? Brix(read) : "", brix is { } seen ? Percent(seen, reading.Central) : "");
        double? fat = Sum<LogFact.FatWeighed>(fact => fact.Fat.Kilograms);
        Band<Mass> recovered = outlook.Sure.FatRecovered;
        yield return new ComparedRow(
            "Fat taken off",
            KitchenFormat.Text(recovered.Central, Units),
            KitchenFormat.Band(recovered, Units),
            fat is { } kilograms ? KitchenFormat.Text(Mass.FromKilograms(kilograms), Units) : "",
            fat is { } weighed ? Percent(weighed, recovered.Central.Kilograms) : "");
    }

    private IEnumerable<ComparedRow> Times()
    {
        DateTimeOffset? heatOn = log.Done("heatup-1")?.HappenedAt;
        DateTimeOffset? simmers = log.Of<LogFact.Simmers>().Select(entry => (DateTimeOffset?)entry.Entry.HappenedAt).FirstOrDefault() ?? log.Done("simmer-1")?.HappenedAt;
        DateTimeOffset? heatOff = log.Done("stand-1")?.HappenedAt;
        yield return Time("Heating up", plan.HeatUp.Time.Central, plan.HeatUp.Time, simmers - heatOn);
        yield return Time("From the simmer to heat off", plan.Boiling.PlannedTime, null, heatOff - simmers);
        DateTimeOffset? ready = log.Last<LogFact.Portioned>()?.HappenedAt ?? log.Done("portion-1")?.HappenedAt;
        yield return new ComparedRow(
            "Ready",
            clock.Moment(plan.Timeline.Ready),
            "",
            ready is { } at ? clock.Moment(at) : "",
            ready is { } then ? StoveWords.Shift(then - plan.Timeline.Ready) : "");
    }

    /// <summary>What is strained is what is kept and what goes with the fat.</summary>
    private Band<Volume> Strained()
    {
        Volume defatting = plan.Ledger.Out.Where(entry => entry.Key is "defatting").Select(entry => entry.Volume.Central).Aggregate(Volume.Zero, (sum, volume) => sum + volume);
        return new(plan.Yield.Low + defatting, plan.Yield.Central + defatting, plan.Yield.High + defatting);
    }

    private ComparedRow Amount(string name, Band<Volume> band, double? litres, string note = "")
    {
        string difference = litres is { } measured ? Percent(measured, band.Central.Liters) : "";
        return new(
            name,
            KitchenFormat.Text(band.Central, Units),
            KitchenFormat.Band(band, Units),
            litres is { } volume ? KitchenFormat.Precise(Volume.FromLiters(volume), Units) : "",
            note.Length > 0 && difference.Length > 0 ? $"{difference}, {note}" : difference);
    }

    private static ComparedRow Time(string name, TimeSpan central, Band<TimeSpan>? band, TimeSpan? really) => new(
        name,
        KitchenFormat.Text(central),
        band is { } range ? KitchenFormat.Band(range) : "",
        really is { } took && took > TimeSpan.Zero ? KitchenFormat.Text(took) : "",
        really is { } time && time > TimeSpan.Zero ? Percent(time.TotalSeconds, central.TotalSeconds) : "");

    private double? Sum<T>(Func<T, double> value)
        where T : LogFact
    {
        List<double> all = [.. log.Of<T>().Select(entry => value(entry.Fact))];
        return all.Count > 0 ? all.Sum() : null;
    }

    private static string Percent(double really, double expected)
    {
        if (!(Math.Abs(expected) > 1e-12))
        {
            return "";
        }

        double percent = Math.Round(((really / expected) - 1) * 100);
        return percent == 0 ? "the same" : string.Create(CultureInfo.InvariantCulture, $"{(percent > 0 ? "+" : "−")}{Math.Abs(percent):0}\u00A0%");
    }

    private static string Brix(double value) => value.ToString("0.0", CultureInfo.InvariantCulture) + "\u00A0°Brix";
}
