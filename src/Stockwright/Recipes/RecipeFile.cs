using Stockwright.Evidence;
using Stockwright.Files;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Recipes;

/// <summary>How hard a stage boils, as the file spells it.</summary>
internal enum Boil
{
    /// <summary>As gently as can be.</summary>
    Gentle,

    /// <summary>At a rolling boil.</summary>
    Rolling,
}

/// <summary>Reads and writes a recipe as JSON, for the standing recipes and the cook's own copies; layout in docs/recipes.md.</summary>
public static class RecipeFile
{
    /// <summary>Longest time a file may state; a guard against slips, not a rule of the trade.</summary>
    private const double MostMinutes = 60_000;

    /// <summary>Reads a recipe.</summary>
    /// <param name="json">Text of the file.</param>
    /// <exception cref="DataFileException">The text is not JSON, or a field is missing or unsound; the message names line and field.</exception>
    public static StockRecipe Parse(string json) =>
        JsonRow.ReadFile(json, "Recipe file", ReadRecipe);

    /// <summary>Writes a recipe so that <see cref="Parse"/> gives it back unchanged.</summary>
    /// <exception cref="DataFileException">A number of the recipe is not finite.</exception>
    public static string ToJson(StockRecipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        return RecipeWriter.Write(recipe);
    }

    private static StockRecipe ReadRecipe(JsonRow file)
    {
        string id = file.Text("id");
        file.Rename($"Recipe '{id}'");
        Dictionary<string, string> sources = file.TextTable("sources");
        if (!file.Has("lines"))
        {
            throw file.Missing("lines");
        }

        if (!file.Has("stages"))
        {
            throw file.Missing("stages");
        }

        return new StockRecipe
        {
            Id = id,
            Name = file.Text("name"),
            Kind = file.Choice<StockKind>("kind"),
            Summary = file.Text("summary"),
            Lines = file.Rows("lines", "line", row => ReadLine(row, sources)),
            WaterLitresPerLitre = Positive(file, file.Stated("waterLitresPerLitre", sources), "waterLitresPerLitre"),
            Roast = file.Inner("roast", row => ReadRoast(row, sources)),
            Blanch = file.Inner("blanch", row => new BlanchSetting(Minutes(row, "minutes") ?? throw row.Missing("minutes"), Source(row, sources))),
            Soak = Minutes(file, "soakMinutes"),
            Wetting = file.OptionalText("wetting"),
            Stages = file.Rows("stages", "stage", row => ReadStage(row, sources)),
            Lid = ReadLid(file),
            ChillsAndDefats = file.Has("chillsAndDefats") ? file.Flag("chillsAndDefats", whenMissing: false) : throw file.Missing("chillsAndDefats"),
            Sources = [.. file.Texts("cites").Select(key => Cited(file, key, "cites", sources))],
            Notes = file.Texts("notes"),
            NotCovered = file.Texts("notCovered"),
            CopiedFrom = file.OptionalText("copiedFrom"),
        };
    }

    private static RecipeLine ReadLine(JsonRow row, Dictionary<string, string> sources)
    {
        Stated<double> grams = Positive(row, row.Stated("gramsPerLitre", sources), "gramsPerLitre");
        return new RecipeLine
        {
            IngredientId = row.Text("ingredient"),
            Role = row.Choice<LineRole>("role"),
            PerLitre = new Stated<Mass>(Mass.FromGrams(grams.Value), Mass.FromGrams(grams.Low), Mass.FromGrams(grams.High), grams.Provenance, grams.Source),
            Preparation = row.Choice<Preparation>("preparation", Preparation.None),
            Joins = row.Choice<JoinMoment>("joins", JoinMoment.Start),
            BeforeEnd = Minutes(row, "minutesBeforeEnd"),
            Stage = row.WholeNumber("stage", whenMissing: 0),
            Cut = row.OptionalText("cut") ?? "",
            Refuse = ReadShare(row, "refuse", sources),
            IsOptional = row.Flag("optional", whenMissing: false),
            Note = row.OptionalText("note"),
        };
    }

    private static SimmerStage ReadStage(JsonRow row, Dictionary<string, string> sources)
    {
        (Temperature least, Temperature target, Temperature most) = Celsius(row, row.Three("celsius"));
        (TimeSpan shortest, TimeSpan time, TimeSpan longest) = Times(row);
        return new SimmerStage(
            row.Text("name"),
            least,
            target,
            most,
            shortest,
            time,
            longest,
            row.Flag("liftsOut", whenMissing: false),
            row.Flag("climbsSlowly", whenMissing: false))
        {
            IsRolling = row.Choice<Boil>("boil", Boil.Gentle) == Boil.Rolling,
            ReducesTo = ReadShare(row, "reducesTo", sources),
        };
    }

    private static Stated<Ratio>? ReadShare(JsonRow row, string field, Dictionary<string, string> sources) =>
        row.OptionalStated(field, sources) is { } share
            ? share is { Low: > 0, High: < 1 }
                ? new(Ratio.FromDecimalFractions(share.Value), Ratio.FromDecimalFractions(share.Low), Ratio.FromDecimalFractions(share.High), share.Provenance, share.Source)
                : throw row.Fail($"'{field}' must lie between 0 and 1, its range included")
            : null;

    private static RoastSetting ReadRoast(JsonRow row, Dictionary<string, string> sources)
    {
        double oven = row.Number("celsius");
        (Temperature temperature, _, _) = Celsius(row, (oven, oven, oven));
        (TimeSpan shortest, TimeSpan time, TimeSpan longest) = Times(row);
        return new RoastSetting(
            temperature,
            shortest,
            time,
            longest,
            Minutes(row, "vegetablesJoinMinutesBeforeEnd"),
            Minutes(row, "pasteJoinsMinutesBeforeEnd"),
            Source(row, sources));
    }

    private static LidPosition ReadLid(JsonRow file)
    {
        LidKind? kind = null;
        double open = 0;
        file.Inner("lid", row =>
        {
            kind = row.Choice<LidKind>("kind");
            open = kind == LidKind.Ajar ? row.Number("openPercent") : 0;
            return open is 0 or (>= 1 and <= 60) ? row : throw row.Fail("'openPercent' must lie between 1 and 60");
        });
        return kind switch
        {
            LidKind.Off => LidPosition.Off,
            LidKind.On => LidPosition.On,
            LidKind.Ajar when open > 0 => LidPosition.Ajar(Ratio.FromPercent(open)),
            LidKind.Ajar => throw file.Fail("'lid' stands ajar and needs an 'openPercent' between 1 and 60"),
            _ => throw file.Missing("lid"),
        };
    }

    private static (Temperature Least, Temperature Target, Temperature Most) Celsius(JsonRow row, (double Least, double Target, double Most) celsius) =>
        celsius.Least >= -50 && celsius.Most <= 400
            ? (Temperature.FromDegreesCelsius(celsius.Least), Temperature.FromDegreesCelsius(celsius.Target), Temperature.FromDegreesCelsius(celsius.Most))
            : throw row.Fail("'celsius' must lie between -50 and 400 °C");

    private static (TimeSpan Shortest, TimeSpan Time, TimeSpan Longest) Times(JsonRow row)
    {
        (double shortest, double time, double longest) = row.Three("minutes");
        return shortest >= 0 && longest <= MostMinutes
            ? (TimeSpan.FromMinutes(shortest), TimeSpan.FromMinutes(time), TimeSpan.FromMinutes(longest))
            : throw row.Fail("'minutes' must lie between 0 and 60000");
    }

    private static TimeSpan? Minutes(JsonRow row, string field)
    {
        if (row.OptionalNumber(field) is not { } minutes)
        {
            return null;
        }

        return minutes is >= 0 and <= MostMinutes ? TimeSpan.FromMinutes(minutes) : throw row.Fail($"'{field}' must lie between 0 and 60000 minutes");
    }

    private static Stated<double> Positive(JsonRow row, Stated<double> value, string field) =>
        value.Low >= 0 ? value : throw row.Fail($"'{field}' cannot be less than nothing");

    private static string Source(JsonRow row, Dictionary<string, string> sources) => Cited(row, row.Text("source"), "source", sources);

    private static string Cited(JsonRow row, string key, string field, Dictionary<string, string> sources) =>
        sources.TryGetValue(key, out string? text)
            ? text
            : throw row.Fail($"'{field}' names the source '{key}', which is not in the table of sources");
}
