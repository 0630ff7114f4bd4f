using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>Vessels of one kind that a kitchen owns.</summary>
/// <param name="Vessel">Each of them.</param>
/// <param name="Count">How many.</param>
public sealed record OwnedVessels(CoolingVessel Vessel, int Count);

/// <summary>What a kitchen has to cool with.</summary>
public sealed record CoolingKit
{
    /// <summary>Least and most ice at hand.</summary>
    public static readonly (Mass Least, Mass Most) IceRange = CoolingStep.AddedRange;

    /// <summary>Fewest and most vessels of one kind.</summary>
    public static readonly (int Least, int Most) VesselCountRange = (0, 200);

    /// <summary>True when there is a sink or tub the pot can stand in.</summary>
    public bool HasSink { get; init; } = true;

    /// <summary>Ice at hand or to be had; zero for none, null for as much as it takes.</summary>
    public Mass? Ice { get; init; }

    /// <summary>The fridge, or null.</summary>
    public ColdStore? Fridge { get; init; } = ColdStore.DomesticFridge;

    /// <summary>A walk-in cold room, or null.</summary>
    public ColdStore? WalkIn { get; init; }

    /// <summary>A blast chiller, or null.</summary>
    public ColdStore? BlastChiller { get; init; }

    /// <summary>Frozen wands.</summary>
    public int Wands { get; init; }

    /// <summary>Pans, tubs and jars.</summary>
    public IReadOnlyList<OwnedVessels> Vessels { get; init; } = [];
}
