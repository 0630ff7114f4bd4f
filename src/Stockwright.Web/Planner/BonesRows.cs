using Stockwright.Web.Forms;

namespace Stockwright.Web.Planner;

/// <summary>
/// Rows of bones in a form. Rows may be left blank or taken out, so the numbers may have gaps; they are numbered afresh
/// from zero before anything else looks at them.
/// </summary>
internal static class BonesRows
{
    /// <summary>The form with its filled rows numbered from zero, in order, at the end; blank rows are dropped.</summary>
    public static TypedForm Renumber(TypedForm form)
    {
        SortedDictionary<int, List<KeyValuePair<string, string>>> rows = [];
        List<KeyValuePair<string, string>> others = new(form.Entries.Count);
        foreach (KeyValuePair<string, string> entry in form.Entries)
        {
            if (!PlanFields.TryReadBonesName(entry.Key, out int row, out string? part))
            {
                others.Add(entry);
            }
            else if (!string.IsNullOrWhiteSpace(entry.Value))
            {
                if (!rows.TryGetValue(row, out List<KeyValuePair<string, string>>? parts))
                {
                    rows[row] = parts = [];
                }

                parts.Add(KeyValuePair.Create(part, entry.Value));
            }
        }

        int index = 0;
        foreach (List<KeyValuePair<string, string>> parts in rows.Values)
        {
            others.AddRange(parts.Select(part => KeyValuePair.Create(PlanFields.BonesField(index, part.Key), part.Value)));
            index++;
        }

        return new TypedForm(others);
    }

    /// <summary>How many rows a renumbered form has.</summary>
    public static int Count(TypedForm form)
    {
        int count = 0;
        while (form.Has(PlanFields.BonesField(count, "cut")) || form.Has(PlanFields.BonesField(count, "kg")) || form.Has(PlanFields.BonesField(count, "lb")))
        {
            count++;
        }

        return count;
    }
}
