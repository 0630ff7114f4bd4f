using Stockwright.Kitchen;
using Stockwright.Storage;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>A pot as a form, under the planner's field names.</summary>
internal static class PotFields
{
    public const string Name = "name";

    public static TypedForm Write(Pot? pot, UnitSystem units)
    {
        Typing typing = new(units);
        if (pot is not null)
        {
            typing.Put(Name, pot.Name)
                .Put(EquipmentFields.PotShape, pot.IsTapered ? PotShape.Tapered : PotShape.Straight)
                .Put(EquipmentFields.PotDiameter, pot.BaseDiameter)
                .Put(EquipmentFields.PotBrimDiameter, pot.IsTapered ? pot.BrimDiameter : null)
                .Put(EquipmentFields.PotHeight, pot.InnerHeight)
                .Put(EquipmentFields.PotMass, pot.HasEstimatedMass() ? null : pot.EmptyMass)
                .Put(EquipmentFields.OfPot, pot);
        }

        return typing.Form;
    }

    /// <summary>Reads a pot; null when something has to be put right.</summary>
    public static Pot? Read(FieldReader reader, string id, Pot? stored)
    {
        string name = reader.Name(Name, "Give the pot a name you will know it by.");
        Pot? read = EquipmentReader.ReadOwnPot(reader);
        if (read is null || reader.Problems.Count > 0)
        {
            return null;
        }

        bool wasEstimated = read.HasEstimatedMass();
        if (stored is not null)
        {
            TypedForm shown = Write(stored, reader.Units);
            if (Typing.Unchanged(
                reader.Form, shown, EquipmentFields.PotShape.Name, EquipmentFields.PotDiameter.Name, EquipmentFields.PotBrimDiameter.Name, EquipmentFields.PotHeight.Name, EquipmentFields.PotVolume.Name))
            {
                read = read with { BaseDiameter = stored.BaseDiameter, BrimDiameter = stored.BrimDiameter, InnerHeight = stored.InnerHeight };
            }

            if (Typing.Unchanged(reader.Form, shown, EquipmentFields.PotGauge.Name, EquipmentFields.PotKind.Name))
            {
                read = read with { GaugePressure = stored.GaugePressure };
            }

            if (!wasEstimated && Typing.Unchanged(reader.Form, shown, EquipmentFields.PotMass.Name))
            {
                read = read with { EmptyMass = stored.EmptyMass };
            }
        }

        if (wasEstimated)
        {
            read = read with { EmptyMass = Pot.EstimateEmptyMass(read.BaseDiameter, read.BrimDiameter, read.InnerHeight, read.Material) };
        }

        return read with { Id = id, Name = name };
    }
}
