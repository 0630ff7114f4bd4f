namespace Stockwright.Cooling;

/// <summary>What stock stands in while it cools.</summary>
public enum VesselKind
{
    /// <summary>The pot it was made in, or another.</summary>
    Pot,

    /// <summary>A shallow steel pan.</summary>
    Pan,

    /// <summary>A plastic tub.</summary>
    Tub,

    /// <summary>A glass jar.</summary>
    Jar,
}
