using System.Globalization;

namespace Stockwright.Web.Tests.Fuzz.Shared;

/// <summary>One thing to send within what the app says it takes.</summary>
/// <param name="Target">Form or operation.</param>
/// <param name="Changes">Fields that are changed.</param>
/// <param name="Alone">The one field with a stated range it is about; null for several at once.</param>
internal sealed record InRangeCase(FuzzTarget Target, IReadOnlyDictionary<string, string> Changes, string? Alone)
{
    public override string ToString() => $"{Target}: {string.Join(", ", Changes.Select(change => $"{change.Key}={change.Value}"))}";
}

/// <summary>Values within the stated ranges: each field alone at both ends, each option, and several fields at once.</summary>
internal static class InRangeCases
{
    private static readonly string[] Dates = ["2000-01-01", "2200-12-31", "2026-03-29", "2028-02-29"];
    private static readonly string[] Times = ["00:00", "23:59", "02:30", "12:00"];

    /// <summary>Every field with a stated range at both its ends, every option, and every text at its longest.</summary>
    public static IEnumerable<InRangeCase> Alone(FuzzTarget target)
    {
        foreach (FuzzField field in target.Fields.Where(field => field.Kind != FieldKind.Hidden))
        {
            string[] values = target.Ranges.TryGetValue(field.Name, out var known) ? [known.Range.LowText, known.Range.HighText]
                : field.Kind switch
                {
                    FieldKind.Choice => [.. field.Options.Take(40)],
                    FieldKind.Date => Dates,
                    FieldKind.Time => Times,
                    FieldKind.Text => ["x", new string('w', field.MaxLength ?? 40)],
                    _ => [],
                };
            foreach (string value in values)
            {
                yield return new InRangeCase(target, With(target, field.Name, value), target.Ranges.ContainsKey(field.Name) ? field.Name : null);
            }
        }
    }

    /// <summary>
    /// A sample for every build: each field with a stated range alone at one end, its neighbour at the other, and the options of all
    /// choices by turns. Called with both values of <paramref name="odd"/>, it has every field at both its ends.
    /// </summary>
    public static IEnumerable<InRangeCase> Sample(FuzzTarget target, bool odd, int turns)
    {
        foreach ((string name, (StatedRange range, _)) in target.Ranges)
        {
            yield return new InRangeCase(target, With(target, name, odd ? range.HighText : range.LowText), name);
            odd = !odd;
        }

        for (int turn = odd ? turns : 0; turn < (odd ? 2 * turns : turns); turn++)
        {
            Dictionary<string, string> changes = new(target.Needed, StringComparer.Ordinal);
            foreach (FuzzField field in target.Fields.Where(field => field.Kind == FieldKind.Choice && field.Options.Count > 1))
            {
                changes[field.Name] = field.Options[turn % field.Options.Count];
            }

            yield return new InRangeCase(target, changes, null);
        }
    }

    /// <summary>One field inside its range, or two to six fields at once at their ends or inside.</summary>
    public static InRangeCase Any(IReadOnlyList<FuzzTarget> targets, Random random)
    {
        FuzzTarget target = targets[random.Next(targets.Count)];
        FuzzField[] fields = [.. target.Fields.Where(field => field.Kind is not (FieldKind.Hidden or FieldKind.File))];
        Dictionary<string, string> changes = new(target.Needed, StringComparer.Ordinal);
        int count = random.Next(4) == 0 ? 1 : random.Next(2, 7);
        for (int index = 0; index < count; index++)
        {
            FuzzField field = fields[random.Next(fields.Length)];
            foreach ((string name, string value) in With(target, field.Name, Value(target, field, random)))
            {
                changes[name] = value;
            }
        }

        return new InRangeCase(target, changes, null);
    }

    private static string Value(FuzzTarget target, FuzzField field, Random random)
    {
        if (target.Ranges.TryGetValue(field.Name, out var known))
        {
            return random.Next(6) switch
            {
                0 => known.Range.LowText,
                1 => known.Range.HighText,
                _ => known.Range.Inside(random),
            };
        }

        return field.Kind switch
        {
            FieldKind.Choice => field.Options[random.Next(field.Options.Count)],
            FieldKind.Date => new DateOnly(2000, 1, 1).AddDays(random.Next(73_000)).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            FieldKind.Time => string.Create(CultureInfo.InvariantCulture, $"{random.Next(24):00}:{random.Next(60):00}"),
            _ => random.Next(3) switch
            {
                0 => "",
                1 => "Zwiebel & \"Öl\" <½>",
                _ => random.Next(1, 500).ToString(CultureInfo.InvariantCulture),
            },
        };
    }

    private static Dictionary<string, string> With(FuzzTarget target, string field, string value)
    {
        Dictionary<string, string> changes = new(target.Needed, StringComparer.Ordinal);
        if (target.Ranges.TryGetValue(field, out var known))
        {
            foreach ((string name, string chosen) in known.Among)
            {
                changes[name] = chosen;
            }
        }

        changes[field] = value;
        return changes;
    }
}
