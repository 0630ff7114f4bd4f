using System.Text.Json;
using Stockwright.Kitchen;

namespace Stockwright.Storage.Plans;

/// <summary>What a saved plan was worked out from: SI units, named in the fields.</summary>
internal sealed record SnapshotDocument
{
    public const int CurrentFormat = 1;

    public required int Format { get; init; }

    /// <summary>A recipe file, embedded.</summary>
    public required JsonElement Recipe { get; init; }

    public required IReadOnlyList<IngredientDocument> Ingredients { get; init; }

    public required string KitchenName { get; init; }

    public required string TimeZoneId { get; init; }

    public required SiteDocument Site { get; init; }

    /// <summary>The pot of the plan first.</summary>
    public required IReadOnlyList<PotDocument> Pots { get; init; }

    public required HobDocument Hob { get; init; }

    public OvenDocument? Oven { get; init; }

    public IReadOnlyList<TrayDocument> Trays { get; init; } = [];
}

internal sealed record SiteDocument(
    double AltitudeMetres,
    double? MeasuredPressurePascals,
    double RoomKelvins,
    double HumidityFraction,
    double TapWaterKelvins,
    double? OwnFilmFactor)
{
    /// <summary>Absent from plans saved before kitchens weighed their colanders.</summary>
    public double? OwnClingingFraction { get; init; }
}

internal sealed record PotDocument(
    string Id,
    string Name,
    double BaseDiameterMetres,
    double BrimDiameterMetres,
    double InnerHeightMetres,
    WallMaterial Material,
    double EmptyMassKilograms,
    PotKind Kind,
    double? GaugePressurePascals = null,
    double? HeaterWatts = null);

internal sealed record HobDocument(string Id, string Name, HobKind Kind, double RatedPowerWatts, double? OwnEfficiencyFraction);

internal sealed record OvenDocument(
    string Id, string Name, bool HasFan, int Levels, double ShelfLengthMetres, double ShelfWidthMetres);

internal sealed record TrayDocument(string Id, string Name, double InnerLengthMetres, double InnerWidthMetres, int Count);
