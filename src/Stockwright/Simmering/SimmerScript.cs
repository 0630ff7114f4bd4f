namespace Stockwright.Simmering;

/// <summary>What happens to the pot at a moment of a stage.</summary>
internal enum PotActionKind
{
    /// <summary>Scum is lifted.</summary>
    Skim,

    /// <summary>Scum lifted, level read, water added by the rule.</summary>
    Check,

    /// <summary>Solids go in.</summary>
    Add,

    /// <summary>Lid on, into the oven.</summary>
    HoldBegins,

    /// <summary>Out of the oven, lid back.</summary>
    HoldEnds,

    /// <summary>Heat off, cooled, kept cold, taken up again.</summary>
    Pause,
}

/// <summary>One thing done to the pot.</summary>
/// <param name="AtSeconds">Time since the stage reached its temperature.</param>
/// <param name="Kind">What is done.</param>
/// <param name="Solids">With <see cref="PotActionKind.Add"/>: what goes in.</param>
/// <param name="PauseSeconds">With <see cref="PotActionKind.Pause"/>: how long it stands cold.</param>
/// <param name="Label">With <see cref="PotActionKind.Add"/>: names of what goes in.</param>
internal sealed record PotAction(double AtSeconds, PotActionKind Kind, IReadOnlyList<SolidCharge>? Solids = null, double PauseSeconds = 0, string Label = "")
{
    /// <summary>Key of the step it becomes, kept when the plan is worked out again.</summary>
    public string Key { get; init; } = "";

    /// <summary>Time after the heat went on before which it is not done, though it is due by the stage's clock.</summary>
    public double NotBeforeSeconds { get; init; }

    /// <summary>With <see cref="PotActionKind.Check"/>: a visit whose water is entered by itself, if any was added.</summary>
    public bool AddsNothing { get; init; }
}

/// <summary>What the lid of a pot does in a stage.</summary>
internal enum StageCover
{
    /// <summary>As the request has it, but for the heat-up.</summary>
    AsPlanned,

    /// <summary>Off: the pot is open.</summary>
    Open,

    /// <summary>Locked, and on the heat.</summary>
    Locked,

    /// <summary>Locked, off the heat, until it has fallen to the stage's temperature.</summary>
    Falling,
}

/// <summary>One stage: bring to a temperature, keep it for a time, do things on the way.</summary>
/// <param name="SetCelsius">Temperature to hold.</param>
/// <param name="Seconds">Time at temperature.</param>
/// <param name="Climbs">True when the time is spent climbing there.</param>
/// <param name="LiftsOut">True when all solids are lifted out at the end.</param>
/// <param name="Actions">In order of time.</param>
internal sealed record StageScript(double SetCelsius, double Seconds, bool Climbs, bool LiftsOut, IReadOnlyList<PotAction> Actions)
{
    /// <summary>What the lid does.</summary>
    public StageCover Cover { get; init; }

    /// <summary>True when it is kept at a rolling boil once it boils.</summary>
    public bool IsRolling { get; init; }

    /// <summary>Share of the liquid at the start of the stage that ends it; null when it ends by time.</summary>
    public double? ReducesTo { get; init; }
}

/// <summary>The whole course, from heat on to heat off.</summary>
/// <param name="StartSolids">In the pot with the cold water.</param>
/// <param name="StartWaterKilograms">Water and other liquids in at the start.</param>
/// <param name="StartCelsius">Temperature of everything at the start.</param>
/// <param name="Stages">At least one.</param>
/// <param name="TopUp">What is kept in the pot.</param>
/// <param name="TopUpCelsius">Temperature of the water added.</param>
/// <param name="LineMetres">The level top-ups bring it back to.</param>
/// <param name="HoldCelsius">Temperature of the pot in the oven.</param>
/// <param name="SkimShare">Share of the liquid lifted at each skim.</param>
internal sealed record SimmerScript(
    IReadOnlyList<SolidCharge> StartSolids,
    double StartWaterKilograms,
    double StartCelsius,
    IReadOnlyList<StageScript> Stages,
    TopUpRule TopUp,
    double TopUpCelsius,
    double LineMetres,
    double HoldCelsius,
    double SkimShare)
{
    /// <summary>What happened to the pot at known times, in order of time; they go before the stages' own clock.</summary>
    public IReadOnlyList<PotEvent> Events { get; init; } = [];

    /// <summary>True when the lid is on while it heats up for the first time.</summary>
    public bool HeatsUpCovered { get; init; }

    /// <summary>True when the surface is clean until the fat of the solids has risen; false for a surface that is given as it is.</summary>
    public bool FilmGrows { get; init; }

    /// <summary>When the first stage was seen to be at its temperature, s after the heat went on; null to work it out.</summary>
    public double? SimmersAtSeconds { get; init; }

    /// <summary>When the heat went off for good, whatever the stages say; infinite when it has not.</summary>
    public double EndsAtSeconds { get; init; } = double.PositiveInfinity;

    /// <summary>The heat stays on at least until then.</summary>
    public double EndsNotBeforeSeconds { get; init; }
}
