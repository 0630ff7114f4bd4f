using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>Writes plans' forms in other measures.</summary>
internal static class PlanUnits
{
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

            if (PlanFields.MeasureOf(name) is { } measure)
            {
                converted.Add(KeyValuePair.Create(name, FormUnits.TurnNumber(value, measure, from, to)));
            }
            else if (RowFields.TryRead(name, out RowName? row) && row.IsMass)
            {
                converted.Add(KeyValuePair.Create(RowFields.MassName(row.Family, row.Row, to), FormUnits.TurnNumber(value, Measure.Mass, row.MassUnits, to)));
            }
            else if (row is not null && row.Part is "price")
            {
                converted.Add(KeyValuePair.Create(name, FormUnits.TurnNumber(value, Measure.Price, from, to)));
            }
            else
            {
                converted.Add(KeyValuePair.Create(name, value));
            }
        }

        return new TypedForm(converted);
    }
}
