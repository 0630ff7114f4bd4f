using System.Globalization;
using UnitsNet.Units;

namespace Stockwright.Cooling.Readings;

/// <summary>Odd things about readings that were kept: gaps, a stuck probe, a rise, the wrong scale.</summary>
internal static class ReadingChecks
{
    private const int StuckReadings = 4;
    private static readonly TimeSpan StuckTime = TimeSpan.FromMinutes(20);
    private static readonly TimeSpan LeastGap = TimeSpan.FromMinutes(30);

    internal static void AddTo(List<ReadingWarning> warnings, IReadOnlyList<Reading> readings)
    {
        if (readings.Count < 2)
        {
            return;
        }

        TimeSpan[] steps = [.. Enumerable.Range(1, readings.Count - 1).Select(i => readings[i].At - readings[i - 1].At)];
        TimeSpan median = steps.Order().ElementAt(steps.Length / 2);
        int same = 1;
        for (int i = 1; i < readings.Count; i++)
        {
            if (steps[i - 1] > LeastGap && steps[i - 1] > 4 * median)
            {
                warnings.Add(new ReadingWarning("gap", readings[i].Line, string.Create(
                    CultureInfo.InvariantCulture, $"No reading for {steps[i - 1].TotalMinutes:0} minutes before this one; a straight line is drawn across.")));
            }

            double rise = readings[i].Temperature.DegreesCelsius - readings[i - 1].Temperature.DegreesCelsius;
            if (rise > 3)
            {
                warnings.Add(new ReadingWarning("rises", readings[i].Line, "It got warmer here: reheated, or the probe was moved?"));
            }

            same = rise == 0 ? same + 1 : 1;
            bool ends = i == readings.Count - 1 || readings[i + 1].Temperature.DegreesCelsius != readings[i].Temperature.DegreesCelsius;
            TimeSpan held = readings[i].At - readings[i - same + 1].At;
            if (ends && same >= StuckReadings && held >= StuckTime)
            {
                warnings.Add(new ReadingWarning("stuck", readings[i - same + 1].Line, string.Create(
                    CultureInfo.InvariantCulture, $"The same figure {same} times over {held.TotalMinutes:0} minutes: is the probe stuck, or out of the stock?")));
            }
        }
    }

    /// <summary>
    /// The other scale when the figures make no sense in their own. Stock is never above 105 °C; and stock that starts hot
    /// enough to be cooled is not below 110 °F all along, nor ends frozen.
    /// </summary>
    internal static ReadingScale? LikelyOtherScale(IReadOnlyList<Reading> readings)
    {
        if (readings.Count == 0)
        {
            return null;
        }

        if (readings.All(reading => reading.Temperature.Unit == TemperatureUnit.DegreeCelsius))
        {
            return readings.Max(reading => reading.Temperature.DegreesCelsius) > 105 ? ReadingScale.Fahrenheit : null;
        }

        if (readings.All(reading => reading.Temperature.Unit == TemperatureUnit.DegreeFahrenheit))
        {
            double most = readings.Max(reading => reading.Temperature.DegreesFahrenheit);
            double least = readings.Min(reading => reading.Temperature.DegreesFahrenheit);
            return most <= 105 && (least < 28 || most < 60) ? ReadingScale.Celsius : null;
        }

        return null;
    }
}
