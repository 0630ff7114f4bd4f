using System.Collections.Frozen;

namespace Stockwright.Larder;

/// <summary>
/// Allergens as the larder writes them: the fourteen groups of Regulation (EU) 1169/2011, Annex II.
/// Other places name fewer or split them further; see docs/larder.md.
/// </summary>
internal static class Allergen
{
    /// <summary>Every word a larder row may use.</summary>
    public static FrozenSet<string> Known { get; } = FrozenSet.Create(
        StringComparer.Ordinal,
        "gluten",
        "crustacean",
        "egg",
        "fish",
        "peanut",
        "soy",
        "milk",
        "nuts",
        "celery",
        "mustard",
        "sesame",
        "sulphites",
        "lupin",
        "mollusc");
}
