using Microsoft.Extensions.Caching.Memory;
using Stockwright.Logbook;
using Stockwright.Web.Features.Planning;

namespace Stockwright.Web.Features.Cooking;

/// <summary>
/// Keeps what never changes of the batches asked for last: the plan a batch was started from, and the entries of its log, to which more are only ever
/// added. What depends on the hour is worked out anew each time, so no alarm of a cooling batch can be out of date.
/// </summary>
internal sealed class OpenBatchCache : IDisposable
{
    /// <summary>Room, counted in entries: about 20 MB when it is full.</summary>
    private const long Room = 60_000;

    /// <summary>A plan takes as much memory as this many entries.</summary>
    private const long PlanSize = 600;

    private readonly MemoryCache kept = new(new MemoryCacheOptions { SizeLimit = Room });

    /// <summary>The plan of a batch as it was started from; read once.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="batches">Where it is stored.</param>
    /// <param name="cancellationToken">Ends the reading.</param>
    public async Task<StoredBatchPlan> PlanAsync(Guid batch, BatchStore batches, CancellationToken cancellationToken)
    {
        (Guid, Type) key = (batch, typeof(StoredBatchPlan));
        return kept.TryGetValue(key, out StoredBatchPlan? known)
            ? known!
            : kept.Set(key, await batches.PlanAsync(batch, cancellationToken), new MemoryCacheEntryOptions { Size = PlanSize });
    }

    /// <summary>The plan of a batch as a page shows it, from where it is kept or made now.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="units">Measures its words are in.</param>
    /// <param name="plan">Makes it.</param>
    public PlanView View(Guid batch, UnitSystem units, Func<PlanView> plan)
    {
        (Guid, UnitSystem) key = (batch, units);
        if (!kept.TryGetValue(key, out PlanView? known))
        {
            known = kept.Set(key, plan(), new MemoryCacheEntryOptions { Size = PlanSize });
        }

        return known!;
    }

    /// <summary>The whole log of a batch; only what was added since the last time is read.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="logs">Where it is stored.</param>
    /// <param name="cancellationToken">Ends the reading.</param>
    public async Task<BatchLog> LogAsync(Guid batch, LogStore logs, CancellationToken cancellationToken)
    {
        BatchLog? known = kept.Get<BatchLog>(batch);
        BatchLog log = await logs.ReadAsync(batch, known ?? BatchLog.Empty, cancellationToken);
        if (!ReferenceEquals(log, known))
        {
            kept.Set(batch, log, new MemoryCacheEntryOptions { Size = log.All.Count + 1 });
        }

        return log;
    }

    public void Dispose() => kept.Dispose();
}
