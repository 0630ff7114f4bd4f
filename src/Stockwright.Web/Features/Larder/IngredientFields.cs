using System.Globalization;
using Stockwright.Larder;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Larder;

/// <summary>
/// An ingredient as a form: what a cook can weigh or measure. Make-up and allergens stay as they are. A number left as
/// shown keeps its range and source; a changed one becomes the cook's own.
/// </summary>
internal static class IngredientFields
{
    /// <summary>Rows offered beyond those filled in.</summary>
    private const int SpareRows = 2;

    private const int MostRows = 20;

    private const string CookSource = "stated in this kitchen";

    /// <summary>Shelves of the larder as a cook reads them.</summary>
    public static readonly WordsRow<IngredientGroup> Shelf = new("shelf", "Shelf",
    [
        .. Enum.GetValues<IngredientGroup>().Select(group => new FieldWord<IngredientGroup>(group.ToString().ToLowerInvariant(), group, group switch
        {
            IngredientGroup.Vegetable => "Vegetables and mushrooms",
            IngredientGroup.Aromatic => "Herbs and spices",
            IngredientGroup.DriedSeafood => "Seaweed and dried fish",
            _ => group.ToString(),
        })),
    ])
    {
        IsList = true,
    };

    private static readonly FieldBinding<Ingredient>[] OfName =
    [
        new TextRow("name", "Name") { Missing = "Give the ingredient a name." }.Of<Ingredient>(row => row.Name, (row, name) => row with { Name = name }),
        Shelf.Of<Ingredient>(row => row.Group, (row, group) => row with { Group = group }),
    ];

    private static readonly FieldBinding<Ingredient>[] OfLosses =
    [
        (NumberRow.Percent("refuse", "Peelings", Ingredient.RefuseRange) with { Placeholder = "none", Hint = "Of what you buy, what is not used." })
            .OfStated<Ingredient>(row => row.Refuse, (row, share) => row with { Refuse = share }, CookSource),
        (NumberRow.Percent("roast-loss", "Roast loss", Ingredient.RoastLossRange) with { Placeholder = "not roasted", Hint = "Of the raw weight, roasted brown." })
            .OfStated<Ingredient>(row => row.RoastLoss, (row, share) => row with { RoastLoss = share }, CookSource),
    ];

    private static readonly FieldBinding<Ingredient>[] OfRoom =
    [
        (NumberRow.Density("density", "True density", Ingredient.TrueDensityRange) with
        {
            Hint = "Its weight over the water it pushes up.",
            Missing = "True density: weigh a litre jug of it under water, or keep the table’s figure.",
        }).OfStated<Ingredient>(row => row.TrueDensity, (row, density) => row with { TrueDensity = density! }, CookSource),
        (NumberRow.Density("packed", "Packed density", Ingredient.PackDensityRange) with { Placeholder = "not known", Hint = "Its weight over the room it takes, gaps included." })
            .OfStated<Ingredient>(row => row.PackDensity, (row, density) => row with { PackDensity = density }, CookSource),
    ];

    public static readonly IReadOnlyList<ShownField<Edit>> Named = Shown(OfName);
    public static readonly IReadOnlyList<ShownField<Edit>> Losses = Shown(OfLosses);
    public static readonly IReadOnlyList<ShownField<Edit>> Room = Shown(OfRoom);

    private static readonly FieldBinding<Ingredient>[] All = [.. OfName, .. OfLosses, .. OfRoom];

    public static IReadOnlyList<ShownField<Edit>> PieceRow(int row) => Shown(OfPiece(row));

    /// <summary>Rows to show: all that were typed or stored, and some spare.</summary>
    public static int Rows(TypedForm typed) => Math.Min(MostRows, 1 + SpareRows + Enumerable.Range(0, MostRows).LastOrDefault(row => IsTyped(typed, row), -1));

    public static TypedForm Write(Ingredient row, UnitSystem units)
    {
        FormWriter typing = new FormWriter(units).Put(All, row);
        for (int index = 0; index < Math.Min(row.Pieces.Count, MostRows); index++)
        {
            typing.Put(OfPiece(index), row.Pieces[index]);
        }

        return typing.Form;
    }

    /// <summary>Reads an ingredient over one it began as; null when something has to be put right.</summary>
    public static Ingredient? Read(FieldReader reader, Ingredient began)
    {
        Func<Ingredient, Ingredient> typed = All.ReadKept(reader, began, Write(began, reader.Units));
        Ingredient read = typed(began with { PackDensity = null, RoastLoss = null, Refuse = null, Pieces = ReadPieces(reader, began) });

        // The table's own two come from two sources, and butter's cross.
        if (read.PackDensity?.Value > read.TrueDensity.Value && (read.PackDensity != began.PackDensity || read.TrueDensity != began.TrueDensity))
        {
            reader.Report("packed", "Packed density: packed in a pot with gaps between, a litre cannot weigh more than a litre without gaps.");
        }

        return reader.Problems.Count > 0 ? null : read;
    }

    private static List<Piece> ReadPieces(FieldReader reader, Ingredient began)
    {
        List<Piece> pieces = [];
        for (int row = 0; row < MostRows; row++)
        {
            if (!IsTyped(reader.Form, row))
            {
                continue;
            }

            // Matched by name, not by row: a row taken out must not hand its weight's source to the next.
            FieldBinding<Piece>[] fields = OfPiece(row);
            string name = PlainText.OneLine(reader.Form[fields[0].Row.Name]);
            Piece? stored = began.Pieces.FirstOrDefault(piece => string.Equals(piece.Name, name, StringComparison.Ordinal));
            Func<Piece, Piece> typed = stored is null ? fields.Read(reader) : fields.ReadKept(reader, stored, new FormWriter(reader.Units).Put(fields, stored).Form);
            pieces.Add(typed((stored ?? new Piece(name, null!, false)) with { IsTrimmed = false }));
        }

        return pieces;
    }

    private static bool IsTyped(TypedForm typed, int row) => OfPiece(row).Take(2).Any(field => PlainText.OneLine(typed[field.Row.Name]).Length > 0);

    private static FieldBinding<Piece>[] OfPiece(int row)
    {
        string prefix = string.Create(CultureInfo.InvariantCulture, $"piece-{row}-");
        return
        [
            new TextRow(prefix + "name", "One is called") { Placeholder = "medium, stalk, …", Missing = "Say what one of them is called, like medium or stalk." }
                .Of<Piece>(piece => piece.Name, (piece, name) => piece with { Name = name }),
            (NumberRow.Mass(prefix + "mass", "and weighs", Measure.SmallMass, Piece.MassRange) with { Told = "Weight of one", Missing = "Weight of one: weigh a few and divide." })
                .OfStated<Piece>(piece => piece.Mass, (piece, mass) => piece with { Mass = mass! }, CookSource),
            new TickRow(prefix + "trimmed", "Weighed peeled").Of<Piece>(piece => piece.IsTrimmed, (piece, trimmed) => piece with { IsTrimmed = trimmed }),
        ];
    }

    private static ShownField<Edit>[] Shown(IEnumerable<FieldBinding> fields) => [.. fields.Select(field => new ShownField<Edit>(field.Row, field))];
}
