using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Reads the form of the cooling page; what is wrong is gathered by the reader, at its field.</summary>
internal sealed class CoolingReader(FieldReader reader, KitchenSetup kitchen, CoolingLimit home)
{
    public const string OwnPot = "own";
    public const string NoneWord = "none";

    /// <summary>What is asked; null when something has to be put right first.</summary>
    public CoolingQuestion? Read()
    {
        CoolingLimit limit = Limit();
        Volume volume = CoolingFields.Litres.ReadOrBlank(reader);
        Temperature start = CoolingFields.Start.ReadOrBlank(reader);
        Temperature room = CoolingFields.Room.Read(reader) ?? kitchen.Site.Room;
        Temperature tap = CoolingFields.Tap.Read(reader) ?? kitchen.Site.TapWater;
        Stated<Temperature>? setting = Setting();
        CoolingVessel? vessel = Vessel(volume);
        CoolingVessel pan = CoolingVessel.Pan(CoolingFields.PanLength.ReadOrBlank(reader), CoolingFields.PanWidth.ReadOrBlank(reader), CoolingFields.PanDepth.ReadOrBlank(reader));
        CoolingVessel tub = CoolingVessel.Tub(CoolingFields.Tub.ReadOrBlank(reader));
        CoolingVessel jar = CoolingVessel.Jar(JarSize.All[CoolingFields.Jar.ReadOrBlank(reader)]);
        FrozenWand wand = FrozenWand.TwoLitres with { Water = CoolingFields.WandWater.ReadOrBlank(reader) };
        CoolingKit kit = Kit(pan, tub, jar);
        CoolingCase stock = new()
        {
            Volume = volume,
            Start = start,
            Vessel = vessel ?? tub,
            Site = kitchen.Site with { Room = room, TapWater = tap },
            Setting = setting,
            FloatingFat = CoolingFields.Fat.Read(reader),
        };
        (List<CoolingStep> steps, List<int> rows) = new StepReader(reader, stock, kit, new StepVessels(pan, tub, jar), wand, limit).Read();
        return reader.Problems.Count > 0
            ? null
            : new CoolingQuestion(stock, new CoolingMethod("asked", CoolingText.Name(steps, reader.Units), steps), rows, kit, pan, tub, jar, limit);
    }

    internal static ColdStore Fridge(FieldReader reader) =>
        ColdStore.DomesticFridge with { Air = CoolingFields.FridgeAir.ReadOrBlank(reader), Capacity = CoolingFields.FridgeWatts.ReadOrBlank(reader) };

    internal static ColdStore WalkIn(FieldReader reader) => ColdStore.WalkIn with { Air = CoolingFields.WalkInAir.ReadOrBlank(reader) };

    internal static ColdStore Blast(FieldReader reader) => ColdStore.BlastChiller with { Air = CoolingFields.BlastAir.ReadOrBlank(reader) };

    private CoolingLimit Limit()
    {
        string typed = reader.Form[CoolingFields.Limit.Name].Trim();
        if (typed.Length > 0 && StandardLimits.Find(typed) is null)
        {
            reader.Report(CoolingFields.Limit.Name, $"{KitchenNumber.Quote(typed)} is not a limit on the list. Choose one from it.");
        }

        return StandardLimits.Find(typed) ?? home;
    }

    private Stated<Temperature>? Setting()
    {
        SetKind? kind = CoolingFields.Sets.ReadOrUsual(reader);
        Temperature? typed = CoolingFields.Setting.Read(reader, kind == SetKind.Own ? "At what temperature does it set?" : null);
        (Temperature least, Temperature most) = CoolingCase.SettingRange;
        TemperatureDelta either = TemperatureDelta.FromKelvins(3);
        return kind switch
        {
            SetKind.Thin => null,
            SetKind.Own when typed is { } own => new Stated<Temperature>(
                own, UnitMath.Max(least, own - either), UnitMath.Min(most, own + either), Provenance.CookStated, "typed on the cooling page, 3 K either way"),
            _ => CoolingCase.DefaultSetting,
        };
    }

    private CoolingVessel? Vessel(Volume volume)
    {
        Length diameter = CoolingFields.PotDiameter.ReadOrBlank(reader);
        Length height = CoolingFields.PotHeight.ReadOrBlank(reader);
        if (reader.Problems.Count > 0)
        {
            return null;
        }

        string typed = reader.Form[CoolingFields.Vessel.Name].Trim();
        Pot? pot = typed.Length == 0
            ? kitchen.Pots.OrderBy(each => each.BrimVolume).FirstOrDefault(each => each.BrimVolume >= volume) ?? kitchen.Pots.MaxBy(each => each.BrimVolume) ?? Own()
            : string.Equals(typed, OwnPot, StringComparison.Ordinal) ? Own() : kitchen.Pots.FirstOrDefault(each => string.Equals(each.Id, typed, StringComparison.Ordinal));
        if (pot is null || pot.BrimVolume < volume)
        {
            reader.Report(CoolingFields.Vessel.Name, pot is null
                ? $"This kitchen has no pot called {KitchenNumber.Quote(typed)}. Choose one from the list."
                : $"{pot.Name} holds {KitchenFormat.Text(pot.BrimVolume, reader.Units)} to the brim, less than the {KitchenFormat.Text(volume, reader.Units)} of stock.");
            return null;
        }

        return CoolingVessel.FromPot(pot, volume);

        Pot Own() => Pot.Straight(OwnPot, "the pot", diameter, height);
    }

    private CoolingKit Kit(CoolingVessel pan, CoolingVessel tub, CoolingVessel jar) => new()
    {
        HasSink = !IsNone(CoolingFields.Sink),
        Ice = CoolingFields.Ice.Read(reader),
        Fridge = IsNone(CoolingFields.Fridge) ? null : Fridge(reader),
        WalkIn = CoolingFields.WalkIn.Read(reader) == true ? WalkIn(reader) : null,
        BlastChiller = CoolingFields.Blast.Read(reader) == true ? Blast(reader) : null,
        Wands = CoolingFields.Wands.ReadOrBlank(reader),
        Vessels =
        [
            new OwnedVessels(pan, CoolingFields.Pans.ReadOrBlank(reader)),
            new OwnedVessels(tub, CoolingFields.Tubs.ReadOrBlank(reader)),
            new OwnedVessels(jar, CoolingFields.Jars.ReadOrBlank(reader)),
        ],
    };

    private bool IsNone(FieldRow field) => string.Equals(reader.Form[field.Name].Trim(), NoneWord, StringComparison.Ordinal);
}
