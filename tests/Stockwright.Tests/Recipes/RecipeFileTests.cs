using CsCheck;
using Stockwright.Evidence;
using Stockwright.Files;
using Stockwright.Kitchen;
using Stockwright.Recipes;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Recipes;

public sealed class RecipeFileTests
{
    private static readonly Gen<string> Text = Gen.String[Gen.Char["abc XYZ09½°é\"\\/<>{}'\n,.字"], 0, 12];

    private static readonly Gen<TimeSpan> Time = Gen.Int[0, 4000].Select(minutes => TimeSpan.FromMinutes(minutes));

    private static readonly Gen<Stated<double>> Number =
        from low in Gen.Double[0, 100]
        from more in Gen.Double[0, 100]
        from most in Gen.Double[0, 100]
        from grade in Gen.OneOfConst(Enum.GetValues<Provenance>())
        from source in Text
        select new Stated<double>(low + more, low, low + more + most, grade, source);

    private static readonly Gen<RecipeLine> Line =
        from id in Text
        from role in Gen.OneOfConst(Enum.GetValues<LineRole>())
        from amount in Number
        from preparation in Gen.OneOfConst(Enum.GetValues<Preparation>())
        from joins in Gen.OneOfConst(Enum.GetValues<JoinMoment>())
        from before in Gen.Nullable(Time)
        from stage in Gen.Int[0, 5]
        from optional in Gen.Bool
        from note in Gen.Null(Text)
        from refuse in Gen.Null(Number)
        select new RecipeLine
        {
            IngredientId = id,
            Role = role,
            PerLitre = new Stated<Mass>(Mass.FromGrams(amount.Value), Mass.FromGrams(amount.Low), Mass.FromGrams(amount.High), amount.Provenance, amount.Source),
            Preparation = preparation,
            Joins = joins,
            BeforeEnd = before,
            Stage = stage,
            Cut = id,
            IsOptional = optional,
            Note = note,
            Refuse = refuse is { } share ? new(Part(share.Value), Part(share.Low), Part(share.High), share.Provenance, share.Source) : null,
        };

    private static readonly Gen<SimmerStage> Stage =
        from name in Text
        from least in Gen.Int[20, 90]
        from shortest in Time
        from lifts in Gen.Bool
        from climbs in Gen.Bool
        from rolling in Gen.Bool
        from left in Gen.Null(Number)
        select new SimmerStage(
            name,
            Temperature.FromDegreesCelsius(least),
            Temperature.FromDegreesCelsius(least + 2.5),
            Temperature.FromDegreesCelsius(least + 5),
            shortest,
            shortest * 2,
            shortest * 3,
            lifts,
            climbs)
        {
            IsRolling = rolling,
            ReducesTo = left is { } share ? new(Part(share.Value), Part(share.Low), Part(share.High), share.Provenance, share.Source) : null,
        };

    /// <summary>A share above nothing and below the whole.</summary>
    private static Ratio Part(double upTo300) => Ratio.FromDecimalFractions((1 + upTo300) / 302);

    private static readonly Gen<LidPosition> Lid = Gen.OneOf(
        Gen.Const(LidPosition.Off),
        Gen.Const(LidPosition.On),
        Gen.Int[1, 60].Select(percent => LidPosition.Ajar(Ratio.FromPercent(percent))));

    private static readonly Gen<RoastSetting> Roast =
        from oven in Gen.Int[100, 300]
        from shortest in Time
        from vegetables in Gen.Nullable(Time)
        from paste in Gen.Nullable(Time)
        from source in Text
        select new RoastSetting(Temperature.FromDegreesCelsius(oven), shortest, shortest * 2, shortest * 3, vegetables, paste, source);

    private static readonly Gen<StockRecipe> AnyRecipe =
        from id in Text
        from kind in Gen.OneOfConst(Enum.GetValues<StockKind>())
        from lines in Line.Array[0, 6]
        from water in Number
        from roast in Gen.Null(Roast)
        from blanch in Gen.Null(Gen.Select(Time, Text, (time, source) => new BlanchSetting(time, source)))
        from soak in Gen.Nullable(Time)
        from stages in Stage.Array[0, 3]
        from lid in Lid
        from chills in Gen.Bool
        from texts in Text.Array[0, 4]
        from copied in Gen.Null(Text)
        from wetting in Gen.Null(Text)
        from leftOut in Text.Array[0, 2]
        select new StockRecipe
        {
            Id = id,
            Name = id + "!",
            Kind = kind,
            Summary = id,
            Lines = lines,
            WaterLitresPerLitre = water,
            Roast = roast,
            Blanch = blanch,
            Soak = soak,
            Stages = stages,
            Lid = lid,
            ChillsAndDefats = chills,
            Sources = texts,
            Notes = texts,
            CopiedFrom = copied,
            Wetting = wetting,
            NotCovered = leftOut,
        };

    [Fact]
    public void A_recipe_written_down_reads_back_the_same()
    {
        AnyRecipe.Sample(recipe => AssertSame(recipe, RecipeFile.Parse(RecipeFile.ToJson(recipe))));
    }

    [Fact]
    public void The_standing_recipes_survive_a_copy()
    {
        foreach (StockRecipe recipe in StandardRecipes.Book.Recipes)
        {
            StockRecipe copy = recipe with { Id = "mine", CopiedFrom = recipe.Name };
            AssertSame(copy, RecipeFile.Parse(RecipeFile.ToJson(copy)));
        }
    }

    [Theory]
    [InlineData("\"kind\": \"Lamb\"", "\"kind\": \"Mutton\"", "kind")]
    [InlineData("\"kind\": \"Lamb\"", "\"kind\": \"8\"", "kind")]
    [InlineData("\"kind\": \"Lamb\",", "", "kind")]
    [InlineData("\"name\": \"Lamb stock\"", "\"name\": null", "name")]
    [InlineData("\"name\": \"Lamb stock\"", "\"name\": [1]", "name")]
    [InlineData("\"role\": \"Bones\"", "\"role\": \"Bone\"", "line 1")]
    [InlineData("\"role\": \"Bones\"", "\"role\": \"Bones, Acid\"", "role")]
    [InlineData("\"estimate\"", "\"hunch\"", "hunch")]
    [InlineData("\"celsius\": 200", "\"celsius\": \"hot\"", "celsius")]
    [InlineData("\"celsius\": 200", "\"celsius\": NaN", "line")]
    [InlineData("\"minutes\": [", "\"minutes\": [1e300, ", "minutes")]
    [InlineData("\"kind\": \"Ajar\", \"openPercent\": 10", "\"kind\": \"Ajar\"", "openPercent")]
    [InlineData("\"kind\": \"Ajar\", \"openPercent\": 10", "\"kind\": \"Ajar\", \"openPercent\": 0", "openPercent")]
    [InlineData("\"kind\": \"Ajar\", \"openPercent\": 10", "\"kind\": \"Ajar\", \"openPercent\": 90", "openPercent")]
    [InlineData("\"chillsAndDefats\": true,", "", "chillsAndDefats")]
    [InlineData("\"stages\"", "\"stagse\"", "stages")]
    [InlineData("\"lines\"", "\"liens\"", "lines")]
    [InlineData("\"waterLitresPerLitre\": [1.5", "\"waterLitresPerLitre\": [-1.5", "waterLitresPerLitre")]
    [InlineData("\"cites\": [\"cards\"", "\"cites\": [\"nowhere\"", "nowhere")]
    public void A_slip_names_its_place(string was, string becomes, string named)
    {
        string good = Read("lamb");
        string broken = good.Replace(was, becomes, StringComparison.Ordinal);
        Assert.NotEqual(good, broken, StringComparer.Ordinal);
        DataFileException error = Assert.Throws<DataFileException>(() => RecipeFile.Parse(broken));
        Assert.Contains(named, error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[0.1, 0, 0.2, \"estimate\", \"trade\"]")]
    [InlineData("[0.1, 0.05, 1, \"estimate\", \"trade\"]")]
    [InlineData("[0.1, 0.05, 0.2, \"estimate\", \"nowhere\"]")]
    public void What_is_left_of_a_glace_is_a_part_of_it(string share)
    {
        string good = Read("glace");
        int at = good.IndexOf("\"reducesTo\": [", StringComparison.Ordinal) + "\"reducesTo\": ".Length;
        string broken = good.Remove(at, good.IndexOf(']', at) - at + 1).Insert(at, share);
        Assert.Throws<DataFileException>(() => RecipeFile.Parse(broken));
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("[{}]")]
    [InlineData("{\"id\": \"x\", \"sources\": {}, \"lines\": [null]}")]
    public void Hostile_text_gets_the_clear_exception(string json) => Assert.Throws<DataFileException>(() => RecipeFile.Parse(json));

    [Fact]
    public void A_damaged_file_never_gives_another_exception()
    {
        string good = Read("brown-beef");
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Int[1, 60], Text).Sample((at, length, put) =>
        {
            try
            {
                RecipeFile.Parse(good.Remove(at, Math.Min(length, good.Length - at)).Insert(at, put));
            }
            catch (DataFileException)
            {
                // Clear, and meant.
            }
        });
    }

    [Fact]
    public void A_number_that_is_none_is_not_written_down()
    {
        StockRecipe recipe = StandardRecipes.Book.Recipes[0];
        recipe = recipe with { WaterLitresPerLitre = recipe.WaterLitresPerLitre with { Value = double.NaN } };
        Assert.Throws<DataFileException>(() => RecipeFile.ToJson(recipe));
    }

    private static string Read(string id)
    {
        using Stream stream = typeof(StandardRecipes).Assembly.GetManifestResourceStream($"Stockwright.Recipes.Data.{id}.json")!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }

    private static void AssertSame(StockRecipe expected, StockRecipe actual)
    {
        Assert.Equal(expected.Lines, actual.Lines);
        Assert.Equal(expected.Stages, actual.Stages);
        Assert.Equal(expected.Sources, actual.Sources);
        Assert.Equal(expected.Notes, actual.Notes);
        Assert.Equal(expected.NotCovered, actual.NotCovered);

        // Lists inside a record compare by reference; with the same lists the rest compares by value.
        Assert.Equal(expected, actual with { Lines = expected.Lines, Stages = expected.Stages, Sources = expected.Sources, Notes = expected.Notes, NotCovered = expected.NotCovered });
    }
}
