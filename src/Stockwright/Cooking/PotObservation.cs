using Stockwright.Logbook;
using Stockwright.Simmering;

namespace Stockwright.Cooking;

/// <summary>What was observed.</summary>
internal enum ObservationKind
{
    /// <summary>Level above the base, m.</summary>
    Level,

    /// <summary>Level over the top of the solids, m.</summary>
    Cover,

    /// <summary>Temperature on the way up, C.</summary>
    Temperature,

    /// <summary>First simmer, s after the heat went on.</summary>
    Simmer,

    /// <summary>Strained stock, kg.</summary>
    Strained,
}

/// <summary>One observation of the pot, to be held against a run of it (R.6).</summary>
/// <param name="Kind">What was observed.</param>
/// <param name="AtSeconds">When the script looks for it, s after the heat went on; null for what needs no look, the first simmer and the strained stock.</param>
/// <param name="Value">What was read.</param>
/// <param name="Sigma">Standard deviation of the reading.</param>
/// <param name="Entry">The entry it comes from.</param>
internal sealed record PotObservation(ObservationKind Kind, double? AtSeconds, double Value, double Sigma, LogEntry Entry)
{
    /// <summary>Number of the look in the script, from 1; 0 for what needs none.</summary>
    public int Look { get; init; }

    /// <summary>What a run has for it; null when the run ended before.</summary>
    /// <param name="outcome">The run.</param>
    /// <param name="assumptions">The figures of the plan.</param>
    public double? In(SimmerOutcome outcome, SimmerAssumptions assumptions)
    {
        switch (Kind)
        {
            case ObservationKind.Simmer:
                return outcome.HeatUpSeconds;
            case ObservationKind.Strained:
                return Math.Max(0, outcome.LiquidLeftKilograms - outcome.ClingingKilograms) * (1 - assumptions.StrainLoss.Value.DecimalFractions);
            default:
                return outcome.Looks.TryGetValue(Look, out SimmerOutcome.Sight sight)
                    ? Kind switch
                    {
                        ObservationKind.Level => sight.LevelMetres,
                        ObservationKind.Cover => sight.LevelMetres - sight.HeapMetres,
                        _ => sight.Celsius,
                    }
                    : null;
        }
    }
}
