using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using Stockwright.Predicting;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Planning;

/// <summary>A field of a numbered row, taken apart.</summary>
/// <param name="Family">Which rows: <see cref="RowFields.Bones"/>, <see cref="RowFields.More"/> or <see cref="RowFields.Set"/>.</param>
/// <param name="Row">Its number.</param>
/// <param name="Part"><c>cut</c>, <c>kg</c>, <c>lb</c> or <c>price</c>.</param>
internal sealed record RowName(string Family, int Row, string Part)
{
    public bool IsMass => Part is "kg" or "lb";

    /// <summary>Measures a mass says it is in by its name.</summary>
    public UnitSystem MassUnits => Part is "lb" ? UnitSystem.UsCustomary : UnitSystem.Metric;
}

/// <summary>
/// Rows of cuts in a form. Rows may be left blank or taken out, so the numbers may have gaps; they are numbered afresh
/// from zero before anything else looks at them.
/// </summary>
internal static partial class RowFields
{
    /// <summary>Bones at hand, which decide how much is made.</summary>
    public const string Bones = "bones";

    /// <summary>Cuts to try more or less of.</summary>
    public const string More = "more";

    /// <summary>Cuts at hand to make the stock set.</summary>
    public const string Set = "set";

    /// <summary>More rows than any kitchen has cuts.</summary>
    public const int Most = 40;

    public static string Name(string family, int row, string part) => string.Create(CultureInfo.InvariantCulture, $"{family}-{row}-{part}");

    /// <summary>Field of a row's mass, named by its unit: <c>kg</c> or <c>lb</c>.</summary>
    public static string MassName(string family, int row, UnitSystem units) => Name(family, row, Measure.Mass.In(units).Label);

    public static bool TryRead(string name, [NotNullWhen(true)] out RowName? row)
    {
        row = RowPattern().Match(name) is { Success: true } match
            ? new RowName(match.Groups["family"].Value, int.Parse(match.Groups["row"].ValueSpan, CultureInfo.InvariantCulture), match.Groups["part"].Value)
            : null;
        if (row is { Part: "price", Family: not Set })
        {
            row = null;
        }

        return row is not null;
    }

    /// <summary>The form with its filled rows numbered from zero, in order, at the end; blank rows are dropped.</summary>
    public static TypedForm Renumber(TypedForm form)
    {
        SortedDictionary<string, SortedDictionary<int, List<KeyValuePair<string, string>>>> families = new(StringComparer.Ordinal);
        List<KeyValuePair<string, string>> others = new(form.Entries.Count);
        foreach (KeyValuePair<string, string> entry in form.Entries)
        {
            if (!TryRead(entry.Key, out RowName? name))
            {
                others.Add(entry);
            }
            else if (!string.IsNullOrWhiteSpace(entry.Value))
            {
                if (!families.TryGetValue(name.Family, out SortedDictionary<int, List<KeyValuePair<string, string>>>? rows))
                {
                    families[name.Family] = rows = [];
                }

                if (!rows.TryGetValue(name.Row, out List<KeyValuePair<string, string>>? parts))
                {
                    rows[name.Row] = parts = [];
                }

                parts.Add(KeyValuePair.Create(name.Part, entry.Value));
            }
        }

        foreach ((string family, SortedDictionary<int, List<KeyValuePair<string, string>>> rows) in families)
        {
            int index = 0;
            foreach (List<KeyValuePair<string, string>> parts in rows.Values)
            {
                others.AddRange(parts.Select(part => KeyValuePair.Create(Name(family, index, part.Key), part.Value)));
                index++;
            }
        }

        return new TypedForm(others);
    }

    /// <summary>How many rows of a family a renumbered form has.</summary>
    public static int Count(TypedForm form, string family)
    {
        int count = 0;
        while (form.Has(Name(family, count, "cut")) || form.Has(Name(family, count, "kg")) || form.Has(Name(family, count, "lb")) || form.Has(Name(family, count, "price")))
        {
            count++;
        }

        return count;
    }

    /// <summary>Reads a row's mass; the field says its unit itself, whichever measures the rest of the form is in.</summary>
    public static Mass? ReadMass(FieldReader reader, string family, int row, (Mass Least, Mass Most) range, string? missing)
    {
        UnitSystem unitOfRow = reader.Form.Has(MassName(family, row, reader.Units)) || !reader.Form.Has(MassName(family, row, Other(reader.Units)))
            ? reader.Units
            : Other(reader.Units);
        FieldReader single = new(reader.Form, unitOfRow);
        Mass? mass = NumberRow.Mass(MassName(family, row, unitOfRow), "Weight", range).Read(single, missing);
        foreach (InputProblem problem in single.Problems)
        {
            reader.Report(MassName(family, row, reader.Units), problem.Message);
        }

        return mass;
    }

    /// <summary>Writes a row: the cut, and its mass in the measures given.</summary>
    public static void Put(List<KeyValuePair<string, string>> entries, string family, int row, string cut, Mass? mass, UnitSystem units)
    {
        entries.Add(KeyValuePair.Create(Name(family, row, "cut"), cut));
        if (mass is { } weight)
        {
            entries.Add(KeyValuePair.Create(MassName(family, row, units), KitchenNumber.Write(Measure.Mass.In(units).FromSi(weight.Kilograms))));
        }
    }

    /// <summary>A row's price by weight.</summary>
    public static NumberRow<double> Price(string family, int row) => NumberRow.Plain(Name(family, row, "price"), "Price", Measure.Price, AvailableCut.PriceRange);

    /// <summary>What to show in a row's mass field: a weight given in the other system's unit is turned into the reader's.</summary>
    public static string MassTyped(TypedForm form, string family, int row, UnitSystem units)
    {
        string own = form[MassName(family, row, units)];
        string field = MassName(family, row, Other(units));
        return own.Length > 0 || form[field].Length == 0
            ? own
            : PlanQuery.InUnits(new TypedForm([KeyValuePair.Create(field, form[field])]), Other(units), units)[MassName(family, row, units)];
    }

    public static UnitSystem Other(UnitSystem units) => units == UnitSystem.Metric ? UnitSystem.UsCustomary : UnitSystem.Metric;

    [GeneratedRegex(@"\A(?<family>bones|more|set)-(?<row>[0-9]{1,6})-(?<part>cut|kg|lb|price)\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex RowPattern();
}
