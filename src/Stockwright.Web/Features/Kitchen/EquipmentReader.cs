using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Reads pot, lid and hob.</summary>
internal static class EquipmentReader
{
    // What is typed for the wrong kind of vessel is told apart from what is out of its range; only nonsense stops here.
    private static readonly (Pressure Least, Pressure Most) AnyGauge = (Pressure.Zero, Pressure.FromBars(10));

    public static Pot? ReadPot(FieldReader reader, KitchenSetup kitchen) => string.Equals(reader.Form[EquipmentFields.Pot.Name].Trim(), EquipmentFields.Own, StringComparison.Ordinal)
        ? ReadOwnPot(reader)
        : Chosen(reader, EquipmentFields.Pot, kitchen.Pots, pot => pot.Id, "the size of yours", "the size of your own");

    internal static Pot? ReadOwnPot(FieldReader reader)
    {
        PotShape? shape = EquipmentFields.PotShape.ReadOrUsual(reader);
        WallMaterial? material = EquipmentFields.PotMaterial.ReadOrUsual(reader);
        PotKind? kind = EquipmentFields.PotKind.ReadOrUsual(reader);
        Mass? mass = EquipmentFields.PotMass.Read(reader);
        Pressure? gauge = (kind == PotKind.PressureCooker ? EquipmentFields.PotGauge : EquipmentFields.PotGauge with { Range = AnyGauge }).Read(reader);
        Power? power = EquipmentFields.PotPower.Read(reader);
        Length? diameter = Size(reader, shape == PotShape.Tapered ? EquipmentFields.PotDiameter with { Told = "Inner diameter at the base" } : EquipmentFields.PotDiameter, "measure the pot from wall to wall");
        Length? brim = shape == PotShape.Tapered ? Size(reader, EquipmentFields.PotBrimDiameter, "measure the pot from wall to wall") : diameter;
        Length? height = shape == PotShape.Volume ? HeightFromVolume(reader, diameter) : Size(reader, EquipmentFields.PotHeight, "measure from the base to the rim");
        if (shape is null || material is not { } wall || kind is not { } potKind || diameter is not { } baseDiameter || brim is not { } brimDiameter || height is not { } innerHeight)
        {
            return null;
        }

        int before = reader.Problems.Count;
        Pot pot = new()
        {
            Id = EquipmentFields.Own,
            Name = "your own pot",
            BaseDiameter = baseDiameter,
            BrimDiameter = brimDiameter,
            InnerHeight = innerHeight,
            Material = wall,
            Kind = potKind,
            EmptyMass = mass ?? Pot.EstimateEmptyMass(baseDiameter, brimDiameter, innerHeight, wall),
            GaugePressure = gauge,
            HeaterPower = power,
        };
        foreach (Problem problem in PotRules.Problems(pot).Where(problem => !reader.Problems.Any(told => string.Equals(told.Field, FieldOf(problem), StringComparison.Ordinal))))
        {
            string field = FieldOf(problem);
            reader.Report(shape == PotShape.Volume && string.Equals(field, EquipmentFields.PotHeight.Name, StringComparison.Ordinal) ? EquipmentFields.PotVolume.Name : field, TextTable.Of(problem, reader.Units));
        }

        return reader.Problems.Count > before ? null : pot;
    }

    private static string FieldOf(Problem problem) => problem.Part switch
    {
        PlanPart.PotGauge => EquipmentFields.PotGauge.Name,
        PlanPart.PotHeater => EquipmentFields.PotPower.Name,
        _ => EquipmentFields.PotHeight.Name,
    };

    private static Length? Size(FieldReader reader, NumberRow<Length> row, string how) => row.Read(reader, $"{row.What}: {how}.");

    private static Length? HeightFromVolume(FieldReader reader, Length? across)
    {
        if (EquipmentFields.PotVolume.Read(reader, "Volume to the brim: it is often stamped on the base.") is not { } volume || across is not { } diameter)
        {
            return null;
        }

        Length height = Length.FromMeters(volume.CubicMeters / (Math.PI * diameter.Meters * diameter.Meters / 4));
        if (height < Pot.HeightRange.Least || height > Pot.HeightRange.Most)
        {
            reader.Report(
                EquipmentFields.PotVolume.Name,
                $"With that diameter the pot would be {EquipmentFields.PotHeight.Text(height, reader.Units, 2e-3)} {EquipmentFields.PotHeight.UnitIn(reader.Units)} tall. Check the volume and the diameter.");
            return null;
        }

        return height;
    }

    public static LidPosition? ReadLid(FieldReader reader, StockRecipe? recipe, Pot? pot = null)
    {
        if (!reader.Form.Has(EquipmentFields.Lid.Name))
        {
            return recipe is null ? null : PlanRequest.UsualLid(pot, recipe);
        }

        LidKind? kind = EquipmentFields.Lid.Read(reader);
        if (kind is not LidKind.Ajar)
        {
            return kind switch
            {
                LidKind.Off => LidPosition.Off,
                LidKind.On => LidPosition.On,
                _ => null,
            };
        }

        int before = reader.Problems.Count;
        return EquipmentFields.Gap.Read(reader) is { } open ? LidPosition.Ajar(open)
            : reader.Problems.Count > before ? null
            : LidPosition.Ajar(Ratio.FromPercent(DefaultGapPercent(recipe)));
    }

    internal static double DefaultGapPercent(StockRecipe? recipe) => recipe is { Lid.Kind: LidKind.Ajar } ? recipe.Lid.OpenFraction.Percent : 10;

    public static Hob? ReadHob(FieldReader reader, KitchenSetup kitchen, Pot? pot = null)
    {
        string id = reader.Form[EquipmentFields.Hob.Name].Trim();
        if (pot is { HasOwnHeater: true, HeaterPower: not null } && (id.Length == 0 || (string.Equals(id, EquipmentFields.Own, StringComparison.Ordinal) && !reader.Form.Has(EquipmentFields.HobPower.Name))))
        {
            // It stands on no hob, so none has to be there or be filled in.
            return kitchen.Hobs.Count > 0 ? kitchen.Hobs[0] : OwnHeat.Of(pot, SlowCookerSetting.High);
        }

        if (string.Equals(id, EquipmentFields.Own, StringComparison.Ordinal))
        {
            HobKind? kind = EquipmentFields.HobKind.ReadOrUsual(reader);
            Power? power = EquipmentFields.HobPower.Read(reader, "Power of the ring: it stands on the rating plate.");
            int before = reader.Problems.Count;
            Ratio? share = EquipmentFields.HobEfficiency.Read(reader);
            return kind is not { } burner || power is not { } rated || reader.Problems.Count > before
                ? null
                : new Hob { Id = EquipmentFields.Own, Name = "your own hob", Kind = burner, RatedPower = rated, OwnEfficiency = share };
        }

        return Chosen(reader, EquipmentFields.Hob, kitchen.Hobs, hob => hob.Id, "the power of yours", "your own");
    }

    /// <summary>The one of the kitchen that is named, the first when none is; null when there is none, and reported.</summary>
    private static T? Chosen<T>(FieldReader reader, FieldRow row, IReadOnlyList<T> all, Func<T, string> idOf, string first, string other)
        where T : class
    {
        string id = reader.Form[row.Name].Trim();
        T? chosen = all.FirstOrDefault(one => id.Length == 0 || string.Equals(idOf(one), id, StringComparison.Ordinal));
        if (chosen is null)
        {
            reader.Report(row.Name, id.Length == 0
                ? $"This kitchen has no {row.Name} yet. Give {first} here."
                : $"This kitchen has no {row.Name} called {KitchenNumber.Quote(id)}. Choose one from the list, or give {other}.");
        }

        return chosen;
    }
}
