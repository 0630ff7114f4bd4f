using System.Globalization;
using UnitsNet;

namespace Stockwright.Cooling.Readings;

/// <summary>
/// Reads a typed or exported list of temperature readings: one a line, a time and a temperature, by tab, semicolon, comma or
/// blanks, decimal point or comma, with or without a heading. A bare time is minutes; 10:30 is a time of day, or hours and
/// minutes since the start. Nothing is lost: a row that cannot be used is handed back with the reason.
/// </summary>
public static class ReadingParser
{
    /// <summary>Longest text read.</summary>
    public const int MostCharacters = 1_000_000;

    /// <summary>Longest time from the first reading to now.</summary>
    public static readonly TimeSpan LongestSpan = TimeSpan.FromDays(14);

    /// <summary>Most rows kept.</summary>
    public const int MostRows = 5000;

    private const int LongestRow = 300;

    private const double LeastCelsius = -40;
    private const double MostCelsius = 150;

    /// <summary>Reads a text.</summary>
    /// <param name="text">The readings.</param>
    /// <param name="scale">Scale of figures that carry none.</param>
    /// <exception cref="ArgumentException">The text is longer than <see cref="MostCharacters"/>.</exception>
    public static ParsedReadings Parse(string text, ReadingScale scale)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > MostCharacters)
        {
            throw new ArgumentException("That is too long a list of readings: at most a million characters.", nameof(text));
        }

        string[] lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        char delimiter = Delimiter(lines);
        List<RejectedRow> rejected = [];
        List<ReadingWarning> warnings = [];
        List<(int Line, string Text, double Seconds, double Degrees, ReadingScale Scale)> rows = [];
        ReadingScale assumed = scale;
        double? previousClock = null;
        double days = 0;
        bool isFirst = true;
        bool mended = false;
        for (int i = 0; i < lines.Length; i++)
        {
            string line = lines[i].Trim();
            if (line.Length == 0 || line.StartsWith('#'))
            {
                continue;
            }

            if (!TryRow(line, delimiter, out ReadingRow.TimeCell time, out double degrees, out ReadingScale? written, out bool wasMended, out string reason))
            {
                if (isFirst && LooksLikeHeading(line))
                {
                    assumed = HeadingScale(line) ?? assumed;
                }
                else
                {
                    rejected.Add(new RejectedRow(i + 1, line, reason));
                }

                isFirst = false;
                continue;
            }

            isFirst = false;
            mended |= wasMended;
            ReadingScale own = written ?? assumed;
            double celsius = own == ReadingScale.Fahrenheit ? (degrees - 32) / 1.8 : degrees;
            if (celsius is not (>= LeastCelsius and <= MostCelsius))
            {
                rejected.Add(new RejectedRow(i + 1, line, "No stock is at that temperature: a typing error, or the probe was out."));
                continue;
            }

            if (rows.Count >= MostRows)
            {
                rejected.Add(new RejectedRow(i + 1, line, $"More than {MostRows.ToString(CultureInfo.InvariantCulture)} rows: the rest is put aside."));
                continue;
            }

            if (time.IsClock)
            {
                // Back by more than half a day: past midnight. Back by less: a row out of order.
                days += previousClock - time.Seconds > 12 * 3600 ? 86400 : 0;
                previousClock = time.Seconds;
            }

            rows.Add((i + 1, line, time.Seconds + days, degrees, own));
        }

        List<Reading> kept = InOrder(rows, rejected);
        if (mended)
        {
            warnings.Add(new ReadingWarning("commas", kept.Count > 0 ? kept[0].Line : 1, "Commas stand both between the columns and in the figures; 57,2 was read as 57.2."));
        }

        ReadingChecks.AddTo(warnings, kept);
        ReadingScale? suggested = ReadingChecks.LikelyOtherScale(kept);
        if (suggested is { } other)
        {
            warnings.Add(new ReadingWarning("scale", kept[0].Line, $"These figures look like {(other == ReadingScale.Fahrenheit ? "°F" : "°C")}."));
        }

        return new ParsedReadings(kept, [.. rejected.OrderBy(row => row.Line)], warnings, suggested);
    }

    private static bool TryRow(
        string line, char delimiter, out ReadingRow.TimeCell time, out double degrees, out ReadingScale? written, out bool mended, out string reason)
    {
        reason = "A row needs a time and a temperature.";
        mended = false;
        degrees = double.NaN;
        written = null;
        time = default;
        if (line.Length > LongestRow)
        {
            // Nobody reads a thermometer at such length, and looking for one in it takes time.
            reason = "This row is too long for a time and a temperature.";
            return false;
        }

        if (delimiter != ' ')
        {
            List<string> cells = ReadingRow.Split(line, delimiter);
            if (delimiter == ',')
            {
                List<string> together = ReadingRow.MendDecimalCommas(cells);
                mended = !ReferenceEquals(together, cells);
                cells = together;
            }

            if (cells.Count >= 3 && ReadingRow.IsDate(cells[0]))
            {
                cells = [cells[0] + " " + cells[1], .. cells.Skip(2)];
            }

            if (cells.Count >= 2 && ReadingRow.TryTime(cells[0], out time))
            {
                if (ReadingRow.TryTemperature(cells[1], out degrees, out written))
                {
                    return true;
                }

                reason = cells[1].Length == 0 ? "The temperature is missing." : $"'{Short(cells[1])}' is not a temperature.";
                return false;
            }

            reason = cells.Count >= 2 ? $"'{Short(cells[0])}' is not a time." : reason;
        }

        if (!ReadingRow.TrySplitAtBlank(line, out string timeText, out string temperatureText))
        {
            return false;
        }

        if (!ReadingRow.TryTime(timeText, out time))
        {
            reason = $"'{Short(timeText)}' is not a time.";
            return false;
        }

        mended = false;
        return ReadingRow.TryTemperature(temperatureText, out degrees, out written);
    }

    /// <summary>Keeps the most rows whose times rise, so that one wrong time costs one row.</summary>
    private static List<Reading> InOrder(List<(int Line, string Text, double Seconds, double Degrees, ReadingScale Scale)> rows, List<RejectedRow> rejected)
    {
        // Longest rising run that starts at each row, from the last row back; of equal choices the earlier row is kept.
        int[] longest = new int[rows.Count];
        List<double> starts = [];
        for (int i = rows.Count - 1; i >= 0; i--)
        {
            int low = 0;
            int high = starts.Count;
            while (low < high)
            {
                int middle = (low + high) / 2;
                (low, high) = starts[middle] > rows[i].Seconds ? (middle + 1, high) : (low, middle);
            }

            longest[i] = low + 1;
            if (low == starts.Count)
            {
                starts.Add(rows[i].Seconds);
            }
            else
            {
                starts[low] = rows[i].Seconds;
            }
        }

        HashSet<int> keep = [];
        int wanted = starts.Count;
        double last = double.NegativeInfinity;
        for (int i = 0; i < rows.Count && wanted > 0; i++)
        {
            if (longest[i] == wanted && rows[i].Seconds > last)
            {
                keep.Add(i);
                last = rows[i].Seconds;
                wanted--;
            }
        }

        double zero = keep.Count > 0 ? rows[keep.Min()].Seconds : 0;
        List<Reading> readings = [];
        HashSet<double> times = [.. keep.Select(i => rows[i].Seconds)];
        for (int i = 0; i < rows.Count; i++)
        {
            var (line, text, seconds, degrees, scale) = rows[i];
            if (keep.Contains(i))
            {
                readings.Add(new Reading(line, TimeSpan.FromSeconds(seconds - zero), scale == ReadingScale.Fahrenheit
                    ? Temperature.FromDegreesFahrenheit(degrees)
                    : Temperature.FromDegreesCelsius(degrees)));
            }
            else
            {
                rejected.Add(new RejectedRow(line, text, times.Contains(seconds) ? "There is another reading at that time." : "Out of order: its time does not fit between its neighbours."));
            }
        }

        return readings;
    }

    private static char Delimiter(string[] lines)
    {
        string[] full = [.. lines.Where(line => line.Trim().Length > 0)];
        foreach (char candidate in (ReadOnlySpan<char>)['\t', ';', ','])
        {
            if (full.Count(line => line.Contains(candidate, StringComparison.Ordinal)) * 2 > full.Length)
            {
                return candidate;
            }
        }

        return ' ';
    }

    private static bool LooksLikeHeading(string line) => line.Any(char.IsAsciiLetter) && line.Count(char.IsAsciiDigit) <= 2;

    private static ReadingScale? HeadingScale(string line)
    {
        string upper = line.ToUpperInvariant();
        bool fahrenheit = upper.Contains("°F", StringComparison.Ordinal) || upper.Contains("(F)", StringComparison.Ordinal) || upper.Contains("FAHRENHEIT", StringComparison.Ordinal);
        bool celsius = upper.Contains("°C", StringComparison.Ordinal) || upper.Contains("(C)", StringComparison.Ordinal) || upper.Contains("CELSIUS", StringComparison.Ordinal);
        return fahrenheit == celsius ? null : fahrenheit ? ReadingScale.Fahrenheit : ReadingScale.Celsius;
    }

    private static string Short(string cell) => cell.Length > 30 ? cell[..30] + "…" : cell;
}
