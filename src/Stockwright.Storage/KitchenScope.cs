namespace Stockwright.Storage;

/// <summary>
/// Whose rows the stores read and write: one kitchen for the work at hand, the default one unless another was entered. It flows with
/// the asynchronous work, so that the stores can be shared by all requests.
/// </summary>
public sealed class KitchenScope
{
    /// <summary>Key of the kitchen an installation begins with.</summary>
    public const int DefaultKitchenId = 1;

    private readonly AsyncLocal<int?> entered = new();

    /// <summary>Key of the kitchen of the work at hand.</summary>
    public int KitchenId => entered.Value ?? DefaultKitchenId;

    /// <summary>Works for another kitchen until the answer is disposed of. Call it in the method that does the work: it does not flow back to a caller that awaits.</summary>
    /// <param name="kitchenId">Key of the kitchen.</param>
    public IDisposable Enter(int kitchenId)
    {
        int? before = entered.Value;
        entered.Value = kitchenId;
        return new Leaving(this, before);
    }

    private sealed class Leaving(KitchenScope scope, int? before) : IDisposable
    {
        public void Dispose() => scope.entered.Value = before;
    }
}
