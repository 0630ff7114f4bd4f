namespace Stockwright.Simmering;

/// <summary>What an open surface loses while it is held at a temperature: the one law of simmering and reducing (S.3, S.4 in docs/equations.md).</summary>
internal static class SurfaceLoss
{
    /// <summary>A pot held this near to the boil boils, K.</summary>
    private const double BoilTolerance = 0.05;

    /// <summary>Loss to the air without bubbles, kg/(m2 s).</summary>
    /// <param name="environment">Room and air.</param>
    /// <param name="celsius">Temperature of the liquid.</param>
    /// <param name="film">Loss over that of clean open water.</param>
    public static double StillFlux(PotEnvironment environment, double celsius, double film) =>
        Math.Max(0, film * environment.CleanFlux(Math.Clamp(celsius, 0, environment.BoilingCelsius)));

    /// <summary>What bubbles carry off, kg/(m2 s), the hob allowing; zero well under the boil.</summary>
    /// <param name="environment">Room and air.</param>
    /// <param name="celsius">Temperature of the liquid.</param>
    /// <param name="isRolling">True for a rolling boil, false for a gentle one.</param>
    public static double BubblingFlux(PotEnvironment environment, double celsius, bool isRolling)
    {
        SimmerAssumptions figures = environment.Assumptions;
        double near = Math.Clamp((celsius - environment.BoilingCelsius + figures.BubblingKelvins) / (figures.BubblingKelvins - BoilTolerance), 0, 1);
        return near * near * (3 - (2 * near)) * (isRolling ? figures.RollingBoilFlux : figures.GentleBoilFlux);
    }
}
