namespace Stockwright.Web.Fields;

/// <summary>How one unit stands to SI: SI value = (typed + offset) x scale.</summary>
/// <param name="Label">As written beside the field.</param>
/// <param name="Scale">SI units in one of these.</param>
/// <param name="Offset">Added before scaling; for temperatures.</param>
public sealed record FieldUnit(string Label, double Scale, double Offset = 0)
{
    internal double ToSi(double typed) => (typed + Offset) * Scale;

    internal double FromSi(double si) => (si / Scale) - Offset;
}

/// <summary>What a field is typed in, by unit system (exact factors: NIST SP 811, appendix B).</summary>
/// <param name="Metric">Metric unit.</param>
/// <param name="Us">US unit.</param>
public sealed record Measure(FieldUnit Metric, FieldUnit Us)
{
    public static readonly Measure Number = Same("", 1);
    public static readonly Measure Percent = Same("%", 0.01);
    public static readonly Measure Kilowatts = Same("kW", 1000);
    public static readonly Measure Watts = Same("W", 1);
    public static readonly Measure Hours = Same("hours", 3600);
    public static readonly Measure Minutes = Same("minutes", 60);
    public static readonly Measure Grams = Same("g", 0.001);
    public static readonly Measure KilogramsPerLitre = Same("kg per L", 1000);
    public static readonly Measure Stock = new(new FieldUnit("L", 0.001), new FieldUnit("qt", 0.000946352946));
    public static readonly Measure Portion = new(new FieldUnit("mL", 1e-6), new FieldUnit("fl oz", 2.95735295625e-5));
    public static readonly Measure Mass = new(new FieldUnit("kg", 1), new FieldUnit("lb", 0.45359237));
    public static readonly Measure SmallMass = new(new FieldUnit("g", 0.001), new FieldUnit("oz", 0.028349523125));

    /// <summary>Price by weight; the money is the cook's own.</summary>
    public static readonly Measure Price = new(new FieldUnit("per kg", 1), new FieldUnit("per lb", 1 / 0.45359237));
    public static readonly Measure PotLength = new(new FieldUnit("cm", 0.01), new FieldUnit("in", 0.0254));
    public static readonly Measure Height = new(new FieldUnit("m", 1), new FieldUnit("ft", 0.3048));
    public static readonly Measure Temperature = new(new FieldUnit("°C", 1, 273.15), new FieldUnit("°F", 5.0 / 9, 459.67));
    public static readonly Measure Gauge = new(new FieldUnit("bar", 1e5), new FieldUnit("psi", 6894.757293168));
    public static readonly Measure AirPressure = new(new FieldUnit("hPa", 100), new FieldUnit("inHg", 3386.389));

    public FieldUnit In(UnitSystem units) => units == UnitSystem.UsCustomary ? Us : Metric;

    private static Measure Same(string label, double scale)
    {
        FieldUnit unit = new(label, scale);
        return new Measure(unit, unit);
    }
}
