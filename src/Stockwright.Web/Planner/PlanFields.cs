using System.Collections.Frozen;

namespace Stockwright.Web.Planner;

/// <summary>Names of the planner's fields, as they stand in links, forms and the HTTP interface.</summary>
internal static class PlanFields
{
    public const int Version = 1;

    public const string VersionField = "v";
    public const string Units = "units";
    public const string Recipe = "recipe";
    public const string Pot = "pot";
    public const string PotShape = "pot-shape";
    public const string PotDiameter = "pot-diameter";
    public const string PotBrimDiameter = "pot-brim-diameter";
    public const string PotHeight = "pot-height";
    public const string PotVolume = "pot-volume";
    public const string PotMaterial = "pot-material";
    public const string PotMass = "pot-mass";
    public const string PotKind = "pot-kind";
    public const string PotGauge = "pot-gauge";
    public const string PotPower = "pot-power";
    public const string SlowSetting = "slow-setting";
    public const string InOven = "in-oven";
    public const string Lid = "lid";
    public const string Gap = "gap";
    public const string Hob = "hob";
    public const string HobKind = "hob-kind";
    public const string HobPower = "hob-power";
    public const string HobEfficiency = "hob-efficiency";
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
    public const string Altitude = "altitude";
    public const string Pressure = "pressure";
    public const string Room = "room";
    public const string Tap = "tap";
    public const string Film = "film";
    public const string Clings = "clings";
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
    public const string Own = "own";

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
