namespace Stockwright.Evidence;

/// <summary>The grades of evidence as data files spell them.</summary>
internal static class EvidenceGrades
{
    /// <summary>All spellings, for messages.</summary>
    internal const string Names = "published, fromMemory, commonPractice, computed, estimate, cookStated";

    /// <summary>How data files spell a grade.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The grade is not one of the enumeration's.</exception>
    public static string Spell(Provenance provenance) => provenance switch
    {
        Provenance.Published => "published",
        Provenance.FromMemory => "fromMemory",
        Provenance.CommonPractice => "commonPractice",
        Provenance.Computed => "computed",
        Provenance.Estimate => "estimate",
        Provenance.CookStated => "cookStated",
        _ => throw new ArgumentOutOfRangeException(nameof(provenance), provenance, "Unknown grade of evidence."),
    };

    /// <summary>Reads a spelling.</summary>
    public static bool TryParse(string text, out Provenance provenance)
    {
        foreach (Provenance candidate in Enum.GetValues<Provenance>())
        {
            if (string.Equals(Spell(candidate), text, StringComparison.Ordinal))
            {
                provenance = candidate;
                return true;
            }
        }

        provenance = default;
        return false;
    }
}
