namespace Stockwright.Evidence;

/// <summary>Where a stated number comes from, so that the cook can judge how far to trust it.</summary>
public enum Provenance
{
    /// <summary>Read in a named publication or standard.</summary>
    Published,

    /// <summary>Recalled from a named publication that was not at hand; to be checked before it is relied on.</summary>
    FromMemory,

    /// <summary>A rule of the trade: common practice, no source.</summary>
    CommonPractice,

    /// <summary>Computed from other stated numbers by a numbered equation.</summary>
    Computed,

    /// <summary>Our own estimate; the range says how rough.</summary>
    Estimate,

    /// <summary>Weighed, measured or typed in by the cook.</summary>
    CookStated,
}
