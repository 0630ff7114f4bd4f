namespace Stockwright.Planning;

/// <summary>How a wish is met that does not fit the pot at the recipe's strength.</summary>
public enum SplitWay
{
    /// <summary>One batch with less water, so a stronger stock and less of it.</summary>
    Stronger,

    /// <summary>One batch with less water, let down with water after straining to what was asked.</summary>
    LetDown,

    /// <summary>Several such pots at once.</summary>
    SideBySide,

    /// <summary>The same pot several times.</summary>
    OneAfterAnother,
}
