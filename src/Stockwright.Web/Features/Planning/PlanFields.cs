using System.Collections.Frozen;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>Names of the planner's fields, as they stand in links, forms and the HTTP interface.</summary>
internal static class PlanFields
{
    public const int Version = 1;

    public const string VersionField = "v";
    public const string Units = "units";
    public const string Recipe = "recipe";
    public const string Pot = EquipmentFields.Pot;
    public const string PotShape = EquipmentFields.PotShape;
    public const string PotDiameter = EquipmentFields.PotDiameter;
    public const string PotBrimDiameter = EquipmentFields.PotBrimDiameter;
    public const string PotHeight = EquipmentFields.PotHeight;
    public const string PotVolume = EquipmentFields.PotVolume;
    public const string PotMaterial = EquipmentFields.PotMaterial;
    public const string PotMass = EquipmentFields.PotMass;
    public const string PotKind = EquipmentFields.PotKind;
    public const string PotGauge = EquipmentFields.PotGauge;
    public const string PotPower = EquipmentFields.PotPower;
    public const string SlowSetting = "slow-setting";
    public const string InOven = "in-oven";
    public const string Lid = EquipmentFields.Lid;
    public const string Gap = EquipmentFields.Gap;
    public const string Hob = EquipmentFields.Hob;
    public const string HobKind = EquipmentFields.HobKind;
    public const string HobPower = EquipmentFields.HobPower;
    public const string HobEfficiency = EquipmentFields.HobEfficiency;
    public const string Goal = "goal";
    public const string Litres = "litres";
    public const string PortionCount = "portion-count";
    public const string PortionSize = "portion-size";
    public const string Fill = "fill";
    public const string FillLength = "fill-length";
    public const string Way = "way";
    public const string Pots = "pots";
    public const string Hobs = "hobs";
    public const string When = "when";
    public const string Date = "date";
    public const string Time = "time";
    public const string Simmer = "simmer";
    public const string Hours = "hours";
    public const string Check = "check";
    public const string TopUp = "topup";
    public const string Mirepoix = "mirepoix";
    public const string HeatUpLid = "heat-up-lid";
    public const string Wakes = "wakes";
    public const string Sleeps = "sleeps";
    public const string Night = "night";
    public const string Altitude = SiteFields.Altitude;
    public const string Pressure = SiteFields.Pressure;
    public const string Room = SiteFields.Room;
    public const string Tap = SiteFields.Tap;
    public const string Film = SiteFields.Film;
    public const string Clings = SiteFields.Clings;
    public const string Leave = "leave-";
    public const string With = "with-";
    public const string Bones = RowFields.Bones;
    public const string KitchenFactor = "kitchen-factor";
    public const string Ph = "ph";
    public const string PieceSize = "piece-size";
    public const string Container = "container";
    public const string FridgeHours = "fridge-hours";
    public const string Fridge = "fridge";
    public const string Portion = "portion";
    public const string Defat = "defat";
    public const string Cooling = "cool-minutes";
    public const string SetTarget = "set-target";
    public const string PowderBloom = "powder-bloom";
    public const string PowderPrice = "powder-price";

    /// <summary>Chosen in place of a pot or hob of the kitchen.</summary>
    public const string Own = EquipmentFields.Own;

    /// <summary>More rows than any kitchen has cuts.</summary>
    public const int MostBonesRows = RowFields.Most;

    /// <summary>Fields typed in a unit that differs between the systems; bones rows name their unit themselves.</summary>
    public static readonly FrozenDictionary<string, Measure> Measured = new Dictionary<string, Measure>(StringComparer.Ordinal)
    {
        [Litres] = Measure.Stock,
        [PortionSize] = Measure.Portion,
        [PotDiameter] = Measure.PotLength,
        [PotBrimDiameter] = Measure.PotLength,
        [PotHeight] = Measure.PotLength,
        [PotVolume] = Measure.Stock,
        [PotMass] = Measure.Mass,
        [FillLength] = Measure.PotLength,
        [PotGauge] = Measure.Gauge,
        [Simmer] = Measure.Temperature,
        [Room] = Measure.Temperature,
        [Tap] = Measure.Temperature,
        [Altitude] = Measure.Height,
        [Pressure] = Measure.AirPressure,
        [PieceSize] = Measure.PotLength,
        [Container] = Measure.PotLength,
        [Fridge] = Measure.Temperature,
        [Portion] = Measure.Portion,
        [PowderPrice] = Measure.Price,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Fixed = new[]
    {
        VersionField, Units, Recipe, Pot, PotShape, PotDiameter, PotBrimDiameter, PotHeight, PotVolume, PotMaterial, PotMass, PotKind, PotGauge, PotPower, SlowSetting, InOven,
        Lid, Gap, Hob, HobKind, HobPower, HobEfficiency, Goal, Litres, PortionCount, PortionSize, Fill, FillLength, Way, Pots, Hobs, When, Date, Time, Simmer, Hours,
        Check, TopUp, Mirepoix, HeatUpLid, Wakes, Sleeps, Night, Altitude, Pressure, Room, Tap, Film, Clings,
        KitchenFactor, Ph, PieceSize, Container, FridgeHours, Fridge, Portion, Defat, Cooling, SetTarget, PowderBloom, PowderPrice,
    }.ToFrozenSet(StringComparer.Ordinal);

    public static bool IsKnown(string name) =>
        Fixed.Contains(name) || name.StartsWith(Leave, StringComparison.Ordinal) || name.StartsWith(With, StringComparison.Ordinal) || RowFields.TryRead(name, out _);

    public static string BonesField(int row, string part) => RowFields.Name(Bones, row, part);

    /// <summary>Field of a row's mass, named by its unit: <c>kg</c> or <c>lb</c>.</summary>
    public static string BonesMassField(int row, UnitSystem units) => RowFields.MassName(Bones, row, units);
}
