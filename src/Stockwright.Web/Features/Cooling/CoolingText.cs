using System.Globalization;
using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Web.Wording;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Ways of cooling and limits as a cook reads them.</summary>
internal static class CoolingText
{
    public const string AskLocally = "check with your local authority";

    /// <summary>A whole method in one sentence without its full stop.</summary>
    public static string Name(IReadOnlyList<CoolingStep> steps, UnitSystem units)
    {
        string name = string.Join(", then ", steps.Select((step, index) => Step(step, units, isFirst: index == 0)));
        return char.ToUpperInvariant(name[0]) + name[1..];
    }

    public static string Step(CoolingStep step, UnitSystem units, bool isFirst = true)
    {
        List<string> words = [];
        if (step.Pour is { } pour)
        {
            words.Add($"{(isFirst ? "" : "into ")}{Number(pour.Count)} {Vessel(pour.Vessel, pour.Count)}");
        }
        else if (isFirst)
        {
            words.Add("the pot");
        }

        if (step.IceAdded > Mass.Zero)
        {
            words.Add($"{KitchenFormat.Text(step.IceAdded, units)} of ice stirred in");
        }

        if (step.WaterAdded > Mass.Zero)
        {
            words.Add($"{KitchenFormat.Text(step.WaterAdded, units)} of cold water stirred in");
        }

        if (step.Wands > 0)
        {
            words.Add(step.Wands == 1 ? "a frozen wand in it" : $"{Number(step.Wands)} frozen wands in it");
        }

        words.Add(Place(step.Place, units));
        words.Add(step.Lid.Kind == LidKind.On ? "lid on" : "");
        words.Add(Stirred(step));
        words.Add(End(step, units));
        return string.Join(", ", words.Where(word => word.Length > 0));
    }

    /// <summary>What is stirred and how often: times count on it, so a bath says so also where nothing is.</summary>
    public static string Stirred(CoolingStep step) => (step.HasBathToStir, step.StockStirring, step.BathStirring) switch
    {
        (false, Stirring.None, _) => "",
        (false, var stock, _) => $"stirred {Often(stock)}",
        (true, Stirring.None, Stirring.None) => "not stirred",
        (true, Stirring.None, var bath) => $"the bath stirred {Often(bath)}, the stock not",
        (true, var stock, Stirring.None) => $"the stock stirred {Often(stock)}, the bath not",
        (true, var stock, var bath) when stock == bath => $"stock and bath stirred {Often(stock)}",
        (true, var stock, var bath) => $"the stock stirred {Often(stock)}, the bath {Often(bath)}",
    };

    /// <summary>Where it stands.</summary>
    public static string Place(CoolingPlace place, UnitSystem units) => place switch
    {
        CoolingPlace.Bench => "on the bench",
        CoolingPlace.TapSink { Running: true } => "in running tap water",
        CoolingPlace.TapSink sink => $"in a sink with {KitchenFormat.Text(Volume.FromLiters(sink.Water.Kilograms), units)} of tap water",
        CoolingPlace.IceBath bath => $"in an ice bath of {KitchenFormat.Text(bath.Ice, units)} of ice and {KitchenFormat.Text(Volume.FromLiters(bath.Water.Kilograms), units)} of water",
        CoolingPlace.ColdAir air => $"in the {air.Store.Name}",
        _ => "",
    };

    /// <summary>What it is in: a pan, two pans, a tub, three glass jars of 500 mL.</summary>
    public static string Vessel(CoolingVessel vessel, int count)
    {
        string plural = count == 1 ? "" : "s";
        return vessel.Kind switch
        {
            VesselKind.Pan => $"pan{plural}",
            VesselKind.Jar => $"glass jar{plural}{(JarSize.All.FirstOrDefault(size => size.Capacity.Equals(vessel.Capacity, Volume.FromMilliliters(0.01))) is { } size ? $" of {size.Name}" : "")}",
            VesselKind.Tub => $"tub{plural}",
            _ => $"pot{plural}",
        };
    }

    /// <summary>A limit's temperature as its code prints it, the reader's scale first where the code prints both.</summary>
    public static string Degrees(PrintedTemperature printed, UnitSystem units)
    {
        string celsius = printed.Celsius is { } c ? $"{Plain(c)}\u00A0°C" : "";
        string fahrenheit = printed.Fahrenheit is { } f ? $"{Plain(f)}\u00A0°F" : "";
        return (celsius.Length, fahrenheit.Length) switch
        {
            ( > 0, > 0) => units == UnitSystem.UsCustomary ? $"{fahrenheit} ({celsius})" : $"{celsius} ({fahrenheit})",
            ( > 0, _) => celsius,
            _ => fahrenheit,
        };
    }

    /// <summary>A limit's temperature in one scale, for tight places.</summary>
    public static string Short(PrintedTemperature printed, UnitSystem units) =>
        units == UnitSystem.UsCustomary && printed.Fahrenheit is { } f || printed.Celsius is null
            ? $"{Plain(printed.Fahrenheit!.Value)}\u00A0°F"
            : $"{Plain(printed.Celsius!.Value)}\u00A0°C";

    /// <summary>A stage: "from 57 °C to 21 °C within 2 h", "on to 5 °C within 6 h in all".</summary>
    public static string Stage(LimitStage stage, UnitSystem units, bool isFirst) => isFirst
        ? $"from {Degrees(stage.From, units)} to {Degrees(stage.To, units)} within {KitchenFormat.Text(stage.Within)}"
        : $"on to {Degrees(stage.To, units)} within {(stage.Clock == StageClock.FromStage ? "a further " : "")}{KitchenFormat.Text(stage.Within)}{(stage.Clock == StageClock.FromStage ? "" : " in all")}";

    /// <summary>All stages of a limit in one line.</summary>
    public static string Stages(CoolingLimit limit, UnitSystem units) =>
        string.Join(", ", limit.Stages.Select((stage, index) => Stage(stage, units, isFirst: index == 0)));

    /// <summary>How binding a rule is.</summary>
    public static string Standing(LimitStanding standing) => standing switch
    {
        LimitStanding.Law => "law",
        LimitStanding.ModelCode => "model code; law where adopted",
        LimitStanding.Guidance => "guidance",
        LimitStanding.Yardstick => "binds other trades, a yardstick here",
        _ => throw new ArgumentOutOfRangeException(nameof(standing), standing, "Unknown standing."),
    };

    /// <summary>Grade of a legal figure, with what to do where it was not read.</summary>
    public static string Grade(Provenance provenance) =>
        provenance == Provenance.Published ? EvidenceText.Of(provenance) : $"{EvidenceText.Of(provenance)}: {AskLocally}";

    /// <summary>A time with its band: "2 h 10 min (1 h 40 min to 3 h)"; an end that never comes is said.</summary>
    public static string Time((TimeSpan? Fast, TimeSpan? Central, TimeSpan? Slow) time)
    {
        if (time.Central is not { } central)
        {
            return time.Fast is { } fast ? $"not within two days, {KitchenFormat.Text(fast)} at the soonest" : "not within two days";
        }

        return $"{KitchenFormat.Text(central)} ({(time.Fast is { } soon ? KitchenFormat.Text(soon) : "?")} to {(time.Slow is { } late ? KitchenFormat.Text(late) : "over two days")})";
    }

    private static string Often(Stirring stirring) => stirring == Stirring.AllTheTime ? "all the time" : "every few minutes";

    private static string End(CoolingStep step, UnitSystem units) => (step.For, step.Until) switch
    {
        ({ } time, { } until) => $"{KitchenFormat.Text(time)} or until {Exact(until, units)}",
        ({ } time, null) => $"for {KitchenFormat.Text(time)}",
        (null, { } until) => $"until {Exact(until, units)}",
        _ => "",
    };

    private static string Exact(Temperature temperature, UnitSystem units) => KitchenFormat.Text(temperature, units);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Plain(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
