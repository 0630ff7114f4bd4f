using Stockwright.Kitchen;

namespace Stockwright.Storage.Kitchen;

internal sealed class PotEntity : IKitchenRow
{
    public int KitchenId { get; set; }

    public required string Id { get; set; }

    public int Position { get; set; }

    public required string Name { get; set; }

    public double BaseDiameterMetres { get; set; }

    public double BrimDiameterMetres { get; set; }

    public double InnerHeightMetres { get; set; }

    public WallMaterial Material { get; set; }

    /// <summary>Null when the cook has not weighed the pot, so that the estimate follows later changes of its size.</summary>
    public double? EmptyMassKilograms { get; set; }

    public PotKind Kind { get; set; }

    /// <summary>Of a pressure cooker that does not hold the usual one.</summary>
    public double? GaugePressurePascals { get; set; }

    /// <summary>Of a vessel with a heater of its own.</summary>
    public double? HeaterWatts { get; set; }

    public int Version { get; set; }
}
