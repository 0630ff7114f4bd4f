using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>The pot at one moment.</summary>
/// <param name="At">Time after the heat went on.</param>
/// <param name="Temperature">Temperature of pot and contents.</param>
/// <param name="Level">Level above the inside of the base, hot.</param>
/// <param name="Liquid">Free liquid in the pot, as if measured cold (20 C).</param>
/// <param name="Evaporated">Lost as steam so far, as if measured cold.</param>
/// <param name="HeatIn">Heat going into pot and contents.</param>
public readonly record struct SimmerSample(TimeSpan At, Temperature Temperature, Length Level, Volume Liquid, Volume Evaporated, Power HeatIn);

/// <summary>A visit to the pot.</summary>
/// <param name="At">Time after the heat went on.</param>
/// <param name="LevelBefore">Level the cook should find, above the inside of the base.</param>
/// <param name="LevelBeforeFromRim">The same, measured down from the rim, with its band.</param>
/// <param name="TopUp">Water to add, with its band; zero when none is needed.</param>
/// <param name="LevelAfter">Level after topping up.</param>
public sealed record SimmerCheck(TimeSpan At, Length LevelBefore, Band<Length> LevelBeforeFromRim, Band<Volume> TopUp, Length LevelAfter);

/// <summary>What is counted by mass and by heat, for the balance: the sums agree to rounding.</summary>
/// <param name="MassIn">Everything put in the pot: solids, water, top-ups.</param>
/// <param name="MassOut">Steam and skim.</param>
/// <param name="MassLeft">Left in the pot when the heat goes off.</param>
/// <param name="EnergyIn">Heat from the hob into pot and contents, and the enthalpy carried in, above 0 C.</param>
/// <param name="EnergyOut">Steam, skim, walls and surface.</param>
/// <param name="EnergyLeft">Held by pot and contents at the end, above 0 C.</param>
public sealed record SimmerBooks(Mass MassIn, Mass MassOut, Mass MassLeft, Energy EnergyIn, Energy EnergyOut, Energy EnergyLeft);

/// <summary>Getting to the first simmer.</summary>
/// <param name="Time">Time from heat on to the simmer; the band is the hob's.</param>
/// <param name="IsReached">False when this hob cannot bring this pot to the simmer as it stands.</param>
/// <param name="FinalTemperature">Temperature reached.</param>
public sealed record HeatUp(Band<TimeSpan> Time, bool IsReached, Temperature FinalTemperature);

/// <summary>The pot from heat on to heat off.</summary>
public sealed record SimmerForecast
{
    /// <summary>The course of the central forecast, at most 300 points.</summary>
    public required IReadOnlyList<SimmerSample> Samples { get; init; }

    /// <summary>Lower and upper level at the moments of <see cref="Samples"/>.</summary>
    public required IReadOnlyList<(Length Low, Length High)> LevelBand { get; init; }

    /// <summary>Visits to the pot, in order.</summary>
    public required IReadOnlyList<SimmerCheck> Checks { get; init; }

    /// <summary>Time from heat on to heat off.</summary>
    public required TimeSpan Length { get; init; }

    /// <summary>Lost as steam, as if measured cold.</summary>
    public required Band<Volume> Evaporated { get; init; }

    /// <summary>All top-ups together.</summary>
    public required Band<Volume> ToppedUp { get; init; }

    /// <summary>Loss at a steady simmer.</summary>
    public required Band<VolumeFlow> EvaporationRate { get; init; }

    /// <summary>Fuel or electricity for heat-up and simmer.</summary>
    public required Band<Energy> HobEnergy { get; init; }

    /// <summary>Heat the hob must give to hold the simmer, and the setting that is.</summary>
    public required Ratio HoldSetting { get; init; }

    /// <summary>Lowest the level gets.</summary>
    public required Length LowestLevel { get; init; }

    /// <summary>Fat that floats when the heat goes off; null where nobody worked it out.</summary>
    public Mass? FloatingFat { get; init; }

    /// <summary>Mass and energy in, out and left.</summary>
    public required SimmerBooks Books { get; init; }
}
