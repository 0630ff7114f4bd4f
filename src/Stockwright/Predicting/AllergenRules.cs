using Stockwright.Larder;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>An ingredient of the stock, for the allergen lists.</summary>
/// <param name="Ingredient">The larder row.</param>
/// <param name="Mass">Mass that went in.</param>
internal sealed record AllergenSource(Ingredient Ingredient, Mass Mass);

/// <summary>
/// The allergen lists (B.22): Regulation (EU) 1169/2011 Annex II and the Canadian regulations read in the text; the US and the Australia
/// New Zealand lists from memory. Canada asks for the species of crustacean and mollusc (Canadian Food Inspection Agency, how to label
/// allergens) and of fish [from memory]. To be checked against the law in force before a label is printed.
/// </summary>
internal static class AllergenRules
{
    /// <summary>Sulphites count from here, mg of sulphur dioxide per kg: above it in the EU and UK, at it or above elsewhere.</summary>
    public const double SulphiteLimitMilligramsPerKilogram = 10;

    private const string CrustaceanSulphites =
        "Ask for untreated prawns; shells and heads hold the most. Declare it unless the supplier says they are untreated: how much there is only the supplier knows.";

    private static readonly string[] Words = ["celery", "fish", "crustacean", "mollusc", "soy", "gluten", "egg", "milk", "mustard", "sesame", "peanut", "nuts", "lupin", "sulphites"];

    /// <summary>What each place asks to be declared.</summary>
    /// <param name="sources">All ingredients that went in.</param>
    /// <param name="stock">Mass of the finished stock, above zero: wine is diluted by it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass of the stock is not above zero.</exception>
    public static IReadOnlyList<AllergenReport> Report(IReadOnlyList<AllergenSource> sources, Mass stock)
    {
        ArgumentNullException.ThrowIfNull(sources);
        if (!(stock > Mass.Zero))
        {
            throw new ArgumentOutOfRangeException(nameof(stock), stock, "The mass of the stock must be above zero.");
        }

        return [.. Enum.GetValues<Jurisdiction>().Select(place => Report(place, sources, stock))];
    }

    /// <summary>Whether sulphites at a level must be declared.</summary>
    public static bool SulphitesCount(Jurisdiction place, double milligramsPerKilogram) =>
        place == Jurisdiction.EuropeanUnionAndUnitedKingdom
            ? milligramsPerKilogram > SulphiteLimitMilligramsPerKilogram
            : milligramsPerKilogram >= SulphiteLimitMilligramsPerKilogram;

    private static AllergenReport Report(Jurisdiction place, IReadOnlyList<AllergenSource> sources, Mass stock)
    {
        List<AllergenFlag> flags = [];
        foreach (string word in Words)
        {
            AllergenSource[] holding = [.. sources.Where(source => source.Mass > Mass.Zero && source.Ingredient.Allergens.Contains(word, StringComparer.Ordinal))];
            if (holding.Length > 0 && Flag(place, word, holding, stock) is { } flag)
            {
                flags.Add(flag);
            }
        }

        string statement = flags.Count > 0
            ? "By ingredient only. Traces from boards, pots and suppliers are not counted: read the labels of what you bought."
            : "None of the ingredients planned is on this list. That is not a promise: traces from boards, pots and suppliers are not counted, and labels of bought ingredients must be read.";
        return new AllergenReport(place, PlaceName(place), flags, [.. new[] { WineBelowTheLimit(place, sources, stock) }.OfType<string>()], statement);
    }

    private static AllergenFlag? Flag(Jurisdiction place, string word, AllergenSource[] holding, Mass stock)
    {
        if (word is "sulphites")
        {
            return Sulphites(place, holding, stock);
        }

        (string Name, string? Note)? listed = Listed(place, word);
        return listed is { } entry ? new AllergenFlag(word, entry.Name, Names(holding), Clause(place, word), entry.Note) : null;
    }

    private static AllergenFlag? Sulphites(Jurisdiction place, AllergenSource[] holding, Mass stock)
    {
        AllergenSource[] wines = [.. holding.Where(IsWine)];
        AllergenSource[] others = [.. holding.Where(source => !IsWine(source))];
        if (others.Length == 0 && !SulphitesCount(place, WineSulphites.Level(place, wines, stock.Kilograms)))
        {
            return null;
        }

        List<string> notes = [];
        if (others.Any(IsCrustacean))
        {
            notes.Add(CrustaceanSulphites);
        }

        string[] unknown = Names([.. others.Where(source => !IsCrustacean(source))]);
        if (unknown.Length > 0)
        {
            notes.Add($"How much there is in {string.Join("; ", unknown).ToLowerInvariant()} only the label tells.");
        }

        if (wines.Length > 0)
        {
            notes.Add($"{AtTheCeiling(place, wines, stock)} Boiling does not drive it off reliably, and reducing the stock raises it.");
        }

        return new AllergenFlag("sulphites", "sulphites (sulphur dioxide)", Names(holding), Clause(place, "sulphites"), string.Join(' ', notes));
    }

    /// <summary>Says why wine is not declared, where it is not; null without wine, or when it is declared.</summary>
    private static string? WineBelowTheLimit(Jurisdiction place, IReadOnlyList<AllergenSource> sources, Mass stock)
    {
        AllergenSource[] wines = [.. sources.Where(source => source.Mass > Mass.Zero && IsWine(source))];
        if (wines.Length == 0 || SulphitesCount(place, WineSulphites.Level(place, wines, stock.Kilograms)))
        {
            return null;
        }

        double sweet = WineSulphites.Level(place, wines, stock.Kilograms, sweetest: true);
        string declare = SulphitesCount(place, sweet)
            ? FormattableString.Invariant($" As a sweet wine it would bring {sweet:0.#} mg/kg: declare sulphites if yours is one.")
            : "";
        return $"Sulphites are not listed for the wine. {AtTheCeiling(place, wines, stock)}{declare} Reducing the stock raises it.";
    }

    private static string AtTheCeiling(Jurisdiction place, AllergenSource[] wines, Mass stock)
    {
        SulphiteCeiling[] ceilings = [.. wines.Select(source => WineSulphites.Ceiling(place, WineSulphites.KindOf(source.Ingredient)!.Value)).Distinct()];
        string taken = string.Join("; ", ceilings.Select(ceiling => FormattableString.Invariant($"{ceiling.MilligramsPerLitre:0} mg/L for {ceiling.Text}, {ceiling.Source}")));
        string sweet = WineSulphites.Sweetest(place) is { } most && wines.Any(source => WineSulphites.KindOf(source.Ingredient) != WineKind.Fortified)
            ? FormattableString.Invariant($" {most.Text} may hold {most.MilligramsPerLitre:0} mg/L.")
            : "";
        string counts = place == Jurisdiction.EuropeanUnionAndUnitedKingdom ? "above 10 mg/kg" : "from 10 mg/kg";
        return FormattableString.Invariant($"Wine as full of sulphite as the law lets it be would bring {WineSulphites.Level(place, wines, stock.Kilograms):0.#} mg/kg to the finished stock ({taken}); it is declared {counts}.{sweet}");
    }

    private static bool IsWine(AllergenSource source) =>
        WineSulphites.KindOf(source.Ingredient) is not null && source.Ingredient.Allergens.Contains("sulphites", StringComparer.Ordinal);

    private static bool IsCrustacean(AllergenSource source) => source.Ingredient.Allergens.Contains("crustacean", StringComparer.Ordinal);

    private static string[] Names(AllergenSource[] holding) => [.. holding.Select(source => source.Ingredient.Name).Distinct(StringComparer.Ordinal)];

    private static (string Name, string? Note)? Listed(Jurisdiction place, string word) => (place, word) switch
    {
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, "gluten") => ("cereals containing gluten", "Name the cereal: wheat, rye, barley or oats."),
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, "nuts") => ("nuts", "Name the nut."),
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, "crustacean") => ("crustaceans", null),
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, "mollusc") => ("molluscs", null),
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, "egg") => ("eggs", null),
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, "soy") => ("soybeans", null),
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, "peanut") => ("peanuts", null),
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, "sesame") => ("sesame seeds", null),
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, _) => (word, null),
        (Jurisdiction.UnitedStates, "celery" or "mollusc" or "mustard" or "lupin") => null,
        (Jurisdiction.UnitedStates, "gluten") => ("wheat", "Only wheat is listed; barley, rye and oats are not."),
        (Jurisdiction.UnitedStates, "fish") => ("fish", "Name the species."),
        (Jurisdiction.UnitedStates, "crustacean") => ("crustacean shellfish", "Name the kind: crab, lobster, shrimp."),
        (Jurisdiction.UnitedStates, "nuts") => ("tree nuts", "Name the nut."),
        (Jurisdiction.UnitedStates, "soy") => ("soybeans", null),
        (Jurisdiction.UnitedStates, "peanut") => ("peanuts", null),
        (Jurisdiction.Canada, "celery" or "lupin") => null,
        (Jurisdiction.Canada, "gluten") => ("wheat or other gluten source", "Name the cereal: wheat, barley, rye, oats or triticale."),
        (Jurisdiction.Canada, "fish") => ("fish", "Name the species."),
        (Jurisdiction.Canada, "crustacean") => ("crustaceans", "Name the species: crab, lobster, shrimp."),
        (Jurisdiction.Canada, "mollusc") => ("molluscs", "Name the species: mussel, oyster, scallop."),
        (Jurisdiction.Canada, "egg") => ("eggs", null),
        (Jurisdiction.Canada, "nuts") => ("tree nuts", "Name the nut."),
        (Jurisdiction.Canada, "soy") => ("soybeans", null),
        (Jurisdiction.Canada, "peanut") => ("peanuts", null),
        (Jurisdiction.AustraliaNewZealand, "celery" or "mustard") => null,
        (Jurisdiction.AustraliaNewZealand, "gluten") => ("wheat, barley, rye or oats", "Name the cereal; add gluten in the summary."),
        (Jurisdiction.AustraliaNewZealand, "nuts") => ("tree nuts", "Name each nut."),
        _ => (word, null),
    };

    private static string Clause(Jurisdiction place, string word) => place switch
    {
        Jurisdiction.EuropeanUnionAndUnitedKingdom => "Regulation (EU) 1169/2011, Annex II, point " + Point(word),
        Jurisdiction.UnitedStates => word is "sulphites"
            ? "21 CFR 101.100(a)(4) and 130.9 [from memory]"
            : "Federal Food, Drug, and Cosmetic Act s. 201(qq) [from memory]",
        Jurisdiction.Canada => word is "sulphites"
            ? "Food and Drug Regulations B.01.010.2 [from memory] and B.01.010.3"
            : "Food and Drug Regulations B.01.010.1",
        _ => "Food Standards Code, Standard 1.2.3 s. 4 and Schedule 9 s. 3 [names from memory]",
    };

    private static string Point(string word) => word switch
    {
        "gluten" => "1",
        "crustacean" => "2",
        "egg" => "3",
        "fish" => "4",
        "peanut" => "5",
        "soy" => "6",
        "milk" => "7",
        "nuts" => "8",
        "celery" => "9",
        "mustard" => "10",
        "sesame" => "11",
        "sulphites" => "12",
        "lupin" => "13",
        "mollusc" => "14",
        _ => throw new ArgumentOutOfRangeException(nameof(word), word, "Unknown allergen."),
    };

    private static string PlaceName(Jurisdiction place) => place switch
    {
        Jurisdiction.EuropeanUnionAndUnitedKingdom => "EU and UK",
        Jurisdiction.UnitedStates => "United States",
        Jurisdiction.Canada => "Canada",
        Jurisdiction.AustraliaNewZealand => "Australia and New Zealand",
        _ => throw new ArgumentOutOfRangeException(nameof(place), place, "Unknown place."),
    };
}
