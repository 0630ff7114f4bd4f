using Stockwright.Measures;
using Stockwright.Storage;
using Stockwright.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;
using Row = Stockwright.Web.Features.Kitchen.EquipmentFields;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>A pot as a form, under the planner's field names.</summary>
internal sealed class PotFields() : KitchenFields<Pot>("pot", "/kitchen#pots", "Add a pot")
{
    private static readonly TextRow Name = new("name", "Name") { Hint = "What you call it, for instance: the tall 10 L pot", Missing = "Give the pot a name you will know it by." };

    public static readonly PotFields Form = new();

    public override IReadOnlyList<FieldGroup<KitchenView<Pot>>> Groups { get; } =
    [
        Group(null, "fields", Name),
        Group("Size, inside", "fields pot-size", Row.PotShape, Row.PotDiameter, Row.PotBrimDiameter, Row.PotHeight, Row.PotVolume),
        new("Make", "fields pot-make",
        [
            new(Row.PotMaterial),
            new(Row.PotMass)
            {
                Hint = view => view.Stored is { } pot ? $"Left blank, it is estimated: about {KitchenFormat.Text(Estimate(pot), view.Units)}." : "Left blank, it is estimated from the size.",
            },
            .. Group(null, "", Row.PotKind, Row.PotGauge, Row.PotPower).Fields,
        ]),
    ];

    public override (string Id, string Name) Named(Pot part) => (part.Id, part.Name);

    public override string Text(Pot part, UnitSystem units) => KitchenText.Of(part, units);

    internal override TypedForm Write(Pot? stored, UnitSystem units) => stored is not { } pot ? TypedForm.Empty : new FormWriter(units)
        .Put(Name.Name, pot.Name)
        .Put(Row.PotShape, pot.IsTapered ? PotShape.Tapered : PotShape.Straight)
        .Put(Row.PotDiameter, pot.BaseDiameter)
        .Put(Row.PotBrimDiameter, pot.IsTapered ? pot.BrimDiameter : null)
        .Put(Row.PotHeight, pot.InnerHeight)
        .Put(Row.PotMass, pot.HasEstimatedMass() ? null : pot.EmptyMass)
        .Put(Row.OfPot, pot)
        .Form;

    internal override Pot? Read(FieldReader reader, string id, Pot? stored)
    {
        string name = Name.Read(reader);
        Pot? read = EquipmentReader.ReadOwnPot(reader);
        if (read is null || reader.Problems.Count > 0)
        {
            return null;
        }

        bool wasEstimated = read.HasEstimatedMass();
        if (stored is not null)
        {
            TypedForm shown = Write(stored, reader.Units);
            bool Kept(params IEnumerable<FieldRow> rows) => rows.All(row => FormWriter.Unchanged(reader.Form, shown, row.Name));
            if (Kept(Row.PotShape, Row.PotDiameter, Row.PotBrimDiameter, Row.PotHeight, Row.PotVolume))
            {
                read = read with { BaseDiameter = stored.BaseDiameter, BrimDiameter = stored.BrimDiameter, InnerHeight = stored.InnerHeight };
            }

            if (Kept(Row.PotGauge, Row.PotKind))
            {
                read = read with { GaugePressure = stored.GaugePressure };
            }

            if (!wasEstimated && Kept(Row.PotMass))
            {
                read = read with { EmptyMass = stored.EmptyMass };
            }
        }

        return read with { Id = id, Name = name, EmptyMass = wasEstimated ? Estimate(read) : read.EmptyMass };
    }

    internal override IReadOnlyList<Kept<Pot>> In(KeptKitchen kitchen) => kitchen.Pots;

    internal override Task<SaveOutcome> SaveAsync(KitchenStore store, Pot part, int version, CancellationToken cancellationToken) => store.SaveAsync(part, version, cancellationToken);

    internal override Task AddAsync(KitchenStore store, Pot part, string? formKey, CancellationToken cancellationToken) => store.AddAsync(part, formKey, cancellationToken);

    internal override Task<SaveOutcome> DeleteAsync(KitchenStore store, string id, int version, CancellationToken cancellationToken) => store.DeletePotAsync(id, version, cancellationToken);

    private static Mass Estimate(Pot pot) => Pot.EstimateEmptyMass(pot.BaseDiameter, pot.BrimDiameter, pot.InnerHeight, pot.Material);
}
