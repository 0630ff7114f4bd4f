using System.Globalization;
using System.Text.RegularExpressions;

namespace Stockwright.Cooling.Readings;

/// <summary>Reads the cells of a row of readings: a time, a temperature.</summary>
internal static partial class ReadingRow
{
    /// <summary>A time of day, a date and time, or a time since the start.</summary>
    /// <param name="Seconds">Since midnight, since an arbitrary day, or since the start.</param>
    /// <param name="IsClock">True for a time of day without a date, which may pass midnight.</param>
    internal readonly record struct TimeCell(double Seconds, bool IsClock);

    /// <summary>Splits a row; quotes hold a delimiter that is part of a cell.</summary>
    internal static List<string> Split(string row, char delimiter)
    {
        List<string> cells = [];
        int start = 0;
        bool quoted = false;
        for (int i = 0; i <= row.Length; i++)
        {
            if (i < row.Length && row[i] == '"')
            {
                quoted = !quoted;
            }

            if (i == row.Length || (row[i] == delimiter && !quoted))
            {
                cells.Add(row[start..i].Replace("\"", "", StringComparison.Ordinal).Trim());
                start = i + 1;
            }
        }

        return cells;
    }

    /// <summary>Joins what a decimal comma tore apart in a row delimited by commas: "10:30,57,2" and "1,5,57,2".</summary>
    internal static List<string> MendDecimalCommas(List<string> cells)
    {
        if (cells.Count == 3 && Integer().IsMatch(cells[1]) && Digits().IsMatch(cells[2]))
        {
            return [cells[0], cells[1] + "." + cells[2]];
        }

        return cells.Count == 4 && Integer().IsMatch(cells[0]) && Digits().IsMatch(cells[1]) && Integer().IsMatch(cells[2]) && Digits().IsMatch(cells[3])
            ? [cells[0] + "." + cells[1], cells[2] + "." + cells[3]]
            : cells;
    }

    /// <summary>Time and temperature with only blanks between; the temperature is the last number of the row.</summary>
    internal static bool TrySplitAtBlank(string row, out string time, out string temperature)
    {
        Match match = Blank().Match(row.Trim());
        time = match.Groups["time"].Value;
        temperature = match.Groups["temp"].Value;
        return match.Success;
    }

    internal static bool TryTime(string cell, out TimeCell time)
    {
        time = default;
        Match clock = Clock().Match(cell);
        if (clock.Success)
        {
            double hours = Value(clock, "h");
            double minutes = Value(clock, "m");
            double seconds = Value(clock, "s");
            string half = clock.Groups["half"].Value;
            if (minutes >= 60 || seconds >= 60 || (half.Length > 0 && hours is < 1 or > 12 && half.Length > 0))
            {
                return false;
            }

            if (half.Length > 0)
            {
                hours = (hours % 12) + (half[0] is 'p' or 'P' ? 12 : 0);
            }

            time = new TimeCell((hours * 3600) + (minutes * 60) + seconds, IsClock: true);
            return true;
        }

        if (Moment().IsMatch(cell) && DateTimeOffset.TryParse(
            cell, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out DateTimeOffset moment))
        {
            time = new TimeCell(moment.Ticks / (double)TimeSpan.TicksPerSecond, IsClock: false);
            return true;
        }

        Match span = Span().Match(cell);
        if (!span.Success || cell.Length == 0)
        {
            return false;
        }

        // A bare number is minutes.
        double total = span.Groups["bare"].Success
            ? Value(span, "bare") * 60
            : (Value(span, "hours") * 3600) + (Value(span, "minutes") * 60) + Value(span, "seconds");
        bool any = span.Groups["bare"].Success || span.Groups["hours"].Success || span.Groups["minutes"].Success || span.Groups["seconds"].Success;
        time = new TimeCell(total, IsClock: false);
        return any && total < 1e7;
    }

    internal static bool IsDate(string cell) => DateOnly.TryParseExact(cell, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _);

    /// <summary>A temperature with its scale when that is written.</summary>
    internal static bool TryTemperature(string cell, out double degrees, out ReadingScale? scale)
    {
        Match match = Degrees().Match(cell);
        scale = match.Groups["unit"].Value.ToUpperInvariant() switch
        {
            "C" => ReadingScale.Celsius,
            "F" => ReadingScale.Fahrenheit,
            _ => null,
        };
        degrees = match.Success ? Value(match, "value") : double.NaN;
        return match.Success;
    }

    private static double Value(Match match, string group) => match.Groups[group] is { Success: true } found
        ? double.Parse(found.Value.Replace(',', '.').Replace('−', '-'), CultureInfo.InvariantCulture)
        : 0;

    [GeneratedRegex(@"^[-−]?\d+$", RegexOptions.None, 5000)]
    private static partial Regex Integer();

    [GeneratedRegex(@"^\d{1,2}$", RegexOptions.None, 5000)]
    private static partial Regex Digits();

    [GeneratedRegex(@"^(?<time>\S.*?)\s+(?<temp>[-−]?\d+(?:[.,]\d+)?\s*[°º]?\s*[CcFf]?)$", RegexOptions.None, 5000)]
    private static partial Regex Blank();

    [GeneratedRegex(@"^(?<h>\d{1,2}):(?<m>\d{2})(?::(?<s>\d{2}(?:[.,]\d+)?))?\s*(?<half>[AaPp])?(?:[.]?[Mm][.]?)?$", RegexOptions.None, 5000)]
    private static partial Regex Clock();

    [GeneratedRegex(@"^\d{4}-\d{2}-\d{2}[T ]\d{1,2}:\d{2}", RegexOptions.None, 5000)]
    private static partial Regex Moment();

    [GeneratedRegex(
        @"^(?:(?<bare>\d+(?:[.,]\d+)?)|(?:(?<hours>\d+(?:[.,]\d+)?)\s*(?:h|hr|hrs|hour|hours)[.]?)?\s*(?:(?<minutes>\d+(?:[.,]\d+)?)\s*(?:m|min|mins|minute|minutes)?[.]?)?\s*(?:(?<seconds>\d+(?:[.,]\d+)?)\s*(?:s|sec|seconds)[.]?)?)$",
        RegexOptions.IgnoreCase,
        5000)]
    private static partial Regex Span();

    [GeneratedRegex(@"^(?<value>[-−+]?\d+(?:[.,]\d+)?)\s*[°º]?\s*(?<unit>[CcFf])?$", RegexOptions.None, 5000)]
    private static partial Regex Degrees();
}
