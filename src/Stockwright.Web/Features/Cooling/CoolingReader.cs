using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Reads the form of the cooling page; what is wrong is gathered by the reader, at its field.</summary>
internal sealed class CoolingReader(FieldReader reader, KitchenSetup kitchen, CoolingLimit home)
{
    public const string OwnPot = "own";
    public const string NoneWord = "none";

    private static readonly (string Word, SetKind Value)[] SetWords = [("body", SetKind.Body), ("thin", SetKind.Thin), ("own", SetKind.Own)];

    private enum SetKind
    {
        Body,
        Thin,
        Own,
    }

    /// <summary>What is asked; null when something has to be put right first.</summary>
    public CoolingQuestion? Read()
    {
        CoolingLimit limit = Limit();
        double litres = 1000 * (reader.Number(CoolingFields.Litres, "Stock", Measure.Stock, 0.0001, 0.5) ?? (CoolingDefaults.Litres / 1000));
        double start = reader.Number(CoolingFields.Start, "Starting temperature", Measure.Temperature, 278.15, 378.15) ?? (CoolingDefaults.StartCelsius + 273.15);
        Temperature room = SiteFields.Room.Read(reader) ?? kitchen.Site.Room;
        Temperature tap = SiteFields.Tap.Read(reader) ?? kitchen.Site.TapWater;
        Stated<Temperature>? setting = Setting();
        CoolingVessel? vessel = Vessel(Volume.FromLiters(litres));
        CoolingVessel pan = Pan();
        CoolingVessel tub = CoolingVessel.Tub(Volume.FromCubicMeters(reader.Number(CoolingFields.Tub, "A tub", Measure.Stock, 0.00005, 0.03) ?? (CoolingDefaults.TubLitres / 1000)));
        CoolingVessel jar = Jar();
        CoolingKit kit = Kit(pan, tub, jar);
        CoolingCase stock = new()
        {
            Volume = Volume.FromLiters(litres),
            Start = Temperature.FromKelvins(start),
            Vessel = vessel ?? tub,
            Site = kitchen.Site with { Room = room, TapWater = tap },
            Setting = setting,
            FloatingFat = reader.Number(CoolingFields.Fat, "Fat on it", Measure.Mass, 0, 50) is { } fat ? Mass.FromKilograms(fat) : null,
        };
        (List<CoolingStep> steps, List<int> rows) = new StepReader(reader, stock, kit, new StepVessels(pan, tub, jar), limit).Read();
        return reader.Problems.Count > 0
            ? null
            : new CoolingQuestion(stock, new CoolingMethod("asked", CoolingText.Name(steps, reader.Units), steps), rows, kit, pan, tub, jar, limit);
    }

    internal static ColdStore Fridge(FieldReader reader)
    {
        ColdStore usual = ColdStore.DomesticFridge;
        double? watts = reader.Number(CoolingFields.FridgeWatts, "Strength of the fridge", Measure.Watts, 1, 100_000);
        return Air(reader, usual, CoolingFields.FridgeAir, "Air in the fridge") with { Capacity = watts is { } power ? Power.FromWatts(power) : usual.Capacity };
    }

    internal static ColdStore WalkIn(FieldReader reader) => Air(reader, ColdStore.WalkIn, CoolingFields.WalkInAir, "Air in the walk-in");

    internal static ColdStore Blast(FieldReader reader) => Air(reader, ColdStore.BlastChiller, CoolingFields.BlastAir, "Air in the blast chiller");

    // Warm air is let through here: the forecaster says in its own words that it cannot cool.
    private static ColdStore Air(FieldReader reader, ColdStore usual, string field, string what) =>
        reader.Number(field, what, Measure.Temperature, 233.15, 373.15) is { } kelvins ? usual with { Air = Temperature.FromKelvins(kelvins) } : usual;

    private CoolingLimit Limit()
    {
        string typed = reader.Form[CoolingFields.Limit].Trim();
        if (typed.Length == 0)
        {
            return home;
        }

        if (StandardLimits.Find(typed) is { } limit)
        {
            return limit;
        }

        reader.Report(CoolingFields.Limit, $"{KitchenNumber.Quote(typed)} is not a limit on the list. Choose one from it.");
        return home;
    }

    private Stated<Temperature>? Setting()
    {
        SetKind? kind = reader.Word(CoolingFields.Sets, "Sets", SetWords);
        double? typed = reader.Number(CoolingFields.Setting, "Setting temperature", Measure.Temperature, 273.15, 333.15, kind == SetKind.Own ? "At what temperature does it set?" : null);
        return kind switch
        {
            SetKind.Thin => null,
            SetKind.Own when typed is { } kelvins => new Stated<Temperature>(
                Temperature.FromKelvins(kelvins), Temperature.FromKelvins(Math.Max(273.15, kelvins - 3)), Temperature.FromKelvins(Math.Min(333.15, kelvins + 3)), Provenance.CookStated, "typed on the cooling page, 3 K either way"),
            _ => CoolingCase.DefaultSetting,
        };
    }

    private CoolingVessel? Vessel(Volume volume)
    {
        double diameter = reader.Number(CoolingFields.PotDiameter, "Diameter", Measure.PotLength, 0.08, 1.2) ?? CoolingDefaults.PotDiameterMetres;
        double height = reader.Number(CoolingFields.PotHeight, "Height", Measure.PotLength, 0.04, 1.2) ?? CoolingDefaults.PotHeightMetres;
        if (reader.Problems.Count > 0)
        {
            return null;
        }

        string typed = reader.Form[CoolingFields.Vessel].Trim();
        Pot? pot = typed.Length == 0
            ? kitchen.Pots.OrderBy(each => each.BrimVolume).FirstOrDefault(each => each.BrimVolume >= volume) ?? kitchen.Pots.MaxBy(each => each.BrimVolume) ?? Own()
            : string.Equals(typed, OwnPot, StringComparison.Ordinal) ? Own() : kitchen.Pots.FirstOrDefault(each => string.Equals(each.Id, typed, StringComparison.Ordinal));
        if (pot is null)
        {
            reader.Report(CoolingFields.Vessel, $"This kitchen has no pot called {KitchenNumber.Quote(typed)}. Choose one from the list.");
            return null;
        }

        if (pot.BrimVolume < volume)
        {
            reader.Report(CoolingFields.Vessel, $"{pot.Name} holds {Measures.KitchenFormat.Text(pot.BrimVolume, reader.Units)} to the brim, less than the {Measures.KitchenFormat.Text(volume, reader.Units)} of stock.");
            return null;
        }

        return CoolingVessel.FromPot(pot, volume);

        Pot Own() => Pot.Straight(OwnPot, "the pot", Length.FromMeters(diameter), Length.FromMeters(height));
    }

    private CoolingVessel Pan()
    {
        double length = reader.Number(CoolingFields.PanLength, "Length of a pan", Measure.PotLength, 0.05, 1) ?? CoolingDefaults.PanLengthMetres;
        double width = reader.Number(CoolingFields.PanWidth, "Width of a pan", Measure.PotLength, 0.05, 1) ?? CoolingDefaults.PanWidthMetres;
        double depth = reader.Number(CoolingFields.PanDepth, "Depth of a pan", Measure.PotLength, 0.01, 0.4) ?? CoolingDefaults.PanDepthMetres;
        return CoolingVessel.Pan(Length.FromMeters(Math.Clamp(length, 0.05, 1)), Length.FromMeters(Math.Clamp(width, 0.05, 1)), Length.FromMeters(Math.Clamp(depth, 0.01, 0.4)));
    }

    private CoolingVessel Jar()
    {
        string typed = reader.Form[CoolingFields.Jar].Trim();
        JarSize? size = JarSize.Find(typed.Length == 0 ? CoolingDefaults.JarId : typed);
        if (size is null)
        {
            reader.Report(CoolingFields.Jar, $"{KitchenNumber.Quote(typed)} is not a size of jar on the list. Choose one from it.");
        }

        return CoolingVessel.Jar(size ?? JarSize.Find(CoolingDefaults.JarId)!);
    }

    private CoolingKit Kit(CoolingVessel pan, CoolingVessel tub, CoolingVessel jar)
    {
        double? ice = reader.Number(CoolingFields.KitIce, "Ice at hand", Measure.Mass, 0, 2000);
        double? wands = reader.Number(CoolingFields.KitWands, "Frozen wands", Measure.Number, 0, 10);
        double? pans = reader.Number(CoolingFields.Pans, "Pans", Measure.Number, 0, 200);
        double? tubs = reader.Number(CoolingFields.Tubs, "Tubs", Measure.Number, 0, 200);
        double? jars = reader.Number(CoolingFields.Jars, "Jars", Measure.Number, 0, 200);
        _ = StepReader.Wand(reader);
        return new CoolingKit
        {
            HasSink = !IsNone(CoolingFields.KitSink),
            Ice = ice is { } kilograms ? Mass.FromKilograms(kilograms) : null,
            Fridge = IsNone(CoolingFields.KitFridge) ? null : Fridge(reader),
            WalkIn = IsTicked(CoolingFields.KitWalkIn) ? WalkIn(reader) : null,
            BlastChiller = IsTicked(CoolingFields.KitBlast) ? Blast(reader) : null,
            Wands = (int)(wands ?? 0),
            Vessels =
            [
                new OwnedVessels(pan, (int)(pans ?? CoolingDefaults.Pans)),
                new OwnedVessels(tub, (int)(tubs ?? CoolingDefaults.Tubs)),
                new OwnedVessels(jar, (int)(jars ?? CoolingDefaults.Jars)),
            ],
        };
    }

    private bool IsNone(string field) => string.Equals(reader.Form[field].Trim(), NoneWord, StringComparison.Ordinal);

    private bool IsTicked(string field) => string.Equals(reader.Form[field].Trim(), "1", StringComparison.Ordinal);
}
