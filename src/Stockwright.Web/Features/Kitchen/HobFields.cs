using Stockwright.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>A ring, burner or plate as a form.</summary>
internal static class HobFields
{
    public const string Name = "name";
    public const string Kind = "kind";
    public const string Power = "power";
    public const string Efficiency = "efficiency";

    public static TypedForm Write(Hob? hob, UnitSystem units) => hob is null
        ? TypedForm.Empty
        : new Typing(units)
            .Put(Name, hob.Name)
            .Put(Kind, WordTable.Of(EquipmentWords.HobKinds, hob.Kind))
            .Put(Power, Measure.Kilowatts, (double)hob.RatedPower.Watts)
            .Put(Efficiency, Measure.Percent, hob.OwnEfficiency?.DecimalFractions)
            .Form;

    /// <summary>Reads a hob; null when something has to be put right.</summary>
    public static Hob? Read(FieldReader reader, string id, Hob? stored)
    {
        string name = reader.Name(Name, "Give the ring a name you will know it by.");
        HobKind? kind = reader.Word(Kind, "Kind", EquipmentWords.HobKinds);
        double? watts = reader.Number(
            Power, "Power", Measure.Kilowatts, (double)Hob.PowerRange.Least.Watts, (double)Hob.PowerRange.Most.Watts, "Power: it stands on the rating plate.");
        double? share = reader.Number(Efficiency, "Efficiency", Measure.Percent, 0.05, 1);
        if (reader.Problems.Count > 0 || kind is not { } burner || watts is not { } power)
        {
            return null;
        }

        Hob read = new()
        {
            Id = id,
            Name = name,
            Kind = burner,
            RatedPower = UnitsNet.Power.FromWatts(power),
            OwnEfficiency = share is { } own ? Ratio.FromDecimalFractions(own) : null,
        };
        TypedForm shown = Write(stored, reader.Units);
        return stored is null
            ? read
            : read with
            {
                RatedPower = Typing.Unchanged(reader.Form, shown, Power) ? stored.RatedPower : read.RatedPower,
                OwnEfficiency = Typing.Unchanged(reader.Form, shown, Efficiency) ? stored.OwnEfficiency : read.OwnEfficiency,
            };
    }
}
