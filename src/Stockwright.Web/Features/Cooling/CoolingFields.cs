using System.Collections.Frozen;
using System.Globalization;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Names of the fields of the cooling page, as they stand in its links.</summary>
internal static class CoolingFields
{
    public const string Litres = "litres";
    public const string Start = "start";
    public const string Fat = "fat";
    public const string Vessel = "vessel";
    public const string PotDiameter = "pot-diameter";
    public const string PotHeight = "pot-height";
    public const string Sets = "sets";
    public const string Setting = "setting";
    public const string Room = "room";
    public const string Tap = "tap";
    public const string Limit = "limit";

    public const string KitSink = "sink";
    public const string KitIce = "kit-ice";
    public const string KitFridge = "fridge";
    public const string FridgeAir = "fridge-air";
    public const string FridgeWatts = "fridge-watts";
    public const string KitWalkIn = "walk-in";
    public const string WalkInAir = "walk-in-air";
    public const string KitBlast = "blast";
    public const string BlastAir = "blast-air";
    public const string KitWands = "kit-wands";
    public const string WandWater = "wand-water";
    public const string Pans = "pans";
    public const string PanLength = "pan-length";
    public const string PanWidth = "pan-width";
    public const string PanDepth = "pan-depth";
    public const string Tubs = "tubs";
    public const string Tub = "tub";
    public const string Jars = "jars";
    public const string Jar = "jar";

    public const string Readings = "readings";
    public const string Scale = "scale";
    public const string Around = "around";
    public const string Now = "now";
    public const string Reheated = "reheated";

    /// <summary>Most steps a way of cooling may have.</summary>
    public const int MostSteps = 6;

    public const string Place = "place";
    public const string Lid = "lid";
    public const string StockStirring = "stir";
    public const string BathStirring = "stir-bath";
    public const string Ice = "ice";
    public const string Water = "water";
    public const string Into = "into";
    public const string Count = "count";
    public const string Deep = "deep";
    public const string Wands = "wands";
    public const string AddedIce = "add-ice";
    public const string AddedWater = "add-water";
    public const string Minutes = "minutes";
    public const string Until = "until";

    private static readonly string[] StepParts = [Place, Lid, StockStirring, BathStirring, Ice, Water, Into, Count, Deep, Wands, AddedIce, AddedWater, Minutes, Until];

    private static readonly FrozenDictionary<string, Measure> Whole = new Dictionary<string, Measure>(StringComparer.Ordinal)
    {
        [Litres] = Measure.Stock,
        [Start] = Measure.Temperature,
        [Fat] = Measure.Mass,
        [PotDiameter] = Measure.PotLength,
        [PotHeight] = Measure.PotLength,
        [Setting] = Measure.Temperature,
        [Room] = Measure.Temperature,
        [Tap] = Measure.Temperature,
        [KitIce] = Measure.Mass,
        [FridgeAir] = Measure.Temperature,
        [WalkInAir] = Measure.Temperature,
        [BlastAir] = Measure.Temperature,
        [WandWater] = Measure.Mass,
        [PanLength] = Measure.PotLength,
        [PanWidth] = Measure.PotLength,
        [PanDepth] = Measure.PotLength,
        [Tub] = Measure.Stock,
        [Around] = Measure.Temperature,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, Measure> OfStep = new Dictionary<string, Measure>(StringComparer.Ordinal)
    {
        [Ice] = Measure.Mass,
        [Water] = Measure.Mass,
        [Deep] = Measure.PotLength,
        [AddedIce] = Measure.Mass,
        [AddedWater] = Measure.Mass,
        [Until] = Measure.Temperature,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Name of a part of a step, rows counted from one.</summary>
    public static string Step(int row, string part) => string.Create(CultureInfo.InvariantCulture, $"s{row}-{part}");

    /// <summary>Everything a step may carry.</summary>
    public static IEnumerable<string> Step(int row) => StepParts.Select(part => Step(row, part));

    /// <summary>True when a row says it is stirred by the one tick of older links: stock and bath, every few minutes.</summary>
    public static bool HasOneTick(TypedForm form, int row) => string.Equals(form[Step(row, StockStirring)].Trim(), "1", StringComparison.Ordinal);

    /// <summary>A form whose older ticks are written as the two choices they stand for.</summary>
    public static TypedForm WithoutTicks(TypedForm form) => Enumerable.Range(1, MostSteps)
        .Where(row => HasOneTick(form, row))
        .Aggregate(form, (each, row) => each
            .With(Step(row, StockStirring), "few")
            .With(Step(row, BathStirring), each.Has(Step(row, BathStirring)) ? each[Step(row, BathStirring)] : "few"));

    /// <summary>What a field is typed in, where that differs between the systems; else null.</summary>
    public static Measure? MeasureOf(string field) => field is ['s', >= '1' and <= '9', '-', .. var part]
        ? OfStep.GetValueOrDefault(part)
        : Whole.GetValueOrDefault(field);

    /// <summary>Every field of the page.</summary>
    public static IEnumerable<string> All =>
    [
        Litres, Start, Vessel, PotDiameter, PotHeight, Sets, Setting, Room, Tap, Limit, KitSink, KitIce, KitFridge, FridgeAir, FridgeWatts,
        KitWalkIn, WalkInAir, KitBlast, BlastAir, KitWands, WandWater, Pans, PanLength, PanWidth, PanDepth, Tubs, Tub, Jars, Jar, Readings, Scale, Around, Now, Reheated,
        .. Enumerable.Range(1, MostSteps).SelectMany(Step),
    ];
}
