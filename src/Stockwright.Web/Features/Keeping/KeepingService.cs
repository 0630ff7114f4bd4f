using Stockwright.Keeping;
using Stockwright.Kitchen;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Keeping;

/// <summary>Reads the form of the keeping page; what is wrong is gathered by the reader, at its field.</summary>
internal sealed class KeepingService(FieldReader reader, KitchenSetup kitchen, DateOnly today)
{
    public const string Page = "/keeping";
    public const double UsualPortionCubicMetres = 0.0005;
    public const double UsualThicknessMetres = 0.03;
    public const double UsualFreezerCelsius = -18;
    public const double UsualFridgeCelsius = 4;

    private const double CentreCelsius = -10;

    private static readonly (string Word, ContainerKind Value)[] Kinds = [("tub", ContainerKind.Tub), ("bag", ContainerKind.Bag)];

    private enum ContainerKind
    {
        Tub,
        Bag,
    }

    /// <summary>What is asked; null when something has to be put right first.</summary>
    public KeepingAsk? Read()
    {
        DateOnly made = reader.Date(KeepingFields.Made) ?? today;
        FrozenSpell? frozen = Frozen(made);
        ContainerKind? kind = reader.Word(KeepingFields.Container, "Container", Kinds);
        double volume = reader.Number(KeepingFields.Portion, "Portion", Measure.Portion, 2e-5, 0.03) ?? UsualPortionCubicMetres;
        double? across = reader.Number(KeepingFields.Across, "Width", Measure.PotLength, 0.02, 0.6);
        double thick = reader.Number(KeepingFields.Thick, "Thickness", Measure.PotLength, 0.005, 0.3) ?? UsualThicknessMetres;
        double from = reader.Number(KeepingFields.From, "Starting temperature", Measure.Temperature, 273.15, 373.15) ?? (UsualFridgeCelsius + 273.15);
        double freezer = reader.Number(KeepingFields.Freezer, "Freezer", Measure.Temperature, FreezingTime.FreezerRange.Least.Kelvins, FreezingTime.FreezerRange.Most.Kelvins) ?? (UsualFreezerCelsius + 273.15);
        double fridge = reader.Number(KeepingFields.Fridge, "Fridge", Measure.Temperature, 273.65, 288.15) ?? (UsualFridgeCelsius + 273.15);
        Length altitude = SiteFields.Altitude.Read(reader) ?? kitchen.Site.Altitude;
        FrozenPortion? portion = kind == ContainerKind.Bag ? new FrozenPortion(null, Length.FromMeters(thick)) : Tub(volume, across);
        return reader.Problems.Count > 0 || portion is null
            ? null
            : new KeepingAsk(
                made,
                frozen,
                portion,
                Volume.FromCubicMeters(volume),
                Temperature.FromKelvins(from),
                Temperature.FromKelvins(freezer),
                Temperature.FromKelvins(fridge),
                Temperature.FromKelvins(Math.Max(274.15, kitchen.Site.TapWater.Kelvins)),
                altitude);
    }

    public static FreezingAnswer Freezing(KeepingAsk ask)
    {
        Temperature centre = Temperature.FromDegreesCelsius(Math.Max(CentreCelsius, ask.Freezer.DegreesCelsius + 2));
        Temperature thawed = Temperature.FromDegreesCelsius(0);
        return new FreezingAnswer(
            FreezingTime.Freeze(ask.Portion, ask.From, ask.Freezer, centre),
            centre,
            FreezingTime.Thaw(ask.Portion, ask.Freezer, ask.Fridge, thawed),
            FreezingTime.Thaw(ask.Portion, ask.Freezer, ask.Tap, thawed, FilmRange.ChangedWater));
    }

    /// <summary>Last day under a number of days; null while it lies frozen; the words when it was frozen too late.</summary>
    public static (DateOnly? Day, string Words) LastDay(KeepingAsk ask, int days)
    {
        if (ask.Frozen is not { } spell)
        {
            return (DateMark.LastDay(ask.Made, days), "");
        }

        if (spell.In > DateMark.LastDay(ask.Made, days))
        {
            return (null, "its time was up before it was frozen");
        }

        DateOnly? last = DateMark.LastDay(ask.Made, days, spell);
        return (last, last is null ? "the clock stands still while it is frozen" : "");
    }

    private FrozenSpell? Frozen(DateOnly made)
    {
        DateOnly? into = reader.Date(KeepingFields.Frozen);
        DateOnly? outOf = reader.Date(KeepingFields.Thawed);
        if (into is null && outOf is not null)
        {
            reader.Report(KeepingFields.Frozen, "On which day did it go into the freezer?");
        }

        if (into < made)
        {
            reader.Report(KeepingFields.Frozen, "It cannot have been frozen before it was made.");
            return null;
        }

        if (outOf < into)
        {
            reader.Report(KeepingFields.Thawed, "It cannot have come out before it went in.");
            return null;
        }

        return into is { } day ? new FrozenSpell(day, outOf) : null;
    }

    private FrozenPortion? Tub(double cubicMetres, double? across)
    {
        // Blank: as wide as high.
        double diameter = across ?? Math.Cbrt(4 * cubicMetres / Math.PI);
        double height = 4 * cubicMetres / (Math.PI * diameter * diameter);
        if (height is >= 0.005 and <= 0.6 && diameter is >= 0.01 and <= 0.6)
        {
            return new FrozenPortion(Length.FromMeters(diameter), Length.FromMeters(height));
        }

        reader.Report(KeepingFields.Across, "At that width the portion would stand less than 5 mm or more than 60 cm high.");
        return null;
    }
}
