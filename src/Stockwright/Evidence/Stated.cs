namespace Stockwright.Evidence;

/// <summary>A number with its range and where it comes from.</summary>
/// <typeparam name="T">The quantity, for instance a density.</typeparam>
/// <param name="Value">Central value.</param>
/// <param name="Low">Lower end of the stated or estimated range; equals <paramref name="Value"/> when none is given.</param>
/// <param name="High">Upper end of the range.</param>
/// <param name="Provenance">Grade of evidence.</param>
/// <param name="Source">Name of the publication, or a short reason for an estimate.</param>
public sealed record Stated<T>(T Value, T Low, T High, Provenance Provenance, string Source)
{
    /// <summary>The value as a band.</summary>
    public Band<T> Band => new(Low, Value, High);
}
