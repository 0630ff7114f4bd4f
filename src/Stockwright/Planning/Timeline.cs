namespace Stockwright.Planning;

/// <summary>What kind of step it is, for icons, filters and tests.</summary>
public enum StepKind
{
    /// <summary>Weigh and gather.</summary>
    Gather,

    /// <summary>Soak.</summary>
    Soak,

    /// <summary>Roast, and the turns within.</summary>
    Roast,

    /// <summary>Blanch, drain and rinse.</summary>
    Blanch,

    /// <summary>Load the pot and fill to the line.</summary>
    Fill,

    /// <summary>Heat up.</summary>
    HeatUp,

    /// <summary>Skim.</summary>
    Skim,

    /// <summary>Check: skim, read the level, top up.</summary>
    Check,

    /// <summary>Something goes in.</summary>
    Add,

    /// <summary>Something is lifted out.</summary>
    LiftOut,

    /// <summary>Simmering by itself.</summary>
    Simmer,

    /// <summary>In the oven or a slow appliance over the night.</summary>
    NightHold,

    /// <summary>The lid of a pressure cooker is locked.</summary>
    Lock,

    /// <summary>It comes to pressure.</summary>
    Pressurize,

    /// <summary>It is held at pressure; nobody can reach into it.</summary>
    HoldPressure,

    /// <summary>Heat off, the pressure falls by itself.</summary>
    Release,

    /// <summary>The lid of a pressure cooker comes off.</summary>
    Open,

    /// <summary>Heat off, stand before straining.</summary>
    Stand,

    /// <summary>Strain.</summary>
    Strain,

    /// <summary>Cool quickly.</summary>
    Cool,

    /// <summary>Chill until the fat sets.</summary>
    Chill,

    /// <summary>Lift the fat.</summary>
    Defat,

    /// <summary>Warm until it runs.</summary>
    Remelt,

    /// <summary>Measure, portion, label.</summary>
    Portion,
}

/// <summary>One step of the plan.</summary>
public sealed record PlanStep
{
    /// <summary>Stable name within the plan, kept when the plan is worked out again: kind and count, for instance <c>check-3</c>.</summary>
    public required string Key { get; init; }

    /// <summary>Kind of step.</summary>
    public required StepKind Kind { get; init; }

    /// <summary>Short imperative title, for instance <c>Skim and read the level</c>.</summary>
    public required string Title { get; init; }

    /// <summary>One or two sentences.</summary>
    public string Detail { get; init; } = "";

    /// <summary>Moment it starts.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>How long it lasts.</summary>
    public required TimeSpan Duration { get; init; }

    /// <summary>How much of that takes the cook's hands.</summary>
    public required TimeSpan HandsOn { get; init; }

    /// <summary>True when the cook is asleep when it needs hands.</summary>
    public bool InNight { get; init; }

    /// <summary>The check of the forecast this step makes, or null.</summary>
    public int? CheckIndex { get; init; }

    /// <summary>Cautions for the hand at this step.</summary>
    public IReadOnlyList<Caution> Cautions { get; init; } = [];

    /// <summary>Moment it ends.</summary>
    public DateTimeOffset End => At + Duration;
}

/// <summary>A hazard named where the hand is at risk.</summary>
/// <param name="Code">Stable machine name, for instance <c>scald-straining</c>.</param>
/// <param name="Text">Short and specific.</param>
/// <param name="Source">Publication, or the grade when there is none.</param>
public sealed record Caution(string Code, string Text, string Source);

/// <summary>A way to keep the night free of checks.</summary>
/// <param name="Code">Stable machine name: <c>move-start</c>, <c>oven-hold</c>, <c>stop-and-cool</c>.</param>
/// <param name="Title">Short title.</param>
/// <param name="Consequence">What it changes: new start, new ready time, what it costs.</param>
/// <param name="Request">The request that does it.</param>
/// <param name="NightSteps">Steps left in the night.</param>
/// <param name="Start">When the cook would begin.</param>
/// <param name="Ready">When the stock would be ready.</param>
public sealed record NightChoice(string Code, string Title, string Consequence, PlanRequest Request, int NightSteps, DateTimeOffset Start, DateTimeOffset Ready);

/// <summary>Milestones of one round.</summary>
/// <param name="Start">When the cook begins it.</param>
/// <param name="HeatOn">When the heat goes on.</param>
/// <param name="HeatOff">When it goes off for good.</param>
/// <param name="Strained">When all its pots are strained.</param>
/// <param name="Cold">When all its stock is cold.</param>
public sealed record RoundTimes(DateTimeOffset Start, DateTimeOffset HeatOn, DateTimeOffset HeatOff, DateTimeOffset Strained, DateTimeOffset Cold);

/// <summary>Every step of the whole wish in order, and what to do about the night. The moments of heat and straining are those of the first round.</summary>
/// <param name="Steps">Steps ordered by start.</param>
/// <param name="Start">When the cook begins.</param>
/// <param name="HeatOn">When the heat goes on under the pot.</param>
/// <param name="HeatOff">When it goes off for good.</param>
/// <param name="Strained">When it is strained.</param>
/// <param name="Ready">When it stands portioned.</param>
/// <param name="HandsOn">The cook's own time, all told.</param>
/// <param name="NightChoices">Ways to free the night; empty when no step falls in it.</param>
public sealed record Timeline(
    IReadOnlyList<PlanStep> Steps,
    DateTimeOffset Start,
    DateTimeOffset HeatOn,
    DateTimeOffset HeatOff,
    DateTimeOffset Strained,
    DateTimeOffset Ready,
    TimeSpan HandsOn,
    IReadOnlyList<NightChoice> NightChoices)
{
    /// <summary>Rounds, in order; one when the wish is one potful or all pots are on at once.</summary>
    public IReadOnlyList<RoundTimes> Rounds { get; init; } = [];

    /// <summary>What the pot does on the long heat: <c>simmering</c>, <c>steeping</c>.</summary>
    public string OnHeat { get; init; } = "simmering";
}
