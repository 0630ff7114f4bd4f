using System.ComponentModel;
using System.Text.Json.Serialization;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooling;

/// <summary>
/// The cooling page's fields, for the OpenAPI document; the request itself is read leniently by <see cref="JsonForm"/> and strictly
/// by the page's reader. Everything may be left out.
/// </summary>
public sealed record CoolingInput
{
    [Description("Measures of the numbers: metric (default) or us.")]
    public string? Units { get; init; }

    [Description("Stock as measured cold, 0.1 to 500 L; L or qt.")]
    public double? Litres { get; init; }

    [Description("Temperature it starts at, 5 to 105 °C; °C or °F.")]
    public double? Start { get; init; }

    [Description("Fat that floats on it, 0 to 50 kg; kg or lb. As on defatted stock when left out.")]
    public double? Fat { get; init; }

    [Description("Stable name of a pot of the kitchen, or own with pot-diameter and pot-height.")]
    public string? Vessel { get; init; }

    [Description("Inner diameter of an own pot; cm or in.")]
    [JsonPropertyName("pot-diameter")]
    public double? PotDiameter { get; init; }

    [Description("Inner height of an own pot; cm or in.")]
    [JsonPropertyName("pot-height")]
    public double? PotHeight { get; init; }

    [Description("body (default), thin, or own with setting.")]
    public string? Sets { get; init; }

    [Description("Temperature it sets at; °C or °F.")]
    public double? Setting { get; init; }

    [Description("Air of the room; °C or °F. The kitchen's when left out.")]
    public double? Room { get; init; }

    [Description("Tap water; °C or °F. The kitchen's when left out.")]
    public double? Tap { get; init; }

    [Description("Stable name of the limit, for instance us-food-code, au-3-2-2, uk-cook-chill.")]
    public string? Limit { get; init; }

    [Description("What is done, in order; the pot in the household fridge, lid on, when left out.")]
    public IReadOnlyList<CoolingStepInput>? Steps { get; init; }

    [Description("Ice at hand, kg or lb; as much as it takes when left out, 0 for none.")]
    [JsonPropertyName("kit-ice")]
    public double? KitIce { get; init; }

    [Description("yes (default) or none.")]
    public string? Sink { get; init; }

    [Description("Household fridge: yes (default) or none.")]
    public string? Fridge { get; init; }

    [Description("Its air; °C or °F.")]
    [JsonPropertyName("fridge-air")]
    public double? FridgeAir { get; init; }

    [Description("Heat it takes out at most, in watts.")]
    [JsonPropertyName("fridge-watts")]
    public double? FridgeWatts { get; init; }

    [Description("True when there is a walk-in with a fan.")]
    [JsonPropertyName("walk-in")]
    public bool? WalkIn { get; init; }

    [Description("True when there is a blast chiller.")]
    public bool? Blast { get; init; }

    [Description("Pans at hand; 12 when left out.")]
    public int? Pans { get; init; }

    [Description("Tubs at hand; 40 when left out.")]
    public int? Tubs { get; init; }

    [Description("Glass jars at hand; none when left out.")]
    public int? Jars { get; init; }

    [Description("Size of a jar: 250ml, 500ml (default), 1l, pint or quart; US measure the last two.")]
    public string? Jar { get; init; }

    [Description("Frozen wands at hand.")]
    [JsonPropertyName("kit-wands")]
    public int? KitWands { get; init; }

    [Description("Readings, one a line: a time and a temperature.")]
    public string? Readings { get; init; }

    [Description("Scale of the readings: c or f.")]
    public string? Scale { get; init; }

    [Description("What it stands in now; °C or °F.")]
    public double? Around { get; init; }

    [Description("Minutes from the first reading to now.")]
    public double? Now { get; init; }

    [Description("True when it was reheated once already.")]
    public bool? Reheated { get; init; }
}

/// <summary>One step of cooling.</summary>
public sealed record CoolingStepInput
{
    [Description("fridge, ice, running, sink, bench, walk-in or blast.")]
    public string? Place { get; init; }

    [Description("off (default) or on.")]
    public string? Lid { get; init; }

    [Description("How often the stock is stirred: no (default), few (every few minutes) or all (all the time). True, as older callers send it, is few for stock and bath.")]
    public string? Stir { get; init; }

    [Description("How often the water of an ice bath or a sink is stirred: no (default), few or all.")]
    [JsonPropertyName("stir-bath")]
    public string? StirBath { get; init; }

    [Description("Ice in the bath; kg or lb.")]
    public double? Ice { get; init; }

    [Description("Water in bath or sink; kg or lb.")]
    public double? Water { get; init; }

    [Description("same (default), pans, tubs or jars.")]
    public string? Into { get; init; }

    [Description("How many of them; as few as hold it when left out.")]
    public int? Count { get; init; }

    [Description("How deep it stands in them, in place of count; cm or in.")]
    public double? Deep { get; init; }

    [Description("Frozen wands in each vessel.")]
    public int? Wands { get; init; }

    [Description("Ice put in the stock; kg or lb.")]
    [JsonPropertyName("add-ice")]
    public double? AddIce { get; init; }

    [Description("Cold water put in the stock; kg or lb.")]
    [JsonPropertyName("add-water")]
    public double? AddWater { get; init; }

    [Description("Longest it lasts, in minutes.")]
    public double? Minutes { get; init; }

    [Description("Temperature it ends at; °C or °F.")]
    public double? Until { get; init; }
}
