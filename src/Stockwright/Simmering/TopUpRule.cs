namespace Stockwright.Simmering;

/// <summary>What is kept in the pot while it simmers.</summary>
public enum TopUpRule
{
    /// <summary>Let the level fall; add water only to keep the solids covered.</summary>
    KeepCovered,

    /// <summary>Bring the level back to the line at every check.</summary>
    KeepToLine,

    /// <summary>Add nothing.</summary>
    None,
}
