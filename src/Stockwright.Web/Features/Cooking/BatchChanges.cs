using System.Collections.Concurrent;
using System.Threading.Channels;

namespace Stockwright.Web.Features.Cooking;

/// <summary>Tells whoever is looking at a batch that something was entered. Only a nudge: what is new is read from the log.</summary>
internal sealed class BatchChanges
{
    private readonly ConcurrentDictionary<Channel<Guid>, Guid?> listeners = [];

    /// <summary>Something was entered in a batch, or it was started.</summary>
    public void Tell(Guid batchId)
    {
        foreach ((Channel<Guid> channel, Guid? wanted) in listeners)
        {
            if (wanted is null || wanted == batchId)
            {
                channel.Writer.TryWrite(batchId);
            }
        }
    }

    /// <summary>Listens until cancelled.</summary>
    /// <param name="batchId">Batch listened to; null for all.</param>
    /// <param name="cancellationToken">Ends it.</param>
    public async IAsyncEnumerable<Guid> ListenAsync(Guid? batchId, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancellationToken)
    {
        // One nudge waiting is enough: the listener then reads everything.
        Channel<Guid> channel = Channel.CreateBounded<Guid>(new BoundedChannelOptions(batchId is null ? 64 : 1) { FullMode = BoundedChannelFullMode.DropOldest });
        listeners[channel] = batchId;
        try
        {
            await foreach (Guid told in channel.Reader.ReadAllAsync(cancellationToken))
            {
                yield return told;
            }
        }
        finally
        {
            listeners.TryRemove(channel, out _);
        }
    }
}
