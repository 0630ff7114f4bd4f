namespace Stockwright.Simmering;

/// <summary>What kind of thing happened to the pot at a known time.</summary>
internal enum PotEventKind
{
    /// <summary>A planned action was done at its own time.</summary>
    Act,

    /// <summary>Water was poured in; kg.</summary>
    Pour,

    /// <summary>Liquid was lost; kg.</summary>
    Lose,

    /// <summary>Liquid was lost; share of what there was.</summary>
    LoseShare,

    /// <summary>The lid was moved; share of the vapour that passes it.</summary>
    Lid,

    /// <summary>Moved to another hob; rated watts, times its efficiency over that of the planned one.</summary>
    Hob,

    /// <summary>Moved into the oven.</summary>
    Oven,

    /// <summary>The heat went away.</summary>
    HeatAway,

    /// <summary>The heat came back.</summary>
    HeatBack,

    /// <summary>It simmers again after the heat was away.</summary>
    SimmersAgain,

    /// <summary>The simmer is kept so many kelvins above what the stage asks for.</summary>
    Shift,

    /// <summary>A thermometer was read; C. It overrides the calculated temperature while the heat is away or on its way back.</summary>
    Read,

    /// <summary>The pot is looked at for the calculation; the number of the look.</summary>
    Look,
}

/// <summary>Something that happened to the pot at a known time.</summary>
/// <param name="AtSeconds">Time after the heat went on.</param>
/// <param name="Kind">What it was.</param>
/// <param name="Value">As the kind says.</param>
/// <param name="Action">With <see cref="PotEventKind.Act"/>.</param>
internal sealed record PotEvent(double AtSeconds, PotEventKind Kind, double Value = 0, PotAction? Action = null);
