namespace Stockwright.Measures;

/// <summary>
/// Exact factors between US customary and SI measures (NIST SP 811, 2008, appendix B; NIST Handbook 44, appendix C).
/// Each is exact by definition: the pound and the inch are defined in SI, the US gallon is 231 cubic inches.
/// </summary>
public static class ExactFactors
{
    /// <summary>Grams in one avoirdupois ounce, a sixteenth of a pound.</summary>
    internal const double OunceGrams = 28.349523125;

    /// <summary>Millimetres in one inch.</summary>
    public const double InchMillimetres = 25.4;

    /// <summary>Metres in one foot.</summary>
    internal const double FootMetres = 0.3048;

    /// <summary>Millilitres in one US liquid quart, a quarter of a gallon.</summary>
    internal const double QuartMillilitres = 946.352946;

    /// <summary>Millilitres in one US cup, a sixteenth of a gallon.</summary>
    internal const double CupMillilitres = 236.5882365;

    /// <summary>Millilitres in one US fluid ounce, 1/128 of a gallon.</summary>
    internal const double FluidOunceMillilitres = 29.5735295625;

    /// <summary>Millilitres in one US teaspoon, a third of a tablespoon.</summary>
    internal const double TeaspoonMillilitres = 4.92892159375;

    /// <summary>Joules in one British thermal unit (International Table).</summary>
    internal const double BritishThermalUnitJoules = 1055.05585262;

    /// <summary>Pascals in one pound-force per square inch (NIST SP 811: 6894.757).</summary>
    internal const double PoundPerSquareInchPascals = 6894.757293168;

    /// <summary>Pascals in one conventional inch of mercury (NIST SP 811: 3.386389 kPa, not exact).</summary>
    internal const double InchOfMercuryPascals = 3386.389;
}
