using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>
/// What the readings of a batch say of its pot: best figures, and the one direction in which they are uncertain that moves what is left in
/// the pot most (R.9 in docs/equations-cooking.md). Every step is one standard deviation towards losing more.
/// </summary>
/// <param name="FilmFactor">Loss over that of clean water once fat covers it, as planned.</param>
/// <param name="LossFactor">Loss over the planned one.</param>
/// <param name="LossStepLess">Step of its logarithm on the side that loses less.</param>
/// <param name="LossStepMore">The same on the side that loses more.</param>
/// <param name="Efficiency">Share of the hob's power that reaches the pot.</param>
/// <param name="EfficiencyStep">Step of its logarithm; zero when nothing was learnt of it.</param>
/// <param name="WaterStepKilograms">Step of the water at the start, kg.</param>
internal sealed record PotBelief(
    double FilmFactor,
    double LossFactor,
    double LossStepLess,
    double LossStepMore,
    double Efficiency,
    double EfficiencyStep,
    double WaterStepKilograms)
{
    /// <summary>Strained stock as measured, kg.</summary>
    public double? StrainedKilograms { get; init; }

    /// <summary>Portioned stock as measured, kg.</summary>
    public double? PortionedKilograms { get; init; }

    /// <summary>Loss factor at so many standard deviations towards losing more.</summary>
    public double LossAt(double deviations) => LossFactor * Math.Exp(deviations * (deviations < 0 ? LossStepLess : LossStepMore));

    /// <summary>Efficiency at so many standard deviations.</summary>
    public double EfficiencyAt(double deviations) => Math.Min(0.95, Efficiency * Math.Exp(deviations * EfficiencyStep));

    /// <summary>The script with the water at so many standard deviations; at least a spoonful.</summary>
    public SimmerScript ScriptAt(SimmerScript script, double deviations) =>
        script with { StartWaterKilograms = Math.Max(0.05, script.StartWaterKilograms + (deviations * WaterStepKilograms)) };

    /// <summary>Runs the pot at so many standard deviations.</summary>
    public SimmerOutcome Run(PotEnvironment environment, SimmerScript script, double deviations, bool sampled) => SimmerRun.Execute(
        environment, ScriptAt(script, deviations), FilmFactor, LossAt(deviations), EfficiencyAt(deviations), sampled);
}
