using Stockwright.Kitchen;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Ovens and trays as forms.</summary>
internal static class OvenFields
{
    public const string Name = "name";
    public const string Fan = "fan";
    public const string Levels = "levels";
    public const string Length = "length";
    public const string Width = "width";
    public const string Count = "count";
    public const string Size = "size";

    /// <summary>Chosen when the tray is of no standard size.</summary>
    public const string OwnSize = "own";

    private const double LeastMetres = 0.1;
    private const double MostMetres = 2;

    /// <summary>
    /// Tray sizes kitchens buy: EN 631-1 for the GN sizes; the trade's sheet pans of 18 by 26 and 13 by 18 inches
    /// (common practice, no source). Outer sizes.
    /// </summary>
    public static readonly (string Word, string Text, double LengthMetres, double WidthMetres)[] Sizes =
    [
        ("gn-1-1", "GN 1/1, 530 × 325 mm", 0.530, 0.325),
        ("gn-2-1", "GN 2/1, 650 × 530 mm", 0.650, 0.530),
        ("half-sheet", "Half-sheet, 457 × 330 mm (18 × 13 in)", 0.457, 0.330),
        ("sheet", "Sheet, 660 × 457 mm (26 × 18 in)", 0.660, 0.457),
    ];

    public static TypedForm Write(Oven? oven, UnitSystem units) => oven is null
        ? TypedForm.Empty
        : new Typing(units)
            .Put(Name, oven.Name)
            .Tick(Fan, oven.HasFan)
            .Put(Levels, oven.Levels)
            .Put(Length, Measure.PotLength, oven.ShelfLength.Meters)
            .Put(Width, Measure.PotLength, oven.ShelfWidth.Meters)
            .Form;

    public static TypedForm Write(Tray? tray, UnitSystem units)
    {
        if (tray is null)
        {
            return new Typing(units).Put(Count, 1).Form;
        }

        string size = Array.Find(Sizes, row => IsSize(tray, row.LengthMetres, row.WidthMetres)).Word ?? OwnSize;
        Typing typing = new Typing(units).Put(Name, tray.Name).Put(Size, size).Put(Count, tray.Count);
        if (string.Equals(size, OwnSize, StringComparison.Ordinal))
        {
            typing.Put(Length, Measure.PotLength, tray.InnerLength.Meters).Put(Width, Measure.PotLength, tray.InnerWidth.Meters);
        }

        return typing.Form;
    }

    /// <summary>Reads an oven; null when something has to be put right.</summary>
    public static Oven? ReadOven(FieldReader reader, string id, Oven? stored)
    {
        string name = reader.Name(Name, "Give the oven a name you will know it by.");
        int? levels = reader.Whole(Levels, "Shelves at once", 1, 40, "Shelves at once: how many trays go in together?");
        double? length = Side(reader, Length, "Shelf length");
        double? width = Side(reader, Width, "Shelf width");
        if (reader.Problems.Count > 0 || levels is not { } shelves || length is not { } longSide || width is not { } shortSide)
        {
            return null;
        }

        Oven read = new(
            id,
            name,
            string.Equals(reader.Form[Fan], "1", StringComparison.Ordinal),
            shelves,
            UnitsNet.Length.FromMeters(longSide),
            UnitsNet.Length.FromMeters(shortSide));
        return stored is not null && Typing.Unchanged(reader.Form, Write(stored, reader.Units), Length, Width)
            ? read with { ShelfLength = stored.ShelfLength, ShelfWidth = stored.ShelfWidth }
            : read;
    }

    /// <summary>Reads a tray; null when something has to be put right. A standard size counts over typed sides.</summary>
    public static Tray? ReadTray(FieldReader reader, string id, Tray? stored)
    {
        string size = reader.Form[Size].Trim();
        (string Word, string Text, double LengthMetres, double WidthMetres) standard =
            Array.Find(Sizes, row => string.Equals(row.Word, size, StringComparison.Ordinal));
        string name = reader.Text(Name, FieldText.LongestName);
        if (name.Length == 0 && !reader.Form.Has(Name))
        {
            name = standard.Text is { } text ? $"{text.Split(',')[0]} tray" : "Tray";
        }

        if (standard.Word is null && size.Length > 0 && !string.Equals(size, OwnSize, StringComparison.Ordinal))
        {
            reader.Report(Size, $"There is no tray size called {KitchenNumber.Quote(size)}. Choose one from the list, or give the sides of yours.");
        }

        int? count = reader.Whole(Count, "How many", 1, 200, "How many of them are there?");
        double? length = standard.Word is null ? Side(reader, Length, "Inside length") : standard.LengthMetres;
        double? width = standard.Word is null ? Side(reader, Width, "Inside width") : standard.WidthMetres;
        if (reader.Problems.Count > 0 || count is not { } owned || length is not { } longSide || width is not { } shortSide)
        {
            return null;
        }

        Tray read = new(id, name, UnitsNet.Length.FromMeters(longSide), UnitsNet.Length.FromMeters(shortSide), owned);
        return stored is not null && standard.Word is null && Typing.Unchanged(reader.Form, Write(stored, reader.Units), Size, Length, Width)
            ? read with { InnerLength = stored.InnerLength, InnerWidth = stored.InnerWidth }
            : read;
    }

    private static bool IsSize(Tray tray, double lengthMetres, double widthMetres) =>
        Math.Abs(tray.InnerLength.Meters - lengthMetres) < 1e-9 && Math.Abs(tray.InnerWidth.Meters - widthMetres) < 1e-9;

    private static double? Side(FieldReader reader, string field, string what) =>
        reader.Number(field, what, Measure.PotLength, LeastMetres, MostMetres, $"{what}: measure it inside.");
}
