using UnitsNet;

namespace Stockwright.Recipes;

/// <summary>One step of the oven scale.</summary>
/// <param name="GasMark">Gas mark as written on the knob, for instance <c>8</c> or <c>¼</c>.</param>
/// <param name="Conventional">Oven without fan.</param>
/// <param name="Fan">Oven with fan.</param>
/// <param name="FahrenheitName">What a Fahrenheit recipe calls it, for instance 450.</param>
public sealed record OvenStep(string GasMark, Temperature Conventional, Temperature Fan, int FahrenheitName);
