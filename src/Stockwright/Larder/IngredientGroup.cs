namespace Stockwright.Larder;

/// <summary>Shelf of the larder an ingredient stands on.</summary>
public enum IngredientGroup
{
    /// <summary>Beef.</summary>
    Beef,

    /// <summary>Veal.</summary>
    Veal,

    /// <summary>Chicken, turkey, duck, goose.</summary>
    Poultry,

    /// <summary>Pork.</summary>
    Pork,

    /// <summary>Lamb.</summary>
    Lamb,

    /// <summary>Game.</summary>
    Game,

    /// <summary>Fish.</summary>
    Fish,

    /// <summary>Shellfish.</summary>
    Shellfish,

    /// <summary>Vegetables and mushrooms.</summary>
    Vegetable,

    /// <summary>Herbs and spices.</summary>
    Aromatic,

    /// <summary>Seaweed and dried fish.</summary>
    DriedSeafood,

    /// <summary>Wine, vinegar, soy sauce.</summary>
    Liquid,

    /// <summary>Salt, egg white, gelatin powder and the like.</summary>
    Other,
}
