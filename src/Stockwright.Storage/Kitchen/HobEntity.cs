using Stockwright.Kitchen;

namespace Stockwright.Storage.Kitchen;

internal sealed class HobEntity : IKitchenRow
{
    public int KitchenId { get; set; }

    public required string Id { get; set; }

    public int Position { get; set; }

    public required string Name { get; set; }

    public HobKind Kind { get; set; }

    public double RatedPowerWatts { get; set; }

    public double? OwnEfficiencyFraction { get; set; }

    public int Version { get; set; }
}
