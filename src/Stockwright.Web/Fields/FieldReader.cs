using System.Globalization;

namespace Stockwright.Web.Fields;

/// <summary>Reads single fields of a form and gathers what is wrong with them.</summary>
internal sealed class FieldReader(TypedForm form, UnitSystem units)
{
    private readonly List<InputProblem> problems = [];

    public IReadOnlyList<InputProblem> Problems => problems;

    public TypedForm Form => form;

    public UnitSystem Units => units;

    public void Report(string field, string message) => problems.Add(new InputProblem(field, message));

    /// <summary>A number in SI units; null when blank or wrong. A blank that is required is reported as <paramref name="missing"/>.</summary>
    public double? Number(string field, string what, Measure measure, double leastSi, double mostSi, string? missing = null)
    {
        string text = form[field];
        if (string.IsNullOrWhiteSpace(text))
        {
            if (missing is not null)
            {
                Report(field, missing);
            }

            return null;
        }

        if (!KitchenNumber.TryParse(text, out double typed, out string problem))
        {
            Report(field, problem);
            return null;
        }

        FieldUnit unit = measure.In(units);
        double si = unit.ToSi(typed);

        // A limit typed in the other system's units is that limit, whatever its last digit is in these.
        double tolerance = 1e-9 * Math.Max(Math.Abs(leastSi), Math.Abs(mostSi));
        if (si >= leastSi - tolerance && si <= mostSi + tolerance)
        {
            return Math.Clamp(si, leastSi, mostSi);
        }

        string label = unit.Label.Length == 0 ? "" : $" {unit.Label}";
        string range = $"{End(unit.FromSi(leastSi), isLeast: true)} to {End(unit.FromSi(mostSi), isLeast: false)}{label}";
        Report(field, $"{what}: {text.Trim()}{label} is too {(si < leastSi ? "small" : "large")}. It can be {range}.");
        return null;
    }

    /// <summary>One of a few words; the first when blank.</summary>
    public T? Word<T>(string field, string what, (string Word, T Value)[] words)
        where T : struct, Enum
    {
        string text = form[field].Trim();
        if (text.Length == 0)
        {
            return words[0].Value;
        }

        foreach ((string word, T value) in words)
        {
            if (string.Equals(word, text, StringComparison.OrdinalIgnoreCase))
            {
                return value;
            }
        }

        Report(field, $"{what}: {KitchenNumber.Quote(text)} is not one of {string.Join(", ", words.Select(pair => pair.Word))}.");
        return null;
    }

    public DateOnly? Date(string field)
    {
        string text = form[field].Trim();
        if (text.Length == 0)
        {
            return null;
        }

        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date))
        {
            Report(field, $"{KitchenNumber.Quote(text)} is not a date. Write year-month-day, like 2026-12-31.");
            return null;
        }

        if (date.Year is < 2000 or > 2200)
        {
            Report(field, $"The year {date.Year.ToString(CultureInfo.InvariantCulture)} is not one we plan for.");
            return null;
        }

        return date;
    }

    public TimeOnly? Time(string field)
    {
        string text = form[field].Trim();
        if (text.Length == 0)
        {
            return null;
        }

        if (!TimeOnly.TryParseExact(text, ["HH:mm", "H:mm", "HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time))
        {
            Report(field, $"{KitchenNumber.Quote(text)} is not a time of day. Write hours and minutes, like 08:30 or 17:45.");
            return null;
        }

        return time;
    }

    /// <summary>An end of a range with few digits, rounded into the range: whoever types what they were told is not refused again.</summary>
    private static string End(double value, bool isLeast)
    {
        string text = KitchenNumber.Write(value, 2e-3);
        decimal told = decimal.Parse(text, CultureInfo.InvariantCulture);
        double beyond = isLeast ? value - (double)told : (double)told - value;
        if (beyond <= 1e-9 * Math.Abs(value))
        {
            return text;
        }

        decimal last = new(1, 0, 0, isNegative: !isLeast, told.Scale);
        return (told + last).ToString(CultureInfo.InvariantCulture);
    }
}
