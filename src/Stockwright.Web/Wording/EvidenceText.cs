using Stockwright.Evidence;

namespace Stockwright.Web.Wording;

/// <summary>Grades of evidence as a cook reads them.</summary>
internal static class EvidenceText
{
    public static string Of(Provenance provenance) => provenance switch
    {
        Provenance.Published => "published",
        Provenance.FromMemory => "recalled, to be checked",
        Provenance.CommonPractice => "common practice, no source",
        Provenance.Computed => "computed",
        Provenance.Estimate => "our estimate",
        Provenance.CookStated => "yours",
        _ => throw new ArgumentOutOfRangeException(nameof(provenance), provenance, "Unknown grade of evidence."),
    };
}
