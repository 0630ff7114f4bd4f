namespace Stockwright.Physics.Conduction;

/// <summary>
/// What one face of a conduction field meets during a step: a conductance per area from the face outward
/// (half a cell inward is added by the solver) to surroundings of one temperature. Nothing by default: insulated.
/// </summary>
/// <param name="WattsPerSquareMetreKelvin">Film and wall in series; zero or less insulates.</param>
/// <param name="FilmResistance">Extra resistance, m2 K/W, that each cell bears in proportion to how liquid it is.</param>
/// <param name="Celsius">Temperature of the surroundings.</param>
internal readonly record struct ConductionBoundary(double WattsPerSquareMetreKelvin, double FilmResistance, double Celsius)
{
    internal static ConductionBoundary Convective(double wattsPerSquareMetreKelvin, double celsius) => new(wattsPerSquareMetreKelvin, 0, celsius);
}
