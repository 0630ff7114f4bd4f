using Stockwright.Evidence;
using Stockwright.Kitchen;

namespace Stockwright.Recipes;

/// <summary>The fourteen and more kinds of stock the trade tells apart.</summary>
public enum StockKind
{
    /// <summary>White veal stock.</summary>
    WhiteVeal,

    /// <summary>Brown veal stock.</summary>
    BrownVeal,

    /// <summary>White beef stock.</summary>
    WhiteBeef,

    /// <summary>Brown beef stock.</summary>
    BrownBeef,

    /// <summary>White chicken stock.</summary>
    WhiteChicken,

    /// <summary>Brown chicken stock.</summary>
    BrownChicken,

    /// <summary>Turkey stock.</summary>
    Turkey,

    /// <summary>Pork stock.</summary>
    Pork,

    /// <summary>Lamb stock.</summary>
    Lamb,

    /// <summary>Game stock.</summary>
    Game,

    /// <summary>Fish fumet.</summary>
    FishFumet,

    /// <summary>Shellfish stock.</summary>
    Shellfish,

    /// <summary>Vegetable stock.</summary>
    Vegetable,

    /// <summary>Mushroom stock.</summary>
    Mushroom,

    /// <summary>Stock of kelp and dried fish.</summary>
    KelpAndDriedFish,

    /// <summary>Remouillage: a second wetting of spent bones.</summary>
    Remouillage,
}

/// <summary>A standing instruction for one kind of stock, with amounts per litre of strained stock.</summary>
public sealed record StockRecipe
{
    /// <summary>Stable name used in links, for instance <c>brown-chicken</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Plain name.</summary>
    public required string Name { get; init; }

    /// <summary>Kind of stock.</summary>
    public required StockKind Kind { get; init; }

    /// <summary>One or two sentences on what it is for.</summary>
    public required string Summary { get; init; }

    /// <summary>What goes in, in the order a cook gathers it.</summary>
    public required IReadOnlyList<RecipeLine> Lines { get; init; }

    /// <summary>Starting water per litre of strained stock as the source gives it; the planner works out its own for the pot at hand.</summary>
    public required Stated<double> WaterLitresPerLitre { get; init; }

    /// <summary>Roasting, or null.</summary>
    public RoastSetting? Roast { get; init; }

    /// <summary>Blanching, or null.</summary>
    public BlanchSetting? Blanch { get; init; }

    /// <summary>Soaking in cold water before the pot (fish bones, kelp), or null.</summary>
    public TimeSpan? Soak { get; init; }

    /// <summary>One simmer for most stocks; more where the heat changes (kelp, then dried fish). At least one.</summary>
    public required IReadOnlyList<SimmerStage> Stages { get; init; }

    /// <summary>How the lid usually sits for this stock.</summary>
    public required LidPosition Lid { get; init; }

    /// <summary>True when the trade chills the strained stock overnight and lifts the fat.</summary>
    public required bool ChillsAndDefats { get; init; }

    /// <summary>Where the ratios, times and temperatures come from.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>Advice worth a line on the plan.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Name of the recipe this one was copied from; null for a standing recipe.</summary>
    public string? CopiedFrom { get; init; }
}
