using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Storage.Plans;

/// <summary>A plan's snapshot to its stored document and back.</summary>
internal static class SnapshotMapping
{
    public static PlanSnapshot FromDocument(SnapshotDocument document) => new()
    {
        Recipe = RecipeText.Read(document.Recipe.GetRawText()),
        Larder = new([.. document.Ingredients.Select(row => row.ToIngredient())]),
        Kitchen = new KitchenSetup
        {
            Name = document.KitchenName,
            TimeZoneId = document.TimeZoneId,
            Site = new KitchenSite
            {
                Altitude = Length.FromMeters(document.Site.AltitudeMetres),
                MeasuredPressure = document.Site.MeasuredPressurePascals is { } pascals ? Pressure.FromPascals(pascals) : null,
                Room = Temperature.FromKelvins(document.Site.RoomKelvins),
                Humidity = Ratio.FromDecimalFractions(document.Site.HumidityFraction),
                TapWater = Temperature.FromKelvins(document.Site.TapWaterKelvins),
                OwnFilmFactor = document.Site.OwnFilmFactor,
                OwnClinging = document.Site.OwnClingingFraction is { } clinging ? Ratio.FromDecimalFractions(clinging) : null,
            },
            Pots = [.. document.Pots.Select(pot => new Pot
            {
                Id = pot.Id,
                Name = pot.Name,
                BaseDiameter = Length.FromMeters(pot.BaseDiameterMetres),
                BrimDiameter = Length.FromMeters(pot.BrimDiameterMetres),
                InnerHeight = Length.FromMeters(pot.InnerHeightMetres),
                Material = pot.Material,
                EmptyMass = Mass.FromKilograms(pot.EmptyMassKilograms),
                Kind = pot.Kind,
                GaugePressure = pot.GaugePressurePascals is { } gauge ? Pressure.FromPascals(gauge) : null,
                HeaterPower = pot.HeaterWatts is { } watts ? Power.FromWatts(watts) : null,
            })],
            Hobs =
            [
                new Hob
                {
                    Id = document.Hob.Id,
                    Name = document.Hob.Name,
                    Kind = document.Hob.Kind,
                    RatedPower = Power.FromWatts(document.Hob.RatedPowerWatts),
                    OwnEfficiency = document.Hob.OwnEfficiencyFraction is { } fraction ? Ratio.FromDecimalFractions(fraction) : null,
                },
            ],
            Oven = document.Oven is { } oven
                ? new Oven(oven.Id, oven.Name, oven.HasFan, oven.Levels, Length.FromMeters(oven.ShelfLengthMetres), Length.FromMeters(oven.ShelfWidthMetres))
                : null,
            Trays = [.. document.Trays.Select(tray => new Tray(
                tray.Id, tray.Name, Length.FromMeters(tray.InnerLengthMetres), Length.FromMeters(tray.InnerWidthMetres), tray.Count))],
        },
    };
}
