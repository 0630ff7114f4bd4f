namespace Stockwright.Physics;

/// <summary>
/// Air pressure against altitude in the standard atmosphere (equation P.15 in docs/equations-physics.md).
/// Source: ISO 2533, troposphere.
/// </summary>
internal static class StandardAtmosphere
{
    internal static double PressurePascals(double altitudeMetres) =>
        101325 * Math.Pow(1 - (0.0065 * altitudeMetres / 288.15), 5.25588);
}
