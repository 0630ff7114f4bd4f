using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Stockwright.Evidence;
using Stockwright.Files;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Recipes;

/// <summary>Writes the layout that <see cref="RecipeFile.Parse"/> reads.</summary>
internal sealed class RecipeWriter
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    private readonly Utf8JsonWriter json;
    private readonly Dictionary<string, string> keys;

    private RecipeWriter(Utf8JsonWriter json, Dictionary<string, string> keys)
    {
        this.json = json;
        this.keys = keys;
    }

    internal static string Write(StockRecipe recipe)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter writer = new(stream, Options))
        {
            new RecipeWriter(writer, KeysFor(recipe)).WriteRecipe(recipe);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    /// <summary>A short key for each different source text, in the order they are met.</summary>
    private static Dictionary<string, string> KeysFor(StockRecipe recipe)
    {
        IEnumerable<string?> texts =
        [
            .. recipe.Sources,
            recipe.WaterLitresPerLitre.Source,
            .. recipe.Lines.Select(line => line.PerLitre.Source),
            .. recipe.Lines.Select(line => line.Refuse?.Source),
            recipe.Roast?.Source,
            recipe.Blanch?.Source,
            .. recipe.Stages.Select(stage => stage.ReducesTo?.Source),
        ];
        Dictionary<string, string> found = new(StringComparer.Ordinal);
        foreach (string text in texts.OfType<string>())
        {
            found.TryAdd(text, "s" + (found.Count + 1).ToString(CultureInfo.InvariantCulture));
        }

        return found;
    }

    private void WriteRecipe(StockRecipe recipe)
    {
        json.WriteStartObject();
        json.WriteString("id", recipe.Id);
        json.WriteString("name", recipe.Name);
        json.WriteString("kind", recipe.Kind.ToString());
        json.WriteString("summary", recipe.Summary);
        json.WriteStartObject("sources");
        foreach ((string text, string key) in keys)
        {
            json.WriteString(key, text);
        }

        json.WriteEndObject();
        json.WriteStartArray("lines");
        foreach (RecipeLine line in recipe.Lines)
        {
            WriteLine(line);
        }

        json.WriteEndArray();
        WriteText("wetting", recipe.Wetting);
        WriteStated("waterLitresPerLitre", recipe.WaterLitresPerLitre, value => value);
        WriteRoast(recipe.Roast);
        WriteBlanch(recipe.Blanch);
        WriteMinutes("soakMinutes", recipe.Soak);
        json.WriteStartArray("stages");
        foreach (SimmerStage stage in recipe.Stages)
        {
            WriteStage(stage);
        }

        json.WriteEndArray();
        WriteLid(recipe.Lid);
        json.WriteBoolean("chillsAndDefats", recipe.ChillsAndDefats);
        WriteTexts("cites", recipe.Sources.Select(text => keys[text]));
        WriteTexts("notes", recipe.Notes);
        WriteTexts("notCovered", recipe.NotCovered);
        WriteText("copiedFrom", recipe.CopiedFrom);
        json.WriteEndObject();
    }

    private void WriteLine(RecipeLine line)
    {
        json.WriteStartObject();
        json.WriteString("ingredient", line.IngredientId);
        json.WriteString("role", line.Role.ToString());
        WriteStated("gramsPerLitre", line.PerLitre, mass => mass.Grams);
        json.WriteString("preparation", line.Preparation.ToString());
        json.WriteString("joins", line.Joins.ToString());
        WriteMinutes("minutesBeforeEnd", line.BeforeEnd);
        json.WriteNumber("stage", line.Stage);
        json.WriteString("cut", line.Cut);
        WriteShare("refuse", line.Refuse);
        json.WriteBoolean("optional", line.IsOptional);
        WriteText("note", line.Note);
        json.WriteEndObject();
    }

    private void WriteStage(SimmerStage stage)
    {
        json.WriteStartObject();
        json.WriteString("name", stage.Name);
        WriteNumbers("celsius", stage.Least.DegreesCelsius, stage.Target.DegreesCelsius, stage.Most.DegreesCelsius);
        WriteNumbers("minutes", stage.ShortestTime.TotalMinutes, stage.Time.TotalMinutes, stage.LongestTime.TotalMinutes);
        json.WriteBoolean("liftsOut", stage.LiftsOut);
        json.WriteBoolean("climbsSlowly", stage.ClimbsSlowly);
        if (stage.IsRolling)
        {
            json.WriteString("boil", nameof(Boil.Rolling));
        }

        WriteShare("reducesTo", stage.ReducesTo);
        json.WriteEndObject();
    }

    private void WriteRoast(RoastSetting? roast)
    {
        if (roast is null)
        {
            return;
        }

        json.WriteStartObject("roast");
        json.WriteNumber("celsius", Finite("celsius", roast.OvenTemperature.DegreesCelsius));
        WriteNumbers("minutes", roast.ShortestTime.TotalMinutes, roast.Time.TotalMinutes, roast.LongestTime.TotalMinutes);
        WriteMinutes("vegetablesJoinMinutesBeforeEnd", roast.VegetablesJoinBeforeEnd);
        WriteMinutes("pasteJoinsMinutesBeforeEnd", roast.PasteJoinsBeforeEnd);
        json.WriteString("source", keys[roast.Source]);
        json.WriteEndObject();
    }

    private void WriteBlanch(BlanchSetting? blanch)
    {
        if (blanch is null)
        {
            return;
        }

        json.WriteStartObject("blanch");
        json.WriteNumber("minutes", blanch.Time.TotalMinutes);
        json.WriteString("source", keys[blanch.Source]);
        json.WriteEndObject();
    }

    private void WriteLid(LidPosition lid)
    {
        json.WriteStartObject("lid");
        json.WriteString("kind", lid.Kind.ToString());
        if (lid.Kind == LidKind.Ajar)
        {
            json.WriteNumber("openPercent", Finite("openPercent", lid.OpenFraction.Percent));
        }

        json.WriteEndObject();
    }

    private void WriteStated<T>(string field, Stated<T> stated, Func<T, double> number)
    {
        json.WriteStartArray(field);
        json.WriteNumberValue(Finite(field, number(stated.Value)));
        json.WriteNumberValue(Finite(field, number(stated.Low)));
        json.WriteNumberValue(Finite(field, number(stated.High)));
        json.WriteStringValue(EvidenceGrades.Spell(stated.Provenance));
        json.WriteStringValue(keys[stated.Source]);
        json.WriteEndArray();
    }

    private void WriteShare(string field, Stated<Ratio>? share)
    {
        if (share is not null)
        {
            WriteStated(field, share, ratio => ratio.DecimalFractions);
        }
    }

    private void WriteNumbers(string field, params ReadOnlySpan<double> numbers)
    {
        json.WriteStartArray(field);
        foreach (double number in numbers)
        {
            json.WriteNumberValue(Finite(field, number));
        }

        json.WriteEndArray();
    }

    private void WriteTexts(string field, IEnumerable<string> texts)
    {
        json.WriteStartArray(field);
        foreach (string text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    private void WriteMinutes(string field, TimeSpan? time)
    {
        if (time is { } given)
        {
            json.WriteNumber(field, given.TotalMinutes);
        }
    }

    private void WriteText(string field, string? text)
    {
        if (text is not null)
        {
            json.WriteString(field, text);
        }
    }

    private static double Finite(string field, double number) =>
        double.IsFinite(number) ? number : throw new DataFileException($"'{field}' is not a number that can be written down");
}
