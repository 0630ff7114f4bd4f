namespace Stockwright.Kitchen;

/// <summary>How the knob of a slow cooker stands.</summary>
public enum SlowCookerSetting
{
    /// <summary>High: the rated power.</summary>
    High,

    /// <summary>Low: less power, so a slower way to much the same simmer.</summary>
    Low,

    /// <summary>Warm: keeps hot what is cooked; nothing is cooked on it.</summary>
    Warm,
}
