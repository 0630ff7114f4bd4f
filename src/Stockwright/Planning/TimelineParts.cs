using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>One round: pots on the heat side by side.</summary>
/// <param name="Pots">How many.</param>
/// <param name="Roast">Roasting for all of them, or null.</param>
internal sealed record RoundLoad(int Pots, RoastPlan? Roast);

/// <summary>What the timeline is laid from.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Load">What goes in one pot.</param>
/// <param name="Rounds">Rounds of the wish, in order; at least one.</param>
/// <param name="Blanch">Blanching for one pot, or null.</param>
/// <param name="Outcome">The course of one pot.</param>
/// <param name="WaterKilograms">Water to the line of one pot.</param>
/// <param name="YieldLitres">Stock of one pot.</param>
internal sealed record TimelineParts(
    PlanRequest Request,
    BatchLoad Load,
    IReadOnlyList<RoundLoad> Rounds,
    BlanchPlan? Blanch,
    SimmerOutcome Outcome,
    double WaterKilograms,
    double YieldLitres)
{
    /// <summary>Water stirred into the strained stock of one pot, kg.</summary>
    public double LetDownKilograms { get; init; }

    /// <summary>True when the pot is put away for a night; every round then begins at the hour of the first, so that its nights fall alike.</summary>
    public bool IsPutAway { get; init; }

    /// <summary>When a step after the heat really ended, given when it was to end; null while nothing is known of it.</summary>
    public Func<StepKind, DateTimeOffset, DateTimeOffset>? Ended { get; init; }
}
