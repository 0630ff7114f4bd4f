using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Cooling.Limits;

/// <summary>When the clock of a cooling limit starts.</summary>
public enum ClockStart
{
    /// <summary>When the food falls through the first temperature of the limit.</summary>
    FallsThrough,

    /// <summary>When chilling starts.</summary>
    ChillingStart,
}

/// <summary>From when the hours of a stage count.</summary>
public enum StageClock
{
    /// <summary>From the start of the clock: time saved in an earlier stage may be used here.</summary>
    FromClock,

    /// <summary>From the moment the stage before was met.</summary>
    FromStage,
}

/// <summary>How binding a limit is.</summary>
public enum LimitStanding
{
    /// <summary>Law.</summary>
    Law,

    /// <summary>A model that states or provinces adopt, in whole or in part and in varying editions: law only where adopted.</summary>
    ModelCode,

    /// <summary>Guidance of an authority.</summary>
    Guidance,

    /// <summary>Binds other trades; a yardstick here.</summary>
    Yardstick,
}

/// <summary>A temperature as a code prints it: in °C, in °F, or both, each rounded by the code itself.</summary>
/// <param name="Celsius">The figure printed in °C, or null.</param>
/// <param name="Fahrenheit">The figure printed in °F, or null.</param>
public readonly record struct PrintedTemperature(double? Celsius, double? Fahrenheit)
{
    /// <summary>The figure in the code's first unit.</summary>
    public Temperature Value => Celsius is { } celsius ? Temperature.FromDegreesCelsius(celsius) : Temperature.FromDegreesFahrenheit(Fahrenheit!.Value);

    /// <summary>The figure to compare with in a scale.</summary>
    internal double In(bool fahrenheit) => fahrenheit ? Fahrenheit!.Value : Celsius!.Value;
}

/// <summary>One stage of a cooling limit; the hours and the temperatures are inclusive.</summary>
/// <param name="From">Temperature at which the stage starts.</param>
/// <param name="To">Temperature to reach, or below.</param>
/// <param name="Within">Time allowed.</param>
/// <param name="Clock">From when the time counts.</param>
public sealed record LimitStage(PrintedTemperature From, PrintedTemperature To, TimeSpan Within, StageClock Clock);

/// <summary>What a code or its usual guidance lets a cook do about a missed stage.</summary>
/// <param name="ReheatTo">Temperature to reheat to, or null when the food is to be discarded.</param>
/// <param name="Hold">How long to hold it there.</param>
/// <param name="ReheatWithin">Time allowed for reheating, counted from the missed deadline.</param>
/// <param name="Text">What to do, in plain words.</param>
/// <param name="Clause">Where it says so.</param>
/// <param name="Provenance">Grade of evidence.</param>
public sealed record CorrectionRule(PrintedTemperature? ReheatTo, TimeSpan Hold, TimeSpan ReheatWithin, string Text, string Clause, Provenance Provenance);

/// <summary>The cooling rule of one jurisdiction.</summary>
public sealed record CoolingLimit
{
    /// <summary>Stable name used in links.</summary>
    public required string Id { get; init; }

    /// <summary>Whose rule it is.</summary>
    public required string Name { get; init; }

    /// <summary>Clause or document.</summary>
    public required string Clause { get; init; }

    /// <summary>How binding it is.</summary>
    public required LimitStanding Standing { get; init; }

    /// <summary>When the clock starts.</summary>
    public required ClockStart ClockStart { get; init; }

    /// <summary>Longest wait between the end of cooking and the start of chilling, where the code states one.</summary>
    public TimeSpan? ChillingStartsWithin { get; init; }

    /// <summary>Stages in order.</summary>
    public required IReadOnlyList<LimitStage> Stages { get; init; }

    /// <summary>All stages together.</summary>
    public required TimeSpan Total { get; init; }

    /// <summary>Temperature to store at afterwards, where the code states one colder than the last stage.</summary>
    public Temperature? ThenStoreAt { get; init; }

    /// <summary>Points to know, one sentence each.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>What to do about a missed stage.</summary>
    public required CorrectionRule Correction { get; init; }

    /// <summary>Grade of evidence.</summary>
    public required Provenance Provenance { get; init; }

    /// <summary>Where the figures were read.</summary>
    public required string Source { get; init; }

    /// <summary>True when the figures are not from a text that was read: say "check with your local authority" beside them.</summary>
    public bool NeedsChecking => Provenance != Provenance.Published;

    /// <summary>True when the code prints °C, true when it prints °F.</summary>
    internal (bool Celsius, bool Fahrenheit) Scales =>
        (Stages.All(stage => stage.From.Celsius is not null && stage.To.Celsius is not null),
        Stages.All(stage => stage.From.Fahrenheit is not null && stage.To.Fahrenheit is not null));
}
