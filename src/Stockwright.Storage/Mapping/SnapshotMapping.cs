using System.Text.Json;
using Stockwright.Kitchen;
using Stockwright.Storage.Documents;
using UnitsNet;

namespace Stockwright.Storage.Mapping;

/// <summary>A plan's snapshot to its stored document and back.</summary>
internal static class SnapshotMapping
{
    public static SnapshotDocument ToDocument(PlanSnapshot snapshot)
    {
        using JsonDocument recipe = JsonDocument.Parse(RecipeText.Write(snapshot.Recipe));
        KitchenSite site = snapshot.Kitchen.Site;
        Hob hob = snapshot.Kitchen.Hobs[0];
        return new SnapshotDocument
        {
            Format = SnapshotDocument.CurrentFormat,
            Recipe = recipe.RootElement.Clone(),
            Ingredients = [.. snapshot.Larder.Ingredients.Select(IngredientDocument.From)],
            KitchenName = snapshot.Kitchen.Name,
            TimeZoneId = snapshot.Kitchen.TimeZoneId,
            Site = new SiteDocument(
                site.Altitude.Meters,
                site.MeasuredPressure?.Pascals,
                site.Room.Kelvins,
                site.Humidity.DecimalFractions,
                site.TapWater.Kelvins,
                site.OwnFilmFactor)
            {
                OwnClingingFraction = site.OwnClinging?.DecimalFractions,
            },
            Pots = [.. snapshot.Kitchen.Pots.Select(pot => new PotDocument(
                pot.Id,
                pot.Name,
                pot.BaseDiameter.Meters,
                pot.BrimDiameter.Meters,
                pot.InnerHeight.Meters,
                pot.Material,
                pot.EmptyMass.Kilograms,
                pot.Kind,
                pot.GaugePressure?.Pascals,
                (double?)pot.HeaterPower?.Watts))],
            Hob = new HobDocument(hob.Id, hob.Name, hob.Kind, (double)hob.RatedPower.Watts, hob.OwnEfficiency?.DecimalFractions),
            Oven = snapshot.Kitchen.Oven is { } oven
                ? new OvenDocument(oven.Id, oven.Name, oven.HasFan, oven.Levels, oven.ShelfLength.Meters, oven.ShelfWidth.Meters)
                : null,
            Trays = [.. snapshot.Kitchen.Trays.Select(tray => new TrayDocument(
                tray.Id, tray.Name, tray.InnerLength.Meters, tray.InnerWidth.Meters, tray.Count))],
        };
    }

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
