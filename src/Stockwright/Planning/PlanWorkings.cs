using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>What a plan was worked out with, kept so that a prediction can run the pot again without planning again.</summary>
/// <param name="Environment">Pot, hob and room.</param>
/// <param name="Script">What is done to the pot, nights included.</param>
/// <param name="Fitted">The load.</param>
/// <param name="Fitter">Works out the yield of a run.</param>
/// <param name="Central">The central run.</param>
internal sealed record PlanWorkings(PotEnvironment Environment, SimmerScript Script, FittedLoad Fitted, PotFitter Fitter, SimmerOutcome Central)
{
    /// <summary>What the log has taught about loss, heat and water; null for a plan that has met no pot yet.</summary>
    public PotBelief? Belief { get; init; }
}
