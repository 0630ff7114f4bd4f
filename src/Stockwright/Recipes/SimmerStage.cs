using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Recipes;

/// <summary>A time at a temperature: the simmer, or one step of a stock made in steps.</summary>
/// <param name="Name">Plain name, for instance <c>Simmer</c> or <c>Draw the kelp</c>.</param>
/// <param name="Least">Lowest temperature of the usual range.</param>
/// <param name="Target">Temperature aimed at.</param>
/// <param name="Most">Highest temperature of the usual range.</param>
/// <param name="ShortestTime">Shortest usual time at temperature.</param>
/// <param name="Time">Time aimed at.</param>
/// <param name="LongestTime">Longest usual time.</param>
/// <param name="LiftsOut">True when what is in the pot (all solids) is lifted out at the end of this stage, before the next.</param>
/// <param name="ClimbsSlowly">True when the time is spent climbing to the target rather than holding it (kelp).</param>
public sealed record SimmerStage(
    string Name,
    Temperature Least,
    Temperature Target,
    Temperature Most,
    TimeSpan ShortestTime,
    TimeSpan Time,
    TimeSpan LongestTime,
    bool LiftsOut = false,
    bool ClimbsSlowly = false)
{
    /// <summary>Coolest and hottest a stock is held: a pressure cooker at full pressure is near 121 °C.</summary>
    public static readonly (Temperature Least, Temperature Most) TemperatureRange = (Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(125));

    /// <summary>Shortest and longest time of any step of a recipe: no stock simmers longer than three days.</summary>
    public static readonly (TimeSpan Least, TimeSpan Most) TimeRange = (TimeSpan.FromMinutes(1), TimeSpan.FromHours(72));

    /// <summary>True when it is kept at a rolling boil rather than as gently as can be.</summary>
    public bool IsRolling { get; init; }

    /// <summary>
    /// Share of the liquid at the start of the stage that is left when it is done, above 0 and below 1; null when the stage ends by time.
    /// With it the times are a rough guide only.
    /// </summary>
    public Stated<Ratio>? ReducesTo { get; init; }
}

/// <summary>How the bones are roasted.</summary>
/// <param name="OvenTemperature">Temperature of a conventional oven, without fan.</param>
/// <param name="ShortestTime">Shortest usual time.</param>
/// <param name="Time">Time aimed at.</param>
/// <param name="LongestTime">Longest usual time.</param>
/// <param name="VegetablesJoinBeforeEnd">How long before the end the mirepoix joins the tray; null when vegetables are not roasted.</param>
/// <param name="PasteJoinsBeforeEnd">How long before the end the paste is spread; null without paste.</param>
/// <param name="Source">Where the setting comes from.</param>
public sealed record RoastSetting(
    Temperature OvenTemperature,
    TimeSpan ShortestTime,
    TimeSpan Time,
    TimeSpan LongestTime,
    TimeSpan? VegetablesJoinBeforeEnd,
    TimeSpan? PasteJoinsBeforeEnd,
    string Source)
{
    /// <summary>Coolest and hottest oven: the ends of the oven scale, which the plan names its heat by.</summary>
    public static readonly (Temperature Least, Temperature Most) OvenRange = (Temperature.FromDegreesCelsius(95), Temperature.FromDegreesCelsius(255));
}

/// <summary>How the bones are blanched.</summary>
/// <param name="Time">Time at the boil before draining.</param>
/// <param name="Source">Where the setting comes from.</param>
public sealed record BlanchSetting(TimeSpan Time, string Source);
