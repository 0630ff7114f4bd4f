using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Measures;

/// <content>Predictions with their spread, and figures for tables.</content>
public static partial class KitchenFormat
{
    /// <summary>A band of volumes in one unit: "3.4 to 4.6 L", "3½ to 4¾ qt".</summary>
    public static string Band(Band<Volume> band, UnitSystem system)
    {
        double low = band.Low.Milliliters;
        double high = band.High.Milliliters;
        string? text = system == UnitSystem.UsCustomary
            ? (Math.Abs(high) / ExactFactors.QuartMillilitres) switch
            {
                >= 1 => Fractions(low / ExactFactors.QuartMillilitres, high / ExactFactors.QuartMillilitres, "qt"),
                >= 0.25 => Fractions(low / ExactFactors.CupMillilitres, high / ExactFactors.CupMillilitres, "cups"),
                _ => Fractions(low / ExactFactors.FluidOunceMillilitres, high / ExactFactors.FluidOunceMillilitres, "fl oz"),
            }
            : Math.Abs(high) < 1000 ? Range(low, high, 1, "mL") : Range(low / 1000, high / 1000, 0.01, "L");
        return text ?? Text(band.Central, system);
    }

    /// <summary>A band of masses in one unit: "1.8 to 2.4 kg", "1¼ to 2 lb".</summary>
    public static string Band(Band<Mass> band, UnitSystem system)
    {
        double low = band.Low.Grams;
        double high = band.High.Grams;
        string? text = system == UnitSystem.UsCustomary
            ? (Math.Abs(high) / ExactFactors.OunceGrams) switch
            {
                >= 16 => Fractions(low / ExactFactors.OunceGrams / 16, high / ExactFactors.OunceGrams / 16, "lb"),
                _ => Fractions(low / ExactFactors.OunceGrams, high / ExactFactors.OunceGrams, "oz"),
            }
            : Math.Abs(high) < 1000 ? Range(low, high, Math.Abs(high) < 10 ? 0.1 : 1, "g") : Range(low / 1000, high / 1000, 0.01, "kg");
        return text ?? Text(band.Central, system);
    }

    /// <summary>A band of lengths in one unit: "55 to 70 mm", "11.5 to 13 cm", "2¼ to 2¾ in".</summary>
    public static string Band(Band<Length> band, UnitSystem system)
    {
        double low = band.Low.Millimeters;
        double high = band.High.Millimeters;
        string? text = system == UnitSystem.UsCustomary
            ? Fractions(low / ExactFactors.InchMillimetres, high / ExactFactors.InchMillimetres, "in", 8)
            : Math.Max(Math.Abs(low), Math.Abs(high)) < 100 ? Range(low, high, 1, "mm") : Range(low / 10, high / 10, 0.1, "cm");
        return text ?? Text(band.Central, system);
    }

    /// <summary>A band of times in one unit: "50 to 70 min", "1½ to 2¼ h".</summary>
    public static string Band(Band<TimeSpan> band)
    {
        string? text = band.High.TotalMinutes < 90
            ? Range(band.Low.TotalMinutes, band.High.TotalMinutes, 1, "min")
            : Fractions(band.Low.TotalHours, band.High.TotalHours, "h");
        return text ?? Text(band.Central);
    }

    /// <summary>A band of temperatures: "88 to 94 °C".</summary>
    public static string Band(Band<Temperature> band, UnitSystem system) => (system == UnitSystem.UsCustomary
        ? Range(FahrenheitOf(band.Low), FahrenheitOf(band.High), 1, "°F")
        : Range(band.Low.DegreesCelsius, band.High.DegreesCelsius, 1, "°C")) ?? Text(band.Central, system);

    /// <summary>A band of rates: "0.4 to 0.7 L/h".</summary>
    public static string Band(Band<VolumeFlow> band, UnitSystem system)
    {
        double factor = system == UnitSystem.UsCustomary ? 3600e6 / ExactFactors.QuartMillilitres : 3600e3;
        return Range(band.Low.CubicMetersPerSecond * factor, band.High.CubicMetersPerSecond * factor, 0.01, system == UnitSystem.UsCustomary ? "qt/h" : "L/h")
            ?? Text(band.Central, system);
    }

    /// <summary>A band of energies: "2.8 to 3.6 kWh".</summary>
    public static string Band(Band<Energy> band, UnitSystem system) =>
        Range(band.Low.Joules / 3.6e6, band.High.Joules / 3.6e6, 0.01, "kWh") ?? Text(band.Central, system);

    /// <summary>A band of shares in per cent: "30 to 45 %".</summary>
    public static string Band(Band<Ratio> band) =>
        Range(band.Low.DecimalFractions * 100, band.High.DecimalFractions * 100, 0.1, "%") ?? Text(band.Central);

    /// <summary>A mass for a table that must add up: "1.254 kg", "44.2 oz"; one part in a thousand or finer.</summary>
    public static string Precise(Mass mass, UnitSystem system)
    {
        if (system == UnitSystem.UsCustomary)
        {
            double ounces = mass.Grams / ExactFactors.OunceGrams;
            return Math.Abs(ounces) < 99.995 ? Unit(Math.Round(ounces, 2), "oz") : Unit(Math.Round(ounces / 16, 2), "lb");
        }

        return Math.Abs(mass.Grams) < 999.95 ? Unit(Math.Round(mass.Grams, 1), "g") : Unit(Math.Round(mass.Kilograms, 3), "kg");
    }

    /// <summary>A volume for a table that must add up: "5.24 L", "18.4 fl oz", "5.54 qt".</summary>
    public static string Precise(Volume volume, UnitSystem system)
    {
        if (system == UnitSystem.UsCustomary)
        {
            double quarts = volume.Milliliters / ExactFactors.QuartMillilitres;
            return Math.Abs(quarts) < 0.9995 ? Unit(Math.Round(quarts * 32, 1), "fl oz") : Unit(Math.Round(quarts, 2), "qt");
        }

        return Math.Abs(volume.Milliliters) < 999.5 ? Unit(Math.Round(volume.Milliliters), "mL") : Unit(Math.Round(volume.Liters, 2), "L");
    }

    /// <summary>A temperature for a table: "93.4 °C", "200.1 °F".</summary>
    public static string Precise(Temperature temperature, UnitSystem system) => system == UnitSystem.UsCustomary
        ? Unit(Math.Round(FahrenheitOf(temperature), 1), "°F")
        : Unit(Math.Round(temperature.DegreesCelsius, 1), "°C");

    /// <summary>
    /// Any quantity of a list of assumptions, by its kind; a plain <see cref="Ratio"/> is written as a factor, "1.3".
    /// </summary>
    public static string Text(IQuantity quantity, UnitSystem system) => quantity switch
    {
        Mass mass => Text(mass, system),
        Volume volume => Text(volume, system),
        Length length => Text(length, system),
        Temperature temperature => Text(temperature, system),
        TemperatureDelta difference => Text(difference, system),
        Power power => Text(power, system),
        Energy energy => Text(energy, system),
        Pressure pressure => Text(pressure, system),
        Area area => Text(area, system),
        VolumeFlow flow => Text(flow, system),
        Duration duration => Text(duration.ToTimeSpan()),
        Density { Unit: UnitsNet.Units.DensityUnit.KilogramPerLiter } density => Unit(Significant((double)density.Value, 3), "kg/L"),
        Density density => Unit(Significant(density.KilogramsPerCubicMeter, 3), "kg/m³"),
        Ratio factor => Number(Significant(factor.DecimalFractions, 3)),

        // UnitsNet's own text makes it load every quantity it knows, 9 MB for good: list above what pages show.
        _ => Unit(Significant((double)quantity.Value, 3), quantity.ToString("a", System.Globalization.CultureInfo.InvariantCulture)),
    };

    /// <summary>"low to high unit" with digits fitting the spread, or null when the spread is too small to show.</summary>
    private static string? Range(double low, double high, double finest, string unit)
    {
        double width = Math.Abs(high - low);
        if (!(width > 0))
        {
            return null;
        }

        // A quarter of the spread is worth reading; a thousandth of the size is not.
        double bySpread = Math.Pow(10, Math.Floor(Math.Log10(width / 4)));
        double bySize = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(Math.Abs(low), Math.Abs(high)))) - 2);
        double step = Math.Max(finest, Math.Max(bySpread, bySize));
        string from = Number(KitchenRounding.ToStep(low, step));
        string to = Number(KitchenRounding.ToStep(high, step));
        return string.Equals(from, to, StringComparison.Ordinal) ? null : Unit($"{from} to {to}", unit);
    }

    private static string? Fractions(double low, double high, string unit, int finest = 4)
    {
        double width = Math.Abs(high - low);
        int denominator = width >= 6 ? 1 : width >= 3 ? 2 : width >= 1 ? Math.Min(4, finest) : finest;
        string from = Fraction(low, denominator);
        string to = Fraction(high, denominator);
        return string.Equals(from, to, StringComparison.Ordinal) ? null : Unit($"{from} to {to}", unit);
    }
}
