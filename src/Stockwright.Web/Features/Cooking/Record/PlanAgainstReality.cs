using System.Globalization;
using Stockwright.Cooking;
using Stockwright.Evidence;
using Stockwright.Measures;
using Stockwright.Predicting;
using Stockwright.Web.Features.Cooking.Stove;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Wording;
using UnitsNet;

namespace Stockwright.Web.Features.Cooking.Record;

/// <summary>A figure of the comparison in words.</summary>
/// <param name="Text">The figure; empty when there is none.</param>
/// <param name="Beside">Its likely range, or how far it lies from the plan; may be empty.</param>
public sealed record ComparedFigure(string Text, string Beside);

/// <summary>One line of plan against reality.</summary>
/// <param name="Name">What.</param>
/// <param name="Planned">As planned.</param>
/// <param name="ByTheLog">As worked out from the log.</param>
/// <param name="Measured">As measured, against the plan.</param>
public sealed record ComparedRow(string Name, ComparedFigure Planned, ComparedFigure ByTheLog, ComparedFigure Measured);

/// <summary>Plan and reality of a batch side by side, in words.</summary>
internal static class PlanAgainstReality
{
    /// <summary>The lines; none when the pot boiled dry, by the plan or by the log, so that there is no stock to compare.</summary>
    /// <param name="course">The batch.</param>
    /// <param name="questions">What was asked beside its plan.</param>
    /// <param name="clock">The kitchen's clock and the reader's measures.</param>
    public static IReadOnlyList<ComparedRow> Rows(BatchCourse course, PlanQuestions questions, KitchenClock clock)
    {
        if (!(course.Batch.Planned.Yield.Central > Volume.Zero && course.Expected.Yield.Central > Volume.Zero))
        {
            return [];
        }

        BatchOutcome outcome = BatchOutcome.Of(course, questions.ToKeep().Settings(course.Batch.Planned.Request));
        UnitSystem units = clock.Units;
        Func<Volume, string> volume = value => KitchenFormat.Precise(value, units);
        Func<Band<Volume>, string> volumes = band => KitchenFormat.Band(band, units);
        return
        [
            Row("Stock kept", outcome.Yield, volume, volumes, value => value.Liters),
            Row("Strained, with its fat", outcome.Strained, volume, volumes, value => value.Liters),
            Row("Spent solids, drained", outcome.Spent, value => KitchenFormat.Text(value, units), band => KitchenFormat.Band(band, units), value => value.Grams),
            Row("Gone as steam", outcome.Evaporated, volume, volumes, value => value.Liters),
            Row("Water added", outcome.WaterAdded, volume, volumes, value => value.Liters),
            Row("Gelatin, measured by refractometer", outcome.Gelatin, KitchenFormat.Text, KitchenFormat.Band, value => value.Percent, Refractometer(outcome)),
            Row("Body, cold", outcome.Body, BodyClasses.Name, band => band.Low == band.High ? "" : $"{BodyClasses.Name(band.Low)} to {BodyClasses.Name(band.High)}", null),
            Row("Fat taken off", outcome.Fat, value => KitchenFormat.Text(value, units), band => KitchenFormat.Band(band, units), value => value.Grams),
            Row("Heating up", outcome.HeatUp, KitchenFormat.Text, KitchenFormat.Band, value => value.TotalSeconds),
            Row("From the simmer to heat off", outcome.Simmer, KitchenFormat.Text, KitchenFormat.Band, value => value.TotalSeconds),
            Row("Ready", outcome.Ready, clock.Moment, _ => "", null, outcome.Ready.Measured is { } ready ? StoveText.Shift(ready - outcome.Ready.Planned.Central) : ""),
            Row("Your own time", outcome.Attended, KitchenFormat.Text, KitchenFormat.Band, value => value.TotalSeconds),
            Row("Energy", outcome.Energy, value => KitchenFormat.Text(value, units), band => KitchenFormat.Band(band, units), value => value.Joules),
        ];
    }

    private static ComparedRow Row<T>(string name, OutcomeFigure<T> figure, Func<T, string> text, Func<Band<T>, string> range, Func<T, double>? size, string beside = "")
        where T : struct
    {
        string difference = figure.Measured is { } measured && size is not null ? Percent(size(measured), size(figure.Planned.Central)) : "";
        return new(
            name,
            Figure(figure.Planned),
            Figure(figure.Expected),
            figure.Measured is { } really ? new ComparedFigure(text(really), string.Join("; ", new[] { difference, beside }.Where(words => words.Length > 0))) : new ComparedFigure("", ""));

        ComparedFigure Figure(Band<T> band)
        {
            string central = text(band.Central);
            string spread = range(band);

            // A band too narrow to show reads like its middle.
            return new(central, string.Equals(spread, central, StringComparison.Ordinal) || EqualityComparer<T>.Default.Equals(band.Low, band.High) ? "" : spread);
        }
    }

    private static string Refractometer(BatchOutcome outcome) =>
        outcome.GelatinByRefractometer is { } read ? $"likely {KitchenFormat.Band(new Band<Ratio>(read.Low, read.Value, read.High))}" : "";

    private static string Percent(double really, double expected)
    {
        if (!(Math.Abs(expected) > 1e-12))
        {
            return "";
        }

        double percent = Math.Round(((really / expected) - 1) * 100);
        return percent == 0 ? "as planned" : string.Create(CultureInfo.InvariantCulture, $"{(percent > 0 ? "+" : "−")}{Math.Abs(percent):0}\u00A0%");
    }
}
