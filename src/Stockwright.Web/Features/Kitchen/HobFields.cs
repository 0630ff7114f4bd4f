using Stockwright.Kitchen;
using Stockwright.Storage;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>A ring, burner or plate as a form.</summary>
internal sealed class HobFields() : KitchenFields<Hob>("ring", "/kitchen#hobs", "Add a ring")
{
    public static readonly HobFields Form = new();

    public override IReadOnlyList<FieldGroup<KitchenView<Hob>>> Groups { get; } =
    [
        Group(null,
        [
            new TextRow("name", "Name") { Hint = "What you call it, for instance: front left", Missing = "Give the ring a name you will know it by." }
                .Of<Hob>(hob => hob.Name, (hob, name) => hob with { Name = name }),
            .. EquipmentFields.BindHob(
                EquipmentFields.HobKind with { Name = "kind", Label = "Kind" },
                EquipmentFields.HobPower with
                {
                    Name = "power",
                    Label = "Power",
                    Missing = "Power: it stands on the rating plate.",
                    Hint = "Of this ring alone, at full setting. A gas ring’s BTU an hour divided by 3412 is its kW.",
                },
                EquipmentFields.HobEfficiency with { Name = "efficiency" }),
        ]),
    ];

    public override (string Id, string Name) Named(Hob part) => (part.Id, part.Name);

    public override string Text(Hob part, UnitSystem units) => KitchenText.Of(part);

    internal override IReadOnlyList<Kept<Hob>> In(KeptKitchen kitchen) => kitchen.Hobs;

    internal override Task<SaveOutcome> SaveAsync(KitchenStore store, Hob part, int version, CancellationToken cancellationToken) => store.SaveAsync(part, version, cancellationToken);

    internal override Task AddAsync(KitchenStore store, Hob part, string? formKey, CancellationToken cancellationToken) => store.AddAsync(part, formKey, cancellationToken);

    internal override Task<SaveOutcome> DeleteAsync(KitchenStore store, string id, int version, CancellationToken cancellationToken) => store.DeleteHobAsync(id, version, cancellationToken);

    protected override Hob Blank(string id) => new() { Id = id, Name = "", Kind = EquipmentFields.HobKind.Usual, RatedPower = Power.Zero };
}
