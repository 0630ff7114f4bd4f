namespace Stockwright.Kitchen;

/// <summary>What a pot is made of; decides its specific heat and how much its wall radiates.</summary>
public enum WallMaterial
{
    /// <summary>Stainless steel, used surface.</summary>
    StainlessSteel,

    /// <summary>Aluminium.</summary>
    Aluminium,

    /// <summary>Copper.</summary>
    Copper,

    /// <summary>Enamelled steel or iron.</summary>
    EnamelledIron,

    /// <summary>Glazed stoneware, as the crock of a slow cooker.</summary>
    Stoneware,
}
