namespace Stockwright.Simmering;

/// <summary>What an open surface loses while it is held at a temperature: the one law of simmering and reducing (S.3, S.4 in docs/equations.md).</summary>
internal static class SurfaceLoss
{
    /// <summary>Loss of a pot kept at the boil as gently as a cook can, kg/(m2 s). Bubbles break the film, so the film factor does not apply.</summary>
    public static readonly double GentleBoilFlux = SimmerAssumptions.Get("gentle-boil").Value / 3600;

    /// <summary>Loss of a pot at a rolling boil, kg/(m2 s). The hob is the limit: 1.6 kg an hour for each kilowatt that reaches the pot.</summary>
    public static readonly double RollingBoilFlux = SimmerAssumptions.Get("rolling-boil").Value / 3600;

    /// <summary>A pot held this near to the boil boils, K.</summary>
    private const double BoilTolerance = 0.05;

    /// <summary>
    /// Bubbles begin to break the film so far under the boil, K: from there to the boil what they carry off rises smoothly, so that no tiny change of
    /// air pressure decides how much a simmer loses.
    /// </summary>
    private static readonly double BubblingKelvins = SimmerAssumptions.Get("bubbles-begin").Value;

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
        double near = Math.Clamp((celsius - environment.BoilingCelsius + BubblingKelvins) / (BubblingKelvins - BoilTolerance), 0, 1);
        return near * near * (3 - (2 * near)) * (isRolling ? RollingBoilFlux : GentleBoilFlux);
    }
}
