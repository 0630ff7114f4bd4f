namespace Stockwright.Storage;

/// <summary>What became of an edit.</summary>
public enum SaveOutcome
{
    /// <summary>Written.</summary>
    Saved,

    /// <summary>Not written: somebody else changed it after this cook opened it.</summary>
    ChangedMeanwhile,

    /// <summary>Not written: somebody else deleted it after this cook opened it.</summary>
    Gone,
}
