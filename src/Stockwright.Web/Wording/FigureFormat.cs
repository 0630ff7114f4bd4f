using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Measures;
using UnitsNet;

namespace Stockwright.Web.Wording;

/// <summary>Writes the figures of a text in the reader's measures.</summary>
/// <param name="units">Measures of the reader.</param>
internal sealed class FigureFormat(UnitSystem units) : IFormatProvider, ICustomFormatter
{
    public object? GetFormat(Type? formatType) => formatType == typeof(ICustomFormatter) ? this : null;

    public string Format(string? format, object? arg, IFormatProvider? formatProvider) => arg switch
    {
        Figure { Kind: FigureKind.Number } number when format is not null => number.Value.ToString(format, CultureInfo.InvariantCulture),
        Figure { Kind: FigureKind.Temperature } figure when format is "precise" => KitchenFormat.Precise(Temperature.FromDegreesCelsius(figure.Value), units),
        Figure { Kind: FigureKind.Moment } figure when format is "clock" => Clock(figure),
        Figure figure => Text(figure),
        _ => throw new ArgumentException("A text holds figures only.", nameof(arg)),
    };

    private static DateTime Moment(Figure figure) => DateTime.UnixEpoch.AddSeconds(figure.Value);

    private string Clock(Figure figure) => KitchenClock.TimeOfDay(TimeOnly.FromDateTime(Moment(figure)), units);

    private string Text(Figure figure) => figure.Kind switch
    {
        FigureKind.Name => figure.Word,
        FigureKind.Number => KitchenFormat.Invariant(figure.Value),
        FigureKind.Length => KitchenFormat.Text(Length.FromMeters(figure.Value), units),
        FigureKind.Volume => KitchenFormat.Text(Volume.FromCubicMeters(figure.Value), units),
        FigureKind.Mass => KitchenFormat.Text(Mass.FromKilograms(figure.Value), units),
        FigureKind.Temperature => KitchenFormat.Text(Temperature.FromDegreesCelsius(figure.Value), units),
        FigureKind.Power => KitchenFormat.Text(Power.FromWatts(figure.Value), units),
        FigureKind.Pressure => KitchenFormat.Text(Pressure.FromPascals(figure.Value), units),
        FigureKind.Gauge => KitchenFormat.Gauge(Pressure.FromPascals(figure.Value), units),
        FigureKind.Share => KitchenFormat.Text(Ratio.FromDecimalFractions(figure.Value)),
        FigureKind.Time => KitchenFormat.Text(TimeSpan.FromSeconds(figure.Value)),
        FigureKind.Difference => KitchenFormat.Text(TemperatureDelta.FromKelvins(figure.Value), units),
        FigureKind.Moment => $"{Moment(figure).ToString(units == UnitSystem.UsCustomary ? "dddd, MMMM d" : "dddd d MMMM", CultureInfo.InvariantCulture)} at {Clock(figure)}",
        FigureKind.Phrase => figure.Word.Length == 0 ? "" : TextTable.Text($"Phrase.{figure.Word}", figure.Parts ?? [], units),
        FigureKind.List => string.Join("; ", (figure.Parts ?? []).Select(Text)),
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure.Kind, "Unknown kind of figure."),
    };
}
