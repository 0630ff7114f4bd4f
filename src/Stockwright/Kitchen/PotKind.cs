namespace Stockwright.Kitchen;

/// <summary>What kind of vessel it is: each has its own fill limit, heat, lid and steps.</summary>
public enum PotKind
{
    /// <summary>An ordinary pot, with or without a loose lid.</summary>
    Open,

    /// <summary>A pressure cooker: filled to two thirds at most.</summary>
    PressureCooker,

    /// <summary>A slow cooker: a stoneware crock in a shell with a small heater of its own, lid on; filled to three quarters at most.</summary>
    SlowCooker,

    /// <summary>A fixed kettle, tilting or with a draw-off valve, heated by its own elements or steam jacket.</summary>
    Kettle,
}
