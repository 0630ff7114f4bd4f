using Stockwright.Evidence;
using Stockwright.Files;
using UnitsNet;

namespace Stockwright.Larder;

/// <summary>Reads the larder's data file; its layout is described in docs/larder.md.</summary>
internal static class LarderFile
{
    /// <summary>Reads a larder file.</summary>
    /// <param name="json">Text of the file.</param>
    /// <exception cref="DataFileException">The text is not JSON, or a row is incomplete or unsound; the message names row and field.</exception>
    public static LarderTable Parse(string json) =>
        JsonRow.ReadFile(json, "Larder file", ReadTable);

    private static LarderTable ReadTable(JsonRow file)
    {
        file.OptionalText("about");
        Dictionary<string, string> sources = file.TextTable("sources");
        if (!file.Has("ingredients"))
        {
            throw file.Missing("ingredients");
        }

        HashSet<string> ids = new(StringComparer.Ordinal);
        return new LarderTable(file.Rows("ingredients", "ingredient", row => ReadIngredient(row, sources, ids)));
    }

    private static Ingredient ReadIngredient(JsonRow row, Dictionary<string, string> sources, HashSet<string> ids)
    {
        string id = row.Text("id");
        row.Rename($"Ingredient '{id}'");
        if (id.Length == 0 || !id.All(letter => char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter) || letter == '-'))
        {
            throw row.Fail("'id' must be small letters, digits and hyphens");
        }

        if (!ids.Add(id))
        {
            throw row.Fail("'id' is used by two ingredients");
        }

        Ingredient ingredient = new()
        {
            Id = id,
            Name = row.Text("name"),
            Group = row.Choice<IngredientGroup>("group"),
            Use = row.Text("use"),
            UsdaNumber = row.OptionalText("usda"),
            Water = Fraction(row, "water", sources) ?? throw row.Missing("water"),
            Protein = Fraction(row, "protein", sources) ?? throw row.Missing("protein"),
            Fat = Fraction(row, "fat", sources) ?? throw row.Missing("fat"),
            Ash = Fraction(row, "ash", sources) ?? throw row.Missing("ash"),
            Collagen = Fraction(row, "collagen", sources),
            TrueDensity = DensityOf(row, "trueDensity", sources) ?? throw row.Missing("trueDensity"),
            PackDensity = DensityOf(row, "packDensity", sources),
            RoastLoss = Fraction(row, "roastLoss", sources),
            Refuse = Fraction(row, "refuse", sources),
            BoneShare = Fraction(row, "boneShare", sources),
            Pieces = row.Rows("pieces", "piece", piece => ReadPiece(piece, sources)),
            Allergens = row.Texts("allergens"),
            Family = row.OptionalText("family"),
            Note = row.OptionalText("note"),
            IsOffered = row.Flag("offered", whenMissing: true),
        };
        Check(row, ingredient);
        return ingredient;
    }

    private static void Check(JsonRow row, Ingredient ingredient)
    {
        if (IngredientValidation.Problem(ingredient) is { } problem)
        {
            throw row.Fail(problem);
        }

        if (ingredient.Refuse is { } refuse && refuse.Value.DecimalFractions >= 1)
        {
            throw row.Fail("'refuse' leaves nothing to cook");
        }

        if (ingredient.Allergens.FirstOrDefault(word => !Allergen.Known.Contains(word)) is { } unknown)
        {
            throw row.Fail($"'allergens' holds '{unknown}'; it must be one of {string.Join(", ", Allergen.Known.Order(StringComparer.Ordinal))}");
        }

        if (ingredient.Family is { } family && !BotanicalFamily.Known.Contains(family))
        {
            throw row.Fail($"'family' is '{family}'; it must be one of {string.Join(", ", BotanicalFamily.Known.Order(StringComparer.Ordinal))}");
        }
    }

    private static Piece ReadPiece(JsonRow row, Dictionary<string, string> sources)
    {
        string name = row.Text("name");
        Stated<double> grams = row.Stated("grams", sources);
        if (!(grams.Low > 0))
        {
            throw row.Fail("'grams' must be more than nothing");
        }

        return new Piece(name, Convert(grams, static value => Mass.FromGrams(value)), row.Flag("trimmed", whenMissing: false))
        {
            Plural = row.OptionalText("plural") ?? name + "s",
        };
    }

    private static Stated<Ratio>? Fraction(JsonRow row, string field, Dictionary<string, string> sources)
    {
        if (row.OptionalStated(field, sources) is not { } percent)
        {
            return null;
        }

        return percent.Low >= 0 && percent.High <= 100
            ? Convert(percent, static value => Ratio.FromPercent(value))
            : throw row.Fail($"'{field}' must lie between 0 and 100 %, its range included");
    }

    private static Stated<Density>? DensityOf(JsonRow row, string field, Dictionary<string, string> sources)
    {
        if (row.OptionalStated(field, sources) is not { } kilogramsPerLitre)
        {
            return null;
        }

        return kilogramsPerLitre.Low > 0 && kilogramsPerLitre.High <= 3
            ? Convert(kilogramsPerLitre, static value => Density.FromKilogramsPerLiter(value))
            : throw row.Fail($"'{field}' must lie above 0 and up to 3 kg per litre, its range included");
    }

    private static Stated<T> Convert<T>(Stated<double> number, Func<double, T> unit) =>
        new(unit(number.Value), unit(number.Low), unit(number.High), number.Provenance, number.Source);
}
