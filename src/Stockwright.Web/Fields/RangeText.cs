namespace Stockwright.Web.Fields;

/// <summary>Writes a range once with its unit.</summary>
internal static class RangeText
{
    /// <summary>From two written quantities: <c>1.02 to 1.06 kg per L</c>; empty when both read the same.</summary>
    public static string Of(string low, string high)
    {
        if (string.Equals(low, high, StringComparison.Ordinal))
        {
            return "";
        }

        // A figure and its unit are kept together by a no-break space; "1 lb 5 oz" has two and stays whole.
        int gap = low.IndexOf('\u00A0', StringComparison.Ordinal);
        bool sameUnit = gap > 0 && high.EndsWith(low[gap..], StringComparison.Ordinal)
            && high.IndexOf('\u00A0', StringComparison.Ordinal) == high.Length - (low.Length - gap);
        return $"{(sameUnit ? low[..gap] : low)} to {high}";
    }
}
