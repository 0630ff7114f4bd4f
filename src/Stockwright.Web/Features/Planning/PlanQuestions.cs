using Stockwright.Evidence;
using Stockwright.Planning;
using Stockwright.Predicting;
using UnitsNet;

namespace Stockwright.Web.Features.Planning;

/// <summary>What a cook asks of the stock beside the plan itself. Null, or no rows, where nothing was said.</summary>
public sealed record PlanQuestions
{
    /// <summary>Smallest and largest kitchen factor read, so that its range stays within what the equations take.</summary>
    public static readonly (double Least, double Most) KitchenFactorRange = (0.35, 1.3);

    /// <summary>How far the next batch may lie from a kitchen's own factor, as a share (estimate).</summary>
    private const double OwnFactorSpread = 0.14;

    /// <summary>Nothing asked.</summary>
    public static PlanQuestions None { get; } = new();

    /// <summary>This kitchen's gelatin over the published figures.</summary>
    public double? KitchenFactor { get; init; }

    /// <summary>Acidity of the liquor.</summary>
    public double? Ph { get; init; }

    /// <summary>Size of the pieces.</summary>
    public Length? PieceSize { get; init; }

    /// <summary>Inner diameter of the container it is chilled in.</summary>
    public Length? Container { get; init; }

    /// <summary>Time in the fridge before it is judged.</summary>
    public TimeSpan? FridgeTime { get; init; }

    /// <summary>Temperature of the fridge.</summary>
    public Temperature? Fridge { get; init; }

    /// <summary>Size of a portion, for the nutrition.</summary>
    public Volume? Portion { get; init; }

    /// <summary>How the fat is taken off.</summary>
    public DefatMethod? Defat { get; init; }

    /// <summary>Time from heat off to 60 °C.</summary>
    public TimeSpan? Cooling { get; init; }

    /// <summary>Cuts to try more or less of.</summary>
    public IReadOnlyList<CutChange> More { get; init; } = [];

    /// <summary>How it should set; null when that is not asked.</summary>
    public BodyClass? Wanted { get; init; }

    /// <summary>Cuts at hand to make it set.</summary>
    public IReadOnlyList<AvailableCut> Cuts { get; init; } = [];

    /// <summary>Bloom of powder gelatin at hand.</summary>
    public Mass? PowderBloom { get; init; }

    /// <summary>Price of a kilogram of it.</summary>
    public double? PowderPrice { get; init; }

    /// <summary>Powder gelatin at hand, or null.</summary>
    internal AvailablePowder? Powder => PowderBloom is null && PowderPrice is null ? null : new AvailablePowder(BloomUsed, PowderPrice);

    /// <summary>Bloom taken: 225 g when the packet does not say.</summary>
    internal Mass BloomUsed => PowderBloom ?? Mass.FromGrams(GelStrength.ReferenceBloomGrams);

    /// <summary>Without the trials: what belongs to a plan that is kept.</summary>
    internal PlanQuestions ToKeep() => this with { More = [], Wanted = null, Cuts = [], PowderBloom = null, PowderPrice = null };

    /// <summary>Settings of the prediction of a plan.</summary>
    internal PredictionSettings Settings(PlanRequest request)
    {
        PredictionSettings usual = new() { KitchenFactor = request.Assumptions.KitchenFactor };
        return usual with
        {
            KitchenFactor = KitchenFactor is { } factor
                ? new Stated<double>(factor, factor * (1 - OwnFactorSpread), factor * (1 + OwnFactorSpread), Provenance.CookStated, "Yours; the range is our estimate of how batches differ")
                : usual.KitchenFactor,
            Ph = Ph ?? usual.Ph,
            PieceSize = PieceSize,
            ContainerDiameter = Container,
            FridgeTime = FridgeTime ?? usual.FridgeTime,
            Fridge = Fridge ?? usual.Fridge,
            PortionSize = Portion ?? (request.Goal is PlanGoal.MakeVolume { PortionSize: { Milliliters: >= 10 and <= 2000 } planned } ? planned : usual.PortionSize),
            Defat = Defat,
            CoolingTo60 = Cooling ?? usual.CoolingTo60,
        };
    }
}
