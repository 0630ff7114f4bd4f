using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Logbook;

/// <summary>What an entry is held against, and what is found wrong with it.</summary>
internal sealed class FactChecks(BatchPlan plan, DateTimeOffset happenedAt, DateTimeOffset now, List<WordedProblem> problems)
{
    private const int LongestText = 4000;

    public BatchPlan Plan => plan;

    public Pot Pot => plan.Request.Pot;

    public DateTimeOffset HappenedAt => happenedAt;

    public DateTimeOffset Now => now;

    /// <summary>All that was weighed out, without the water.</summary>
    public Mass AllThatWentIn => Mass.FromKilograms(plan.Amounts.Sum(line => line.Mass.Kilograms));

    /// <summary>All that went in, with the most that may soak in and cling: the drained solids weigh no more.</summary>
    public Mass HeaviestSpent => AllThatWentIn + Mass.FromKilograms(plan.Ledger.Out
        .Where(row => row.Key is "soaked-up" or "held-by-solids")
        .Sum(row => row.Volume.High.CubicMeters * SimmerForecaster.ColdDensity));

    public void Need(bool holds, string field, string message)
    {
        if (!holds)
        {
            problems.Add(new WordedProblem(field, message));
        }
    }

    public void NeedVolume(Volume volume, string field, string what)
    {
        Volume brim = Pot.BrimVolume;
        Need(volume > Volume.Zero && volume.Liters <= brim.Liters * (1 + 1e-9), field, $"{what} must be above nothing and at most what the pot holds, {KitchenFormat.Both(brim)}.");
    }

    public void NeedText(string text, string field, bool isRequired = false) => Need(
        text.Length <= LongestText && (!isRequired || !string.IsNullOrWhiteSpace(text)),
        field,
        text.Length > LongestText ? "That is too long to print: 4000 characters at most." : "Write something.");
}
