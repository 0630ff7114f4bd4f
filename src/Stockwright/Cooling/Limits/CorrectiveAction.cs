using Stockwright.Evidence;

namespace Stockwright.Cooling.Limits;

/// <summary>What to do with a batch.</summary>
public enum CorrectiveStep
{
    /// <summary>The limit is met: cover, label, put away.</summary>
    PutAway,

    /// <summary>Time is left: keep cooling, faster if need be.</summary>
    KeepCooling,

    /// <summary>Reheat and cool again, once.</summary>
    ReheatAndCoolAgain,

    /// <summary>Discard.</summary>
    Discard,
}

/// <summary>What the chosen code, or its usual guidance, has a cook do about a batch.</summary>
/// <param name="Step">What to do.</param>
/// <param name="Text">In plain words.</param>
/// <param name="Clause">Where it says so.</param>
/// <param name="Provenance">Grade of that.</param>
/// <param name="TimeLeft">Time to the next deadline: of the stage, or of reheating; null when there is none.</param>
public sealed record CorrectiveAction(CorrectiveStep Step, string Text, string Clause, Provenance Provenance, TimeSpan? TimeLeft)
{
    /// <summary>True when the words are not from a text that was read.</summary>
    public bool NeedsChecking => Provenance != Provenance.Published;

    /// <summary>The action for a measured batch (rule C.33 in docs/equations-cooling.md).</summary>
    /// <param name="verdict">Verdict on the readings so far.</param>
    /// <param name="now">Time on the curve now; at or after the last reading.</param>
    /// <param name="alreadyReheated">True when the batch was reheated once before.</param>
    public static CorrectiveAction For(CoolingVerdict verdict, TimeSpan now, bool alreadyReheated = false)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        CoolingLimit limit = verdict.Limit;
        CorrectionRule rule = limit.Correction;
        StageVerdict? missed = verdict.FailedStage ?? verdict.Stages.FirstOrDefault(stage => stage.ReachedAt is null && stage.DueAt < now);
        if (verdict.Outcome == CoolingOutcome.Meets)
        {
            return new(CorrectiveStep.PutAway, "The limit is met: cover it, label it and put it away cold.", limit.Clause, limit.Provenance, null);
        }

        if (missed is null && !verdict.StartsTooLate)
        {
            StageVerdict? running = verdict.Stages.FirstOrDefault(stage => stage.ReachedAt is null);
            TimeSpan? left = running?.DueAt is { } due ? due - now : null;
            return new(
                CorrectiveStep.KeepCooling,
                left is null ? "The clock has not started: the stock is still above the first temperature of the limit." : "Time is left: keep cooling.",
                limit.Clause,
                limit.Provenance,
                left);
        }

        bool isLast = missed is null || missed.Number == limit.Stages.Count;
        TimeSpan? reheatLeft = missed?.DueAt + rule.ReheatWithin - now;
        bool mayReheat = rule.ReheatTo is not null && !isLast && !alreadyReheated && reheatLeft > TimeSpan.Zero;
        if (mayReheat)
        {
            return new(CorrectiveStep.ReheatAndCoolAgain, rule.Text, rule.Clause, rule.Provenance, reheatLeft);
        }

        string text = alreadyReheated && rule.ReheatTo is not null ? "It was reheated once already: discard." : rule.ReheatTo is null ? rule.Text : "Too late to reheat: discard.";
        return new(CorrectiveStep.Discard, text, rule.Clause, rule.Provenance, null);
    }
}
