using UnitsNet;

namespace Stockwright.Evidence;

/// <summary>One number a plan leans on, with its range, grade and source, for the cook to read.</summary>
/// <param name="Key">Stable machine name, for instance <c>film-factor</c>.</param>
/// <param name="Name">Plain name.</param>
/// <param name="Value">The number with its likely range; a plain factor is a <see cref="Ratio"/> in decimal fractions.</param>
/// <param name="Provenance">Grade of evidence.</param>
/// <param name="Source">Publication, or the reason for an estimate.</param>
/// <param name="Effect">One line: what it moves in the plan.</param>
public sealed record Assumption(
    string Key,
    string Name,
    Band<IQuantity> Value,
    Provenance Provenance,
    string Source,
    string Effect);
