using Stockwright.Evidence;
using Stockwright.Kitchen;

namespace Stockwright.Recipes;

/// <summary>The kinds of stock the trade tells apart.</summary>
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

    /// <summary>Court-bouillon: salted, sharp vegetable liquor to poach in.</summary>
    CourtBouillon,

    /// <summary>Ham stock, of cured bones soaked first.</summary>
    Ham,

    /// <summary>Duck stock.</summary>
    Duck,

    /// <summary>Cloudy broth of pork bones kept at a rolling boil.</summary>
    PorkBoneBroth,

    /// <summary>Beef broth with star anise, charred onion and ginger.</summary>
    SpicedBeefBroth,

    /// <summary>Double stock: bones wetted with stock instead of water.</summary>
    DoubleStock,

    /// <summary>Consommé: stock cleared by a raft of lean meat and egg white.</summary>
    Consomme,

    /// <summary>Glace: stock boiled down to about a tenth.</summary>
    Glace,

    /// <summary>Demi-glace: brown stock with wine and vegetables, boiled down by more than half.</summary>
    DemiGlace,

    /// <summary>Meat broth: the meat is eaten too.</summary>
    MeatBroth,

    /// <summary>Stock of kelp alone.</summary>
    KelpOnly,

    /// <summary>Second stock of kelp and fish flakes used once before.</summary>
    SecondDashi,

    /// <summary>Stock of small dried fish.</summary>
    DriedAnchovy,

    /// <summary>Stock of dried mushrooms.</summary>
    DriedMushroom,

    /// <summary>Stock of sweetcorn cobs.</summary>
    SweetcornCob,

    /// <summary>Broth of a whole chicken, which is eaten.</summary>
    WholeChickenBroth,
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

    /// <summary>Larder name of the stock the pot is filled with; null for water.</summary>
    public string? Wetting { get; init; }

    /// <summary>Larder names of everything it is made of, the liquid the pot is filled with included.</summary>
    public IReadOnlySet<string> IngredientIds => Lines.Select(line => line.IngredientId).Concat(Wetting is { } wetting ? [wetting] : []).ToHashSet(StringComparer.Ordinal);

    /// <summary>
    /// Starting water (or <see cref="Wetting"/>) per litre of strained stock as the source gives it; the planner works out its own for the
    /// pot at hand.
    /// </summary>
    public required Stated<double> WaterLitresPerLitre { get; init; }

    /// <summary>Roasting, or null.</summary>
    public RoastSetting? Roast { get; init; }

    /// <summary>Blanching, or null.</summary>
    public BlanchSetting? Blanch { get; init; }

    /// <summary>Soaking in cold water before the pot (fish bones, kelp), or null.</summary>
    public TimeSpan? Soak { get; init; }

    /// <summary>One simmer for most stocks; more where the heat changes (kelp, then dried fish). At least one.</summary>
    public required IReadOnlyList<SimmerStage> Stages { get; init; }

    /// <summary>
    /// The stage that wishes for temperature and time belong to: the longest that holds. Index into <see cref="Stages"/>, which must not be
    /// empty.
    /// </summary>
    public int MainStage
    {
        get
        {
            int best = Stages.Count - 1;
            for (int i = Stages.Count - 1; i >= 0; i--)
            {
                if (!Stages[i].ClimbsSlowly && (Stages[best].ClimbsSlowly || Stages[i].Time > Stages[best].Time))
                {
                    best = i;
                }
            }

            return best;
        }
    }

    /// <summary>True when it is boiled down until so much is left, so that no time can be given beforehand.</summary>
    public bool BoilsDown => Stages.Any(stage => stage.ReducesTo is not null);

    /// <summary>True when it boils too hard to be left alone, by night above all.</summary>
    public bool IsAttended => Stages.Any(stage => stage.IsRolling || stage.ReducesTo is not null);

    /// <summary>How the lid usually sits for this stock.</summary>
    public required LidPosition Lid { get; init; }

    /// <summary>True when the trade chills the strained stock overnight and lifts the fat.</summary>
    public required bool ChillsAndDefats { get; init; }

    /// <summary>Where the ratios, times and temperatures come from.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>Advice worth a line on the plan.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>What the models do not calculate for this stock, and which way their figures err; shown with the plan.</summary>
    public IReadOnlyList<string> NotCovered { get; init; } = [];

    /// <summary>Name of the recipe this one was copied from; null for a standing recipe.</summary>
    public string? CopiedFrom { get; init; }
}
