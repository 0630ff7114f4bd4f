namespace Stockwright.Storage.Kitchen;

internal sealed class TrayEntity : IKitchenRow
{
    public int KitchenId { get; set; }

    public required string Id { get; set; }

    public int Position { get; set; }

    public required string Name { get; set; }

    public double InnerLengthMetres { get; set; }

    public double InnerWidthMetres { get; set; }

    public int Count { get; set; }

    public int Version { get; set; }
}
