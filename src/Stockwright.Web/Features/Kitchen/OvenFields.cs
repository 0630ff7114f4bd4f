using Stockwright.Kitchen;
using Stockwright.Storage;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>An oven as a form.</summary>
internal sealed class OvenFields() : KitchenFields<Oven>("oven", "/kitchen#ovens", "Add an oven")
{
    public static readonly OvenFields Form = new();

    public override IReadOnlyList<FieldGroup<KitchenView<Oven>>> Groups { get; } =
    [
        Group(
            null,
            new TextRow("name", "Name") { Missing = "Give the oven a name you will know it by." }.Of<Oven>(oven => oven.Name, (oven, name) => oven with { Name = name }),
            new WholeRow("levels", "Shelves at once", Oven.LevelsRange) { Hint = "How many trays roast well together.", Missing = "Shelves at once: how many trays go in together?" }
                .Of<Oven>(oven => oven.Levels, (oven, levels) => oven with { Levels = levels }),
            TrayFields.Side("length", "Shelf length").Of<Oven>(oven => oven.ShelfLength, (oven, side) => oven with { ShelfLength = side }),
            TrayFields.Side("width", "Shelf width").Of<Oven>(oven => oven.ShelfWidth, (oven, side) => oven with { ShelfWidth = side }),
            new TickRow("fan", "It has a fan").Of<Oven>(oven => oven.HasFan, (oven, fan) => oven with { HasFan = fan })),
    ];

    public override (string Id, string Name) Named(Oven part) => (part.Id, part.Name);

    public override string Text(Oven part, UnitSystem units) => KitchenText.Of(part, units);

    internal override IReadOnlyList<Kept<Oven>> In(KeptKitchen kitchen) => kitchen.Ovens;

    internal override Task<SaveOutcome> SaveAsync(KitchenStore store, Oven part, int version, CancellationToken cancellationToken) => store.SaveAsync(part, version, cancellationToken);

    internal override Task AddAsync(KitchenStore store, Oven part, string? formKey, CancellationToken cancellationToken) => store.AddAsync(part, formKey, cancellationToken);

    internal override Task<SaveOutcome> DeleteAsync(KitchenStore store, string id, int version, CancellationToken cancellationToken) => store.DeleteOvenAsync(id, version, cancellationToken);

    protected override Oven Blank(string id) => new(id, "", HasFan: false, 1, Length.Zero, Length.Zero);
}
