using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Reads pot, lid and hob.</summary>
internal static class EquipmentReader
{
    private const double LeastPotCubicMetres = 0.0005;
    private const double MostPotCubicMetres = 1.4;

    // What is typed for the wrong kind of vessel is told apart from what is out of its range; only nonsense stops here.
    private const double MostTypedPascals = 1e6;
    private const double MostTypedWatts = 1e6;

    public static Pot? ReadPot(FieldReader reader, KitchenSetup kitchen)
    {
        string id = reader.Form[EquipmentFields.Pot].Trim();
        if (string.Equals(id, EquipmentFields.Own, StringComparison.Ordinal))
        {
            return ReadOwnPot(reader);
        }

        Pot? pot = id.Length == 0
            ? (kitchen.Pots.Count > 0 ? kitchen.Pots[0] : null)
            : kitchen.Pots.FirstOrDefault(candidate => string.Equals(candidate.Id, id, StringComparison.Ordinal));
        if (pot is null)
        {
            reader.Report(EquipmentFields.Pot, id.Length == 0
                ? "This kitchen has no pot yet. Give the size of yours here."
                : $"This kitchen has no pot called {KitchenNumber.Quote(id)}. Choose one from the list, or give the size of your own.");
        }

        return pot;
    }

    internal static Pot? ReadOwnPot(FieldReader reader)
    {
        PotShape? shape = reader.Word(EquipmentFields.PotShape, "Shape of the pot", EquipmentWords.Shapes);
        WallMaterial? material = reader.Word(EquipmentFields.PotMaterial, "What the pot is made of", EquipmentWords.Materials);
        PotKind? kind = reader.Word(EquipmentFields.PotKind, "Kind of pot", EquipmentWords.PotKinds);
        double? mass = reader.Number(EquipmentFields.PotMass, "Weight of the empty pot", Measure.Mass, 0.1, 300);
        double? gauge = kind == PotKind.PressureCooker
            ? reader.Number(EquipmentFields.PotGauge, "Gauge pressure", Measure.Gauge, Pot.GaugePressureRange.Least.Pascals, Pot.GaugePressureRange.Most.Pascals)
            : reader.Number(EquipmentFields.PotGauge, "Gauge pressure", Measure.Gauge, 0, MostTypedPascals);
        double? power = reader.Number(EquipmentFields.PotPower, "Power of its heater", Measure.Watts, 0, MostTypedWatts);
        double? diameter = Diameter(reader, EquipmentFields.PotDiameter, shape == PotShape.Tapered ? "Inner diameter at the base" : "Inner diameter");
        double? brim = shape == PotShape.Tapered ? Diameter(reader, EquipmentFields.PotBrimDiameter, "Inner diameter at the rim") : diameter;
        double? height = shape == PotShape.Volume ? HeightFromVolume(reader, diameter) : Height(reader);
        if (shape is null || material is not { } wall || kind is not { } potKind || diameter is not { } baseMetres || brim is not { } brimMetres || height is not { } tall)
        {
            return null;
        }

        int before = reader.Problems.Count;
        Length baseDiameter = Length.FromMeters(baseMetres);
        Length brimDiameter = Length.FromMeters(brimMetres);
        Length innerHeight = Length.FromMeters(tall);
        Pot pot = new()
        {
            Id = EquipmentFields.Own,
            Name = "your own pot",
            BaseDiameter = baseDiameter,
            BrimDiameter = brimDiameter,
            InnerHeight = innerHeight,
            Material = wall,
            Kind = potKind,
            EmptyMass = mass is { } kilograms ? Mass.FromKilograms(kilograms) : Pot.EstimateEmptyMass(baseDiameter, brimDiameter, innerHeight, wall),
            GaugePressure = gauge is { } pascals ? Pressure.FromPascals(pascals) : null,
            HeaterPower = power is { } watts ? Power.FromWatts(watts) : null,
        };
        foreach (InputProblem problem in PotRules.Problems(pot).Where(problem => !reader.Problems.Any(told => string.Equals(told.Field, problem.Field, StringComparison.Ordinal))))
        {
            reader.Report(shape == PotShape.Volume && string.Equals(problem.Field, EquipmentFields.PotHeight, StringComparison.Ordinal) ? EquipmentFields.PotVolume : problem.Field, problem.Message);
        }

        return reader.Problems.Count > before ? null : pot;
    }

    private static double? Diameter(FieldReader reader, string field, string what) => reader.Number(
        field, what, Measure.PotLength, Pot.DiameterRange.Least.Meters, Pot.DiameterRange.Most.Meters, $"{what}: measure the pot from wall to wall.");

    private static double? Height(FieldReader reader) => reader.Number(
        EquipmentFields.PotHeight, "Inner height", Measure.PotLength, Pot.HeightRange.Least.Meters, Pot.HeightRange.Most.Meters, "Inner height: measure from the base to the rim.");

    private static double? HeightFromVolume(FieldReader reader, double? diameterMetres)
    {
        double? volume = reader.Number(
            EquipmentFields.PotVolume, "Volume to the brim", Measure.Stock, LeastPotCubicMetres, MostPotCubicMetres, "Volume to the brim: it is often stamped on the base.");
        if (volume is not { } cubicMetres || diameterMetres is not { } diameter)
        {
            return null;
        }

        double height = cubicMetres / (Math.PI * diameter * diameter / 4);
        if (height < Pot.HeightRange.Least.Meters || height > Pot.HeightRange.Most.Meters)
        {
            FieldUnit unit = Measure.PotLength.In(reader.Units);
            reader.Report(EquipmentFields.PotVolume, $"With that diameter the pot would be {KitchenNumber.Write(unit.FromSi(height), 2e-3)} {unit.Label} tall. Check the volume and the diameter.");
            return null;
        }

        return height;
    }

    public static LidPosition? ReadLid(FieldReader reader, StockRecipe? recipe, Pot? pot = null)
    {
        if (!reader.Form.Has(EquipmentFields.Lid))
        {
            return recipe is null ? null : PlanRequest.UsualLid(pot, recipe);
        }

        LidKind? kind = reader.Word(EquipmentFields.Lid, "Lid", EquipmentWords.Lids);
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
        double? gap = reader.Number(EquipmentFields.Gap, "Open part of the mouth", Measure.Percent, 0.01, 0.6);
        // Only rounding is trimmed here: the reader has refused anything outside the range.
        return gap is { } open ? LidPosition.Ajar(Ratio.FromDecimalFractions(Math.Clamp(open, 0.01, 0.6)))
            : reader.Problems.Count > before ? null
            : LidPosition.Ajar(Ratio.FromPercent(DefaultGapPercent(recipe)));
    }

    internal static double DefaultGapPercent(StockRecipe? recipe) => recipe is { Lid.Kind: LidKind.Ajar } ? recipe.Lid.OpenFraction.Percent : 10;

    public static Hob? ReadHob(FieldReader reader, KitchenSetup kitchen, Pot? pot = null)
    {
        string id = reader.Form[EquipmentFields.Hob].Trim();
        if (pot is { HasOwnHeater: true, HeaterPower: not null } && (id.Length == 0 || (string.Equals(id, EquipmentFields.Own, StringComparison.Ordinal) && !reader.Form.Has(EquipmentFields.HobPower))))
        {
            // It stands on no hob, so none has to be there or be filled in.
            return kitchen.Hobs.Count > 0 ? kitchen.Hobs[0] : OwnHeat.Of(pot, SlowCookerSetting.High);
        }

        if (string.Equals(id, EquipmentFields.Own, StringComparison.Ordinal))
        {
            HobKind? kind = reader.Word(EquipmentFields.HobKind, "Kind of hob", EquipmentWords.HobKinds);
            double? watts = reader.Number(
                EquipmentFields.HobPower, "Power of the ring", Measure.Kilowatts, (double)Hob.PowerRange.Least.Watts, (double)Hob.PowerRange.Most.Watts, "Power of the ring: it stands on the rating plate.");
            int before = reader.Problems.Count;
            double? share = reader.Number(EquipmentFields.HobEfficiency, "Efficiency", Measure.Percent, 0.05, 1);
            return kind is not { } kindOfHob || watts is not { } power || reader.Problems.Count > before
                ? null
                : new Hob
                {
                    Id = EquipmentFields.Own,
                    Name = "your own hob",
                    Kind = kindOfHob,
                    RatedPower = Power.FromWatts(power),
                    OwnEfficiency = share is { } own ? Ratio.FromDecimalFractions(own) : null,
                };
        }

        Hob? hob = id.Length == 0
            ? (kitchen.Hobs.Count > 0 ? kitchen.Hobs[0] : null)
            : kitchen.Hobs.FirstOrDefault(candidate => string.Equals(candidate.Id, id, StringComparison.Ordinal));
        if (hob is null)
        {
            reader.Report(EquipmentFields.Hob, id.Length == 0
                ? "This kitchen has no hob yet. Give the power of yours here."
                : $"This kitchen has no hob called {KitchenNumber.Quote(id)}. Choose one from the list, or give your own.");
        }

        return hob;
    }
}
