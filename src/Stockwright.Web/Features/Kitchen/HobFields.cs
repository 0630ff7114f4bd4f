using Stockwright.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>A ring, burner or plate as a form.</summary>
internal static class HobFields
{
    public const string Name = "name";

    public static readonly WordsRow<HobKind> Kind = EquipmentFields.HobKind with { Name = "kind", Label = "Kind" };
    public static readonly NumberRow<Power> Power = EquipmentFields.HobPower with { Name = "power", Label = "Power" };
    public static readonly NumberRow<Ratio> Efficiency = EquipmentFields.HobEfficiency with { Name = "efficiency" };

    private static readonly IReadOnlyList<FieldBinding<Hob>> OfHob = EquipmentFields.BindHob(Kind, Power, Efficiency);

    public static TypedForm Write(Hob? hob, UnitSystem units) => hob is null ? TypedForm.Empty : new Typing(units).Put(Name, hob.Name).Put(OfHob, hob).Form;

    /// <summary>Reads a hob; null when something has to be put right.</summary>
    public static Hob? Read(FieldReader reader, string id, Hob? stored)
    {
        Hob blank = new() { Id = id, Name = reader.Name(Name, "Give the ring a name you will know it by."), Kind = Kind.Usual, RatedPower = UnitsNet.Power.Zero };
        if (!reader.Form.Has(Power.Name))
        {
            reader.Report(Power.Name, "Power: it stands on the rating plate.");
        }

        Func<Hob, Hob> typed = stored is null ? OfHob.Read(reader) : OfHob.ReadKept(reader, stored, Write(stored, reader.Units));
        return reader.Problems.Count > 0 ? null : typed(blank);
    }
}
