using Stockwright.Web.Fields;

namespace Stockwright.Web.Shell;

/// <summary>How the numbers in a page's address are written in other measures; a page that has none is not listed.</summary>
/// <param name="Path">Path of the page; those below it count too.</param>
/// <param name="InUnits">The form in other measures, given those its numbers are in where it does not say.</param>
internal sealed record PageUnits(string Path, Func<TypedForm, UnitSystem, UnitSystem, TypedForm> InUnits)
{
    /// <summary>The same page in other measures; addresses of pages not listed only lose their say on measures.</summary>
    public static string Turn(IEnumerable<PageUnits> pages, string address, UnitSystem standing, UnitSystem to)
    {
        int mark = address.IndexOf('?', StringComparison.Ordinal);
        if (mark < 0)
        {
            return address;
        }

        string path = address[..mark];
        TypedForm form = TypedForm.From(Microsoft.AspNetCore.WebUtilities.QueryHelpers.ParseQuery(address[mark..]));
        TypedForm turned = pages.FirstOrDefault(page => page.Holds(path)) is { } page ? page.InUnits(form, standing, to) : form.With(ReaderUnits.QueryKey, null);
        string query = turned.ToQuery();
        return query.Length == 0 ? path : $"{path}?{query}";
    }

    private bool Holds(string path) =>
        string.Equals(path, Path, StringComparison.OrdinalIgnoreCase) || path.StartsWith(Path + "/", StringComparison.OrdinalIgnoreCase);
}
