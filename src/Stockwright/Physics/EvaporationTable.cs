namespace Stockwright.Physics;

/// <summary>
/// The clean-water flux (P.23) for one room and air pressure, tabled at every kelvin from 0 to 130 °C and read by a
/// cubic that keeps the slope continuous and the shape monotone (Fritsch and Carlson 1980): a table look-up instead of
/// two cube roots and a saturation pressure in every step of an integrator. Within 0.1 % of P.23 from 10 K above the room.
/// </summary>
internal sealed class EvaporationTable
{
    internal const double MostCelsius = 130;
    private const int Intervals = 130;

    /// <summary>Four coefficients an interval, value first.</summary>
    private readonly double[] coefficients = new double[4 * Intervals];

    /// <summary>Tables the flux for one room.</summary>
    internal EvaporationTable(double roomCelsius, double humidity, double airPascals)
    {
        Span<double> values = stackalloc double[Intervals + 1];
        for (int i = 0; i <= Intervals; i++)
        {
            values[i] = Evaporation.CleanWaterKilogramsPerSquareMetreSecond(i + 273.15, roomCelsius + 273.15, humidity, airPascals);
        }

        Span<double> slopes = stackalloc double[Intervals + 1];
        for (int i = 1; i < Intervals; i++)
        {
            slopes[i] = MonotoneSlope(values[i] - values[i - 1], values[i + 1] - values[i]);
        }

        slopes[0] = values[1] - values[0];
        slopes[Intervals] = values[Intervals] - values[Intervals - 1];
        for (int i = 0; i < Intervals; i++)
        {
            double rise = values[i + 1] - values[i];
            Span<double> cubic = coefficients.AsSpan(4 * i, 4);
            cubic[0] = values[i];
            cubic[1] = slopes[i];
            cubic[2] = (3 * rise) - (2 * slopes[i]) - slopes[i + 1];
            cubic[3] = slopes[i] + slopes[i + 1] - (2 * rise);
        }
    }

    /// <summary>Flux at a surface temperature.</summary>
    /// <param name="celsius">0 to 130.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside the table.</exception>
    internal double FluxKilogramsPerSquareMetreSecond(double celsius)
    {
        if (!(celsius >= 0) || celsius > MostCelsius)
        {
            throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "The table of evaporation runs from 0 to 130 °C.");
        }

        int interval = Math.Min((int)celsius, Intervals - 1);
        double part = celsius - interval;
        ReadOnlySpan<double> cubic = coefficients.AsSpan(4 * interval, 4);
        return cubic[0] + (part * (cubic[1] + (part * (cubic[2] + (part * cubic[3])))));
    }

    // The flux never falls as the water warms, so both differences are zero or above.
    private static double MonotoneSlope(double before, double after) =>
        Math.Min((before + after) / 2, 3 * Math.Min(before, after));
}
