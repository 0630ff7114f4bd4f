using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Storage.Kitchen;

/// <summary>Kitchen rows to kitchen records and back.</summary>
internal static class KitchenMapping
{
    public static KitchenSite ToSite(this KitchenEntity row) => new()
    {
        Altitude = Length.FromMeters(row.AltitudeMetres),
        MeasuredPressure = row.MeasuredPressurePascals is { } pascals ? Pressure.FromPascals(pascals) : null,
        Room = Temperature.FromKelvins(row.RoomKelvins),
        Humidity = Ratio.FromDecimalFractions(row.HumidityFraction),
        TapWater = Temperature.FromKelvins(row.TapWaterKelvins),
        OwnFilmFactor = row.OwnFilmFactor,
        OwnClinging = row.OwnClingingFraction is { } clinging ? Ratio.FromDecimalFractions(clinging) : null,
    };

    public static void Take(this KitchenEntity row, KitchenDetails details)
    {
        row.Name = details.Name;
        row.TimeZoneId = details.TimeZoneId;
        row.AltitudeMetres = details.Site.Altitude.Meters;
        row.MeasuredPressurePascals = details.Site.MeasuredPressure?.Pascals;
        row.RoomKelvins = details.Site.Room.Kelvins;
        row.HumidityFraction = details.Site.Humidity.DecimalFractions;
        row.TapWaterKelvins = details.Site.TapWater.Kelvins;
        row.OwnFilmFactor = details.Site.OwnFilmFactor;
        row.OwnClingingFraction = details.Site.OwnClinging?.DecimalFractions;
    }

    public static Pot ToPot(this PotEntity row)
    {
        Length baseDiameter = Length.FromMeters(row.BaseDiameterMetres);
        Length brimDiameter = Length.FromMeters(row.BrimDiameterMetres);
        Length height = Length.FromMeters(row.InnerHeightMetres);
        return new Pot
        {
            Id = row.Id,
            Name = row.Name,
            BaseDiameter = baseDiameter,
            BrimDiameter = brimDiameter,
            InnerHeight = height,
            Material = row.Material,
            EmptyMass = row.EmptyMassKilograms is { } kilograms
                ? Mass.FromKilograms(kilograms)
                : Pot.EstimateEmptyMass(baseDiameter, brimDiameter, height, row.Material),
            Kind = row.Kind,
            GaugePressure = row.GaugePressurePascals is { } pascals ? Pressure.FromPascals(pascals) : null,
            HeaterPower = row.HeaterWatts is { } watts ? Power.FromWatts(watts) : null,
        };
    }

    public static void Take(this PotEntity row, Pot pot)
    {
        row.Name = pot.Name;
        row.BaseDiameterMetres = pot.BaseDiameter.Meters;
        row.BrimDiameterMetres = pot.BrimDiameter.Meters;
        row.InnerHeightMetres = pot.InnerHeight.Meters;
        row.Material = pot.Material;
        row.EmptyMassKilograms = pot.HasEstimatedMass() ? null : pot.EmptyMass.Kilograms;
        row.Kind = pot.Kind;
        row.GaugePressurePascals = pot.GaugePressure?.Pascals;
        row.HeaterWatts = (double?)pot.HeaterPower?.Watts;
    }

    public static Hob ToHob(this HobEntity row) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Kind = row.Kind,
        RatedPower = Power.FromWatts(row.RatedPowerWatts),
        OwnEfficiency = row.OwnEfficiencyFraction is { } fraction ? Ratio.FromDecimalFractions(fraction) : null,
    };

    public static void Take(this HobEntity row, Hob hob)
    {
        row.Name = hob.Name;
        row.Kind = hob.Kind;
        row.RatedPowerWatts = (double)hob.RatedPower.Watts;
        row.OwnEfficiencyFraction = hob.OwnEfficiency?.DecimalFractions;
    }

    public static Oven ToOven(this OvenEntity row) =>
        new(row.Id, row.Name, row.HasFan, row.Levels, Length.FromMeters(row.ShelfLengthMetres), Length.FromMeters(row.ShelfWidthMetres));

    public static void Take(this OvenEntity row, Oven oven)
    {
        row.Name = oven.Name;
        row.HasFan = oven.HasFan;
        row.Levels = oven.Levels;
        row.ShelfLengthMetres = oven.ShelfLength.Meters;
        row.ShelfWidthMetres = oven.ShelfWidth.Meters;
    }

    public static Tray ToTray(this TrayEntity row) =>
        new(row.Id, row.Name, Length.FromMeters(row.InnerLengthMetres), Length.FromMeters(row.InnerWidthMetres), row.Count);

    public static void Take(this TrayEntity row, Tray tray)
    {
        row.Name = tray.Name;
        row.InnerLengthMetres = tray.InnerLength.Meters;
        row.InnerWidthMetres = tray.InnerWidth.Meters;
        row.Count = tray.Count;
    }
}
