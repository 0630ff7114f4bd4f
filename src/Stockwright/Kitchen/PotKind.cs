namespace Stockwright.Kitchen;

/// <summary>Open stock pot or sealed pressure cooker; they have different fill limits.</summary>
public enum PotKind
{
    /// <summary>An ordinary pot, with or without a loose lid.</summary>
    Open,

    /// <summary>A pressure cooker: filled to two thirds at most.</summary>
    PressureCooker,
}
