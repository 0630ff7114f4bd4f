using System.ComponentModel;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>
/// What the planner takes besides <see cref="PlanFields.All"/>, for the OpenAPI document; the request itself is read leniently by
/// <see cref="JsonForm"/> and strictly by the planner's codec. Everything may be left out.
/// </summary>
public sealed record PlanInput
{
    [Description("Bones at hand, for the goal bones.")]
    public IReadOnlyList<BonesInput>? Bones { get; init; }

    [Description("Cuts to try more of, or less of with a minus; answered as prediction.withMore.")]
    public IReadOnlyList<BonesInput>? More { get; init; }

    [Description("Cuts at hand to make it set, with their prices.")]
    public IReadOnlyList<SetInput>? Set { get; init; }

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
