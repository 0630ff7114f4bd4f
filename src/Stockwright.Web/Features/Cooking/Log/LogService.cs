using Stockwright.Logbook;
using Stockwright.Storage;
using Stockwright.Web.Features.Cooking.Photos;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>What became of an entry that was sent.</summary>
/// <param name="Entry">As it stands in the log; null when it was refused.</param>
/// <param name="Problems">Why it was refused, by field; empty otherwise.</param>
/// <param name="IsRepeat">True when it had been stored before.</param>
/// <param name="IsTrouble">True when it could not be stored though nothing is wrong with it: worth sending again.</param>
internal sealed record LogAnswer(LogEntry? Entry, IReadOnlyList<InputProblem> Problems, bool IsRepeat = false, bool IsTrouble = false);

/// <summary>The one way into a log: reads, checks, stores, and tells who is looking.</summary>
internal sealed class LogService(LogStore logs, BatchChanges news, PhotoService photos, TimeProvider clock, ILogger<LogService> operators)
{
    /// <summary>Takes an entry.</summary>
    /// <param name="view">The batch as it stands.</param>
    /// <param name="form">What was sent; read in the units it names.</param>
    /// <param name="photo">The picture sent with it, or null.</param>
    /// <param name="units">Measures when the form does not say.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public Task<LogAnswer> TakeAsync(BatchView view, TypedForm form, IFormFile? photo, UnitSystem units, CancellationToken cancellationToken) =>
        TakeAsync(new LoggedBatch(view.Course?.Batch, view.Log), form, photo, units, cancellationToken);

    /// <summary>Takes an entry.</summary>
    /// <param name="book">The batch as it stands.</param>
    /// <param name="form">What was sent; read in the units it names.</param>
    /// <param name="photo">The picture sent with it, or null.</param>
    /// <param name="units">Measures when the form does not say.</param>
    /// <param name="cancellationToken">Cancels the work.</param>
    public async Task<LogAnswer> TakeAsync(LoggedBatch book, TypedForm form, IFormFile? photo, UnitSystem units, CancellationToken cancellationToken)
    {
        if (book.Batch is not { } batch)
        {
            return new LogAnswer(null, [new InputProblem("", "The plan of this batch cannot be worked out any more, so nothing can be entered.")]);
        }

        EntryReader reader = new(form, ReaderUnits.Read(form[PlanFields.Units]) ?? units, batch, clock.GetUtcNow());
        if (reader.Read() is not { } entry)
        {
            return new LogAnswer(null, reader.Fields.Problems);
        }

        // A repeat is answered as the first time, whatever has happened to the batch since.
        if (book.Log.Find(entry.Id) is null)
        {
            PhotoAnswer checkedEntry = await CheckAsync(batch, book.Log, entry, photo, cancellationToken);
            if (checkedEntry.Problems.Count > 0)
            {
                return new LogAnswer(null, checkedEntry.Problems, IsTrouble: checkedEntry.IsBusy);
            }

            entry = entry with { Photo = checkedEntry.Picture };
        }

        return await StoreAsync(entry, cancellationToken);
    }

    private async Task<PhotoAnswer> CheckAsync(Stockwright.Cooking.Batch batch, BatchLog log, NewEntry entry, IFormFile? photo, CancellationToken cancellationToken)
    {
        LogEntry draft = new()
        {
            Id = entry.Id,
            HappenedAt = entry.HappenedAt,
            ReceivedAt = clock.GetUtcNow(),
            Who = entry.Who,
            Fact = entry.Fact,
            Corrects = entry.Corrects,
        };
        IReadOnlyList<InputProblem> problems = [.. Stockwright.Cooking.EntryChecks.Problems(draft, batch, log, clock.GetUtcNow()).Select(InputProblem.From)];
        return problems.Count > 0 || entry.Fact is not LogFact.PhotoTaken
            ? new PhotoAnswer(null, problems)
            : await photos.ReadAsync(photo, cancellationToken);
    }

    private async Task<LogAnswer> StoreAsync(NewEntry entry, CancellationToken cancellationToken)
    {
        try
        {
            Appended appended = await logs.AppendAsync(entry, cancellationToken);
            switch (appended.Standing)
            {
                case AppendStanding.Stored:
                    news.Tell(entry.BatchId);
                    return new LogAnswer(appended.Entry, []);
                case AppendStanding.StoredBefore:
                    return new LogAnswer(appended.Entry, [], IsRepeat: true);
                case AppendStanding.NoSuchBatch:
                    return new LogAnswer(null, [new InputProblem("", "There is no such batch.")]);
                case AppendStanding.ClosedAlready:
                    return new LogAnswer(null, [new InputProblem(EntryFields.At, "This record was closed already, by somebody else or by an earlier tap.")]);
                default:
                    return new LogAnswer(null, [new InputProblem(EntryFields.Entry, "An entry with this key is stored already, and it says something else.")]);
            }
        }
        catch (StorageTroubleException trouble)
        {
            operators.LogError("An entry could not be stored. {Trouble}", trouble.Message);
            return new LogAnswer(null, [new InputProblem("", trouble.Message)], IsTrouble: true);
        }
    }
}
