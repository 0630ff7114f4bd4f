using System.Globalization;
using Stockwright.Recipes;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Recipes;

/// <summary>A recipe as a form of numbered rows; works with scripts off.</summary>
internal static class RecipeFields
{
    /// <summary>Kind of stock, carried along so that a recipe deleted meanwhile can be added anew from what was typed.</summary>
    public const string Kind = "kind";

    /// <summary>Which button was pressed.</summary>
    public const string Do = "do";
    public const string DoAdd = "add";
    public const string DoDrop = "drop-";

    public const int MostLines = 60;

    public const string CookSource = "this kitchen's own recipe";

    public static readonly TextRow Name = new("name", "Name") { Missing = "Give the recipe a name." };
    public static readonly TextRow Summary = new("summary", "What it is for", 400);

    public static readonly NumberRow<Temperature> RoastTemperature = NumberRow.Temperature("roast-temperature", "Oven, without fan", RoastSetting.OvenRange) with { Told = "Oven", Placeholder = "no roasting" };
    public static readonly NumberRow<TimeSpan> RoastTime = Minutes("roast-minutes", "Roasting time") with { Told = "Roasting", Placeholder = "no roasting" };
    public static readonly NumberRow<TimeSpan> RoastVegetables = Minutes("roast-vegetables", "Vegetables join before the end") with { Told = "Vegetables join", Placeholder = "not roasted" };
    public static readonly NumberRow<TimeSpan> RoastPaste = Minutes("roast-paste", "Paste spread before the end") with { Told = "Paste joins", Placeholder = "no paste" };
    public static readonly NumberRow<TimeSpan> BlanchTime = Minutes("blanch-minutes", "Blanching") with { Placeholder = "no blanching" };
    public static readonly NumberRow<TimeSpan> SoakTime = Minutes("soak-minutes", "Soaking") with { Placeholder = "no soaking" };

    public static readonly IReadOnlyList<ShownField<Edit>> Named = [Shown(Name), Shown(Summary)];

    public static readonly IReadOnlyList<ShownField<Edit>> BeforePot =
        [Shown(RoastTemperature), Shown(RoastTime), Shown(RoastVegetables), Shown(RoastPaste), Shown(BlanchTime), Shown(SoakTime)];

    /// <summary>The usual range grows to hold what the cook asks for.</summary>
    public static readonly IReadOnlyList<FieldBinding<RoastSetting>> OfRoast =
    [
        RoastTemperature.Of<RoastSetting>(roast => roast.OvenTemperature, (roast, heat) => roast with { OvenTemperature = heat }),
        RoastTime.Of<RoastSetting>(roast => roast.Time, (roast, time) => roast with
        {
            ShortestTime = time < roast.ShortestTime || roast.LongestTime == TimeSpan.Zero ? time : roast.ShortestTime,
            Time = time,
            LongestTime = time > roast.LongestTime ? time : roast.LongestTime,
        }),
        RoastVegetables.Of<RoastSetting>(roast => roast.VegetablesJoinBeforeEnd, (roast, time) => roast with { VegetablesJoinBeforeEnd = time }),
        RoastPaste.Of<RoastSetting>(roast => roast.PasteJoinsBeforeEnd, (roast, time) => roast with { PasteJoinsBeforeEnd = time }),
    ];

    public static readonly WordsRow<LineRole> Role = new("role", "Part",
    [
        new("bones", LineRole.Bones, "Bones, or the body of the stock"), new("mirepoix", LineRole.Mirepoix, "Mirepoix"), new("aromatics", LineRole.Aromatics, "Herbs and spices"),
        new("acid", LineRole.Acid, "Wine or vinegar"), new("paste", LineRole.Paste, "Tomato paste"), new("trimmings", LineRole.Trimmings, "Saved trimmings"),
        new("fat", LineRole.Fat, "Butter or oil"), new("seasoning", LineRole.Seasoning, "Salt, to season"),
    ])
    {
        IsList = true,
    };

    public static readonly WordsRow<Preparation> Prepared = new("preparation", "Prepared",
    [
        new("none", Preparation.None, "as it is, washed"), new("roast", Preparation.Roast, "roasted"), new("blanch", Preparation.Blanch, "blanched"),
        new("sweat", Preparation.Sweat, "sweated in the pot"), new("soak", Preparation.Soak, "soaked"),
    ])
    {
        Told = "Preparation",
        IsList = true,
    };

    /// <summary>When a line goes in, and with which step.</summary>
    public static readonly WordsRow<(JoinMoment Moment, int Stage)> Joins = new("joins", "Goes in",
    [
        new("start", (JoinMoment.Start, 0), "with the cold water"),
        new("skimmed", (JoinMoment.AfterFirstSkim, 0), "when the first scum is off"),
        new("end", (JoinMoment.BeforeEnd, 0), "minutes before the end"),
    ])
    {
        IsList = true,
    };

    public static string Line(int row, string part) => string.Create(CultureInfo.InvariantCulture, $"line-{row}-{part}");

    public static string Stage(int index, string part) => string.Create(CultureInfo.InvariantCulture, $"stage-{index}-{part}");

    public static NumberRow<Mass> Amount(int row) => NumberRow.Mass(Line(row, "amount"), "Amount", Measure.SmallMass, RecipeLine.PerLitreRange) with { Missing = "Amount: how much for a litre of stock?" };

    public static TextRow Cut(int row) => new(Line(row, "cut"), "Cut") { Placeholder = "as it comes" };

    public static NumberRow<TimeSpan> Before(int row) => Minutes(Line(row, "before"), "Before the end") with { Class = "for-end" };

    public static TickRow Optional(int row) => new(Line(row, "optional"), "May be left out");

    /// <summary>When a line of this recipe goes in; with one of its later steps, too, where it has several.</summary>
    public static WordsRow<(JoinMoment Moment, int Stage)> JoinsOf(StockRecipe recipe, int row) => Joins with
    {
        Name = Line(row, "joins"),
        Words =
        [
            .. Joins.Words,
            .. recipe.Stages.Count > 1 || recipe.Lines.Any(line => line.Joins == JoinMoment.WithStage) ? recipe.Stages.Select((stage, index) => new FieldWord<(JoinMoment, int)>(StageWord(index), (JoinMoment.WithStage, index), $"with the step: {stage.Name}")) : [],
        ],
    };

    /// <summary>What a line is told by, but its ingredient.</summary>
    public static IReadOnlyList<FieldBinding<RecipeLine>> OfLine(StockRecipe recipe, int row) =>
    [
        Amount(row).OfStated<RecipeLine>(line => line.PerLitre, (line, mass) => line with { PerLitre = mass! }, CookSource),
        (Role with { Name = Line(row, "role") }).Of<RecipeLine>(line => line.Role, (line, role) => line with { Role = role }),
        (Prepared with { Name = Line(row, "preparation") }).Of<RecipeLine>(line => line.Preparation, (line, preparation) => line with { Preparation = preparation }),
        Cut(row).Of<RecipeLine>(line => line.Cut, (line, cut) => line with { Cut = cut }),
        JoinsOf(recipe, row).Of<RecipeLine>(line => (line.Joins, line.Joins == JoinMoment.WithStage ? line.Stage : 0), (line, joins) => line with { Joins = joins.Moment, Stage = joins.Stage }),
        Before(row).Of<RecipeLine>(line => line.BeforeEnd, (line, time) => line with { BeforeEnd = time }),
        Optional(row).Of<RecipeLine>(line => line.IsOptional, (line, optional) => line with { IsOptional = optional }),
        new TextRow(Line(row, "note"), "Note", FieldText.LongestNote).Of<RecipeLine>(line => line.Note, (line, note) => line with { Note = note.Length > 0 ? note : null }),
    ];

    /// <summary>Heat and time of a step; the usual range grows to hold what the cook asks for.</summary>
    public static IReadOnlyList<FieldBinding<SimmerStage>> OfStage(SimmerStage stage, int index) =>
    [
        (NumberRow.Temperature(Stage(index, "temperature"), $"{stage.Name} at", SimmerStage.TemperatureRange) with { Told = stage.Name, Missing = $"{stage.Name}: how hot?" })
            .Of<SimmerStage>(step => step.Target, (step, heat) => step with { Least = heat < step.Least ? heat : step.Least, Target = heat, Most = heat > step.Most ? heat : step.Most }),
        (NumberRow.Span(Stage(index, "hours"), "for", Measure.Hours, SimmerStage.TimeRange) with { Told = stage.Name, Missing = $"{stage.Name}: how long?" }).Of<SimmerStage>(step => step.Time, (step, time) => step with
        {
            ShortestTime = time < step.ShortestTime ? time : step.ShortestTime,
            Time = time,
            LongestTime = time > step.LongestTime ? time : step.LongestTime,
        }),
    ];

    public static IReadOnlyList<ShownField<Edit>> StageRow(SimmerStage stage, int index) => [.. OfStage(stage, index).Select(field => Shown(field.Row))];

    /// <summary>What is told of a line when its part is unfolded.</summary>
    public static IReadOnlyList<ShownField<Edit>> MoreRow(StockRecipe recipe, int row) =>
        [Shown(Prepared with { Name = Line(row, "preparation") }), Shown(Role with { Name = Line(row, "role") }), Shown(JoinsOf(recipe, row)), Shown(Before(row))];

    public static ShownField<Edit> Shown(FieldRow row) => new(row);

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
        FormWriter typing = new FormWriter(units).Put(Kind, recipe.Kind.ToString()).Put(Name.Name, recipe.Name).Put(Summary.Name, recipe.Summary);
        for (int row = 0; row < recipe.Lines.Count; row++)
        {
            typing.Put(Line(row, "ingredient"), recipe.Lines[row].IngredientId).Put(OfLine(recipe, row), recipe.Lines[row]);
        }

        for (int index = 0; index < recipe.Stages.Count; index++)
        {
            typing.Put(OfStage(recipe.Stages[index], index), recipe.Stages[index]);
        }

        if (recipe.Roast is { } roast)
        {
            typing.Put(OfRoast, roast);
        }

        return typing.Put(BlanchTime, recipe.Blanch?.Time).Put(SoakTime, recipe.Soak).Form;
    }

    /// <summary>The form with one more blank row.</summary>
    public static TypedForm AddLine(TypedForm typed)
    {
        int rows = Lines(typed);
        return rows >= MostLines ? typed : typed.With(Line(rows, "ingredient"), "").With(Line(rows, "role"), "aromatics");
    }

    /// <summary>The form without a row; the rows after it move up.</summary>
    public static TypedForm DropLine(TypedForm typed, int dropped) => new(typed.Entries
        .Where(entry => RowOf(entry.Key) != dropped)
        .Select(entry => RowOf(entry.Key) is { } row && row > dropped ? KeyValuePair.Create(Line(row - 1, entry.Key.Split('-', 3)[2]), entry.Value) : entry));

    /// <summary>Row of a field of the lines; null for every other field.</summary>
    public static int? RowOf(string field) =>
        field.Split('-', 3) is ["line", var number, _] && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int row) ? row : null;

    private static string StageWord(int index) => string.Create(CultureInfo.InvariantCulture, $"stage-{index}");

    private static NumberRow<TimeSpan> Minutes(string name, string label) => NumberRow.Span(name, label, Measure.Minutes, SimmerStage.TimeRange) with { InputMode = "decimal" };
}
