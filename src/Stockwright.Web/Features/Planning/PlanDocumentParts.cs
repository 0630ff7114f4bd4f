using Stockwright.Evidence;
using Stockwright.Planning;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>The pot from heat on to heat off.</summary>
public sealed record SimmerDocument(
    double TimeSeconds,
    BandDocument EvaporatedCubicMetres,
    BandDocument ToppedUpCubicMetres,
    BandDocument EvaporationRateCubicMetresPerSecond,
    BandDocument HobEnergyJoules,
    double HoldSettingFraction,
    double LowestLevelMetres,
    BooksDocument Books,
    IReadOnlyList<CheckDocument> Checks,
    IReadOnlyList<SampleDocument> Samples);

/// <summary>Mass and energy in, out and left.</summary>
public sealed record BooksDocument(
    double MassInKilograms, double MassOutKilograms, double MassLeftKilograms, double EnergyInJoules, double EnergyOutJoules, double EnergyLeftJoules);

/// <summary>A visit to the pot.</summary>
public sealed record CheckDocument(
    double AtSeconds, double LevelBeforeMetres, BandDocument LevelBeforeFromRimMetres, BandDocument TopUpCubicMetres, double LevelAfterMetres);

/// <summary>The pot at one moment.</summary>
public sealed record SampleDocument(
    double AtSeconds,
    double TemperatureKelvins,
    double LevelMetres,
    double LevelLowMetres,
    double LevelHighMetres,
    double LiquidCubicMetres,
    double EvaporatedCubicMetres,
    double HeatInWatts);

/// <summary>Every litre in and out; the totals are of the central figures and agree.</summary>
public sealed record LedgerDocument(
    IReadOnlyList<LedgerEntryDocument> In, IReadOnlyList<LedgerEntryDocument> Out, double TotalInCubicMetres, double TotalOutCubicMetres, BandDocument SpentSolidsKilograms);

/// <summary>One row of the ledger.</summary>
public sealed record LedgerEntryDocument(string Key, string Name, BandDocument VolumeCubicMetres, string Note);

/// <summary>Boiling at the kitchen's pressure.</summary>
public sealed record BoilingDocument(
    double PressurePascals,
    bool PressureIsMeasured,
    double BoilingPointKelvins,
    double AskedTemperatureKelvins,
    double ReachedTemperatureKelvins,
    bool IsOutOfReach,
    double AskedTimeSeconds,
    double PlannedTimeSeconds,
    BandDocument Stretch);

/// <summary>Every step in order, and ways to free the night.</summary>
public sealed record TimelineDocument(
    DateTimeOffset Start,
    DateTimeOffset HeatOn,
    DateTimeOffset HeatOff,
    DateTimeOffset Strained,
    DateTimeOffset Ready,
    double HandsOnSeconds,
    IReadOnlyList<StepDocument> Steps,
    IReadOnlyList<NightChoiceDocument> NightChoices);

/// <summary>One step.</summary>
public sealed record StepDocument(
    StepKind Kind,
    string Title,
    string Detail,
    DateTimeOffset At,
    double TimeSeconds,
    double HandsOnSeconds,
    bool InNight,
    int? CheckIndex,
    IReadOnlyList<CautionDocument> Cautions);

/// <summary>A hazard where the hand is at risk.</summary>
public sealed record CautionDocument(string Code, string Text, string Source);

/// <summary>A way to keep the night free.</summary>
public sealed record NightChoiceDocument(string Code, string Title, string Consequence, string Link, int NightSteps, DateTimeOffset Start, DateTimeOffset Ready);

/// <summary>A sentence for the top of the plan.</summary>
public sealed record NoticeDocument(NoticeLevel Level, string Code, string Message, string? Field);

/// <summary>A number the plan leans on, in the SI unit named beside it (<c>1</c> for a plain factor).</summary>
public sealed record AssumptionDocument(string Key, string Name, string Unit, BandDocument Value, Provenance Provenance, string Source, string Effect);
