using Stockwright.Cooking;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking;

/// <summary>One line of the list of batches.</summary>
/// <param name="Batch">Its id.</param>
/// <param name="Name">What the cook calls it.</param>
/// <param name="Recipe">Recipe.</param>
/// <param name="Pot">Pot.</param>
/// <param name="BeginsAt">When the cook begins by the plan, UTC.</param>
/// <param name="StartedAt">When it was stored, UTC.</param>
/// <param name="IsClosed">True when its record is closed.</param>
/// <param name="IsNeverCooked">True when it was put aside as never cooked, which closes the record too.</param>
public sealed record BatchLineDocument(Guid Batch, string Name, string Recipe, string Pot, DateTimeOffset BeginsAt, DateTimeOffset StartedAt, bool IsClosed, bool IsNeverCooked);

/// <summary>A step as it is expected now.</summary>
/// <param name="Key">Stable key, for an entry of kind step-done.</param>
/// <param name="Title">What to do.</param>
/// <param name="At">When, UTC.</param>
/// <param name="Standing">What became of it.</param>
public sealed record CourseStepDocument(string Key, string Title, DateTimeOffset At, StepStanding Standing);

/// <summary>How a batch stands by its log.</summary>
/// <param name="Phase">How far it has come.</param>
/// <param name="YieldCubicMetres">Strained stock to be expected.</param>
/// <param name="ReadyAt">When it is expected to stand portioned, UTC.</param>
/// <param name="Next">The step to do now or next; null when all is done.</param>
public sealed record CourseDocument(BatchPhase Phase, BandDocument YieldCubicMetres, DateTimeOffset ReadyAt, CourseStepDocument? Next);

/// <summary>A batch, how it stands, and everything entered.</summary>
/// <param name="Summary">Name and dates.</param>
/// <param name="Now">The moment this was worked out for, UTC.</param>
/// <param name="TimeZone">IANA name of the kitchen's time zone.</param>
/// <param name="Course">How it stands; null when the stored plan cannot be worked out any more.</param>
/// <param name="Entries">Every entry in order of receipt, corrected and withdrawn ones included.</param>
public sealed record BatchDocument(BatchLineDocument Summary, DateTimeOffset Now, string TimeZone, CourseDocument? Course, IReadOnlyList<EntryDocument> Entries);

/// <summary>What became of one entry of a list that was sent.</summary>
/// <param name="Status">As for an entry sent by itself: 201 stored, 200 stored before, 400 refused, 503 not stored though nothing is wrong with it.</param>
/// <param name="Entry">As it stands in the log; null when it was not stored.</param>
/// <param name="Errors">What is wrong with it, by field; empty when it was stored.</param>
public sealed record EntryResult(int Status, EntryDocument? Entry, IReadOnlyDictionary<string, string[]> Errors);
