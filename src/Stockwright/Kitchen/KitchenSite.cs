using UnitsNet;

namespace Stockwright.Kitchen;

/// <summary>Where the kitchen stands: air, room and tap.</summary>
public sealed record KitchenSite
{
    /// <summary>Lowest and highest kitchens accepted.</summary>
    public static readonly (Length Least, Length Most) AltitudeRange = (Length.FromMeters(-400), Length.FromMeters(5000));

    /// <summary>Least and most air pressure accepted, for 5000 m up and for the lowest valleys under high pressure.</summary>
    public static readonly (Pressure Least, Pressure Most) PressureRange = (Pressure.FromHectopascals(500), Pressure.FromHectopascals(1100));

    /// <summary>Coldest and warmest room accepted.</summary>
    public static readonly (Temperature Least, Temperature Most) RoomRange = (Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(50));

    /// <summary>Driest and most humid air.</summary>
    public static readonly (Ratio Least, Ratio Most) HumidityRange = (Ratio.Zero, Ratio.FromDecimalFractions(1));

    /// <summary>Coldest and warmest cold tap accepted.</summary>
    public static readonly (Temperature Least, Temperature Most) TapRange = (Temperature.FromDegreesCelsius(0.5), Temperature.FromDegreesCelsius(40));

    /// <summary>Smallest and largest film factor accepted as a kitchen's own figure.</summary>
    public static readonly (double Least, double Most) OwnFilmRange = (0.02, 1.6);

    /// <summary>Altitude above sea level; used when no pressure was measured.</summary>
    public Length Altitude { get; init; } = Length.Zero;

    /// <summary>Air pressure read on a barometer at the kitchen (not reduced to sea level); overrides the altitude.</summary>
    public Pressure? MeasuredPressure { get; init; }

    /// <summary>Room temperature.</summary>
    public Temperature Room { get; init; } = Temperature.FromDegreesCelsius(22);

    /// <summary>Relative humidity of the room.</summary>
    public Ratio Humidity { get; init; } = Ratio.FromDecimalFractions(0.5);

    /// <summary>Cold tap temperature.</summary>
    public Temperature TapWater { get; init; } = Temperature.FromDegreesCelsius(15);

    /// <summary>
    /// This kitchen's own film factor, from a weighed pot: measured water loss over the clean-water figure.
    /// Null to use the default with its wide band.
    /// </summary>
    public double? OwnFilmFactor { get; init; }

    /// <summary>Least and most liquor accepted as a kitchen's own clinging figure, of the weight of the drained bones.</summary>
    public static readonly (Ratio Least, Ratio Most) OwnClingingRange = (Ratio.FromDecimalFractions(0.01), Ratio.FromDecimalFractions(0.5));

    /// <summary>
    /// This kitchen's own clinging figure, from a weighed colander: kilograms of liquor that cling to a kilogram of drained bones, within
    /// <see cref="OwnClingingRange"/>. Null to use the default with its wide band.
    /// </summary>
    public Ratio? OwnClinging { get; init; }
}
