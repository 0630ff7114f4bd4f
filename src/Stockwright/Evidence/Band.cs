namespace Stockwright.Evidence;

/// <summary>
/// A prediction with its honest spread: about eight times in ten the true value is expected between
/// <see cref="Low"/> and <see cref="High"/>.
/// </summary>
/// <typeparam name="T">The quantity, for instance a volume.</typeparam>
/// <param name="Low">Lower end of the likely range.</param>
/// <param name="Central">Best single figure.</param>
/// <param name="High">Upper end of the likely range.</param>
public readonly record struct Band<T>(T Low, T Central, T High);
