using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;

namespace Stockwright.Web.Features.Planning;

/// <summary>Words of the fields that choose one of a few; the first of each list is the default.</summary>
internal static class PlanText
{
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

    public static readonly (string Word, WhenWay Value)[] Whens = [("start", WhenWay.Start), ("ready", WhenWay.Ready)];

    public static readonly (string Word, DefatMethod Value)[] Defats = [("ladle", DefatMethod.Ladle), ("jug", DefatMethod.Jug), ("chill", DefatMethod.Chill)];
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

/// <summary>The ways to say when.</summary>
internal enum WhenWay
{
    Start,
    Ready,
}
