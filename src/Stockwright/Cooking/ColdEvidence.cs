using Stockwright.Cooling.Limits;
using Stockwright.Logbook;
using Stockwright.Planning;
using UnitsNet;
using UnitsNet.Units;

namespace Stockwright.Cooking;

/// <summary>
/// Whether the stock is cold, and which entry says so (R.13): a reading at or below the last temperature of the batch's limit, or the cook's word that there
/// is no thermometer. A step ticked off, or work that only cold stock allows, says nothing of how cold it is.
/// </summary>
internal static class ColdEvidence
{
    /// <summary>A cold stock read warmer than the limit's last temperature by more than this has warmed again, K (estimate: handling, and the door of a fridge).</summary>
    private const double WarmAgainKelvins = 5;

    /// <summary>The entry that says it is cold; null while it is not, or is not any more.</summary>
    public static LogEntry? Of(LogView view, HeatTimes times)
    {
        if (Milestones.Finished(view, StepKind.Strain) is not { } strained)
        {
            return null;
        }

        DateTimeOffset from = times.HeatOff ?? strained.HappenedAt;
        PrintedTemperature end = view.Batch.Limit.Stages[^1].To;
        DateTimeOffset? warmed = view.Plan.Timeline.Steps.LastOrDefault(step => step.Kind == StepKind.Remelt) is { } remelt ? view.Done(remelt.Key)?.HappenedAt : null;
        LogEntry? cold = null;
        foreach (LogEntry entry in view.Entries.Where(entry => entry.HappenedAt >= from))
        {
            switch (entry.Fact)
            {
                case LogFact.TemperatureRead read when IsOfTheCooling(entry, read, from):
                    cold = IsAtOrBelow(read.Temperature, end, 0) ? cold ?? entry : StaysCold(cold, read, end, entry.HappenedAt >= warmed) ? cold : null;
                    break;
                case LogFact.ColdUnmeasured:
                    cold ??= entry;
                    break;
                case LogFact.CorrectionMade { Step: CorrectiveStep.ReheatAndCoolAgain }:
                    cold = null;
                    break;
            }
        }

        return cold;
    }

    /// <summary>True for a reading of the stock as it cools that a thermometer can have shown.</summary>
    /// <param name="entry">Its entry.</param>
    /// <param name="read">The reading.</param>
    /// <param name="from">Heat off.</param>
    public static bool IsOfTheCooling(LogEntry entry, LogFact.TemperatureRead read, DateTimeOffset from) =>
        read.Place == ReadingPlace.Cooling && entry.HappenedAt >= from && read.Temperature.DegreesCelsius is >= -40 and <= 140;

    /// <summary>Any warm reading stands over the cook's word; one after it was warmed to be poured says nothing.</summary>
    private static bool StaysCold(LogEntry? cold, LogFact.TemperatureRead read, PrintedTemperature end, bool isWarmedToPour) =>
        cold?.Fact is LogFact.TemperatureRead && (isWarmedToPour || IsAtOrBelow(read.Temperature, end, WarmAgainKelvins));

    /// <summary>In the scale it was read in where the limit prints it, as the readings are judged: 41 °F is 5 °C.</summary>
    private static bool IsAtOrBelow(Temperature read, PrintedTemperature limit, double kelvins)
    {
        bool fahrenheit = limit.Celsius is null || (read.Unit == TemperatureUnit.DegreeFahrenheit && limit.Fahrenheit is not null);
        double degrees = fahrenheit ? read.DegreesFahrenheit : read.DegreesCelsius;
        return degrees <= limit.In(fahrenheit) + (fahrenheit ? kelvins * 1.8 : kelvins) + 1e-9;
    }
}
