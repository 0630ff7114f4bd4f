namespace Stockwright.Storage.Kitchen;

internal sealed class OvenEntity : IKitchenRow
{
    public int KitchenId { get; set; }

    public required string Id { get; set; }

    public int Position { get; set; }

    public required string Name { get; set; }

    public bool HasFan { get; set; }

    public int Levels { get; set; }

    public double ShelfLengthMetres { get; set; }

    public double ShelfWidthMetres { get; set; }

    public int Version { get; set; }
}
