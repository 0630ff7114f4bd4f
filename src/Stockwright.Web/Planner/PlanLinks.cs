using Microsoft.AspNetCore.WebUtilities;
using Stockwright.Web.CoolingCases;
using Stockwright.Web.Forms;
using Stockwright.Web.KeepingTimes;
using Stockwright.Web.StrengthSums;

namespace Stockwright.Web.Planner;

/// <summary>Links to plans.</summary>
internal static class PlanLinks
{
    /// <summary>Page of a plan.</summary>
    public const string Page = "/plan";

    /// <summary>The same page in other measures; numbers of a plan, a strength sum or a cooling case are converted, other pages only lose their say on measures.</summary>
    public static string InUnits(string address, UnitSystem standing, UnitSystem to)
    {
        int mark = address.IndexOf('?', StringComparison.Ordinal);
        if (mark < 0)
        {
            return address;
        }

        string path = address[..mark];
        TypedForm form = TypedForm.From(QueryHelpers.ParseQuery(address[mark..]));
        bool isPlan = string.Equals(path, Page, StringComparison.OrdinalIgnoreCase)
            || path.StartsWith(Page + "/", StringComparison.OrdinalIgnoreCase);
        bool isStrength = string.Equals(path, StrengthLinks.Page, StringComparison.OrdinalIgnoreCase);
        bool isCooling = string.Equals(path, CoolingWriter.Page, StringComparison.OrdinalIgnoreCase);
        bool isKeeping = string.Equals(path, KeepingDesk.Page, StringComparison.OrdinalIgnoreCase);
        string query = (isCooling ? CoolingWriter.InUnits(form, standing, to) : isKeeping ? FormUnits.Turn(form, KeepingFields.MeasureOf, standing, to) : isStrength ? StrengthLinks.InUnits(form, standing, to) : isPlan ? PlanQuery.InUnits(form, standing, to) : form.With(PlanFields.Units, null)).ToQuery();
        return query.Length == 0 ? path : $"{path}?{query}";
    }
}
