using Stockwright.Cooling;
using Stockwright.Cooling.Readings;
using Stockwright.Kitchen;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>What a stock does once it is cold.</summary>
internal enum SetKind
{
    Body,
    Thin,
    Own,
}

/// <summary>The cooling page's fields but for its steps (<see cref="StepFields"/>), each told once.</summary>
internal static class CoolingFields
{
    // Warm air is let through here: the forecaster says in its own words that it cannot cool.
    private static readonly (Temperature Least, Temperature Most) AnyAir = (ColdStore.AirRange.Least, Temperature.FromDegreesCelsius(100));

    public static readonly NumberRow<Volume> Litres = NumberRow.Volume("litres", "Stock", Measure.Stock, CoolingCase.VolumeRange) with
    {
        Blank = Volume.FromLiters(10),
        BlankTolerance = Neat,
        Description = "Stock as measured cold, 0.1 to 500 L; L or qt.",
    };

    public static readonly NumberRow<Temperature> Start = NumberRow.Temperature("start", "It starts at", CoolingCase.StartRange) with
    {
        Told = "Starting temperature",
        Blank = Temperature.FromDegreesCelsius(95),
        BlankTolerance = Neat,
        Description = "Temperature it starts at, 5 to 105 °C; °C or °F.",
    };

    public static readonly ChosenRow Vessel = new("vessel", "In") { Description = "Stable name of a pot of the kitchen, or own with pot-diameter and pot-height." };

    public static readonly NumberRow<Length> PotDiameter = NumberRow.Length("pot-diameter", "Inner diameter", Pot.DiameterRange) with
    {
        Told = "Diameter",
        Blank = Length.FromCentimeters(28),
        BlankTolerance = Neat,
        Hint = "For another pot.",
        Description = "Inner diameter of an own pot; cm or in.",
    };

    public static readonly NumberRow<Length> PotHeight = NumberRow.Length("pot-height", "Inner height", Pot.HeightRange) with
    {
        Told = "Height",
        Blank = Length.FromCentimeters(26),
        BlankTolerance = Neat,
        Hint = "For another pot.",
        Description = "Inner height of an own pot; cm or in.",
    };

    public static readonly NumberRow<Mass> Fat = NumberRow.Mass("fat", "Fat on it", CoolingCase.FatRange) with
    {
        Hint = "Blank for defatted stock. Fat holds steam back, and heat with it.",
        Description = "Fat that floats on it, 0 to 50 kg; kg or lb. As on defatted stock when left out.",
    };

    public static readonly NumberRow<Temperature> Room = SiteFields.Room with { Description = "Air of the room; °C or °F. The kitchen's when left out." };

    public static readonly NumberRow<Temperature> Tap = SiteFields.Tap with { Label = "Tap water", Description = "Tap water; °C or °F. The kitchen's when left out." };

    public static readonly WordsRow<SetKind> Sets = new("sets", "Once cold it",
    [
        new("body", SetKind.Body, "has body, sets near 18 °C (64 °F)"), new("thin", SetKind.Thin, "stays thin"), new("own", SetKind.Own, "sets at a temperature of my own"),
    ])
    {
        Told = "Sets",
        IsList = true,
        Hint = "A stock that sets stops moving, and then cools more slowly.",
        Description = "body (default), thin, or own with setting.",
    };

    public static readonly NumberRow<Temperature> Setting = NumberRow.Temperature("setting", "Sets at", CoolingCase.SettingRange) with
    {
        Told = "Setting temperature",
        Hint = "For a temperature of your own.",
        Description = "Temperature it sets at; °C or °F.",
    };

    public static readonly ChosenRow Limit = new("limit", "Held against") { Description = "Stable name of the limit, for instance us-food-code, au-3-2-2, uk-cook-chill." };

    public static readonly ChosenRow Sink = new("sink", "A sink the pot stands in") { Description = "yes (default) or none." };

    public static readonly NumberRow<Mass> Ice = NumberRow.Mass("kit-ice", "Ice", CoolingKit.IceRange) with
    {
        Told = "Ice at hand",
        Placeholder = "as much as it takes",
        Hint = "0 for none.",
        Description = "Ice at hand, kg or lb; as much as it takes when left out, 0 for none.",
    };

    public static readonly WholeRow Pans = new("pans", "Pans", CoolingKit.VesselCountRange) { Blank = CoolingDefaults.Pans, Placeholder = "up to 12", Hint = "0 for none.", Description = "Pans at hand; 12 when left out." };

    // The half-size pan of EN 631-1, 65 mm deep, by its inside.
    public static readonly NumberRow<Length> PanLength = NumberRow.Length("pan-length", "A pan is long", CoolingVessel.PanSideRange) with { Told = "Length of a pan", Blank = Length.FromCentimeters(30.5), BlankTolerance = Neat };

    public static readonly NumberRow<Length> PanWidth = NumberRow.Length("pan-width", "wide", CoolingVessel.PanSideRange) with { Told = "Width of a pan", Blank = Length.FromCentimeters(24.5), BlankTolerance = Neat };

    public static readonly NumberRow<Length> PanDepth = NumberRow.Length("pan-depth", "deep", CoolingVessel.PanDepthRange) with
    {
        Told = "Depth of a pan",
        Blank = Length.FromCentimeters(6.5),
        BlankTolerance = Neat,
        Hint = "Inside. Blank: the half-size steel pan of EN 631.",
    };

    public static readonly WholeRow Tubs = new("tubs", "Tubs", CoolingKit.VesselCountRange) { Blank = CoolingDefaults.Tubs, Placeholder = "up to 40", Hint = "0 for none.", Description = "Tubs at hand; 40 when left out." };

    public static readonly NumberRow<Volume> Tub = NumberRow.Volume("tub", "A tub holds", Measure.Stock, CoolingVessel.TubRange) with { Told = "A tub", Blank = Volume.FromLiters(1), BlankTolerance = Neat };

    // Glass takes care: only where the cook says there is some.
    public static readonly WholeRow Jars = new("jars", "Glass jars", CoolingKit.VesselCountRange)
    {
        Told = "Jars",
        Blank = 0,
        Hint = "Filled with the room the freezer needs at the top. Never from the boil: glass cracks.",
        Description = "Glass jars at hand; none when left out.",
    };

    /// <summary>Size of a jar, by its place in <see cref="JarSize.All"/>.</summary>
    public static readonly WordsRow<int> Jar = new("jar", "A jar holds", [.. JarSize.All.Select((size, index) => new FieldWord<int>(size.Id, index, size.Name))])
    {
        IsList = true,
        Blank = JarSize.All.ToList().FindIndex(size => size.Id is "500ml"),
        Description = "Size of a jar: 250ml, 500ml (default), 1l, pint or quart; US measure the last two.",
    };

    public static readonly WholeRow Wands = new("kit-wands", "Frozen wands", CoolingStep.WandsRange) { Blank = 0, Description = "Frozen wands at hand." };

    public static readonly NumberRow<Mass> WandWater = NumberRow.Mass("wand-water", "Water in a wand", FrozenWand.WaterRange) with { Blank = FrozenWand.TwoLitres.Water, BlankTolerance = Neat };

    public static readonly ChosenRow Fridge = new("fridge", "Household fridge") { Description = "Household fridge: yes (default) or none." };

    public static readonly NumberRow<Temperature> FridgeAir = Air("fridge-air", "Air in it", "Air in the fridge", ColdStore.DomesticFridge) with { Description = "Its air; °C or °F." };

    public static readonly NumberRow<Power> FridgeWatts = NumberRow.Power("fridge-watts", "Heat it takes out", Measure.Watts, ColdStore.CapacityRange) with
    {
        Told = "Strength of the fridge",
        Blank = ColdStore.DomesticFridge.Capacity,
        InputMode = "numeric",
        Hint = "Our estimate for a home: 70 to 150.",
        Description = "Heat it takes out at most, in watts.",
    };

    public static readonly NumberRow<Temperature> WalkInAir = Air("walk-in-air", "Air in the walk-in", null, ColdStore.WalkIn);

    public static readonly NumberRow<Temperature> BlastAir = Air("blast-air", "Air in the blast chiller", null, ColdStore.BlastChiller);

    public static readonly TickRow WalkIn = new("walk-in", "There is a walk-in with a fan") { Description = "True when there is a walk-in with a fan." };

    public static readonly TickRow Blast = new("blast", "There is a blast chiller") { Description = "True when there is a blast chiller." };

    public static readonly FieldRow Readings = new("readings", "Readings")
    {
        Placeholder = "10:30 57.2",
        Hint = "One a line: a time and a temperature, typed or pasted from a CSV file. A bare time is minutes. Measure in the middle, where it cools last.",
        Description = "Readings, one a line: a time and a temperature.",
    };

    public static readonly WordsRow<ReadingScale> Scale = new("scale", "Read in", [new("c", ReadingScale.Celsius, "°C"), new("f", ReadingScale.Fahrenheit, "°F")]) { Description = "Scale of the readings: c or f." };

    public static readonly NumberRow<Temperature> Around = NumberRow.Temperature("around", "It stands now in", CoolingRate.SurroundingsRange) with
    {
        Told = "Surroundings",
        Hint = "Air or bath; blank: as in the last step above.",
        Description = "What it stands in now; °C or °F.",
    };

    public static readonly NumberRow<TimeSpan> Now = NumberRow.Span("now", "Now, after the first reading", Measure.Minutes, (TimeSpan.Zero, ReadingParser.LongestSpan)) with
    {
        Told = "Now",
        Unit = "min",
        Hint = "Blank: the last reading is now.",
        Description = "Minutes from the first reading to now.",
    };

    public static readonly TickRow Reheated = new("reheated", "It was reheated once already") { Description = "True when it was reheated once already." };

    /// <summary>The stock, folded away.</summary>
    public static readonly IReadOnlyList<ShownField<CoolingView>> Stock =
    [
        new(PotDiameter), new(PotHeight), new(Fat),
        new(Room) { Usual = view => Room.Text(view.Kitchen.Site.Room, view.Units, Neat) },
        new(Tap) { Usual = view => Tap.Text(view.Kitchen.Site.TapWater, view.Units, Neat) },
        new(Sets), new(Setting),
    ];

    /// <summary>What is at hand, but for the two ticks below it.</summary>
    public static readonly IReadOnlyList<ShownField<CoolingView>> Kit =
    [
        YesOrNone(Sink),
        .. new FieldRow[] { Ice, Pans, PanLength, PanWidth, PanDepth, Tubs, Tub, Jars, Jar, Wands, WandWater }.Select(row => new ShownField<CoolingView>(row)),
        YesOrNone(Fridge),
        .. new FieldRow[] { FridgeAir, FridgeWatts, WalkInAir, BlastAir }.Select(row => new ShownField<CoolingView>(row)),
    ];

    /// <summary>What the thermometer said, but for the readings.</summary>
    public static readonly IReadOnlyList<ShownField<CoolingView>> Measured =
        [new(Scale) { Usual = view => Scale.WordOf(ScaleOf(view.Units)) }, new(Around), new(Now)];

    /// <summary>Every field of the page but those of the steps.</summary>
    public static readonly IReadOnlyList<FieldRow> All =
    [
        new(ReaderUnits.QueryKey, "Measures") { Description = "Measures of the numbers: metric (default) or us." },
        Litres, Start, Vessel, .. Rows(Stock), Limit, .. Rows(Kit), WalkIn, Blast, Readings, .. Rows(Measured), Reheated,
    ];

    /// <summary>Tolerance of a number shown or put into a link.</summary>
    public const double Neat = 5e-3;

    private static readonly Dictionary<string, FieldRow> ByName = All.ToDictionary(row => row.Name, StringComparer.Ordinal);

    /// <summary>What a field is typed in, where that differs between the systems; else null.</summary>
    public static Measure? MeasureOf(string field) => (StepFields.Find(field) ?? ByName.GetValueOrDefault(field))?.Turned;

    /// <summary>True for a field of the page.</summary>
    public static bool IsKnown(string field) => ByName.ContainsKey(field) || StepFields.Find(field) is not null;

    /// <summary>Names of fields, for the fold they stand in.</summary>
    public static string[] Names(IEnumerable<ShownField<CoolingView>> fields) => [.. Rows(fields).Select(row => row.Name)];

    /// <summary>The scale readings are taken to be in where the form does not say.</summary>
    public static ReadingScale ScaleOf(UnitSystem units) => units == UnitSystem.UsCustomary ? ReadingScale.Fahrenheit : ReadingScale.Celsius;

    private static IEnumerable<FieldRow> Rows(IEnumerable<ShownField<CoolingView>> fields) => fields.Select(shown => shown.Row);

    private static ShownField<CoolingView> YesOrNone(ChosenRow row) => new(row) { Options = (_, _) => [new("yes", "yes"), new(CoolingReader.NoneWord, "no")], Usual = _ => "yes" };

    private static NumberRow<Temperature> Air(string name, string label, string? told, ColdStore usual) =>
        NumberRow.Temperature(name, label, AnyAir) with { Told = told, Blank = usual.Air, BlankTolerance = Neat };
}
