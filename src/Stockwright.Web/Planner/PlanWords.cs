using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;

namespace Stockwright.Web.Planner;

/// <summary>Words of the fields that choose one of a few; the first of each list is the default.</summary>
internal static class PlanWords
{
    public static readonly (string Word, WallMaterial Value)[] Materials =
    [
        ("steel", WallMaterial.StainlessSteel), ("aluminium", WallMaterial.Aluminium), ("copper", WallMaterial.Copper), ("enamel", WallMaterial.EnamelledIron), ("stoneware", WallMaterial.Stoneware),
    ];

    public static readonly (string Word, PotKind Value)[] PotKinds =
    [
        ("open", PotKind.Open), ("pressure", PotKind.PressureCooker), ("slow", PotKind.SlowCooker), ("kettle", PotKind.Kettle),
    ];

    public static readonly (string Word, SlowCookerSetting Value)[] SlowSettings =
    [
        ("high", SlowCookerSetting.High), ("low", SlowCookerSetting.Low), ("warm", SlowCookerSetting.Warm),
    ];

    public static readonly (string Word, LidKind Value)[] Lids = [("off", LidKind.Off), ("ajar", LidKind.Ajar), ("on", LidKind.On)];

    public static readonly (string Word, HobKind Value)[] HobKinds =
    [
        ("gas", HobKind.Gas), ("coil", HobKind.Coil), ("smooth", HobKind.SmoothTop), ("plate", HobKind.SolidPlate), ("induction", HobKind.Induction),
    ];

    public static readonly (string Word, TopUpRule Value)[] TopUps =
    [
        ("line", TopUpRule.KeepToLine), ("covered", TopUpRule.KeepCovered), ("none", TopUpRule.None),
    ];

    public static readonly (string Word, HeatUpLid Value)[] HeatUpLids = [("off", HeatUpLid.Off), ("on", HeatUpLid.On)];

    public static readonly (string Word, MirepoixTime Value)[] MirepoixTimes = [("early", MirepoixTime.Early), ("last-hour", MirepoixTime.LastHour)];

    public static readonly (string Word, NightPlan Value)[] Nights =
    [
        ("free", NightPlan.KeepFree), ("getup", NightPlan.GetUp), ("oven", NightPlan.OvenHold), ("stop", NightPlan.StopAndCool),
    ];

    public static readonly (string Word, GoalWay Value)[] Goals =
    [
        ("fill", GoalWay.Fill), ("litres", GoalWay.Litres), ("portions", GoalWay.Portions), ("bones", GoalWay.Bones),
    ];

    public static readonly (string Word, FillWay Value)[] Fills =
    [
        ("safe", FillWay.Safe), ("three-quarters", FillWay.ThreeQuarters), ("two-thirds", FillWay.TwoThirds), ("half", FillWay.Half), ("depth", FillWay.Depth), ("rim", FillWay.Rim),
    ];

    public static readonly (string Word, SplitWay Value)[] Ways =
    [
        ("let-down", SplitWay.LetDown), ("stronger", SplitWay.Stronger), ("pots", SplitWay.SideBySide), ("rounds", SplitWay.OneAfterAnother),
    ];

    public static readonly (string Word, PotShape Value)[] Shapes =
    [
        ("straight", PotShape.Straight), ("tapered", PotShape.Tapered), ("volume", PotShape.Volume),
    ];

    public static readonly (string Word, WhenWay Value)[] Whens = [("start", WhenWay.Start), ("ready", WhenWay.Ready)];

    public static readonly (string Word, DefatMethod Value)[] Defats = [("ladle", DefatMethod.Ladle), ("jug", DefatMethod.Jug), ("chill", DefatMethod.Chill)];

    public static readonly (string Word, BodyClass Value)[] Bodies =
        [.. Enum.GetValues<BodyClass>().Select(body => (BodyClasses.Name(body).Replace(' ', '-'), body))];

    public static string Of<T>((string Word, T Value)[] words, T value)
        where T : struct, Enum => words.First(pair => EqualityComparer<T>.Default.Equals(pair.Value, value)).Word;
}

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

/// <summary>The ways to describe a pot.</summary>
internal enum PotShape
{
    Straight,
    Tapered,
    Volume,
}

/// <summary>The ways to say when.</summary>
internal enum WhenWay
{
    Start,
    Ready,
}
