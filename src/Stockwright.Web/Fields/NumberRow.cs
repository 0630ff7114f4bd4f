using UnitsNet;

namespace Stockwright.Web.Fields;

/// <summary>The kinds of number a field can hold; the range comes from the record that keeps the number.</summary>
public static class NumberRow
{
    /// <summary>Tolerance of a number written into a link.</summary>
    public const double Exact = 1e-10;

    /// <summary>Tolerance of a number told to a reader.</summary>
    public const double Short = 1e-3;

    private const double Zero = 273.15;

    /// <summary>A number without a unit, or a quantity that is the same in both systems.</summary>
    public static NumberRow<double> Number(string name, string label, (double Least, double Most) range) => Plain(name, label, Measure.Number, range);

    /// <summary>A bare number in a measure of its own.</summary>
    public static NumberRow<double> Plain(string name, string label, Measure measure, (double Least, double Most) range) => new(name, label, measure, range, value => value, si => si);

    /// <summary>A share in per cent.</summary>
    public static NumberRow<Ratio> Percent(string name, string label, (Ratio Least, Ratio Most) range) =>
        new(name, label, Measure.Percent, range, share => share.DecimalFractions, si => Ratio.FromDecimalFractions(si));

    // Rounded, so that 100 degrees typed in either scale are 100.
    public static NumberRow<Temperature> Temperature(string name, string label, (Temperature Least, Temperature Most) range) =>
        new(name, label, Measure.Temperature, range, value => value.Kelvins, kelvins => UnitsNet.Temperature.FromDegreesCelsius(Math.Round(kelvins - Zero, 9)));

    /// <summary>A length of a pot, a piece, a vessel: centimetres or inches.</summary>
    public static NumberRow<Length> Length(string name, string label, (Length Least, Length Most) range) => Length(name, label, Measure.PotLength, range);

    public static NumberRow<Length> Length(string name, string label, Measure measure, (Length Least, Length Most) range) =>
        new(name, label, measure, range, value => value.Meters, si => UnitsNet.Length.FromMeters(si));

    public static NumberRow<Volume> Volume(string name, string label, Measure measure, (Volume Least, Volume Most) range) =>
        new(name, label, measure, range, value => value.CubicMeters, si => UnitsNet.Volume.FromCubicMeters(si));

    public static NumberRow<Mass> Mass(string name, string label, (Mass Least, Mass Most) range) => Mass(name, label, Measure.Mass, range);

    public static NumberRow<Mass> Mass(string name, string label, Measure measure, (Mass Least, Mass Most) range) =>
        new(name, label, measure, range, value => value.Kilograms, si => UnitsNet.Mass.FromKilograms(si));

    public static NumberRow<Pressure> Pressure(string name, string label, Measure measure, (Pressure Least, Pressure Most) range) =>
        new(name, label, measure, range, value => value.Pascals, si => UnitsNet.Pressure.FromPascals(si));

    /// <summary>A density in kilograms per litre.</summary>
    public static NumberRow<Density> Density(string name, string label, (Density Least, Density Most) range) =>
        new(name, label, Measure.KilogramsPerLitre, range, value => value.KilogramsPerCubicMeter, si => UnitsNet.Density.FromKilogramsPerCubicMeter(si));

    public static NumberRow<Power> Power(string name, string label, Measure measure, (Power Least, Power Most) range) =>
        new(name, label, measure, range, value => (double)value.Watts, watts => UnitsNet.Power.FromWatts(watts));

    /// <summary>A span of time in <see cref="Measure.Hours"/> or <see cref="Measure.Minutes"/>.</summary>
    public static NumberRow<TimeSpan> Span(string name, string label, Measure measure, (TimeSpan Least, TimeSpan Most) range) =>
        new(name, label, measure, range, value => value.TotalSeconds, TimeSpan.FromSeconds) { InputMode = measure == Measure.Minutes ? "numeric" : "decimal" };
}

/// <summary>A number within a range, typed in the reader's measures.</summary>
/// <typeparam name="T">Quantity it is kept as.</typeparam>
public sealed record NumberRow<T> : FieldRow<T>
    where T : struct
{
    private readonly Measure measure;
    private readonly Func<T, double> si;
    private readonly Func<double, T> from;

    internal NumberRow(string name, string label, Measure measure, (T Least, T Most) range, Func<T, double> si, Func<double, T> from)
        : base(name, label)
    {
        this.measure = measure;
        this.si = si;
        this.from = from;
        Range = range;
    }

    /// <summary>What may be typed; of the record that keeps the value.</summary>
    public (T Least, T Most) Range { get; init; }

    public override FieldKind Kind => FieldKind.Number;

    public override Measure Measured => measure;

    public override string Text(T value, UnitSystem units, double tolerance = NumberRow.Exact) => KitchenNumber.Write(measure.In(units).FromSi(si(value)), tolerance);

    public override bool IsSame(T one, T other) => IsClose(si(one), si(other));

    internal override T? Read(FieldReader reader, string? missing = null)
    {
        double least = si(Range.Least);
        double most = si(Range.Most);

        // An end of the range is kept as the record has it, not as the units' rounding left it.
        return reader.Number(Name, What, measure, least, most, missing ?? Missing) is not { } typed ? null
            : IsClose(typed, least) ? Range.Least
            : IsClose(typed, most) ? Range.Most
            : from(typed);
    }

    private static bool IsClose(double one, double other) => Math.Abs(one - other) <= 1e-9 * Math.Max(Math.Abs(one), Math.Abs(other));
}

/// <summary>A whole number within a range.</summary>
/// <param name="Name">As in links, forms and the interface.</param>
/// <param name="Label">As on the page.</param>
/// <param name="Range">What may be typed; of the record that keeps the value.</param>
public sealed record WholeRow(string Name, string Label, (int Least, int Most) Range) : FieldRow<int>(Name, Label)
{
    public override FieldKind Kind => FieldKind.Whole;

    public override string Text(int value, UnitSystem units, double tolerance = NumberRow.Exact) => KitchenNumber.Write(value);

    internal override int? Read(FieldReader reader, string? missing = null)
    {
        if (reader.Number(Name, What, Measure.Number, Range.Least, Range.Most, missing ?? Missing) is not { } typed)
        {
            return null;
        }

        if (typed != Math.Floor(typed))
        {
            reader.Report(Name, $"{What}: {reader.Form[Name].Trim()} is not a whole number.");
            return null;
        }

        return (int)typed;
    }
}
