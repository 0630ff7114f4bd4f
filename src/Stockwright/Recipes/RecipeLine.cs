using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Recipes;

/// <summary>What a line does in the pot.</summary>
public enum LineRole
{
    /// <summary>Bones, carcasses, shells, or the main body of a vegetable stock: what the strength comes from.</summary>
    Bones,

    /// <summary>Mirepoix vegetables.</summary>
    Mirepoix,

    /// <summary>Herbs, spices and small flavourings.</summary>
    Aromatics,

    /// <summary>Wine or vinegar.</summary>
    Acid,

    /// <summary>Tomato paste or the like.</summary>
    Paste,

    /// <summary>Saved trimmings, an allowance the cook may use or leave.</summary>
    Trimmings,

    /// <summary>Butter or oil to sweat or fry in.</summary>
    Fat,

    /// <summary>Salt and what else is put in to season: it dissolves.</summary>
    Seasoning,
}

/// <summary>What is done to a line before the pot.</summary>
public enum Preparation
{
    /// <summary>Goes in as it is, washed.</summary>
    None,

    /// <summary>Blanched in cold water brought to the boil, drained and rinsed.</summary>
    Blanch,

    /// <summary>Roasted until brown.</summary>
    Roast,

    /// <summary>Sweated or fried gently in the pot.</summary>
    Sweat,

    /// <summary>Soaked in cold water.</summary>
    Soak,
}

/// <summary>When a line goes in the pot.</summary>
public enum JoinMoment
{
    /// <summary>With the cold water.</summary>
    Start,

    /// <summary>About an hour in, when the first scum is off.</summary>
    AfterFirstSkim,

    /// <summary>A stated time before the heat goes off.</summary>
    BeforeEnd,

    /// <summary>At the start of a later stage; see <see cref="RecipeLine.Stage"/>.</summary>
    WithStage,
}

/// <summary>One ingredient of a recipe.</summary>
public sealed record RecipeLine
{
    /// <summary>Least and most of one ingredient in a litre of stock.</summary>
    public static readonly (Mass Least, Mass Most) PerLitreRange = (Mass.FromMilligrams(1), Mass.FromKilograms(10));

    /// <summary>Stable name of the ingredient in the larder.</summary>
    public required string IngredientId { get; init; }

    /// <summary>What it does.</summary>
    public required LineRole Role { get; init; }

    /// <summary>Mass as it goes in the pot (trimmed, raw, before roasting) per litre of strained stock, with range and source.</summary>
    public required Stated<Mass> PerLitre { get; init; }

    /// <summary>What is done to it first.</summary>
    public Preparation Preparation { get; init; } = Preparation.None;

    /// <summary>When it goes in.</summary>
    public JoinMoment Joins { get; init; } = JoinMoment.Start;

    /// <summary>With <see cref="JoinMoment.BeforeEnd"/>: how long before the heat goes off.</summary>
    public TimeSpan? BeforeEnd { get; init; }

    /// <summary>With <see cref="JoinMoment.WithStage"/>: index of the stage it goes in with, and is lifted out after if the stage says so.</summary>
    public int Stage { get; init; }

    /// <summary>How it is cut or broken, for instance <c>2 to 3 cm pieces</c>.</summary>
    public string Cut { get; init; } = "";

    /// <summary>Share thrown away of what is bought, where this line uses less of it than is usual (the white of a leek); null for the larder's.</summary>
    public Stated<Ratio>? Refuse { get; init; }

    /// <summary>True when the stock is itself without it.</summary>
    public bool IsOptional { get; init; }

    /// <summary>A word of advice.</summary>
    public string? Note { get; init; }
}
