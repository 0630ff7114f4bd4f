using Stockwright.Cooling.Limits;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooling;

/// <summary>A cooling case worked out.</summary>
/// <param name="Link">The page that asks for the same case.</param>
/// <param name="Limit">The limit it is held against.</param>
/// <param name="Asked">The way asked for.</param>
/// <param name="Curve">Its curve at the slowest-cooling point, at most 300 points.</param>
/// <param name="Ways">Every way tried with what is at hand, best first.</param>
/// <param name="Growth">Growth indicator; never a proof of safety.</param>
/// <param name="GrowthNote">What to say beside every figure of growth.</param>
/// <param name="Measured">The readings judged, or null when there were none.</param>
public sealed record CoolingDocument(
    string Link,
    LimitDocument Limit,
    CoolingWayDocument Asked,
    IReadOnlyList<CurvePointDocument> Curve,
    IReadOnlyList<CoolingWayDocument> Ways,
    IReadOnlyList<GrowthDocument> Growth,
    string GrowthNote,
    MeasuredDocument? Measured);

/// <summary>A cooling limit; times and temperatures are inclusive. One that needs checking was not read in a text: check with your local authority.</summary>
public sealed record LimitDocument(
    string Id, string Name, string Clause, LimitStanding Standing, string Grade, bool NeedsChecking, string Source, IReadOnlyList<LimitStageDocument> Stages, IReadOnlyList<string> Notes);

/// <summary>One stage of a limit.</summary>
public sealed record LimitStageDocument(double FromKelvins, double ToKelvins, double WithinSeconds, StageClock Clock);

/// <summary>A way of cooling, judged; saved is the time it buys in the first stage over the pot left as it stands, handwork is common practice, no source. First ice is when ice begins to form at the wall; top over bottom the most they part while liquid.</summary>
public sealed record CoolingWayDocument(
    string Link,
    string Name,
    CoolingOutcome Outcome,
    int? StageAtRisk,
    IReadOnlyList<StageDocument> Stages,
    double IceKilograms,
    double? HandsOnSeconds,
    double? SavedSeconds,
    BandDocument? StoreRiseKelvins,
    bool Freezes,
    double? FirstIceSeconds,
    double TopOverBottomKelvins,
    IReadOnlyList<string> Cautions);

/// <summary>One stage on the fast edge, the middle and the slow edge of the band; null where a course never gets there.</summary>
public sealed record StageDocument(
    int Number, double? DueSeconds, double? ReachedFastSeconds, double? ReachedSeconds, double? ReachedSlowSeconds, double? OverSeconds, bool IsOverByAtLeast, CoolingOutcome Outcome);

/// <summary>A point of a curve.</summary>
public sealed record CurvePointDocument(double AtSeconds, double FastKelvins, double CentralKelvins, double SlowKelvins);

/// <summary>Growth along the curve, log10 (a pure number).</summary>
public sealed record GrowthDocument(string Organism, double BestLog10, double CautiousLog10, double WorstLog10);

/// <summary>Readings judged.</summary>
public sealed record MeasuredDocument(
    CoolingOutcome Outcome,
    IReadOnlyList<StageDocument> Stages,
    CorrectiveStep Action,
    string ActionText,
    string ActionClause,
    double? TimeLeftSeconds,
    CoolingOutcome? Expected,
    double? ExpectedFinishSeconds,
    int Kept,
    IReadOnlyList<RejectedDocument> Rejected,
    IReadOnlyList<string> Warnings,
    string? SuggestedScale);

/// <summary>A row put aside.</summary>
public sealed record RejectedDocument(int Line, string Text, string Reason);
