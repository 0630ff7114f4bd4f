using Stockwright.Evidence;
using Stockwright.Larder;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>What no list asks for and an eater with an allergy must know all the same.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Ingredients">Plain names of the ingredients it speaks of, never empty.</param>
/// <param name="Text">A whole sentence or two.</param>
/// <param name="Source">Where it was read.</param>
/// <param name="Provenance">Grade.</param>
public sealed record AllergenRemark(string Id, IReadOnlyList<string> Ingredients, string Text, string Source, Provenance Provenance);

/// <summary>Finds what to say beside the allergen lists (B.22).</summary>
public static class AllergenRemarks
{
    /// <summary>Relatives of celery in the stock.</summary>
    public const string CeleryRelatives = "celery-relatives";

    /// <summary>Sulphites on crustaceans.</summary>
    internal const string CrustaceanSulphites = "crustacean-sulphites";

    /// <summary>Egg and milk left in wine from fining.</summary>
    internal const string WineFining = "wine-fining";

    /// <summary>The remarks for a stock, in a fixed order; empty when there are none.</summary>
    /// <param name="sources">All ingredients that went in.</param>
    internal static IReadOnlyList<AllergenRemark> Of(IReadOnlyList<AllergenSource> sources)
    {
        ArgumentNullException.ThrowIfNull(sources);
        Ingredient[] inPot = [.. sources.Where(source => source.Mass > Mass.Zero).Select(source => source.Ingredient).DistinctBy(row => row.Id, StringComparer.Ordinal)];
        return [.. new[] { Relatives(inPot), Dipped(inPot), Fining(inPot) }.OfType<AllergenRemark>()];
    }

    // Said with celery in the pot and without: leaving the celery out does not make the rest harmless.
    private static AllergenRemark? Relatives(Ingredient[] inPot)
    {
        string[] relatives = Names(inPot.Where(row => string.Equals(row.Family, BotanicalFamily.Apiaceae, StringComparison.Ordinal) && !HoldsCelery(row)));
        return relatives.Length == 0 ? null : new AllergenRemark(
            CeleryRelatives,
            relatives,
            $"Of celery’s family {(inPot.Any(HoldsCelery) ? "beside it" : "though there is no celery in it")}: {InLine(relatives)}. They may set off a celery allergy too: ask the eater. Cooking is no cure: celery has stayed allergenic after more than an hour at 100 °C (212 °F).",
            "cross-reactions: Schweiz Med Wochenschr 1985;115:258; heat: Ballmer-Weber 2002, 12 patients",
            Provenance.Published);
    }

    private static AllergenRemark? Dipped(Ingredient[] inPot)
    {
        string[] shells = Names(inPot.Where(row => row.Allergens.Contains("crustacean", StringComparer.Ordinal) && row.Allergens.Contains("sulphites", StringComparer.Ordinal)));
        return shells.Length == 0 ? null : new AllergenRemark(
            CrustaceanSulphites,
            shells,
            "Prawns and their like are often dipped in sulphite against black spots. Of 210 samples 76 held it, the most 1174 mg/kg, whole prawns up to four times as much as their meat; boiling water draws it out. A stock easily passes the 10 mg/kg from which it is declared.",
            "Food Addit Contam B 2014, doi 10.1080/19393210.2013.848943; boiling: J Food Prot 1994;57:66 (abstracts)",
            Provenance.Published);
    }

    private static AllergenRemark? Fining(Ingredient[] inPot)
    {
        string[] wines = Names(inPot.Where(row => WineSulphites.KindOf(row) is not null));
        return wines.Length == 0 ? null : new AllergenRemark(
            WineFining,
            wines,
            $"Egg or milk may be left in {InLine(wines)} from clearing it. In the EU and the UK the bottle says so: read it, and then declare egg or milk too. Elsewhere ask the seller.",
            "Regulation (EU) 579/2012, as the Food Safety Authority of Ireland explains it",
            Provenance.Published);
    }

    private static bool HoldsCelery(Ingredient row) => row.Allergens.Contains("celery", StringComparer.Ordinal);

    private static string[] Names(IEnumerable<Ingredient> rows) => [.. rows.Select(row => row.Name).Distinct(StringComparer.Ordinal)];

    private static string InLine(string[] names)
    {
        string[] small = [.. names.Select(name => name.ToLowerInvariant())];
        return small.Length == 1 ? small[0] : $"{string.Join(", ", small[..^1])} and {small[^1]}";
    }
}
