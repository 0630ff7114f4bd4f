using Stockwright.Numerics;
using Stockwright.Planning;
using Stockwright.Simmering;

namespace Stockwright.Cooking;

/// <summary>What is believed of the pot before anything is read (R.6): the plan's own bands, as standard deviations of logarithms.</summary>
/// <param name="Film">Central loss over that of clean water.</param>
/// <param name="Less">Loss at the low edge of the band over the central one.</param>
/// <param name="More">The same at the high edge.</param>
/// <param name="Efficiency">Central share of the hob's power that reaches the pot.</param>
/// <param name="LossSigma">Standard deviation of the logarithm of the loss.</param>
/// <param name="EfficiencySigma">The same of the efficiency.</param>
internal sealed record PotPrior(double Film, double Less, double More, double Efficiency, double LossSigma, double EfficiencySigma)
{
    /// <summary>Standard deviation of the logarithm of the liquid at the start: the cook trusts the line, and bones displace more or less than calculated (estimate).</summary>
    public const double WaterSigma = 0.035;

    /// <summary>The prior of a plan.</summary>
    public static PotPrior Of(BatchPlan plan)
    {
        PlanRequest request = plan.Request;
        SimmerForecaster forecaster = new(plan.Workings.Environment, request.Heat, request.Lid, request.Site);
        (double less, double more) = forecaster.LossFactors;
        double efficiency = request.Heat.Efficiency.Value.DecimalFractions;
        return new PotPrior(
            SurfaceFilm.For(request.Site, request.Assumptions).Value,
            less,
            more,
            efficiency,
            Math.Max(1e-3, Math.Log(more / less) / 2 / NormalQuantile.Ninety),
            Math.Max(1e-3, Math.Log(request.Heat.Efficiency.High / request.Heat.Efficiency.Low) / 2 / NormalQuantile.Ninety));
    }
}
