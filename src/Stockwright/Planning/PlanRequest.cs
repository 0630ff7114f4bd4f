using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What is done about a simmer that runs through the night.</summary>
public enum NightPlan
{
    /// <summary>No work in the night: the planner chooses how, by moving the start where that is open, or by one of the ways below.</summary>
    KeepFree,

    /// <summary>Get up for the checks.</summary>
    GetUp,

    /// <summary>Lid on, into a low oven or a slow appliance, from bedtime to waking; no checks and hardly any loss.</summary>
    OvenHold,

    /// <summary>Take it off, strain and cool at bedtime; go on in the morning.</summary>
    StopAndCool,
}

/// <summary>When mirepoix goes into a long simmer: both ways are taught.</summary>
public enum MirepoixTime
{
    /// <summary>After the first skim, in large pieces.</summary>
    Early,

    /// <summary>For the last hour: it has given what it has by then, and longer it turns flat and drinks stock.</summary>
    LastHour,
}

/// <summary>Everything the planner needs for one batch. All parts are resolved; nothing is looked up.</summary>
public sealed record PlanRequest
{
    /// <summary>Coldest and hottest simmer the planner works with; open pots boil first, pressure cookers reach about 121 C.</summary>
    public static readonly (Temperature Least, Temperature Most) SimmerTemperatureRange = (Temperature.FromDegreesCelsius(40), Temperature.FromDegreesCelsius(125));

    /// <summary>Smallest and largest pieces of meat and bone accepted.</summary>
    public static readonly (Length Least, Length Most) PieceSizeRange = (Length.FromCentimeters(0.5), Length.FromCentimeters(30));

    /// <summary>Shortest and longest simmer accepted.</summary>
    public static readonly (TimeSpan Least, TimeSpan Most) SimmerTimeRange = (TimeSpan.FromMinutes(1), TimeSpan.FromHours(72));

    /// <summary>Shortest and longest time between checks accepted.</summary>
    public static readonly (TimeSpan Least, TimeSpan Most) CheckIntervalRange = (TimeSpan.FromMinutes(20), TimeSpan.FromHours(6));

    /// <summary>The standing instruction.</summary>
    public required StockRecipe Recipe { get; init; }

    /// <summary>Make-up of the ingredients.</summary>
    public required LarderTable Larder { get; init; }

    /// <summary>The pot.</summary>
    public required Pot Pot { get; init; }

    /// <summary>The burner or plate; a vessel that heats itself does not stand on it, see <see cref="Heat"/>.</summary>
    public required Hob Hob { get; init; }

    /// <summary>How the lid sits during the simmer; for the heat-up see <see cref="HeatsUpCovered"/>.</summary>
    public required LidPosition Lid { get; init; }

    /// <summary>Air, room and tap.</summary>
    public required KitchenSite Site { get; init; }

    /// <summary>The oven, or null when there is none.</summary>
    public Oven? Oven { get; init; }

    /// <summary>Trays for roasting.</summary>
    public IReadOnlyList<Tray> Trays { get; init; } = [];

    /// <summary>Other pots of the kitchen, to say which would hold the batch when this one does not.</summary>
    public IReadOnlyList<Pot> OtherPots { get; init; } = [];

    /// <summary>How much.</summary>
    public required PlanGoal Goal { get; init; }

    /// <summary>When.</summary>
    public required PlanSchedule Schedule { get; init; }

    /// <summary>Simmer temperature asked for, within <see cref="SimmerTemperatureRange"/>; null for the recipe's.</summary>
    public Temperature? SimmerTemperature { get; init; }

    /// <summary>Simmer time asked for; null for the recipe's.</summary>
    public TimeSpan? SimmerTime { get; init; }

    /// <summary>Time between checks once the first hour's skimming is over.</summary>
    public TimeSpan CheckInterval { get; init; } = TimeSpan.FromHours(1);

    /// <summary>What is kept in the pot.</summary>
    public TopUpRule TopUp { get; init; } = TopUpRule.KeepToLine;

    /// <summary>Size of the pieces of meat and bone, within <see cref="PieceSizeRange"/>; null for the usual size of each cut. Larger pieces keep their water longer.</summary>
    public Length? PieceSize { get; init; }

    /// <summary>How full the pot is to be; null for the safe maximum where the pot sets the load.</summary>
    public FillMark? FillTo { get; init; }

    /// <summary>How a wish is met that does not fit the pot at once; null to let the planner choose.</summary>
    public SplitWay? Way { get; init; }

    /// <summary>Pots of this size at hand, one or more.</summary>
    public int PotCount { get; init; } = 1;

    /// <summary>Hobs like this that are free, one or more.</summary>
    public int HobCount { get; init; } = 1;

    /// <summary>True when the lid is on until it begins to bubble: sooner hot, but the first scum is lifted late.</summary>
    public bool HeatsUpCovered { get; init; }

    /// <summary>How the knob of a slow cooker stands; nothing to any other vessel.</summary>
    public SlowCookerSetting Setting { get; init; }

    /// <summary>True when the pot is brought to the simmer on the hob and then simmers in the oven, lid on.</summary>
    public bool SimmersInOven { get; init; }

    /// <summary>When mirepoix goes in that does not go in at the start; the recipe says when it is null.</summary>
    public MirepoixTime? Mirepoix { get; init; }

    /// <summary>Lines of the recipe left out, by ingredient.</summary>
    public IReadOnlySet<string> LeftOut { get; init; } = new HashSet<string>(StringComparer.Ordinal);

    /// <summary>Optional lines of the recipe taken in, by ingredient; the others stay out.</summary>
    public IReadOnlySet<string> WithOptional { get; init; } = new HashSet<string>(StringComparer.Ordinal);

    /// <summary>The uncertain figures it is worked out with.</summary>
    public SimmerAssumptions Assumptions { get; init; } = SimmerAssumptions.Standard;

    /// <summary>How the cuts of the larder give up their gelatin, juices and fat.</summary>
    public CutTable Cuts { get; init; } = StandardCuts.Table;

    /// <summary>What heats the pot while it simmers: the hob, or the vessel's own heater.</summary>
    public Hob Heat => Pot is { HasOwnHeater: true, HeaterPower: not null } ? OwnHeat.Of(Pot, Setting, Assumptions) : Hob;

    /// <summary>True when nobody looks in while it simmers: in a slow cooker, or in the oven.</summary>
    public bool IsLeftAlone => Pot.Kind == PotKind.SlowCooker || SimmersInOven;

    /// <summary>True when nothing is done with the pot for the night, whatever is asked: it is locked, left alone, or a kettle that goes into no oven.</summary>
    public bool IsNeverPutAway => IsUnderPressure || IsLeftAlone || (Pot.Kind == PotKind.Kettle && Schedule.Night == NightPlan.OvenHold);

    /// <summary>
    /// True when it cooks under pressure, behind a locked lid: a pressure cooker with its lid on, and a recipe of one stage. Recipes of several
    /// stages lift things out below the boil, so they are made in the open pot.
    /// </summary>
    public bool IsUnderPressure => Lid.Kind == LidKind.On && CanLock(Pot, Recipe);

    /// <summary>How the lid sits unless the cook says otherwise: locked on a pressure cooker, on on a slow cooker, else as the recipe has it.</summary>
    public static LidPosition UsualLid(Pot? pot, StockRecipe recipe) =>
        pot is not null && (pot.Kind == PotKind.SlowCooker || CanLock(pot, recipe)) ? LidPosition.On : recipe.Lid;

    /// <summary>What is kept in the pot unless the cook says otherwise: the level, but for a stock that is boiled down.</summary>
    public static TopUpRule UsualTopUp(StockRecipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        return recipe.BoilsDown ? TopUpRule.None : TopUpRule.KeepToLine;
    }

    private static bool CanLock(Pot pot, StockRecipe recipe) => pot.Kind == PotKind.PressureCooker && recipe.Stages.Count == 1;

    /// <summary>A line with the moment this cook puts it in.</summary>
    internal RecipeLine Timed(RecipeLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        bool waits = line is { Role: LineRole.Mirepoix or LineRole.Trimmings or LineRole.Paste, Joins: JoinMoment.AfterFirstSkim or JoinMoment.BeforeEnd };
        RecipeLine timed = (waits ? Mirepoix : null) switch
        {
            MirepoixTime.Early => line with { Joins = JoinMoment.AfterFirstSkim, BeforeEnd = null },
            MirepoixTime.LastHour => line with { Joins = JoinMoment.BeforeEnd, BeforeEnd = TimeSpan.FromHours(1) },
            _ => line,
        };

        // A slow cooker is not skimmed on the way up, so there is nothing to wait for.
        return Pot.Kind == PotKind.SlowCooker && timed.Joins == JoinMoment.AfterFirstSkim ? timed with { Joins = JoinMoment.Start } : timed;
    }

    /// <summary>True when a line of the recipe goes in.</summary>
    internal bool Takes(RecipeLine line) => line.IsOptional ? WithOptional.Contains(line.IngredientId) : !LeftOut.Contains(line.IngredientId);
}
