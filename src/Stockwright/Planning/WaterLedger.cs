using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>One row of the ledger.</summary>
/// <param name="Key">Stable machine name, for instance <c>evaporated</c>.</param>
/// <param name="Name">Plain name.</param>
/// <param name="Volume">Litres as if measured cold (20 C).</param>
/// <param name="Note">One line of explanation.</param>
public sealed record LedgerEntry(string Key, string Name, Band<Volume> Volume, string Note);

/// <summary>Every litre in equals every litre out; the central figures balance.</summary>
/// <param name="In">Water to the line, top-ups, wine, liquor drawn from the solids.</param>
/// <param name="Out">Evaporated, skimmed, soaked up, left in the spent solids, lost in straining, defatting and transfer, and the yield last.</param>
public sealed record WaterLedger(IReadOnlyList<LedgerEntry> In, IReadOnlyList<LedgerEntry> Out)
{
    /// <summary>Sum of the central figures in.</summary>
    public Volume TotalIn => Sum(In);

    /// <summary>Sum of the central figures out, the yield included.</summary>
    public Volume TotalOut => Sum(Out);

    private static Volume Sum(IReadOnlyList<LedgerEntry> entries) =>
        Volume.FromCubicMeters(entries.Sum(entry => entry.Volume.Central.CubicMeters));
}
