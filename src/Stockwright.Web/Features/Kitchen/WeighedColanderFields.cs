using Stockwright.Kitchen;
using Stockwright.Simmering;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Drained solids weighed as strained, and what then dripped and was wiped off them, as a form; it gives the kitchen's own clinging figure.</summary>
internal sealed class WeighedColanderFields : DetailsFields
{
    private static readonly NumberRow<Mass> Drained = NumberRow.Mass("drained", "Just drained", ClingingLiquor.DrainedRange) with
    {
        Told = "Drained solids",
        Hint = "Without the colander.",
        Missing = "What did the drained solids weigh, without the colander?",
    };

    private static readonly NumberRow<Mass> CameOff = NumberRow.Mass("came-off", "Came off", Measure.SmallMass, ClingingLiquor.CameOffRange) with
    {
        Told = "What came off",
        Hint = "What bowl and cloth gained.",
        Missing = "How much heavier were bowl and cloth at the end?",
    };

    private static readonly WordsRow<bool> AreFish = new("solids", "What was drained", [new("bones", false, "Bones and meat"), new("fish", true, "Fish frames or shells")]);

    public static readonly WeighedColanderFields Form = new();

    public override IReadOnlyList<FieldGroup<KitchenView<KitchenDetails>>> Groups { get; } = [Group(null, "fields", Drained, CameOff, AreFish)];

    public override string Text(KitchenDetails part, UnitSystem units) => KitchenText.Clinging(part.Site);

    internal override TypedForm Write(KitchenDetails? stored, UnitSystem units) => TypedForm.Empty;

    internal override KitchenDetails? Read(FieldReader reader, string id, KitchenDetails? stored) =>
        ReadClinging(reader) is { } clings && stored is not null ? stored with { Site = stored.Site with { OwnClinging = clings } } : null;

    /// <summary>Liquor that clings to bones, from what was typed; null when something has to be put right.</summary>
    private static Ratio? ReadClinging(FieldReader reader)
    {
        Mass? drained = Drained.Read(reader);
        Mass? cameOff = CameOff.Read(reader);
        bool? areFish = AreFish.ReadOrUsual(reader);
        if (reader.Problems.Count > 0 || drained is not { } first || cameOff is not { } off)
        {
            return null;
        }

        if (!(off < first / 2))
        {
            reader.Report(CameOff.Name, "That is half of what was drained, or more: so much cannot have clung. Check both weights, and take off what bowl, cloth and colander weigh.");
            return null;
        }

        double clings = ClingingLiquor.FromWeighedColander(first, off).DecimalFractions;
        if (areFish == true)
        {
            // What clings to fish moves with what clings to bones (S.7), so a fish kitchen may weigh its frames.
            clings *= SimmerAssumptions.Standard.Clinging.Value.DecimalFractions / SimmerAssumptions.Standard.Get("clings-to-fish").Value;
        }

        if (clings >= KitchenSite.OwnClingingRange.Least.DecimalFractions && clings <= KitchenSite.OwnClingingRange.Most.DecimalFractions)
        {
            return Ratio.FromDecimalFractions(Math.Round(clings, 3));
        }

        reader.Report(CameOff.Name, clings > KitchenSite.OwnClingingRange.Most.DecimalFractions
            ? "That is more than clings to anything drained: did stock still stand among the pieces, or was the bowl weighed with it?"
            : "That is almost nothing for wet pieces: check both weights, and whether something dripped away before the first.");
        return null;
    }
}
