namespace Stockwright.Measures;

/// <summary>The measures a cook reads in, chosen once.</summary>
public enum UnitSystem
{
    /// <summary>Grams, litres, millimetres, degrees Celsius.</summary>
    Metric,

    /// <summary>US customary: ounces and pounds, fluid ounces, quarts and gallons, inches, degrees Fahrenheit.</summary>
    UsCustomary,
}
