using System.Globalization;
using Stockwright.Larder;
using Stockwright.Recipes;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Recipes;

/// <summary>
/// Reads a recipe back from its form. A number left as shown keeps its range and source; a changed one becomes the cook's.
/// What the form does not ask (water, lid, sources) stays as it was.
/// </summary>
internal sealed class RecipeReader(FieldReader reader, StockRecipe began, LarderTable larder)
{
    private readonly TypedForm shown = RecipeFields.Write(began, reader.Units);
    private readonly List<int> rowOfLine = [];

    /// <summary>Reads the recipe; null when something has to be put right.</summary>
    public StockRecipe? Read()
    {
        string name = RecipeFields.Name.Read(reader);
        string summary = RecipeFields.Summary.Read(reader);
        List<RecipeLine> lines = ReadLines();
        List<SimmerStage> stages = [.. began.Stages.Select((stage, index) => RecipeFields.OfStage(stage, index).ReadKept(reader, stage, shown)(stage))];
        RoastSetting? roast = ReadRoast();
        TimeSpan? blanch = RecipeFields.BlanchTime.Read(reader);
        TimeSpan? soak = RecipeFields.SoakTime.Read(reader);
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
                : began.Blanch is { } setting && FormWriter.Unchanged(reader.Form, shown, RecipeFields.BlanchTime.Name) ? setting
                : new BlanchSetting(time, RecipeFields.CookSource),
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
        for (int row = 0; row < RecipeFields.Lines(reader.Form); row++)
        {
            string field = RecipeFields.Line(row, "ingredient");
            string id = reader.Form[field].Trim();
            if (id.Length == 0 && !reader.Form.Has(RecipeFields.Line(row, "amount")))
            {
                continue;
            }

            if (id.Length == 0)
            {
                reader.Report(field, "Choose the ingredient.");
            }
            else if (!larder.TryFind(id, out _))
            {
                reader.Report(field, $"There is no {KitchenNumber.Quote(id)} in the larder. Choose one from the list.");
            }

            rowOfLine.Add(row);
            lines.Add(ReadLine(row, id));
        }

        return lines;
    }

    private RecipeLine ReadLine(int row, string id)
    {
        // Rows move, so the stored line is found by its ingredient: the row of the same place first.
        IReadOnlyList<FieldBinding<RecipeLine>> fields = RecipeFields.OfLine(began, row);
        RecipeLine? stored = began.Lines.Skip(row).Take(1).Concat(began.Lines).FirstOrDefault(IsOf);
        Func<RecipeLine, RecipeLine> typed = stored is null ? fields.Read(reader) : fields.ReadKept(reader, stored, new FormWriter(reader.Units).Put(fields, stored).Form);
        RecipeLine read = typed(new RecipeLine { IngredientId = id, Role = LineRole.Bones, PerLitre = null! });
        return read with
        {
            BeforeEnd = read.Joins == JoinMoment.BeforeEnd ? read.BeforeEnd : null,

            // A word of advice goes with its ingredient, and leaves when another takes its place.
            Note = began.Lines.Any(line => IsOf(line) && string.Equals(line.Note, read.Note, StringComparison.Ordinal)) ? read.Note : null,
            Refuse = began.Lines.FirstOrDefault(line => IsOf(line) && string.Equals(line.Cut, read.Cut, StringComparison.Ordinal))?.Refuse,
        };

        bool IsOf(RecipeLine line) => string.Equals(line.IngredientId, id, StringComparison.Ordinal);
    }

    private RoastSetting? ReadRoast()
    {
        int before = reader.Problems.Count;
        RoastSetting blank = new(default, default, default, default, null, null, RecipeFields.CookSource);
        Func<RoastSetting, RoastSetting> typed = began.Roast is { } kept ? RecipeFields.OfRoast.ReadKept(reader, kept, shown) : RecipeFields.OfRoast.Read(reader);
        RoastSetting read = typed((began.Roast ?? blank) with { VegetablesJoinBeforeEnd = null, PasteJoinsBeforeEnd = null });
        bool hasTemperature = reader.Form.Has(RecipeFields.RoastTemperature.Name);
        bool hasTime = reader.Form.Has(RecipeFields.RoastTime.Name);
        if (!hasTemperature && !hasTime)
        {
            return null;
        }

        if (!hasTemperature || !hasTime)
        {
            reader.Report(
                (hasTime ? (FieldRow)RecipeFields.RoastTemperature : RecipeFields.RoastTime).Name,
                "Roasting needs both the oven's heat and the time. Empty both for no roasting.");
        }

        bool early = read.VegetablesJoinBeforeEnd > read.Time;
        if (reader.Problems.Count == before && (early || read.PasteJoinsBeforeEnd > read.Time))
        {
            reader.Report(
                (early ? RecipeFields.RoastVegetables : RecipeFields.RoastPaste).Name,
                "This joins earlier than the roasting begins. It must be within the roasting time.");
        }

        return read == began.Roast ? read : read with { Source = RecipeFields.CookSource };
    }

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
            "Name" => RecipeFields.Name.Name,
            "Roast.OvenTemperature" => RecipeFields.RoastTemperature.Name,
            "Blanch.Time" => RecipeFields.BlanchTime.Name,
            "Soak" => RecipeFields.SoakTime.Name,
            "Lines" => "lines",
            _ when field.StartsWith("Roast", StringComparison.Ordinal) => RecipeFields.RoastTime.Name,
            _ => "",
        };
    }
}
