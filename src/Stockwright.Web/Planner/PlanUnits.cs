using Stockwright.Web.Forms;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Planner;

/// <summary>Writes plans' forms in other measures.</summary>
internal static class PlanUnits
{
    /// <summary>Tolerance of numbers turned from one system to the other: fine enough that the plan stays the same, coarse enough to read.</summary>
    private const double NeatTolerance = 1e-4;

    public static TypedForm Convert(TypedForm form, UnitSystem standing, UnitSystem to)
    {
        UnitSystem from = ReaderUnits.Read(form[PlanFields.Units].Trim()) ?? standing;
        List<KeyValuePair<string, string>> converted = [KeyValuePair.Create(PlanFields.Units, ReaderUnits.Word(to))];
        foreach ((string name, string value) in form.Entries)
        {
            if (string.Equals(name, PlanFields.Units, StringComparison.Ordinal))
            {
                continue;
            }

            if (PlanFields.Measured.TryGetValue(name, out Measure? measure))
            {
                converted.Add(KeyValuePair.Create(name, Turn(value, measure, from, to)));
            }
            else if (RowFields.TryRead(name, out RowName? row) && row.IsMass)
            {
                converted.Add(KeyValuePair.Create(RowFields.MassName(row.Family, row.Row, to), Turn(value, Measure.Mass, row.MassUnits, to)));
            }
            else if (row is not null && row.Part is "price")
            {
                converted.Add(KeyValuePair.Create(name, Turn(value, Measure.Price, from, to)));
            }
            else
            {
                converted.Add(KeyValuePair.Create(name, value));
            }
        }

        return new TypedForm(converted);
    }

    /// <summary>A typed number in the other measures; what cannot be read stays as typed.</summary>
    internal static string Turn(string value, Measure measure, UnitSystem from, UnitSystem to) =>
        from != to && KitchenNumber.TryParse(value, out double typed, out _)
            ? KitchenNumber.Write(measure.In(to).FromSi(measure.In(from).ToSi(typed)), NeatTolerance)
            : value;
}
