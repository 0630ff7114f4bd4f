using UnitsNet;

namespace Stockwright.Evidence;

/// <summary>What a figure of a sentence is, so that it can be written in the reader's measures.</summary>
public enum FigureKind
{
    /// <summary>A name or a word as it stands: an ingredient, a tray.</summary>
    Name,

    /// <summary>A plain number.</summary>
    Number,

    /// <summary>A length or level, m.</summary>
    Length,

    /// <summary>A volume, m³.</summary>
    Volume,

    /// <summary>A mass, kg.</summary>
    Mass,

    /// <summary>A temperature, °C.</summary>
    Temperature,

    /// <summary>A power, W.</summary>
    Power,

    /// <summary>A pressure of the air, Pa.</summary>
    Pressure,

    /// <summary>A pressure over that of the air, Pa.</summary>
    Gauge,

    /// <summary>A share, as a decimal fraction.</summary>
    Share,

    /// <summary>A length of time, s.</summary>
    Time,

    /// <summary>A difference of temperatures, K.</summary>
    Difference,

    /// <summary>A moment by the kitchen's clock, s since 1970-01-01 00:00 by that clock.</summary>
    Moment,

    /// <summary>A part of a sentence that is a text of its own, with figures of its own; nothing when it has no name.</summary>
    Phrase,

    /// <summary>Several phrases, one after the other.</summary>
    List,
}

/// <summary>A figure or a name that a sentence needs; the sentence itself is the page's. Plain, so that it can be stored.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Value">Its size in the unit of its kind; zero for a name.</param>
/// <param name="Word">The name, of a thing or of a phrase; empty for a figure.</param>
/// <param name="Parts">Figures of a phrase, phrases of a list; null for any other.</param>
public sealed record Figure(FigureKind Kind, double Value, string Word = "", IReadOnlyList<Figure>? Parts = null)
{
    /// <summary>A phrase that is left out.</summary>
    public static Figure Nothing { get; } = new(FigureKind.Phrase, 0);

    /// <summary>A part of a sentence.</summary>
    public static Figure Phrase(string name, params IReadOnlyList<Figure> figures) => new(FigureKind.Phrase, 0, name, figures);

    /// <summary>Several phrases.</summary>
    public static Figure List(IReadOnlyList<Figure> phrases) => new(FigureKind.List, 0, "", phrases);

    /// <summary>A moment, as the clock it carries shows it.</summary>
    public static Figure Of(DateTimeOffset moment) => new(FigureKind.Moment, (moment.DateTime - DateTime.UnixEpoch).TotalSeconds);

    /// <summary>A difference of temperatures.</summary>
    public static Figure Of(TemperatureDelta difference) => new(FigureKind.Difference, difference.Kelvins);

    /// <summary>A name as it stands.</summary>
    public static Figure Of(string name) => new(FigureKind.Name, 0, name);

    /// <summary>A plain number.</summary>
    public static Figure Of(double number) => new(FigureKind.Number, number);

    /// <summary>A length or level.</summary>
    public static Figure Of(Length length) => new(FigureKind.Length, length.Meters);

    /// <summary>A volume.</summary>
    public static Figure Of(Volume volume) => new(FigureKind.Volume, volume.CubicMeters);

    /// <summary>A mass.</summary>
    public static Figure Of(Mass mass) => new(FigureKind.Mass, mass.Kilograms);

    /// <summary>A temperature.</summary>
    public static Figure Of(Temperature temperature) => new(FigureKind.Temperature, temperature.DegreesCelsius);

    /// <summary>A power.</summary>
    public static Figure Of(Power power) => new(FigureKind.Power, (double)power.Watts);

    /// <summary>A pressure of the air.</summary>
    public static Figure Of(Pressure pressure) => new(FigureKind.Pressure, pressure.Pascals);

    /// <summary>A pressure over that of the air.</summary>
    public static Figure Gauge(Pressure pressure) => new(FigureKind.Gauge, pressure.Pascals);

    /// <summary>A share.</summary>
    public static Figure Of(Ratio share) => new(FigureKind.Share, share.DecimalFractions);

    /// <summary>A length of time.</summary>
    public static Figure Of(TimeSpan time) => new(FigureKind.Time, time.TotalSeconds);
}

/// <summary>The figures a code's sentence needs, in order.</summary>
/// <param name="kinds">What each is.</param>
[AttributeUsage(AttributeTargets.Field)]
public sealed class FiguresAttribute(params FigureKind[] kinds) : Attribute
{
    /// <summary>What each is.</summary>
    public IReadOnlyList<FigureKind> Kinds => kinds;
}
