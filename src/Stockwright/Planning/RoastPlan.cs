using Stockwright.Evidence;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What lies on the trays.</summary>
/// <param name="What">Plain list, for instance <c>chicken carcass, chicken wing</c>.</param>
/// <param name="Mass">Raw mass to spread.</param>
/// <param name="AreaNeeded">Area for one layer.</param>
/// <param name="Loading">Mass per area taken for the layer.</param>
public sealed record TrayLoad(string What, Mass Mass, Area AreaNeeded, Stated<AreaDensity> Loading);

/// <summary>Roasting: trays in one layer, oven rounds, heat and time.</summary>
public sealed record RoastPlan
{
    /// <summary>Setting from the recipe.</summary>
    public required RoastSetting Setting { get; init; }

    /// <summary>The step on the oven scale.</summary>
    public required OvenStep Oven { get; init; }

    /// <summary>True when the kitchen's oven has a fan.</summary>
    public required bool HasFan { get; init; }

    /// <summary>Bones and vegetables on the trays.</summary>
    public required IReadOnlyList<TrayLoad> Loads { get; init; }

    /// <summary>Name of the tray taken.</summary>
    public required string TrayName { get; init; }

    /// <summary>Trays filled in one layer, all rounds together.</summary>
    public required int TraysToFill { get; init; }

    /// <summary>Trays the oven takes at once.</summary>
    public required int TraysAtOnce { get; init; }

    /// <summary>Oven rounds.</summary>
    public required int OvenRounds { get; init; }

    /// <summary>What is roasted first, with its article: <c>the bones</c>.</summary>
    public required string Solids { get; init; }

    /// <summary>How long before the end vegetables join the trays; null when none of them is roasted here.</summary>
    public TimeSpan? VegetablesJoinBeforeEnd { get; init; }

    /// <summary>How long before the end paste is spread; null when the recipe has none or it is left out.</summary>
    public TimeSpan? PasteJoinsBeforeEnd { get; init; }

    /// <summary>When to turn what is roasted, after it went in.</summary>
    public required TimeSpan TurnAt { get; init; }

    /// <summary>All oven rounds, with preheating.</summary>
    public required TimeSpan TotalTime { get; init; }

    /// <summary>Mass lost in the oven, water and fat together.</summary>
    public required Band<Mass> MassLoss { get; init; }

    /// <summary>Fat left on the tray.</summary>
    public required Band<Mass> FatDrained { get; init; }
}

/// <summary>Blanching: cold water to the boil, a few minutes, drain and rinse.</summary>
/// <param name="Setting">Setting from the recipe.</param>
/// <param name="Water">Cold water to cover.</param>
/// <param name="TimeToBoil">Time to bring it up.</param>
/// <param name="MassLoss">Soluble matter poured away.</param>
public sealed record BlanchPlan(BlanchSetting Setting, Volume Water, TimeSpan TimeToBoil, Band<Mass> MassLoss);
