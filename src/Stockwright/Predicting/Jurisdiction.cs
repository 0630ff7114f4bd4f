namespace Stockwright.Predicting;

/// <summary>Whose list of allergens.</summary>
public enum Jurisdiction
{
    /// <summary>European Union and United Kingdom.</summary>
    EuropeanUnionAndUnitedKingdom,

    /// <summary>United States.</summary>
    UnitedStates,

    /// <summary>Canada.</summary>
    Canada,

    /// <summary>Australia and New Zealand.</summary>
    AustraliaNewZealand,
}

/// <summary>One allergen to declare.</summary>
/// <param name="Word">The larder's word, for instance <c>celery</c>.</param>
/// <param name="Name">Name on that place's list.</param>
/// <param name="Ingredients">Plain names of the ingredients it comes from.</param>
/// <param name="Clause">Where the list says so.</param>
/// <param name="Note">What else must be said, or null.</param>
public sealed record AllergenFlag(string Word, string Name, IReadOnlyList<string> Ingredients, string Clause, string? Note);

/// <summary>What one place asks to be declared.</summary>
/// <param name="Place">Whose list.</param>
/// <param name="PlaceName">Its name.</param>
/// <param name="Flags">To declare; may be empty.</param>
/// <param name="Remarks">Sentences on what is not declared and why, for this place; may be empty.</param>
/// <param name="Statement">A sentence to show with it. It never says the stock is free from anything.</param>
public sealed record AllergenReport(Jurisdiction Place, string PlaceName, IReadOnlyList<AllergenFlag> Flags, IReadOnlyList<string> Remarks, string Statement);
