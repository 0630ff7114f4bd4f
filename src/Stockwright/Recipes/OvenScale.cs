using UnitsNet;

namespace Stockwright.Recipes;

/// <summary>One step of the oven scale.</summary>
/// <param name="GasMark">Gas mark, for instance <c>6</c> or <c>½</c>.</param>
/// <param name="Conventional">Temperature of an oven without fan.</param>
/// <param name="Fan">Setting of a fan oven, 20 °C lower.</param>
/// <param name="FahrenheitName">The round figure a Fahrenheit oven is set to; a name, not a conversion: 230 °C is called 450 °F.</param>
public sealed record OvenStep(string GasMark, Temperature Conventional, Temperature Fan, int FahrenheitName);

/// <summary>The oven scale: gas marks beside degrees Celsius, with and without fan, and the Fahrenheit names (from memory).</summary>
public static class OvenScale
{
    /// <summary>How far past the ends of the scale a temperature may lie and still be called by its last step.</summary>
    private const double PastTheEndCelsius = 15;

    /// <summary>All steps, coolest first.</summary>
    internal static IReadOnlyList<OvenStep> Steps { get; } =
    [
        Step("¼", 110, 225),
        Step("½", 120, 250),
        Step("1", 140, 275),
        Step("2", 150, 300),
        Step("3", 160, 325),
        Step("4", 180, 350),
        Step("5", 190, 375),
        Step("6", 200, 400),
        Step("7", 220, 425),
        Step("8", 230, 450),
        Step("9", 240, 475),
    ];

    /// <summary>The step nearest to a temperature; the cooler one when it lies halfway.</summary>
    /// <param name="conventional">Temperature of an oven without fan, 95 to 255 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature lies off the scale.</exception>
    public static OvenStep Nearest(Temperature conventional)
    {
        double celsius = conventional.DegreesCelsius;
        if (!(celsius >= Steps[0].Conventional.DegreesCelsius - PastTheEndCelsius && celsius <= Steps[^1].Conventional.DegreesCelsius + PastTheEndCelsius))
        {
            throw new ArgumentOutOfRangeException(nameof(conventional), conventional, "The oven scale runs from 95 to 255 °C.");
        }

        return Steps.MinBy(step => Math.Abs(step.Conventional.DegreesCelsius - celsius))!;
    }

    private static OvenStep Step(string gasMark, double celsius, int fahrenheitName) =>
        new(gasMark, Temperature.FromDegreesCelsius(celsius), Temperature.FromDegreesCelsius(celsius - 20), fahrenheitName);
}
