using Stockwright.Evidence;
using Stockwright.Larder;

namespace Stockwright.Predicting;

/// <summary>A kind of wine, as the laws on sulphur dioxide tell them apart.</summary>
internal enum WineKind
{
    /// <summary>White or rosé, its sugar unknown.</summary>
    White,

    /// <summary>Red, its sugar unknown.</summary>
    Red,

    /// <summary>Fortified: sherry, port.</summary>
    Fortified,
}

/// <summary>The most total sulphur dioxide a wine may lawfully hold in one place.</summary>
/// <param name="MilligramsPerLitre">Milligrams a litre; parts per million of the law are taken as that.</param>
/// <param name="Text">What the figure is for.</param>
/// <param name="Source">Clause, and how it was read.</param>
/// <param name="Provenance">Grade.</param>
internal sealed record SulphiteCeiling(double MilligramsPerLitre, string Text, string Source, Provenance Provenance);

/// <summary>
/// What wine may bring of sulphites (B.22). Nobody knows what is in the bottle: the level is that of a wine at the legal ceiling
/// of the place, sold as not quite dry where that is allowed more, for a label seldom tells the sugar.
/// </summary>
internal static class WineSulphites
{
    private const string European = "Delegated Regulation (EU) 2019/934, Annex I part B";
    private const string American = "27 CFR 4.22(b)(1)";
    private const string Canadian = "Food and Drug Regulations B.02.100(b)(vii)";
    private const string Australian = "Food Standards Code, Standard 4.5.1, as Wine Australia gives it";

    /// <summary>The kind of wine of a larder row, or null for anything else: sake, mirin, vinegar, a row of the cook's own.</summary>
    public static WineKind? KindOf(Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient.Id switch
        {
            "white-wine" => WineKind.White,
            "red-wine" => WineKind.Red,
            "sherry" or "port" => WineKind.Fortified,
            _ => null,
        };
    }

    /// <summary>The ceiling for a kind of wine.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The place or the kind is unknown.</exception>
    public static SulphiteCeiling Ceiling(Jurisdiction place, WineKind kind) => (place, kind) switch
    {
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, WineKind.White) =>
            new(250, "white or rosé wine with 5 g of sugar a litre or more (below that 200)", European, Provenance.Published),
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, WineKind.Red) =>
            new(200, "red wine with 5 g of sugar a litre or more (below that 150)", European, Provenance.Published),
        (Jurisdiction.EuropeanUnionAndUnitedKingdom, WineKind.Fortified) =>
            new(200, "fortified wine with 5 g of sugar a litre or more (below that 150)", European + " [from memory]", Provenance.FromMemory),
        (Jurisdiction.UnitedStates, WineKind.White or WineKind.Red or WineKind.Fortified) =>
            new(350, "any wine", American, Provenance.Published),
        (Jurisdiction.Canada, WineKind.White or WineKind.Red or WineKind.Fortified) =>
            new(420, "any wine, 70 free and 350 combined", Canadian, Provenance.Published),
        (Jurisdiction.AustraliaNewZealand, WineKind.White or WineKind.Red) =>
            new(250, "wine with less than 35 g of sugar a litre", Australian, Provenance.Published),
        (Jurisdiction.AustraliaNewZealand, WineKind.Fortified) =>
            new(300, "fortified wine with more than 35 g of sugar a litre (below that 250)", Australian, Provenance.Published),
        _ => throw new ArgumentOutOfRangeException(nameof(place), (place, kind), "Unknown place or kind of wine."),
    };

    /// <summary>The highest ceiling the place has for any wine, for the sweetest; null where sugar makes no difference.</summary>
    public static SulphiteCeiling? Sweetest(Jurisdiction place) => place switch
    {
        Jurisdiction.EuropeanUnionAndUnitedKingdom => new(400, "Some sweet wines", European, Provenance.Published),
        Jurisdiction.AustraliaNewZealand => new(300, "Wine with more than 35 g of sugar a litre", Australian, Provenance.Published),
        _ => null,
    };

    /// <summary>Sulphur dioxide a kilogram of finished stock would hold if every wine in it stood at its ceiling, mg/kg; simmering is not relied on to drive it off.</summary>
    /// <param name="place">Whose law.</param>
    /// <param name="sources">Ingredients; what is no wine counts as nothing.</param>
    /// <param name="stockKilograms">Finished stock, above zero.</param>
    /// <param name="sweetest">True to take each wine but the fortified for the sweetest.</param>
    public static double Level(Jurisdiction place, IEnumerable<AllergenSource> sources, double stockKilograms, bool sweetest = false)
    {
        ArgumentNullException.ThrowIfNull(sources);
        return sources.Sum(source => KindOf(source.Ingredient) is { } kind ? Litres(source) * Of(kind) : 0) / stockKilograms;

        double Of(WineKind kind) => sweetest && kind != WineKind.Fortified && Sweetest(place) is { } most
            ? most.MilligramsPerLitre
            : Ceiling(place, kind).MilligramsPerLitre;
    }

    private static double Litres(AllergenSource source) =>
        source.Mass.Kilograms / source.Ingredient.TrueDensity.Value.KilogramsPerLiter;
}
