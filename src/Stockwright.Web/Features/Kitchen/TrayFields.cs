using Stockwright.Kitchen;
using Stockwright.Storage;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Trays of one size as a form.</summary>
internal sealed class TrayFields() : KitchenFields<Tray>("tray", "/kitchen#trays", "Add trays")
{
    /// <summary>
    /// Tray sizes kitchens buy: EN 631-1 for the GN sizes; the trade's sheet pans of 18 by 26 and 13 by 18 inches
    /// (common practice, no source). Outer sizes, in metres; the last is for any other.
    /// </summary>
    private static readonly WordsRow<(double Length, double Width)> Size = new("size", "Size",
    [
        new("gn-1-1", (0.530, 0.325), "GN 1/1, 530 × 325 mm"),
        new("gn-2-1", (0.650, 0.530), "GN 2/1, 650 × 530 mm"),
        new("half-sheet", (0.457, 0.330), "Half-sheet, 457 × 330 mm (18 × 13 in)"),
        new("sheet", (0.660, 0.457), "Sheet, 660 × 457 mm (26 × 18 in)"),
        new("own", default, "Another size"),
    ])
    {
        IsList = true,
        Hint = "Outer sizes; measure yours inside for a closer fit.",
    };

    private static readonly FieldBinding<Tray>[] Sides =
    [
        (Side("length", "Inside length") with { Class = "for-own-tray", Hint = "Only for a size of your own." }).Of<Tray>(tray => tray.InnerLength, (tray, side) => tray with { InnerLength = side }),
        (Side("width", "Inside width") with { Class = "for-own-tray", Hint = "Only for a size of your own." }).Of<Tray>(tray => tray.InnerWidth, (tray, side) => tray with { InnerWidth = side }),
    ];

    private static readonly FieldBinding<Tray>[] CountAndName =
    [
        new WholeRow("count", "How many you have", Tray.CountRange) { Told = "How many", Missing = "How many of them are there?" }.Of<Tray>(tray => tray.Count, (tray, count) => tray with { Count = count }),
        new TextRow("name", "Name") { Placeholder = "from its size" }.Of<Tray>(tray => tray.Name, (tray, name) => tray with { Name = name }),
    ];

    public static readonly TrayFields Form = new();

    public override IReadOnlyList<FieldGroup<KitchenView<Tray>>> Groups { get; } = [Group(null, "fields tray-size", [Size, .. Sides.Concat(CountAndName).Select(field => field.Row)])];

    /// <summary>A side of a tray or a shelf.</summary>
    public static NumberRow<Length> Side(string name, string label) => NumberRow.Length(name, label, Tray.SideRange) with { Missing = $"{label}: measure it inside." };

    public override (string Id, string Name) Named(Tray part) => (part.Id, part.Name);

    public override string Text(Tray part, UnitSystem units) => KitchenText.Of(part, units);

    internal override TypedForm Write(Tray? stored, UnitSystem units)
    {
        if (stored is null)
        {
            return new FormWriter(units).Put("count", 1).Form;
        }

        (double Length, double Width) size = Size.Words.Select(word => word.Value)
            .FirstOrDefault(size => Math.Abs(stored.InnerLength.Meters - size.Length) < 1e-9 && Math.Abs(stored.InnerWidth.Meters - size.Width) < 1e-9);
        return new FormWriter(units).Put(Size, size).Put(Typed(size), stored).Form;
    }

    /// <summary>A standard size counts over typed sides.</summary>
    internal override Tray? Read(FieldReader reader, string id, Tray? stored)
    {
        (double Length, double Width) size = Size.Read(reader) ?? default;
        Tray blank = new(id, "", Length.FromMeters(size.Length), Length.FromMeters(size.Width), 1);
        return Read(reader, Typed(size), blank, stored) is not { } read ? null
            : read.Name.Length > 0 ? read
            : read with { Name = size is (0, 0) ? "Tray" : $"{Size.LabelOf(size).Split(',')[0]} tray" };
    }

    internal override IReadOnlyList<Kept<Tray>> In(KeptKitchen kitchen) => kitchen.Trays;

    internal override Task<SaveOutcome> SaveAsync(KitchenStore store, Tray part, int version, CancellationToken cancellationToken) => store.SaveAsync(part, version, cancellationToken);

    internal override Task AddAsync(KitchenStore store, Tray part, string? formKey, CancellationToken cancellationToken) => store.AddAsync(part, formKey, cancellationToken);

    internal override Task<SaveOutcome> DeleteAsync(KitchenStore store, string id, int version, CancellationToken cancellationToken) => store.DeleteTrayAsync(id, version, cancellationToken);

    private static FieldBinding<Tray>[] Typed((double Length, double Width) size) => size is (0, 0) ? [.. Sides, .. CountAndName] : CountAndName;
}
