using System.Globalization;
using Stockwright.Larder;
using Stockwright.Recipes;
using Stockwright.Web.Features.Larder;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Recipes;

/// <summary>A recipe as a form of numbered rows; works with scripts off.</summary>
internal static class RecipeFields
{
    public const string Name = "name";
    public const string Summary = "summary";
    public const string RoastTemperature = "roast-temperature";
    public const string RoastTime = "roast-minutes";
    public const string RoastVegetables = "roast-vegetables";
    public const string RoastPaste = "roast-paste";
    public const string BlanchTime = "blanch-minutes";
    public const string SoakTime = "soak-minutes";

    /// <summary>Kind of stock, carried along so that a recipe deleted meanwhile can be added anew from what was typed.</summary>
    public const string Kind = "kind";

    /// <summary>Which button was pressed.</summary>
    public const string Do = "do";
    public const string DoAdd = "add";
    public const string DoDrop = "drop-";

    public const int MostLines = 60;

    private static readonly string[] LineParts = ["ingredient", "role", "amount", "preparation", "cut", "joins", "before", "optional", "note"];

    public static string Line(int row, string part) => string.Create(CultureInfo.InvariantCulture, $"line-{row}-{part}");

    public static string Stage(int index, string part) => string.Create(CultureInfo.InvariantCulture, $"stage-{index}-{part}");

    /// <summary>How many rows the form holds.</summary>
    public static int Lines(TypedForm typed)
    {
        HashSet<string> names = typed.Names.ToHashSet(StringComparer.Ordinal);
        return 1 + Enumerable.Range(0, MostLines).LastOrDefault(row => names.Contains(Line(row, "ingredient")), -1);
    }

    /// <summary>What a deleted recipe can be read over: the standing one of its kind.</summary>
    public static StockRecipe? Fallback(TypedForm typed) => StandardRecipes.Book.Recipes
        .FirstOrDefault(recipe => string.Equals(recipe.Kind.ToString(), typed[Kind], StringComparison.Ordinal)) is { } standing
            ? standing with { CopiedFrom = standing.Name }
            : null;

    public static TypedForm Write(StockRecipe recipe, UnitSystem units)
    {
        Typing typing = new Typing(units).Put(Kind, recipe.Kind.ToString()).Put(Name, recipe.Name).Put(Summary, recipe.Summary);
        for (int row = 0; row < recipe.Lines.Count; row++)
        {
            RecipeLine line = recipe.Lines[row];
            typing.Put(Line(row, "ingredient"), line.IngredientId)
                .Put(Line(row, "role"), Word(RecipeText.Roles, line.Role))
                .Put(Line(row, "amount"), IngredientFields.PieceMass, line.PerLitre.Value.Kilograms)
                .Put(Line(row, "preparation"), Word(RecipeText.Preparations, line.Preparation))
                .Put(Line(row, "cut"), line.Cut)
                .Put(Line(row, "joins"), line.Joins == JoinMoment.WithStage ? StageWord(line.Stage) : Word(RecipeText.Joins, line.Joins))
                .Put(Line(row, "before"), Measure.Minutes, line.BeforeEnd?.TotalSeconds)
                .Tick(Line(row, "optional"), line.IsOptional)
                .Put(Line(row, "note"), line.Note);
        }

        for (int index = 0; index < recipe.Stages.Count; index++)
        {
            typing.Put(Stage(index, "temperature"), Measure.Temperature, recipe.Stages[index].Target.Kelvins)
                .Put(Stage(index, "hours"), Measure.Hours, recipe.Stages[index].Time.TotalSeconds);
        }

        return typing
            .Put(RoastTemperature, Measure.Temperature, recipe.Roast?.OvenTemperature.Kelvins)
            .Put(RoastTime, Measure.Minutes, recipe.Roast?.Time.TotalSeconds)
            .Put(RoastVegetables, Measure.Minutes, recipe.Roast?.VegetablesJoinBeforeEnd?.TotalSeconds)
            .Put(RoastPaste, Measure.Minutes, recipe.Roast?.PasteJoinsBeforeEnd?.TotalSeconds)
            .Put(BlanchTime, Measure.Minutes, recipe.Blanch?.Time.TotalSeconds)
            .Put(SoakTime, Measure.Minutes, recipe.Soak?.TotalSeconds)
            .Form;
    }

    /// <summary>The form with one more blank row.</summary>
    public static TypedForm AddLine(TypedForm typed)
    {
        int rows = Lines(typed);
        return rows >= MostLines ? typed : typed.With(Line(rows, "ingredient"), "").With(Line(rows, "role"), "aromatics");
    }

    /// <summary>The form without a row; the rows after it move up.</summary>
    public static TypedForm DropLine(TypedForm typed, int dropped)
    {
        int rows = Lines(typed);
        if (dropped < 0 || dropped >= rows)
        {
            return typed;
        }

        TypedForm changed = typed;
        for (int row = dropped; row < rows; row++)
        {
            foreach (string part in LineParts)
            {
                HashSet<string> names = typed.Names.ToHashSet(StringComparer.Ordinal);
                string next = Line(row + 1, part);
                changed = changed.With(Line(row, part), row + 1 < rows && names.Contains(next) ? typed[next] : null);
            }
        }

        return changed;
    }

    /// <summary>Joining moments of this recipe; its later steps included.</summary>
    public static ChoiceOption[] JoinOptions(StockRecipe recipe) =>
    [
        .. RecipeText.Options(RecipeText.Joins),
        .. recipe.Stages.Count > 1 ? recipe.Stages.Select((stage, index) => new ChoiceOption(StageWord(index), $"with the step: {stage.Name}")) : [],
    ];

    public static string StageWord(int index) => string.Create(CultureInfo.InvariantCulture, $"stage-{index}");

    /// <summary>Ingredients by shelf, for the list of a row; the one chosen stays though it is no longer offered.</summary>
    public static IEnumerable<IGrouping<IngredientGroup, Ingredient>> Shelves(LarderTable larder, string chosen) =>
        larder.Ingredients.Where(row => row.IsOffered || string.Equals(row.Id, chosen, StringComparison.Ordinal)).GroupBy(row => row.Group).OrderBy(group => group.Key);

    private static string Word<T>((string Word, T Value, string Text)[] words, T value)
        where T : struct, Enum => Array.Find(words, word => EqualityComparer<T>.Default.Equals(word.Value, value)).Word;
}
