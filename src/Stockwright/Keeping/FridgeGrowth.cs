using UnitsNet;

namespace Stockwright.Keeping;

/// <summary>
/// How much a warmer fridge costs: growth of Listeria relative to 5 °C by the square-root rule of the FDA and FSIS risk
/// assessment of 2003 [from memory] (equation C.61 in docs/equations-cooling.md). To compare fridges with, not to date food by.
/// </summary>
public static class FridgeGrowth
{
    private const double LeastCelsius = -1.18;
    private const double ReferenceCelsius = 5;

    /// <summary>Growth rate over that at 5 °C.</summary>
    /// <param name="temperature">-10 to 15 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies outside that range.</exception>
    public static double RelativeToFiveCelsius(Temperature temperature)
    {
        double celsius = temperature.DegreesCelsius;
        if (celsius is not (>= -10 and <= 15))
        {
            throw new ArgumentOutOfRangeException(nameof(temperature), temperature, "The comparison of fridges runs from -10 to 15 °C.");
        }

        double root = Math.Max(0, celsius - LeastCelsius) / (ReferenceCelsius - LeastCelsius);
        return root * root;
    }
}
