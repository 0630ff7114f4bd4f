using System.Collections.Frozen;

namespace Stockwright.Larder;

/// <summary>
/// Botanical families the larder names: only those whose members set off one another's allergies and of which one is on an
/// allergen list.
/// </summary>
internal static class BotanicalFamily
{
    /// <summary>Celery's family: celeriac, carrot, parsley, parsnip, fennel, anise, caraway, coriander, cumin, lovage, dill, chervil.</summary>
    public const string Apiaceae = "Apiaceae";

    /// <summary>Every word a larder row may use.</summary>
    public static FrozenSet<string> Known { get; } = FrozenSet.Create(StringComparer.Ordinal, Apiaceae);
}
