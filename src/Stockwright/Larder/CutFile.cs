using Stockwright.Evidence;
using Stockwright.Files;
using UnitsNet;

namespace Stockwright.Larder;

/// <summary>Reads the data file of cuts; its layout is described in docs/equations-body.md.</summary>
internal static class CutFile
{
    private const double UsualThresholdCelsius = 60;

    /// <summary>Reads a file of cuts.</summary>
    /// <param name="json">Text of the file.</param>
    /// <exception cref="DataFileException">The text is not JSON, or a row is incomplete or unsound; the message names row and field.</exception>
    public static CutTable Parse(string json) =>
        JsonRow.ReadFile(json, "File of cuts", ReadTable);

    private static CutTable ReadTable(JsonRow file)
    {
        file.OptionalText("about");
        Dictionary<string, string> sources = file.TextTable("sources");
        Dictionary<string, CutClass> classes = new(StringComparer.Ordinal);
        Dictionary<string, string> ofIngredients = new(StringComparer.Ordinal);
        Dictionary<IngredientGroup, string> ofGroups = [];
        Dictionary<IngredientGroup, Stated<Ratio>> sodium = [];
        Dictionary<string, Solubles> solubles = new(StringComparer.Ordinal);
        file.Rows("classes", "class", row =>
        {
            CutClass cut = ReadClass(row, sources);
            if (!classes.TryAdd(cut.Id, cut))
            {
                throw row.Fail("'id' is used by two classes");
            }

            foreach (string ingredient in row.Texts("ingredients"))
            {
                if (!ofIngredients.TryAdd(ingredient, cut.Id))
                {
                    throw row.Fail($"'ingredients' holds '{ingredient}', which another class holds already");
                }
            }

            return cut;
        });
        file.Rows("groups", "group", row =>
        {
            IngredientGroup group = row.Choice<IngredientGroup>("group");
            string name = row.Text("class");
            ofGroups.Add(group, classes.ContainsKey(name) ? name : throw row.Fail($"'class' names '{name}', which is not in the file"));
            if (row.OptionalStated("sodiumMilligrams", sources) is { } milligrams)
            {
                sodium.Add(group, Milligrams(milligrams));
            }

            return group;
        });
        file.Rows("solubles", "ingredient", row =>
        {
            string id = row.Text("ingredient");
            if (!solubles.TryAdd(id, ReadSolubles(row, sources)))
            {
                throw row.Fail($"'ingredient' holds '{id}' twice");
            }

            return id;
        });
        return new CutTable([.. classes.Values], ofIngredients, ofGroups, solubles, sodium);
    }

    private static CutClass ReadClass(JsonRow row, Dictionary<string, string> sources)
    {
        string id = row.Text("id");
        row.Rename($"Class '{id}'");
        double piece = row.Number("referencePieceCentimetres");
        if (!(piece > 0))
        {
            throw row.Fail("'referencePieceCentimetres' must be above zero");
        }

        return new CutClass
        {
            Id = id,
            Name = row.Text("name"),
            Collagen = Percent(row, "collagen", sources),
            SoftShare = Percent(row, "softShare", sources),
            SoftRate = NotNegative(row, "softRatePerHour", sources, static value => Frequency.FromPerSecond(value / 3600)),
            HardRate = NotNegative(row, "hardRatePerHour", sources, static value => Frequency.FromPerSecond(value / 3600)),
            FreshBloom = NotNegative(row, "freshBloomGrams", sources, static value => Mass.FromGrams(value)),
            ReferencePiece = Length.FromCentimeters(piece),
            Extractives = Percent(row, "extractives", sources),
            ExtractivesRate = Frequency.FromPerSecond((row.OptionalNumber("extractivesRatePerHour") ?? ExtractionRates.ExtractivesPerHour) / 3600),
            FreedFat = Percent(row, "freedFat", sources),
            ExtractsFrom = Temperature.FromDegreesCelsius(row.OptionalNumber("extractsFromCelsius") ?? UsualThresholdCelsius),
            MeltingShift = TemperatureDelta.FromKelvins(row.OptionalNumber("meltingShiftKelvins") ?? 0),
        };
    }

    private static Solubles ReadSolubles(JsonRow row, Dictionary<string, string> sources) => new(
        Percent(row, "sugars", sources),
        Milligrams(row.Stated("sodiumMilligrams", sources)),
        row.Flag("dissolves", whenMissing: false));

    private static Stated<Ratio> Percent(JsonRow row, string field, Dictionary<string, string> sources)
    {
        Stated<double> percent = row.Stated(field, sources);
        return percent is { Low: >= 0, High: <= 100 }
            ? Convert(percent, static value => Ratio.FromPercent(value))
            : throw row.Fail($"'{field}' must lie between 0 and 100 %, its range included");
    }

    private static Stated<T> NotNegative<T>(JsonRow row, string field, Dictionary<string, string> sources, Func<double, T> unit)
    {
        Stated<double> number = row.Stated(field, sources);
        return number.Low >= 0 ? Convert(number, unit) : throw row.Fail($"'{field}' must not be below zero");
    }

    private static Stated<Ratio> Milligrams(Stated<double> perHundredGrams) =>
        Convert(perHundredGrams, static value => Ratio.FromDecimalFractions(value / 1e5));

    private static Stated<T> Convert<T>(Stated<double> number, Func<double, T> unit) =>
        new(unit(number.Value), unit(number.Low), unit(number.High), number.Provenance, number.Source);
}
