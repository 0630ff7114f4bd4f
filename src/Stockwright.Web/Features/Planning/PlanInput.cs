using System.ComponentModel;
using System.Text.Json.Serialization;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>
/// The planner's fields, for the OpenAPI document; the request itself is read leniently by <see cref="JsonForm"/> and strictly
/// by the planner's codec. Everything may be left out.
/// </summary>
public sealed record PlanInput
{
    [Description("Measures of the numbers: metric (default) or us.")]
    public string? Units { get; init; }

    [Description("Stable name of the recipe, for instance brown-chicken.")]
    public string? Recipe { get; init; }

    [Description("Stable name of a pot of the kitchen, or own with the pot- fields.")]
    public string? Pot { get; init; }

    [Description("straight (diameter and height), tapered (two diameters and height) or volume (brim volume and diameter).")]
    [JsonPropertyName("pot-shape")]
    public string? PotShape { get; init; }

    [Description("Inner diameter, at the base if the pot widens; cm or in.")]
    [JsonPropertyName("pot-diameter")]
    public double? PotDiameter { get; init; }

    [Description("Inner diameter at the rim of a tapered pot; cm or in.")]
    [JsonPropertyName("pot-brim-diameter")]
    public double? PotBrimDiameter { get; init; }

    [Description("Inner height; cm or in.")]
    [JsonPropertyName("pot-height")]
    public double? PotHeight { get; init; }

    [Description("Volume to the brim; L or qt.")]
    [JsonPropertyName("pot-volume")]
    public double? PotVolume { get; init; }

    [Description("steel, aluminium, copper, enamel or stoneware.")]
    [JsonPropertyName("pot-material")]
    public string? PotMaterial { get; init; }

    [Description("Weight of the empty pot; kg or lb. Estimated when left out.")]
    [JsonPropertyName("pot-mass")]
    public double? PotMass { get; init; }

    [Description("open, pressure, slow (a slow cooker) or kettle.")]
    [JsonPropertyName("pot-kind")]
    public string? PotKind { get; init; }

    [Description("Pressure a pressure cooker holds over the air, 0.5 to 1.03 bar (7.3 to 15 psi); bar or psi. 1 bar when left out.")]
    [JsonPropertyName("pot-gauge")]
    public double? PotGauge { get; init; }

    [Description("Power of the heater of a slow cooker (100 to 400, on high) or a kettle, in W.")]
    [JsonPropertyName("pot-power")]
    public double? PotPower { get; init; }

    [Description("Setting of a slow cooker: high (default) or low; warm is refused, for nothing is cooked on it.")]
    [JsonPropertyName("slow-setting")]
    public string? SlowSetting { get; init; }

    [Description("1 to simmer it in the kitchen's oven, lid on, once it is skimmed on the hob.")]
    [JsonPropertyName("in-oven")]
    public string? InOven { get; init; }

    [Description("off, ajar or on; as the recipe says when left out.")]
    public string? Lid { get; init; }

    [Description("Open part of the mouth with the lid ajar, in per cent, 1 to 60.")]
    public double? Gap { get; init; }

    [Description("Stable name of a hob of the kitchen, or own with the hob- fields.")]
    public string? Hob { get; init; }

    [Description("gas, coil, smooth, plate or induction.")]
    [JsonPropertyName("hob-kind")]
    public string? HobKind { get; init; }

    [Description("Rated power in kW.")]
    [JsonPropertyName("hob-power")]
    public double? HobPower { get; init; }

    [Description("Measured share of the power that reaches the pot, in per cent.")]
    [JsonPropertyName("hob-efficiency")]
    public double? HobEfficiency { get; init; }

    [Description("fill (default), litres, portions or bones.")]
    public string? Goal { get; init; }

    [Description("Strained stock wanted; L or qt.")]
    public double? Litres { get; init; }

    [Description("Number of portions, a whole number.")]
    [JsonPropertyName("portion-count")]
    public int? PortionCount { get; init; }

    [Description("Size of a portion; mL or fl oz.")]
    [JsonPropertyName("portion-size")]
    public double? PortionSize { get; init; }

    [Description("Bones at hand, for the goal bones.")]
    public IReadOnlyList<BonesInput>? Bones { get; init; }

    [Description("How full: safe (default), three-quarters, two-thirds or half of the height, depth or rim with fill-length.")]
    public string? Fill { get; init; }

    [Description("Depth of the liquid, or its distance below the rim; cm or in.")]
    [JsonPropertyName("fill-length")]
    public double? FillLength { get; init; }

    [Description("What is done where the wish does not fit the pot: let-down, stronger, pots (side by side) or rounds. The planner chooses when left out.")]
    public string? Way { get; init; }

    [Description("Pots of this size at hand; those of the kitchen when left out.")]
    public int? Pots { get; init; }

    [Description("Free hobs like this; those of the kitchen when left out.")]
    public int? Hobs { get; init; }

    [Description("start (default) or ready: what date and time mean.")]
    public string? When { get; init; }

    [Description("Day by the kitchen's clock, year-month-day.")]
    public string? Date { get; init; }

    [Description("Time by the kitchen's clock, hours:minutes.")]
    public string? Time { get; init; }

    [Description("Simmer temperature; degrees Celsius or Fahrenheit. The recipe's when left out.")]
    public double? Simmer { get; init; }

    [Description("Simmer time in hours. The recipe's when left out.")]
    public double? Hours { get; init; }

    [Description("Minutes between checks, 20 to 360; 60 when left out.")]
    public double? Check { get; init; }

    [Description("line (the level is held), covered or none. Line, and none for what is boiled down, when left out.")]
    public string? Topup { get; init; }

    [Description("Lid while it heats up: off (default) or on, until it begins to bubble.")]
    [JsonPropertyName("heat-up-lid")]
    public string? HeatUpLid { get; init; }

    [Description("When mirepoix goes into a long simmer: early (after the first skim) or last-hour. The recipe's when left out.")]
    public string? Mirepoix { get; init; }

    [Description("Time the cook gets up; 06:30 when left out.")]
    public string? Wakes { get; init; }

    [Description("Time the cook goes to bed; 22:30 when left out.")]
    public string? Sleeps { get; init; }

    [Description("Work in the night: free (default, the planner keeps it free), getup, oven or stop.")]
    public string? Night { get; init; }

    [Description("Altitude of the kitchen; m or ft.")]
    public double? Altitude { get; init; }

    [Description("Air pressure measured at the kitchen; hPa or inHg.")]
    public double? Pressure { get; init; }

    [Description("Room temperature; degrees Celsius or Fahrenheit.")]
    public double? Room { get; init; }

    [Description("Cold tap temperature; degrees Celsius or Fahrenheit.")]
    public double? Tap { get; init; }

    [Description("The kitchen's own film factor, from a weighed pot.")]
    public double? Film { get; init; }

    [Description("Liquor that clings to drained bones in this kitchen, from a weighed colander; per cent of their weight.")]
    public double? Clings { get; init; }

    [Description("This kitchen's gelatin over the published figures, 0.35 to 1.3; 0.85 when left out.")]
    [JsonPropertyName("kitchen-factor")]
    public double? KitchenFactor { get; init; }

    [Description("Acidity of the liquor, pH 3.5 to 9; 6.5 when left out.")]
    public double? Ph { get; init; }

    [Description("Size of the pieces of bone; cm or in. Usual for each cut when left out.")]
    [JsonPropertyName("piece-size")]
    public double? PieceSize { get; init; }

    [Description("Inner diameter of the container the stock is chilled in; cm or in. The pot's when left out.")]
    public double? Container { get; init; }

    [Description("Hours in the fridge before the body is judged; 16 when left out.")]
    [JsonPropertyName("fridge-hours")]
    public double? FridgeHours { get; init; }

    [Description("Fridge; degrees Celsius or Fahrenheit. 4 C when left out.")]
    public double? Fridge { get; init; }

    [Description("Size of a portion for the nutrition; mL or fl oz. 240 mL when left out.")]
    public double? Portion { get; init; }

    [Description("How the fat is taken off: ladle, jug or chill. As the recipe says when left out.")]
    public string? Defat { get; init; }

    [Description("Minutes from heat off to 60 C, strained; 30 when left out.")]
    [JsonPropertyName("cool-minutes")]
    public double? CoolMinutes { get; init; }

    [Description("Cuts to try more of, or less of with a minus; answered as prediction.withMore.")]
    public IReadOnlyList<BonesInput>? More { get; init; }

    [Description("How it should set: trembling, soft-jelly, firm-jelly, very-firm, demi-glace or glace; answered as prediction.set.")]
    [JsonPropertyName("set-target")]
    public string? SetTarget { get; init; }

    [Description("Cuts at hand to make it set, with their prices.")]
    public IReadOnlyList<SetInput>? Set { get; init; }

    [Description("Bloom of powder gelatin at hand, 50 to 300; 225 when left out.")]
    [JsonPropertyName("powder-bloom")]
    public double? PowderBloom { get; init; }

    [Description("Its price per kg or lb.")]
    [JsonPropertyName("powder-price")]
    public double? PowderPrice { get; init; }

    [Description("Stable names of ingredients of the recipe to leave out.")]
    public IReadOnlyList<string>? Leave { get; init; }

    [Description("Stable names of optional ingredients of the recipe to take in.")]
    public IReadOnlyList<string>? With { get; init; }
}

/// <summary>Bones at hand.</summary>
public sealed record BonesInput
{
    [Description("Stable name of the ingredient, for instance chicken-back.")]
    public string? Cut { get; init; }

    [Description("Raw weight in kilograms.")]
    public double? Kg { get; init; }

    [Description("Raw weight in pounds, in place of kg.")]
    public double? Lb { get; init; }
}

/// <summary>A cut at hand.</summary>
public sealed record SetInput
{
    [Description("Stable name of the ingredient, for instance chicken-feet.")]
    public string? Cut { get; init; }

    [Description("Price per kg or lb, in any money; cuts without a price are left out of the calculation.")]
    public double? Price { get; init; }

    [Description("Most there is, in kilograms; any amount when left out.")]
    public double? Kg { get; init; }

    [Description("Most there is, in pounds, in place of kg.")]
    public double? Lb { get; init; }
}
