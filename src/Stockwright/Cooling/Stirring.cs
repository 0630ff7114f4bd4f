namespace Stockwright.Cooling;

/// <summary>How often something is stirred while it cools.</summary>
public enum Stirring
{
    /// <summary>Left alone.</summary>
    None,

    /// <summary>Half a minute of stirring every three minutes or so.</summary>
    EveryFewMinutes,

    /// <summary>Moving all the time.</summary>
    AllTheTime,
}
