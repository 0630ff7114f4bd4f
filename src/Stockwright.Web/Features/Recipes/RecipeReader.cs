using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Recipes;
using Stockwright.Web.Features.Larder;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Recipes;

/// <summary>
/// Reads a recipe back from its form. A number left as shown keeps its range and source; a changed one becomes the cook's.
/// What the form does not ask (water, lid, sources) stays as it was.
/// </summary>
internal sealed class RecipeReader(FieldReader reader, StockRecipe began, LarderTable larder)
{
    public const string CookSource = "this kitchen's own recipe";

    private readonly TypedForm shown = RecipeFields.Write(began, reader.Units);
    private readonly List<int> rowOfLine = [];

    /// <summary>Reads the recipe; null when something has to be put right.</summary>
    public StockRecipe? Read()
    {
        string name = reader.Name(RecipeFields.Name, "Give the recipe a name.");
        string summary = reader.Text(RecipeFields.Summary, 400);
        List<RecipeLine> lines = ReadLines();
        List<SimmerStage> stages = [.. began.Stages.Select(ReadStage)];
        RoastSetting? roast = ReadRoast();
        TimeSpan? blanch = Minutes(RecipeFields.BlanchTime, "Blanching");
        TimeSpan? soak = Minutes(RecipeFields.SoakTime, "Soaking");
        if (reader.Problems.Count > 0)
        {
            return null;
        }

        StockRecipe read = began with
        {
            Name = name,
            Summary = summary,
            Lines = lines,
            Stages = stages,
            Roast = roast,
            Blanch = blanch is not { } time ? null
                : began.Blanch is { } setting && Typing.Unchanged(reader.Form, shown, RecipeFields.BlanchTime) ? setting
                : new BlanchSetting(time, CookSource),
            Soak = soak,
        };
        foreach ((string field, string message) in RecipeValidation.Check(read, larder))
        {
            reader.Report(FieldOf(field), message);
        }

        return reader.Problems.Count == 0 ? read : null;
    }

    private List<RecipeLine> ReadLines()
    {
        List<RecipeLine> lines = [];
        int rows = RecipeFields.Lines(reader.Form);
        for (int row = 0; row < rows; row++)
        {
            string id = reader.Form[RecipeFields.Line(row, "ingredient")].Trim();
            string amountField = RecipeFields.Line(row, "amount");
            if (id.Length == 0 && !reader.Form.Has(amountField))
            {
                continue;
            }

            if (id.Length == 0)
            {
                reader.Report(RecipeFields.Line(row, "ingredient"), "Choose the ingredient.");
            }
            else if (!larder.TryFind(id, out _))
            {
                reader.Report(RecipeFields.Line(row, "ingredient"), $"There is no {KitchenNumber.Quote(id)} in the larder. Choose one from the list.");
            }

            Stated<Mass>? amount = ReadAmount(amountField, id, row);
            RecipeLine? line = ReadLine(row, id, amount);
            if (line is not null)
            {
                rowOfLine.Add(row);
                lines.Add(line);
            }
        }

        return lines;
    }

    private Stated<Mass>? ReadAmount(string field, string id, int row)
    {
        double? kilograms = reader.Number(field, "Amount", IngredientFields.PieceMass, 1e-6, 10, "Amount: how much for a litre of stock?");
        if (kilograms is not { } typed)
        {
            return null;
        }

        // Rows move, so the stored line is found by its ingredient: the row of the same place first.
        int was = row < began.Lines.Count && Is(row, id) ? row : Enumerable.Range(0, began.Lines.Count).FirstOrDefault(index => Is(index, id), -1);
        return was >= 0 && string.Equals(reader.Form[field].Trim(), shown[RecipeFields.Line(was, "amount")], StringComparison.Ordinal)
            ? began.Lines[was].PerLitre
            : Own(Mass.FromKilograms(typed));

        bool Is(int index, string ingredient) => string.Equals(began.Lines[index].IngredientId, ingredient, StringComparison.Ordinal);
    }

    private RecipeLine? ReadLine(int row, string id, Stated<Mass>? amount)
    {
        LineRole? role = reader.Word(RecipeFields.Line(row, "role"), "Part", [.. RecipeText.Roles.Select(word => (word.Word, word.Value))]);
        Preparation? preparation = reader.Word(
            RecipeFields.Line(row, "preparation"), "Preparation", [.. RecipeText.Preparations.Select(word => (word.Word, word.Value))]);
        string cut = reader.Text(RecipeFields.Line(row, "cut"), FieldText.LongestName);
        string note = reader.Text(RecipeFields.Line(row, "note"), FieldText.LongestNote);
        TimeSpan? before = Minutes(RecipeFields.Line(row, "before"), "Before the end");
        string joinsWord = reader.Form[RecipeFields.Line(row, "joins")].Trim();
        int stage = Enumerable.Range(0, began.Stages.Count)
            .FirstOrDefault(index => string.Equals(RecipeFields.StageWord(index), joinsWord, StringComparison.Ordinal), -1);
        JoinMoment? joins = stage >= 0
            ? JoinMoment.WithStage
            : reader.Word(RecipeFields.Line(row, "joins"), "Goes in", [.. RecipeText.Joins.Select(word => (word.Word, word.Value))]);
        if (amount is null || role is not { } part || preparation is not { } done || joins is not { } moment)
        {
            return null;
        }

        return new RecipeLine
        {
            IngredientId = id,
            Role = part,
            PerLitre = amount,
            Preparation = done,
            Joins = moment,
            BeforeEnd = moment == JoinMoment.BeforeEnd ? before : null,
            Stage = Math.Max(0, stage),
            Cut = cut,
            IsOptional = string.Equals(reader.Form[RecipeFields.Line(row, "optional")], "1", StringComparison.Ordinal),
            Note = KeepsNote(id, note) ? note : null,
            Refuse = began.Lines.FirstOrDefault(line => string.Equals(line.IngredientId, id, StringComparison.Ordinal) && string.Equals(line.Cut, cut, StringComparison.Ordinal))?.Refuse,
        };
    }

    /// <summary>A word of advice goes with its ingredient, and leaves when another takes its place.</summary>
    private bool KeepsNote(string id, string note) => note.Length > 0 && began.Lines.Any(line =>
        string.Equals(line.IngredientId, id, StringComparison.Ordinal) && string.Equals(line.Note, note, StringComparison.Ordinal));

    /// <summary>The usual range grows to hold what the cook asks for.</summary>
    private SimmerStage ReadStage(SimmerStage stage, int index)
    {
        string temperatureField = RecipeFields.Stage(index, "temperature");
        string hoursField = RecipeFields.Stage(index, "hours");
        double? kelvins = reader.Number(temperatureField, stage.Name, Measure.Temperature, 293.15, 398.15, $"{stage.Name}: how hot?");
        double? seconds = reader.Number(hoursField, stage.Name, Measure.Hours, 60, 72 * 3600, $"{stage.Name}: how long?");
        if (kelvins is not { } hot || seconds is not { } length)
        {
            return stage;
        }

        Temperature target = Typing.Unchanged(reader.Form, shown, temperatureField) ? stage.Target : Temperature.FromKelvins(hot);
        TimeSpan time = Typing.Unchanged(reader.Form, shown, hoursField) ? stage.Time : TimeSpan.FromSeconds(length);
        return stage with
        {
            Least = target < stage.Least ? target : stage.Least,
            Target = target,
            Most = target > stage.Most ? target : stage.Most,
            ShortestTime = time < stage.ShortestTime ? time : stage.ShortestTime,
            Time = time,
            LongestTime = time > stage.LongestTime ? time : stage.LongestTime,
        };
    }

    private RoastSetting? ReadRoast()
    {
        double? kelvins = reader.Number(RecipeFields.RoastTemperature, "Oven", Measure.Temperature, 353.15, 573.15);
        TimeSpan? minutes = Minutes(RecipeFields.RoastTime, "Roasting");
        TimeSpan? vegetables = Minutes(RecipeFields.RoastVegetables, "Vegetables join");
        TimeSpan? paste = Minutes(RecipeFields.RoastPaste, "Paste joins");
        bool hasTemperature = reader.Form.Has(RecipeFields.RoastTemperature);
        bool hasTime = reader.Form.Has(RecipeFields.RoastTime);
        if (!hasTemperature && !hasTime)
        {
            return null;
        }

        if (!hasTemperature || !hasTime)
        {
            reader.Report(
                hasTime ? RecipeFields.RoastTemperature : RecipeFields.RoastTime,
                "Roasting needs both the oven's heat and the time. Empty both for no roasting.");
        }

        if (kelvins is not { } hot || minutes is not { } time)
        {
            return null;
        }

        if (vegetables > time || paste > time)
        {
            reader.Report(
                vegetables > time ? RecipeFields.RoastVegetables : RecipeFields.RoastPaste,
                "This joins earlier than the roasting begins. It must be within the roasting time.");
        }

        RoastSetting usual = began.Roast ?? new RoastSetting(Temperature.FromKelvins(hot), time, time, time, vegetables, paste, CookSource);
        bool unchanged = Typing.Unchanged(reader.Form, shown, RecipeFields.RoastTemperature, RecipeFields.RoastTime, RecipeFields.RoastVegetables, RecipeFields.RoastPaste);
        return unchanged && began.Roast is not null
            ? began.Roast
            : usual with
            {
                OvenTemperature = Typing.Unchanged(reader.Form, shown, RecipeFields.RoastTemperature) ? usual.OvenTemperature : Temperature.FromKelvins(hot),
                ShortestTime = time < usual.ShortestTime ? time : usual.ShortestTime,
                Time = time,
                LongestTime = time > usual.LongestTime ? time : usual.LongestTime,
                VegetablesJoinBeforeEnd = vegetables,
                PasteJoinsBeforeEnd = paste,
                Source = CookSource,
            };
    }

    private TimeSpan? Minutes(string field, string what) =>
        reader.Number(field, what, Measure.Minutes, 60, 72 * 3600) is { } seconds ? TimeSpan.FromSeconds(Math.Round(seconds, 3)) : null;

    /// <summary>The form's field for a field of the validation, for instance <c>Lines[2].PerLitre</c>.</summary>
    private string FieldOf(string field)
    {
        int open = field.IndexOf('[', StringComparison.Ordinal);
        int close = field.IndexOf(']', StringComparison.Ordinal);
        if (open > 0 && close > open && int.TryParse(field.AsSpan(open + 1, close - open - 1), NumberStyles.None, CultureInfo.InvariantCulture, out int index))
        {
            string part = field[(close + 1)..];
            return field.StartsWith("Stages", StringComparison.Ordinal)
                ? RecipeFields.Stage(index, part.Contains("Target", StringComparison.Ordinal) ? "temperature" : "hours")
                : RecipeFields.Line(rowOfLine[index], part switch
                {
                    ".PerLitre" => "amount",
                    ".Preparation" => "preparation",
                    ".BeforeEnd" => "before",
                    ".Stage" or ".Joins" => "joins",
                    _ => "ingredient",
                });
        }

        return field switch
        {
            "Name" => RecipeFields.Name,
            "Roast.OvenTemperature" => RecipeFields.RoastTemperature,
            "Blanch.Time" => RecipeFields.BlanchTime,
            "Soak" => RecipeFields.SoakTime,
            "Lines" => "lines",
            _ when field.StartsWith("Roast", StringComparison.Ordinal) => RecipeFields.RoastTime,
            _ => "",
        };
    }

    private static Stated<T> Own<T>(T value) => new(value, value, value, Provenance.CookStated, CookSource);
}
