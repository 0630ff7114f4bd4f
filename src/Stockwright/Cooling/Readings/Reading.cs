using UnitsNet;

namespace Stockwright.Cooling.Readings;

/// <summary>The scale a thermometer is read in.</summary>
public enum ReadingScale
{
    /// <summary>°C.</summary>
    Celsius,

    /// <summary>°F.</summary>
    Fahrenheit,
}

/// <summary>One reading that was understood.</summary>
/// <param name="Line">Line of the text, from one.</param>
/// <param name="At">Time since the first reading that was kept.</param>
/// <param name="Temperature">As read, in its own scale.</param>
public sealed record Reading(int Line, TimeSpan At, Temperature Temperature);

/// <summary>One row put aside, with the reason.</summary>
/// <param name="Line">Line of the text, from one.</param>
/// <param name="Text">The row as typed.</param>
/// <param name="Reason">Plain sentence.</param>
public sealed record RejectedRow(int Line, string Text, string Reason);

/// <summary>Something odd about rows that were kept.</summary>
/// <param name="Code">Stable name: gap, stuck, rises, scale, commas.</param>
/// <param name="Line">Line it is about.</param>
/// <param name="Message">Plain sentence.</param>
public sealed record ReadingWarning(string Code, int Line, string Message);

/// <summary>A text of readings, read; every row is in one list or the other.</summary>
/// <param name="Readings">Kept, in order of time.</param>
/// <param name="Rejected">Put aside.</param>
/// <param name="Warnings">Odd things.</param>
/// <param name="SuggestedScale">The other scale, when the figures look as if they were read in it: offer to convert.</param>
public sealed record ParsedReadings(
    IReadOnlyList<Reading> Readings, IReadOnlyList<RejectedRow> Rejected, IReadOnlyList<ReadingWarning> Warnings, ReadingScale? SuggestedScale)
{
    /// <summary>The readings as a curve, or null when there are none.</summary>
    public CoolingCurve? Curve => Readings.Count == 0 ? null : new CoolingCurve(Readings.Select(reading => new CoolingPoint(reading.At, reading.Temperature)));
}
