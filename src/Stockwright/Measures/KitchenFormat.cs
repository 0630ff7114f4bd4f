using System.Globalization;
using UnitsNet;

namespace Stockwright.Measures;

/// <summary>
/// Writes quantities the way a cook reads them: one unit, no false precision, invariant decimal point,
/// a non-breaking space before the unit. Masses and volumes are rounded by <see cref="KitchenRounding"/>.
/// <c>Text</c> is for reading, <c>Precise</c> for tables that must add up, <c>Band</c> for a prediction with its spread,
/// <c>Both</c> for a sheet handed on.
/// </summary>
public static partial class KitchenFormat
{
    private const char Gap = '\u00A0';
    private const double Tiny = 1e-9;

    /// <summary>A number for SVG and HTML attributes: invariant, at most three decimals, never in exponent form.</summary>
    /// <param name="value">A finite number.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static string Invariant(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A drawing needs a finite number.");
        }

        string text = value.ToString("0.###", CultureInfo.InvariantCulture);
        return string.Equals(text, "-0", StringComparison.Ordinal) ? "0" : text;
    }

    /// <summary>A mass: "850 g", "1.25 kg", "6¼ oz", "1 lb 9 oz".</summary>
    public static string Text(Mass mass, UnitSystem system)
    {
        if (system == UnitSystem.UsCustomary)
        {
            return Ounces(KitchenRounding.RoundOunces(mass.Grams / ExactFactors.OunceGrams));
        }

        double grams = KitchenRounding.RoundMetric(mass.Grams);
        return Math.Abs(grams) < 1000 ? Unit(grams, "g") : Unit(grams / 1000, "kg");
    }

    /// <summary>A volume: "850 mL", "5.2 L", "2 tbsp", "1¼ cups", "5½ qt".</summary>
    public static string Text(Volume volume, UnitSystem system)
    {
        if (system == UnitSystem.UsCustomary)
        {
            return Teaspoons(KitchenRounding.RoundTeaspoons(volume.Milliliters / ExactFactors.TeaspoonMillilitres));
        }

        double millilitres = KitchenRounding.RoundMetric(volume.Milliliters);
        return millilitres == 0 ? Unit(0, "L") : Math.Abs(millilitres) < 1000 ? Unit(millilitres, "mL") : Unit(millilitres / 1000, "L");
    }

    /// <summary>A length as a ruler reads it: "62 mm", "13.3 cm", "24 cm", "2⅜ in", "9½ in"; altitudes in m and ft.</summary>
    public static string Text(Length length, UnitSystem system)
    {
        if (system == UnitSystem.UsCustomary)
        {
            double inches = length.Millimeters / ExactFactors.InchMillimetres;
            return Math.Abs(inches) >= 120
                ? Unit(Math.Round(length.Meters / ExactFactors.FootMetres), "ft")
                : Unit(Fraction(inches, Math.Abs(inches) < 1 ? 16 : Math.Abs(inches) < 10 ? 8 : 4), "in");
        }

        double millimetres = Math.Round(length.Millimeters, MidpointRounding.AwayFromZero);
        return Math.Abs(millimetres) switch
        {
            < 100 => Unit(millimetres, "mm"),
            < 1000 => Unit(millimetres / 10, "cm"),
            < 10_000 => Unit(Math.Round(millimetres / 1000, 2), "m"),
            _ => Unit(Math.Round(length.Meters), "m"),
        };
    }

    /// <summary>A temperature to the whole degree: "93 °C", "199 °F".</summary>
    public static string Text(Temperature temperature, UnitSystem system) => system == UnitSystem.UsCustomary
        ? Unit(Math.Round(FahrenheitOf(temperature), MidpointRounding.AwayFromZero), "°F")
        : Unit(Math.Round(temperature.DegreesCelsius, MidpointRounding.AwayFromZero), "°C");

    /// <summary>A difference of temperature: "12 °C", "22 °F".</summary>
    public static string Text(TemperatureDelta difference, UnitSystem system) => system == UnitSystem.UsCustomary
        ? Unit(Significant(difference.Kelvins * 1.8, 2), "°F")
        : Unit(Significant(difference.Kelvins, 2), "°C");

    /// <summary>A length of time: "40 s", "45 min", "1 h 20 min", "8 h", "3 days 4 h".</summary>
    public static string Text(TimeSpan time)
    {
        if (time < TimeSpan.Zero)
        {
            return "−" + Text(-time);
        }

        if (time.TotalSeconds is > 0 and < 59.5)
        {
            return Unit(Math.Max(1, Math.Round(time.TotalSeconds)), "s");
        }

        // Minutes count up to half a day; beyond it five of them make no difference.
        double minutes = time.TotalHours < 12 ? Math.Round(time.TotalMinutes) : ToFive(time.TotalMinutes);
        int hours = (int)(minutes / 60);
        int rest = (int)(minutes - (60.0 * hours));
        if (hours == 0)
        {
            return Unit(rest, "min");
        }

        if (hours >= 72)
        {
            int wholeHours = (int)Math.Round(time.TotalHours);
            string days = Unit(wholeHours / 24, "days");
            return wholeHours % 24 == 0 ? days : days + Gap + Unit(wholeHours % 24, "h");
        }

        return rest == 0 ? Unit(hours, "h") : Unit(hours, "h") + Gap + Unit(rest, "min");

        static double ToFive(double value) => Math.Round(value / 5) * 5;
    }

    /// <summary>A power: "850 W", "1.8 kW"; in US measures with the gas trade's "BTU/h" beside.</summary>
    public static string Text(Power power, UnitSystem system)
    {
        double watts = (double)power.Watts;
        string text = Math.Abs(watts) < 999.5 ? Unit(Significant(watts, 2), "W") : Unit(Significant(watts / 1000, 2), "kW");
        return system == UnitSystem.UsCustomary
            ? $"{text} ({Unit(Significant(watts * 3600 / ExactFactors.BritishThermalUnitJoules, 2), "BTU/h")})"
            : text;
    }

    /// <summary>An energy: "90 Wh", "3.2 kWh"; in US measures with "BTU" beside.</summary>
    public static string Text(Energy energy, UnitSystem system)
    {
        double wattHours = energy.Joules / 3600;
        string text = Math.Abs(wattHours) < 99.5 ? Unit(Significant(wattHours, 2), "Wh") : Unit(Significant(wattHours / 1000, 2), "kWh");
        return system == UnitSystem.UsCustomary
            ? $"{text} ({Unit(Significant(energy.Joules / ExactFactors.BritishThermalUnitJoules, 2), "BTU")})"
            : text;
    }

    /// <summary>An air or cooker pressure: "1013 hPa", "29.9 inHg".</summary>
    public static string Text(Pressure pressure, UnitSystem system) => system == UnitSystem.UsCustomary
        ? Unit(Math.Round(pressure.Pascals / ExactFactors.InchOfMercuryPascals, 1), "inHg")
        : Unit(Math.Round(pressure.Pascals / 100), "hPa");

    /// <summary>Pressure over that of the air, as on a cooker: "1 bar (14.5 psi)".</summary>
    public static string Gauge(Pressure pressure) => Beside(Gauge(pressure, UnitSystem.Metric), Gauge(pressure, UnitSystem.UsCustomary));

    /// <summary>Pressure over that of the air, as on a cooker: "1 bar", "14.5 psi".</summary>
    public static string Gauge(Pressure pressure, UnitSystem system) => system == UnitSystem.UsCustomary
        ? Unit(Math.Round(pressure.Pascals / ExactFactors.PoundPerSquareInchPascals, 1), "psi")
        : Unit(Math.Round(pressure.Pascals / 1e5, 2), "bar");

    /// <summary>An area: "1800 cm²", "1.2 m²", "280 in²", "13 ft²".</summary>
    public static string Text(Area area, UnitSystem system)
    {
        if (system == UnitSystem.UsCustomary)
        {
            double squareInches = area.SquareMillimeters() / (ExactFactors.InchMillimetres * ExactFactors.InchMillimetres);
            return Math.Abs(squareInches) < 1000 ? Unit(Significant(squareInches, 2), "in²") : Unit(Significant(squareInches / 144, 2), "ft²");
        }

        return Math.Abs(area.SquareMeters) < 0.995
            ? Unit(Significant(area.SquareMeters * 1e4, 2), "cm²")
            : Unit(Significant(area.SquareMeters, 2), "m²");
    }

    /// <summary>A rate of loss or flow: "0.45 L/h", "0.48 qt/h".</summary>
    public static string Text(VolumeFlow flow, UnitSystem system) => system == UnitSystem.UsCustomary
        ? Unit(Significant(flow.CubicMetersPerSecond * 3600e6 / ExactFactors.QuartMillilitres, 2), "qt/h")
        : Unit(Significant(flow.CubicMetersPerSecond * 3600e3, 2), "L/h");

    /// <summary>A share in per cent: "38 %", "0.7 %".</summary>
    public static string Text(Ratio share) => Unit(Significant(share.DecimalFractions * 100, 2), "%");

    /// <summary>Metric with US beside: "850 g (1 lb 14 oz)".</summary>
    internal static string Both(Mass mass) => Beside(Text(mass, UnitSystem.Metric), Text(mass, UnitSystem.UsCustomary));

    /// <summary>Metric with US beside: "5.2 L (5½ qt)".</summary>
    internal static string Both(Volume volume) => Beside(Text(volume, UnitSystem.Metric), Text(volume, UnitSystem.UsCustomary));

    /// <summary>Metric with US beside: "62 mm (2½ in)".</summary>
    internal static string Both(Length length) => Beside(Text(length, UnitSystem.Metric), Text(length, UnitSystem.UsCustomary));

    /// <summary>Metric with US beside: "93 °C (199 °F)".</summary>
    public static string Both(Temperature temperature) => Beside(Text(temperature, UnitSystem.Metric), Text(temperature, UnitSystem.UsCustomary));

    private static string Beside(string metric, string us) => $"{metric} ({us})";

    private static double FahrenheitOf(Temperature temperature) => (temperature.DegreesCelsius * 1.8) + 32;

    private static double SquareMillimeters(this Area area) => area.SquareMeters * 1e6;
}
