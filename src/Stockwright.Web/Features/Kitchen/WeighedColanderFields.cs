using Stockwright.Kitchen;
using Stockwright.Simmering;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Drained solids weighed as strained, and what then dripped and was wiped off them, as a form; it gives the kitchen's own clinging figure.</summary>
internal static class WeighedColanderFields
{
    public const string Handler = "colander";
    public const string Drained = "drained";
    public const string CameOff = "came-off";
    public const string Solids = "solids";

    public static readonly ChoiceOption[] Kinds = [new("bones", "Bones and meat"), new("fish", "Fish frames or shells")];

    /// <summary>Liquor that clings to bones, from what was typed; null when something has to be put right.</summary>
    public static Ratio? Read(FieldReader reader)
    {
        double? drained = reader.Number(Drained, "Drained solids", Measure.Mass, 0.2, 100, "What did the drained solids weigh, without the colander?");
        double? cameOff = reader.Number(CameOff, "What came off", Measure.SmallMass, 0.001, 50, "How much heavier were bowl and cloth at the end?");
        string word = reader.Form[Solids].Trim();
        bool isFish = string.Equals(word, "fish", StringComparison.OrdinalIgnoreCase);
        if (!isFish && word.Length > 0 && !string.Equals(word, "bones", StringComparison.OrdinalIgnoreCase))
        {
            reader.Report(Solids, $"What was drained: {KitchenNumber.Quote(word)} is not one of bones, fish.");
        }

        if (reader.Problems.Count > 0 || drained is not { } first || cameOff is not { } off)
        {
            return null;
        }

        if (!(off < first / 2))
        {
            reader.Report(CameOff, "That is half of what was drained, or more: so much cannot have clung. Check both weights, and take off what bowl, cloth and colander weigh.");
            return null;
        }

        double clings = ClingingLiquor.FromWeighedColander(Mass.FromKilograms(first), Mass.FromKilograms(off)).DecimalFractions;
        if (isFish)
        {
            // What clings to fish moves with what clings to bones (S.7), so a fish kitchen may weigh its frames.
            clings *= LiquorExchange.Clinging.Value.DecimalFractions / SimmerAssumptions.Get("clings-to-fish").Value;
        }

        if (clings >= KitchenSite.OwnClingingRange.Least.DecimalFractions && clings <= KitchenSite.OwnClingingRange.Most.DecimalFractions)
        {
            return Ratio.FromDecimalFractions(Math.Round(clings, 3));
        }

        reader.Report(CameOff, clings > KitchenSite.OwnClingingRange.Most.DecimalFractions
            ? "That is more than clings to anything drained: did stock still stand among the pieces, or was the bowl weighed with it?"
            : "That is almost nothing for wet pieces: check both weights, and whether something dripped away before the first.");
        return null;
    }
}
