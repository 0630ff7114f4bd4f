using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Larder;

/// <summary>
/// An ingredient as a form: what a cook can weigh or measure. Make-up and allergens stay as they are. A number left as
/// shown keeps its range and source; a changed one becomes the cook's own.
/// </summary>
internal static class IngredientFields
{
    public const string Name = "name";
    public const string Shelf = "shelf";
    public const string Density = "density";
    public const string Packed = "packed";
    public const string RoastLoss = "roast-loss";
    public const string Refuse = "refuse";
    public const string CookSource = "stated in this kitchen";

    /// <summary>Rows offered beyond those filled in.</summary>
    private const int SpareRows = 2;

    private const int MostRows = 20;

    public static readonly Measure KilogramsPerLitre = Same("kg per L", 1000);

    public static readonly Measure PieceMass = new(new FieldUnit("g", 0.001), new FieldUnit("oz", 0.028349523125));

    public static readonly (string Word, IngredientGroup Value)[] Shelves =
        [.. Enum.GetValues<IngredientGroup>().Select(group => (group.ToString().ToLowerInvariant(), group))];

    public static string PieceField(int row, string part) => string.Create(CultureInfo.InvariantCulture, $"piece-{row}-{part}");

    /// <summary>Rows to show: all that were typed or stored, and some spare.</summary>
    public static int Rows(TypedForm typed)
    {
        int last = Enumerable.Range(0, MostRows).LastOrDefault(row => typed.Has(PieceField(row, "name")) || typed.Has(PieceField(row, "mass")), -1);
        return Math.Min(MostRows, last + 1 + SpareRows);
    }

    public static TypedForm Write(Ingredient row, UnitSystem units)
    {
        Typing typing = new Typing(units)
            .Put(Name, row.Name)
            .Put(Shelf, WordTable.Of(Shelves, row.Group))
            .Put(Density, KilogramsPerLitre, row.TrueDensity.Value.KilogramsPerCubicMeter)
            .Put(Packed, KilogramsPerLitre, row.PackDensity?.Value.KilogramsPerCubicMeter)
            .Put(RoastLoss, Measure.Percent, row.RoastLoss?.Value.DecimalFractions)
            .Put(Refuse, Measure.Percent, row.Refuse?.Value.DecimalFractions);
        for (int index = 0; index < Math.Min(row.Pieces.Count, MostRows); index++)
        {
            typing.Put(PieceField(index, "name"), row.Pieces[index].Name)
                .Put(PieceField(index, "mass"), PieceMass, row.Pieces[index].Mass.Value.Kilograms)
                .Tick(PieceField(index, "trimmed"), row.Pieces[index].IsTrimmed);
        }

        return typing.Form;
    }

    /// <summary>Reads an ingredient over one it began as; null when something has to be put right.</summary>
    public static Ingredient? Read(FieldReader reader, Ingredient began)
    {
        TypedForm shown = Write(began, reader.Units);
        string name = reader.Name(Name, "Give the ingredient a name.");
        IngredientGroup? shelf = reader.Word(Shelf, "Shelf", Shelves);
        Stated<Density>? density = Read(reader, shown, Density, "True density", KilogramsPerLitre, 200, 3000, began.TrueDensity, value => UnitsNet.Density.FromKilogramsPerCubicMeter(value), "True density: weigh a litre jug of it under water, or keep the table’s figure.");
        Stated<Density>? packed = Read(reader, shown, Packed, "Packed density", KilogramsPerLitre, 20, 3000, began.PackDensity, value => UnitsNet.Density.FromKilogramsPerCubicMeter(value));
        Stated<Ratio>? loss = Read(reader, shown, RoastLoss, "Roast loss", Measure.Percent, 0, 0.9, began.RoastLoss, value => Ratio.FromDecimalFractions(value));
        Stated<Ratio>? refuse = Read(reader, shown, Refuse, "Peelings", Measure.Percent, 0, 0.95, began.Refuse, value => Ratio.FromDecimalFractions(value));
        List<Piece> pieces = ReadPieces(reader, shown, began);
        if (density is not null && packed is not null && packed.Value > density.Value)
        {
            reader.Report(Packed, "Packed density: packed in a pot with gaps between, a litre cannot weigh more than a litre without gaps.");
        }

        if (reader.Problems.Count > 0 || shelf is not { } group || density is null)
        {
            return null;
        }

        return began with
        {
            Name = name,
            Group = group,
            TrueDensity = density,
            PackDensity = packed,
            RoastLoss = loss,
            Refuse = refuse,
            Pieces = pieces,
        };
    }

    private static List<Piece> ReadPieces(FieldReader reader, TypedForm shown, Ingredient began)
    {
        List<Piece> pieces = [];
        for (int row = 0; row < MostRows; row++)
        {
            string name = reader.Text(PieceField(row, "name"), FieldText.LongestName);
            string massField = PieceField(row, "mass");
            if (name.Length == 0 && !reader.Form.Has(massField))
            {
                continue;
            }

            if (name.Length == 0)
            {
                reader.Report(PieceField(row, "name"), "Say what one of them is called, like medium or stalk.");
            }

            double? kilograms = reader.Number(massField, "Weight of one", PieceMass, 0.00005, 20, "Weight of one: weigh a few and divide.");
            if (kilograms is not { } one)
            {
                continue;
            }

            // Matched by name, not by row: a row taken out must not hand its weight's source to the next.
            bool trimmed = string.Equals(reader.Form[PieceField(row, "trimmed")], "1", StringComparison.Ordinal);
            int was = began.Pieces.ToList().FindIndex(piece => string.Equals(piece.Name, name, StringComparison.Ordinal));
            bool same = was >= 0 && string.Equals(reader.Form[massField].Trim(), shown[PieceField(was, "mass")], StringComparison.Ordinal);
            pieces.Add(new Piece(name, same ? began.Pieces[was].Mass : Own(Mass.FromKilograms(one)), trimmed)
            {
                Plural = was >= 0 ? began.Pieces[was].Plural : name + "s",
            });
        }

        return pieces;
    }

    private static Stated<T>? Read<T>(
        FieldReader reader, TypedForm shown, string field, string what, Measure measure, double least, double most, Stated<T>? began, Func<double, T> make, string? missing = null)
    {
        double? typed = reader.Number(field, what, measure, least, most, missing);
        return began is not null && Typing.Unchanged(reader.Form, shown, field) ? began
            : typed is { } si ? Own(make(si))
            : null;
    }

    private static Stated<T> Own<T>(T value) => new(value, value, value, Provenance.CookStated, CookSource);

    private static Measure Same(string label, double scale) => new(new FieldUnit(label, scale), new FieldUnit(label, scale));
}
