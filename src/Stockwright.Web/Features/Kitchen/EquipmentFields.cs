using Stockwright.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;
using Burner = Stockwright.Kitchen.HobKind;
using Vessel = Stockwright.Kitchen.PotKind;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>The ways to describe a pot.</summary>
internal enum PotShape
{
    Straight,
    Tapered,
    Volume,
}

/// <summary>The fields that describe a vessel, its lid and its hob.</summary>
internal static class EquipmentFields
{
    /// <summary>Chosen in place of a pot or hob of the kitchen.</summary>
    public const string Own = "own";

    public static readonly FieldRow Pot = new("pot", "Pot") { Description = "Stable name of a pot of the kitchen, or own with the pot- fields." };

    public static readonly WordsRow<PotShape> PotShape = new("pot-shape", "You know its",
    [
        new("straight", Kitchen.PotShape.Straight, "diameter and height"),
        new("tapered", Kitchen.PotShape.Tapered, "two diameters and height"),
        new("volume", Kitchen.PotShape.Volume, "brim volume and diameter"),
    ])
    { Told = "Shape of the pot", IsList = true, Description = "straight (diameter and height), tapered (two diameters and height) or volume (brim volume and diameter)." };

    public static readonly NumberRow<Length> PotDiameter = NumberRow.Length("pot-diameter", "Inner diameter", Stockwright.Kitchen.Pot.DiameterRange) with
    {
        Hint = "At the base, if the pot widens.",
        Description = "Inner diameter, at the base if the pot widens; cm or in.",
    };

    public static readonly NumberRow<Length> PotBrimDiameter = NumberRow.Length("pot-brim-diameter", "Inner diameter at the rim", Stockwright.Kitchen.Pot.DiameterRange) with
    {
        Class = "for-tapered",
        Hint = "Only for a pot with two diameters.",
        Description = "Inner diameter at the rim of a tapered pot; cm or in.",
    };

    public static readonly NumberRow<Length> PotHeight = NumberRow.Length("pot-height", "Inner height", Stockwright.Kitchen.Pot.HeightRange) with { Class = "for-height", Hint = "From the base to the rim." };

    public static readonly NumberRow<Volume> PotVolume = NumberRow.Volume("pot-volume", "Volume to the brim", Measure.Stock, Stockwright.Kitchen.Pot.BrimVolumeRange) with
    {
        Class = "for-volume",
        Hint = "Often stamped on the base; in place of the height.",
    };

    public static readonly WordsRow<WallMaterial> PotMaterial = new("pot-material", "Made of",
    [
        new("steel", WallMaterial.StainlessSteel, "Stainless steel"),
        new("aluminium", WallMaterial.Aluminium, "Aluminium"),
        new("copper", WallMaterial.Copper, "Copper"),
        new("enamel", WallMaterial.EnamelledIron, "Enamelled steel or iron"),
        new("stoneware", WallMaterial.Stoneware, "Stoneware"),
    ])
    { Told = "What the pot is made of", IsList = true };

    public static readonly NumberRow<Mass> PotMass = NumberRow.Mass("pot-mass", "Weight, empty, without lid", Stockwright.Kitchen.Pot.EmptyMassRange) with
    {
        Told = "Weight of the empty pot",
        Placeholder = "estimated",
        Description = "Weight of the empty pot; kg or lb. Estimated when left out.",
    };

    public static readonly WordsRow<Vessel> PotKind = new("pot-kind", "Kind",
    [
        new("open", Vessel.Open, "Open pot"),
        new("pressure", Vessel.PressureCooker, "Pressure cooker"),
        new("slow", Vessel.SlowCooker, "Slow cooker"),
        new("kettle", Vessel.Kettle, "Kettle, tilting or with a draw-off valve"),
    ])
    { Told = "Kind of pot", IsList = true, Description = "open, pressure, slow (a slow cooker) or kettle." };

    public static readonly NumberRow<Pressure> PotGauge = NumberRow.Pressure("pot-gauge", "Pressure over the air", Measure.Gauge, Stockwright.Kitchen.Pot.GaugePressureRange) with
    {
        Told = "Gauge pressure",
        Class = "for-gauge",
        Blank = Stockwright.Kitchen.Pot.UsualGaugePressure,
        Hint = "Only of a pressure cooker: the one it holds on the setting you use, from its manual.",
        Description = "Pressure a pressure cooker holds over the air, 0.5 to 1.03 bar (7.3 to 15 psi); bar or psi. 1 bar when left out.",
    };

    // The core has a range for each kind of vessel and says what is wrong; only nonsense stops here.
    public static readonly NumberRow<Power> PotPower = NumberRow.Power("pot-power", "Power of its heater", Measure.Watts, (Power.Zero, Power.FromMegawatts(1))) with
    {
        Class = "for-heater",
        Hint = "Only of a slow cooker (100 to 400, on high) or a kettle (a kW is 1000): it stands on the rating plate.",
        Description = "Power of the heater of a slow cooker (100 to 400, on high) or a kettle, in W.",
    };

    public static readonly WordsRow<LidKind> Lid = new("lid", "Lid while it simmers", [new("off", LidKind.Off, "Off"), new("ajar", LidKind.Ajar, "Ajar"), new("on", LidKind.On, "On")])
    {
        Told = "Lid",
        Class = "wide",
        None = "As the recipe says",
        Description = "off, ajar or on; as the recipe says when left out.",
    };

    public static readonly NumberRow<Ratio> Gap = NumberRow.Percent("gap", "Open part of the mouth, seen from above and from the side", LidPosition.OpenRange) with
    {
        Told = "Open part of the mouth",
        Description = "Open part of the mouth with the lid ajar, in per cent, 1 to 60.",
    };

    public static readonly FieldRow Hob = new("hob", "Hob") { Description = "Stable name of a hob of the kitchen, or own with the hob- fields." };

    public static readonly WordsRow<Burner> HobKind = new("hob-kind", "Kind of hob",
    [
        new("gas", Burner.Gas, "Gas"),
        new("coil", Burner.Coil, "Electric coil"),
        new("smooth", Burner.SmoothTop, "Glass smooth-top"),
        new("plate", Burner.SolidPlate, "Solid plate"),
        new("induction", Burner.Induction, "Induction"),
    ])
    { IsList = true };

    public static readonly NumberRow<Power> HobPower = NumberRow.Power("hob-power", "Power of the ring", Measure.Kilowatts, Stockwright.Kitchen.Hob.PowerRange) with
    {
        Hint = "On the rating plate.",
        Description = "Rated power in kW.",
    };

    public static readonly NumberRow<Ratio> HobEfficiency = NumberRow.Percent("hob-efficiency", "Share that reaches the pot", Stockwright.Kitchen.Hob.EfficiencyRange) with
    {
        Told = "Efficiency",
        Placeholder = "usual for its kind",
        Hint = "Only if you have timed it: gas is near 40 %, electric rings 74 %, induction 80 %.",
        Description = "Measured share of the power that reaches the pot, in per cent.",
    };

    /// <summary>What a vessel is told by besides its measures.</summary>
    public static readonly IReadOnlyList<FieldBinding<Pot>> OfPot =
    [
        PotMaterial.Of<Pot>(pot => pot.Material, (pot, material) => pot with { Material = material }),
        PotKind.Of<Pot>(pot => pot.Kind, (pot, kind) => pot with { Kind = kind }),
        PotGauge.Of<Pot>(pot => pot.GaugePressure, (pot, gauge) => pot with { GaugePressure = gauge }),
        PotPower.Of<Pot>(pot => pot.HeaterPower, (pot, power) => pot with { HeaterPower = power }),
    ];

    /// <summary>What a hob is told by, under the names of the rows given.</summary>
    public static IReadOnlyList<FieldBinding<Hob>> BindHob(WordsRow<Burner> kind, NumberRow<Power> power, NumberRow<Ratio> efficiency) =>
    [
        kind.Of<Hob>(hob => hob.Kind, (hob, value) => hob with { Kind = value }),
        power.Of<Hob>(hob => hob.RatedPower, (hob, value) => hob with { RatedPower = value }),
        efficiency.Of<Hob>(hob => hob.OwnEfficiency, (hob, share) => hob with { OwnEfficiency = share }),
    ];
}
