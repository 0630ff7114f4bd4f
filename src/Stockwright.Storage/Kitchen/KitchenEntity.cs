namespace Stockwright.Storage.Kitchen;

internal sealed class KitchenEntity : IVersioned
{
    public int Id { get; set; }

    public required string Name { get; set; }

    public required string TimeZoneId { get; set; }

    public double AltitudeMetres { get; set; }

    public double? MeasuredPressurePascals { get; set; }

    public double RoomKelvins { get; set; }

    public double HumidityFraction { get; set; }

    public double TapWaterKelvins { get; set; }

    public double? OwnFilmFactor { get; set; }

    public double? OwnClingingFraction { get; set; }

    /// <summary>Secret part of the address of the calendar feed; null until it is asked for.</summary>
    public string? CalendarToken { get; set; }

    public int Version { get; set; }
}
