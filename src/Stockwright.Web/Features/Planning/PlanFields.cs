using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Planning;

/// <summary>The ways to say how much.</summary>
internal enum GoalWay
{
    Fill,
    Litres,
    Portions,
    Bones,
}

/// <summary>The ways to say how full.</summary>
internal enum FillWay
{
    Safe,
    ThreeQuarters,
    TwoThirds,
    Half,
    Depth,
    Rim,
}

/// <summary>The ways to say when.</summary>
internal enum WhenWay
{
    Start,
    Ready,
}

/// <summary>
/// The planner's fields, each told once, fold by fold in the order of the page. A field of <see cref="PlanRequest"/> stands here in one row:
/// link, form, interface and page have it from that.
/// </summary>
internal static class PlanFields
{
    public const int Version = 1;

    public const string VersionField = "v";
    public const string Units = "units";
    public const string Leave = "leave-";
    public const string With = "with-";

    /// <summary>More rows than any kitchen has cuts.</summary>
    public const int MostBonesRows = RowFields.Most;

    public static readonly FieldRow Recipe = new("recipe", "Recipe") { Description = "Stable name of the recipe, for instance brown-chicken." };

    public static readonly WordsRow<GoalWay> Goal = new("goal", "Make",
    [
        new("fill", GoalWay.Fill, "as much as the pot safely holds"),
        new("litres", GoalWay.Litres, "so many litres"),
        new("portions", GoalWay.Portions, "so many portions"),
        new("bones", GoalWay.Bones, "what these bones give"),
    ])
    { Told = "How much", Class = "wide", Description = "fill (default), litres, portions or bones." };

    public static readonly NumberRow<Volume> Litres = NumberRow.Volume("litres", "Stock, strained", Measure.Stock, PlanGoal.YieldRange) with
    {
        Told = "Stock wanted",
        Class = "for-litres",
        Description = "Strained stock wanted; L or qt.",
    };

    public static readonly WholeRow PortionCount = new("portion-count", "Portions", PlanGoal.PortionCountRange) { Class = "for-portions", Description = "Number of portions, a whole number." };

    public static readonly NumberRow<Volume> PortionSize = NumberRow.Volume("portion-size", "Size of a portion", Measure.Portion, PlanGoal.PortionRange) with { Class = "for-portions" };

    public static readonly WordsRow<FillWay> Fill = new("fill", "Fill the pot",
    [
        new("safe", FillWay.Safe, "as high as is safe"),
        new("three-quarters", FillWay.ThreeQuarters, "three quarters"),
        new("two-thirds", FillWay.TwoThirds, "two thirds"),
        new("half", FillWay.Half, "half"),
        new("depth", FillWay.Depth, "to a depth of…"),
        new("rim", FillWay.Rim, "to so far below the rim…"),
    ])
    { Told = "Fill to", IsList = true, Description = "How full: safe (default), three-quarters, two-thirds or half of the height, depth or rim with fill-length." };

    public static readonly NumberRow<Length> FillLength = NumberRow.Length("fill-length", "How deep, or how far below the rim", FillMark.LengthRange) with
    {
        Told = "Fill to",
        Class = "for-fill",
        Description = "Depth of the liquid, or its distance below the rim; cm or in.",
    };

    public static readonly WordsRow<WhenWay> When = new("when", "The time below is when", [new("start", WhenWay.Start, "I start"), new("ready", WhenWay.Ready, "it must be ready")])
    {
        Told = "When",
        Class = "wide",
        Description = "start (default) or ready: what date and time mean.",
    };

    public static readonly DateRow Date = new("date", "Day") { Placeholder = "2026-12-31", Description = "Day by the kitchen's clock, year-month-day." };

    public static readonly TimeRow Time = new("time", "Time") { Description = "Time by the kitchen's clock, hours:minutes." };

    // The core says how many one cook can mind; only nonsense stops here.
    private static readonly (int Least, int Most) AnyCount = (0, 99);

    /// <summary>Kinds of hob, gaps and the rest of the fold of pot and heat: read and laid out by hand, but for these.</summary>
    public static readonly ShownField<PlanView> SlowSetting = Asked(
        new WordsRow<SlowCookerSetting>("slow-setting", "Setting of the slow cooker",
        [
            new("high", SlowCookerSetting.High, "High"), new("low", SlowCookerSetting.Low, "Low"), new("warm", SlowCookerSetting.Warm, "Warm: only keeps hot"),
        ])
        { Description = "Setting of a slow cooker: high (default) or low; warm is refused, for nothing is cooked on it." },
        request => request.Pot.Kind == PotKind.SlowCooker ? request.Setting : null,
        (request, setting) => request.Pot.Kind == PotKind.SlowCooker ? request with { Setting = setting } : request);

    public static readonly ShownField<PlanView> InOven = Asked(
        new TickRow("in-oven", "Simmer it in the oven, lid on, once it is skimmed on the hob")
        {
            Class = "wide ticks",
            Description = "1 to simmer it in the kitchen's oven, lid on, once it is skimmed on the hob.",
        },
        request => request.SimmersInOven, (request, inOven) => request with { SimmersInOven = inOven });

    /// <summary>Fields of a pot that is not the kitchen's.</summary>
    public static readonly IReadOnlyList<ShownField<PlanView>> OwnPot =
    [
        .. new FieldRow[]
        {
            EquipmentFields.PotShape, EquipmentFields.PotDiameter, EquipmentFields.PotBrimDiameter, EquipmentFields.PotHeight, EquipmentFields.PotVolume,
            EquipmentFields.PotMaterial, EquipmentFields.PotMass, EquipmentFields.PotKind, EquipmentFields.PotGauge, EquipmentFields.PotPower,
        }.Select(row => new ShownField<PlanView>(row)),
    ];

    /// <summary>Fields of a hob that is not the kitchen's.</summary>
    public static readonly IReadOnlyList<ShownField<PlanView>> OwnHob =
        [.. new FieldRow[] { EquipmentFields.HobKind, EquipmentFields.HobPower, EquipmentFields.HobEfficiency }.Select(row => new ShownField<PlanView>(row))];

    /// <summary>How much: the goal.</summary>
    public static readonly IReadOnlyList<ShownField<PlanView>> Goals =
    [
        new(Goal) { Options = (view, options) => view.Units == UnitSystem.UsCustomary ? [.. options.Select(option => option.Value is "litres" ? option with { Text = "so many quarts" } : option)] : options },
        new(Litres),
        new(PortionCount),
        new(PortionSize),
    ];

    /// <summary>How much: the pot.</summary>
    public static readonly IReadOnlyList<ShownField<PlanView>> Fills =
    [
        new(Fill) { Hint = view => view.Plan is { } plan ? $"At most {KitchenFormat.Text(plan.Request.Pot.InnerHeight - plan.Fit.SafeMaximum, view.Units)} below the rim." : null },
        new(FillLength),
        Asked(
            new WholeRow("pots", "Pots of this size", AnyCount) { Description = "Pots of this size at hand; those of the kitchen when left out." },
            request => request.PotCount, (request, count) => request with { PotCount = count },
            // Said as soon as there may be several: the kitchen it is read in later may have others.
            (request, usual) => request.PotCount != 1 || usual.PotCount != 1),
        Asked(
            new WholeRow("hobs", "Free hobs like this", AnyCount) { Description = "Free hobs like this; those of the kitchen when left out." },
            request => request.HobCount, (request, count) => request with { HobCount = count },
            (request, usual) => request.HobCount != 1 || usual.HobCount != 1),
        Asked(
            new WordsRow<SplitWay>("way", "If it does not fit at once",
            [
                new("let-down", SplitWay.LetDown, "stronger, and let down with water"),
                new("stronger", SplitWay.Stronger, "stronger, and less of it"),
                new("pots", SplitWay.SideBySide, "pots side by side"),
                new("rounds", SplitWay.OneAfterAnother, "rounds, one after the other"),
            ])
            {
                Told = "If it does not fit",
                Class = "wide",
                IsList = true,
                None = "what is least work",
                Description = "What is done where the wish does not fit the pot: let-down, stronger, pots (side by side) or rounds. The planner chooses when left out.",
            },
            request => request.Way, (request, way) => request with { Way = way }),
    ];

    public static readonly IReadOnlyList<ShownField<PlanView>> Schedule =
    [
        new(When),
        new(Date) { Standing = view => Date.Text(DateOnly.FromDateTime(view.StandingMoment), view.Units) },
        new(Time) { Standing = view => Time.Text(new TimeOnly(view.StandingMoment.Hour, view.StandingMoment.Minute), view.Units), Hint = view => $"By the kitchen's clock ({view.Book.Zone.Id})." },
        Asked(
            new TimeRow("wakes", "You get up at") { Description = "Time the cook gets up; 06:30 when left out." },
            request => request.Schedule.WakesAt, (request, time) => request with { Schedule = request.Schedule with { WakesAt = time } }),
        Asked(
            new TimeRow("sleeps", "and go to bed at") { Description = "Time the cook goes to bed; 22:30 when left out." },
            request => request.Schedule.SleepsAt, (request, time) => request with { Schedule = request.Schedule with { SleepsAt = time } }),
        Asked(
            new WordsRow<NightPlan>("night", "Work in the night",
            [
                new("free", NightPlan.KeepFree, "none: find a way"), new("getup", NightPlan.GetUp, "I get up for it"), new("oven", NightPlan.OvenHold, "lid on, into a low oven"), new("stop", NightPlan.StopAndCool, "stop, strain and cool"),
            ])
            { Told = "Checks in the night", Class = "wide", Description = "Work in the night: free (default, the planner keeps it free), getup, oven or stop." },
            request => request.Schedule.Night, (request, night) => request with { Schedule = request.Schedule with { Night = night } }),
    ];

    public static readonly IReadOnlyList<ShownField<PlanView>> Fine =
    [
        Asked(
            NumberRow.Temperature("simmer", "Simmer temperature", PlanRequest.SimmerTemperatureRange) with { Description = "Simmer temperature; degrees Celsius or Fahrenheit. The recipe's when left out." },
            request => request.SimmerTemperature,
            (request, temperature) => request with { SimmerTemperature = temperature }) with { Label = FineText.SimmerLabel, Hint = FineText.SimmerHint, Placeholder = FineText.SimmerUsual },
        Asked(
            NumberRow.Span("hours", "Simmer time", Measure.Hours, PlanRequest.SimmerTimeRange) with { Description = "Simmer time in hours. The recipe's when left out." },
            request => request.SimmerTime,
            (request, time) => request with { SimmerTime = time }) with { Label = FineText.TimeLabel, Hint = FineText.TimeHint, Placeholder = FineText.TimeUsual },
        Asked(
            NumberRow.Span("check", "Look in every", Measure.Minutes, PlanRequest.CheckIntervalRange) with { Told = "Time between checks", Description = "Minutes between checks, 20 to 360; 60 when left out." },
            request => request.CheckInterval, (request, interval) => request with { CheckInterval = interval }) with { Hint = FineText.CheckHint },
        Asked(
            new WordsRow<TopUpRule>("topup", "Top up",
            [
                new("line", TopUpRule.KeepToLine, "back to the line at every check"), new("covered", TopUpRule.KeepCovered, "only to keep the solids covered"), new("none", TopUpRule.None, "never"),
            ])
            { Told = "Topping up", Class = "wide", Description = "line (the level is held), covered or none. Line, and none for what is boiled down, when left out." },
            request => request.TopUp, (request, rule) => request with { TopUp = rule }) with { Options = FineText.TopUps },
        Asked(
            new WordsRow<bool>("heat-up-lid", "Lid while it heats up", [new("off", false, "off: scum is lifted as it comes"), new("on", true, "on until it bubbles: hot a little sooner")])
            {
                Class = "wide",
                Description = "Lid while it heats up: off (default) or on, until it begins to bubble.",
            },
            request => request.HeatsUpCovered, (request, covered) => request with { HeatsUpCovered = covered }),
        Asked(
            new WordsRow<MirepoixTime>("mirepoix", "Mirepoix goes in",
            [
                new("last-hour", MirepoixTime.LastHour, "for the last hour: fresher, and it drinks less stock"), new("early", MirepoixTime.Early, "after the first skim, in large pieces"),
            ])
            { Told = "Mirepoix", Class = "wide", Description = "When mirepoix goes into a long simmer: early (after the first skim) or last-hour. The recipe's when left out." },
            request => request.Mirepoix, (request, time) => request with { Mirepoix = time }) with { Asked = view => FineText.Waiting(view).Any(), Usual = FineText.UsualMirepoix },

        // An altitude typed for this plan counts over the barometer reading the kitchen keeps; a reading typed with it counts over both.
        Asked(
            SiteFields.Altitude,
            request => request.Site.Altitude, (request, altitude) => request with { Site = request.Site with { Altitude = altitude, MeasuredPressure = null } },
            (request, usual) => !SiteFields.Altitude.IsSame(request.Site.Altitude, usual.Site.Altitude) || (request.Site.MeasuredPressure is null && usual.Site.MeasuredPressure is not null)),
        Asked(
            SiteFields.Pressure,
            request => request.Site.MeasuredPressure, (request, pressure) => request with { Site = request.Site with { MeasuredPressure = pressure } },
            (request, usual) => !SiteFields.Altitude.IsSame(request.Site.Altitude, usual.Site.Altitude) || request.Site.MeasuredPressure is not { } measured
                || usual.Site.MeasuredPressure is not { } standing || !SiteFields.Pressure.IsSame(measured, standing)),
        .. SiteFields.OfRoom.Select(field => new ShownField<PlanView>(field.Row, field.In<PlanRequest>(request => request.Site, (request, site) => request with { Site = site }))),
    ];

    /// <summary>Every field but the numbered rows of cuts and the ticks of ingredients, in the order of the page.</summary>
    public static readonly IReadOnlyList<FieldRow> All =
    [
        new(Units, "Measures") { Description = "Measures of the numbers: metric (default) or us." },
        Recipe, EquipmentFields.Pot,
        .. Rows(OwnPot), SlowSetting.Row, EquipmentFields.Lid, EquipmentFields.Gap, InOven.Row, EquipmentFields.Hob, .. Rows(OwnHob),
        .. Rows(Goals), .. Rows(Fills), .. Rows(Schedule), .. Rows(Fine), .. QuestionFields.All,
    ];

    /// <summary>What the request itself keeps of them, in the order in which they are read and written.</summary>
    public static readonly IReadOnlyList<FieldBinding<PlanRequest>> OfRequest =
        [.. new[] { SlowSetting, InOven }.Concat(Fills).Concat(Schedule).Concat(Fine).Select(shown => shown.Binding).OfType<FieldBinding<PlanRequest>>()];

    private static readonly Dictionary<string, FieldRow> ByName = All.ToDictionary(row => row.Name, StringComparer.Ordinal);

    /// <summary>How a field is measured; null where its number is the same in both systems, or no number.</summary>
    public static Measure? MeasureOf(string name) => ByName.GetValueOrDefault(name)?.Turned;

    public static bool IsKnown(string name) =>
        name is VersionField || ByName.ContainsKey(name) || name.StartsWith(Leave, StringComparison.Ordinal) || name.StartsWith(With, StringComparison.Ordinal) || RowFields.TryRead(name, out _);

    public static string BonesField(int row, string part) => RowFields.Name(RowFields.Bones, row, part);

    /// <summary>Field of a row's mass, named by its unit: <c>kg</c> or <c>lb</c>.</summary>
    public static string BonesMassField(int row, UnitSystem units) => RowFields.MassName(RowFields.Bones, row, units);

    /// <summary>Names of fields, for the fold they stand in.</summary>
    public static string[] Names(params IEnumerable<ShownField<PlanView>>[] groups) => [.. groups.SelectMany(group => group).Select(shown => shown.Row.Name)];

    private static IEnumerable<FieldRow> Rows(IEnumerable<ShownField<PlanView>> fields) => fields.Select(shown => shown.Row);

    private static ShownField<PlanView> Asked<T>(FieldRow<T> row, Func<PlanRequest, T?> get, Func<PlanRequest, T, PlanRequest> with, Func<PlanRequest, PlanRequest, bool>? said = null)
        where T : struct => new(row, row.Of(get, with) with { Said = said });
}
