using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>What a batch may need of the cook, the most urgent first.</summary>
public enum MatterKind
{
    /// <summary>The pot has boiled dry, or is about to: fire, and a ruined pot.</summary>
    RunsDry,

    /// <summary>Cooling that has missed its limit, will miss it, or that nobody measures.</summary>
    CoolingAlarm,

    /// <summary>The solids stand out of the liquid over the heat.</summary>
    Uncovered,

    /// <summary>The heat is away.</summary>
    HeatAway,

    /// <summary>Cooling, with its deadline running.</summary>
    Cooling,

    /// <summary>The heat is due off.</summary>
    HeatOff,

    /// <summary>A look at the pot is due: check, skim, in or out of the oven.</summary>
    Visit,

    /// <summary>Any other step is due.</summary>
    Step,

    /// <summary>Something is due to go in.</summary>
    Addition,
}

/// <summary>One thing a batch needs of the cook now.</summary>
/// <param name="Kind">What kind, which says how urgent.</param>
/// <param name="At">Since when, or by when: of cooling, its deadline; of a step, when it is due.</param>
/// <param name="Step">The step to tick off for it; null when none is.</param>
public sealed record CourseMatter(MatterKind Kind, DateTimeOffset At, CourseStep? Step)
{
    /// <summary>Liquid that would cover the solids again, at most (the solids take up part of the room); null when they are covered.</summary>
    public Volume? Cover { get; init; }

    /// <summary>True for what stands above every step of the plan.</summary>
    public bool IsUrgent => Kind < MatterKind.HeatOff;
}
