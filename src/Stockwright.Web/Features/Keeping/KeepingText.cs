using Stockwright.Kitchen;

namespace Stockwright.Web.Features.Keeping;

/// <summary>Jars as the keeping page names them.</summary>
internal static class KeepingText
{
    /// <summary>A jar by US measure, with its metric volume.</summary>
    public static string Size(ContainerSize size) => size switch
    {
        ContainerSize.HalfPint => "US half-pint (237 mL)",
        ContainerSize.Pint => "US pint (473 mL)",
        ContainerSize.Quart => "US quart (946 mL)",
        _ => throw new ArgumentOutOfRangeException(nameof(size), size, "Unknown size of container."),
    };
}
