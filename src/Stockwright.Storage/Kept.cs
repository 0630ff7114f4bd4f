namespace Stockwright.Storage;

/// <summary>A stored thing with the version an edit of it must hand back.</summary>
/// <typeparam name="T">What is stored, for instance a pot.</typeparam>
/// <param name="Value">The thing.</param>
/// <param name="Version">Rises by one with every edit; starts at one.</param>
public sealed record Kept<T>(T Value, int Version);
