using Stockwright.Keeping;
using Stockwright.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Keeping;

/// <summary>Reads the form of the keeping page; what is wrong is gathered by the reader, at its field.</summary>
internal sealed class KeepingService(FieldReader reader, KitchenSetup kitchen, DateOnly today)
{
    public const string Page = "/keeping";

    private const double CentreCelsius = -10;

    /// <summary>What is asked; null when something has to be put right first.</summary>
    public KeepingQuestion? Read()
    {
        DateOnly made = KeepingFields.Made.Read(reader) ?? today;
        FrozenSpell? frozen = Frozen(made);
        ContainerKind? kind = KeepingFields.Container.ReadOrUsual(reader);
        Volume volume = KeepingFields.Portion.ReadOrBlank(reader);
        Length? across = KeepingFields.Across.Read(reader);
        Length thick = KeepingFields.Thick.ReadOrBlank(reader);
        Temperature from = KeepingFields.From.ReadOrBlank(reader);
        Temperature freezer = KeepingFields.Freezer.ReadOrBlank(reader);
        Temperature fridge = KeepingFields.Fridge.ReadOrBlank(reader);
        Length altitude = KeepingFields.Altitude.Read(reader) ?? kitchen.Site.Altitude;
        FrozenPortion? portion = kind == ContainerKind.Bag ? new FrozenPortion(null, thick) : Tub(volume, across);
        return reader.Problems.Count > 0 || portion is null
            ? null
            : new KeepingQuestion(made, frozen, portion, volume, from, freezer, fridge, Temperature.FromKelvins(Math.Max(274.15, kitchen.Site.TapWater.Kelvins)), altitude);
    }

    public static FreezingAnswer Freezing(KeepingQuestion ask)
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
    public static (DateOnly? Day, string Words) LastDay(KeepingQuestion ask, int days)
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
        DateOnly? into = KeepingFields.Frozen.Read(reader);
        DateOnly? outOf = KeepingFields.Thawed.Read(reader);
        if (into is null && outOf is not null)
        {
            reader.Report(KeepingFields.Frozen.Name, "On which day did it go into the freezer?");
        }

        if (into < made)
        {
            reader.Report(KeepingFields.Frozen.Name, "It cannot have been frozen before it was made.");
            return null;
        }

        if (outOf < into)
        {
            reader.Report(KeepingFields.Thawed.Name, "It cannot have come out before it went in.");
            return null;
        }

        return into is { } day ? new FrozenSpell(day, outOf) : null;
    }

    private FrozenPortion? Tub(Volume volume, Length? across)
    {
        // Blank: as wide as high.
        double diameter = across?.Meters ?? Math.Cbrt(4 * volume.CubicMeters / Math.PI);
        double height = 4 * volume.CubicMeters / (Math.PI * diameter * diameter);
        if (height >= FrozenPortion.ThicknessRange.Least.Meters && height <= FrozenPortion.WidthRange.Most.Meters && diameter is >= 0.01 and <= 0.6)
        {
            return new FrozenPortion(Length.FromMeters(diameter), Length.FromMeters(height));
        }

        reader.Report(KeepingFields.Across.Name, "At that width the portion would stand less than 5 mm or more than 60 cm high.");
        return null;
    }
}
