using Stockwright.Larder;
using Stockwright.Physics;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>One ingredient of a load, in SI units for the equations.</summary>
/// <param name="Ingredient">The larder row.</param>
/// <param name="Line">The recipe line.</param>
/// <param name="Cuts">Classes of cuts.</param>
/// <param name="RawKilograms">Mass as weighed, before roasting or blanching.</param>
/// <param name="Charge">The solid in the pot; null for what goes in as liquid.</param>
/// <param name="LiquidKilograms">Mass that joins the liquor: wine, vinegar, paste.</param>
/// <param name="RoastedAwayKilograms">Mass lost in the oven.</param>
/// <param name="FatDrainedKilograms">Part of that which is fat left on the tray.</param>
/// <param name="BlanchedAwayKilograms">Mass lost in blanching.</param>
internal sealed record LoadItem(
    Ingredient Ingredient,
    RecipeLine Line,
    CutTable Cuts,
    double RawKilograms,
    SolidCharge? Charge,
    double LiquidKilograms,
    double RoastedAwayKilograms,
    double FatDrainedKilograms,
    double BlanchedAwayKilograms)
{
    public double InPotKilograms => RawKilograms - RoastedAwayKilograms - BlanchedAwayKilograms;

    /// <summary>What it is made of as weighed.</summary>
    public Matter Raw => Matter.Of(Ingredient, RawKilograms);

    /// <summary>What the oven takes: water, and fat that drains.</summary>
    public Matter RoastedAway => new(RoastedAwayKilograms - FatDrainedKilograms, 0, FatDrainedKilograms, 0, 0);

    /// <summary>What the blanching water takes: half of the juices (B.8), the rest water.</summary>
    public Matter BlanchedAway
    {
        get
        {
            if (!(BlanchedAwayKilograms > 0))
            {
                return default;
            }

            SolidGiving all = SolidGiving.Of(Ingredient, Cuts, RawKilograms, blanched: false, FatDrainedKilograms);
            SolidGiving left = SolidGiving.Of(Ingredient, Cuts, RawKilograms, blanched: true, FatDrainedKilograms);
            Matter juices = new(0, all.Juices - left.Juices, 0, all.Minerals - left.Minerals, all.Sugars - left.Sugars);
            juices *= Math.Min(1, BlanchedAwayKilograms / Math.Max(1e-12, juices.Kilograms));
            return juices + Matter.OfWater(BlanchedAwayKilograms - juices.Kilograms);
        }
    }

    /// <summary>What goes in the pot.</summary>
    public Matter InPot => Raw - RoastedAway - BlanchedAway;
}

/// <summary>
/// Everything that goes in the pot for a size of batch. The size is the strained stock, in litres, that the recipe's ratios are for.
/// </summary>
internal sealed class BatchLoad
{
    /// <summary>Share of a cut's fat that drains off in the oven (estimate, 30 to 60 %).</summary>
    public const double FatDrainedShare = 0.45;

    /// <summary>Soluble matter poured away with the blanching water (estimate, 1 to 3 % of weight).</summary>
    public const double BlanchLossShare = 0.02;

    /// <summary>Part of the recipe's water that may stand between the solids; the rest covers them (estimate).</summary>
    private const double GapShare = 0.9;

    /// <summary>Bulk density where the larder states none, kg/m3 (estimate).</summary>
    private const double UsualPackDensity = 550;

    private BatchLoad(IReadOnlyList<LoadItem> items) => Items = items;

    public IReadOnlyList<LoadItem> Items { get; }

    /// <summary>Load for one litre of strained stock.</summary>
    /// <param name="request">The request; its goal may replace the bones.</param>
    public static BatchLoad PerLitre(PlanRequest request)
    {
        List<(RecipeLine Line, double Kilograms)> lines = [];
        IReadOnlyList<RecipeLine> recipeLines = [.. request.Recipe.Lines.Where(request.Takes).Select(request.Timed)];
        if (request.Goal is PlanGoal.UseBones goal)
        {
            RecipeLine model = recipeLines.First(line => line.Role == LineRole.Bones);
            double litres = Litres(request, goal);
            lines.AddRange(goal.Bones.Select(bones => (
                recipeLines.FirstOrDefault(line => line.Role == LineRole.Bones && string.Equals(line.IngredientId, bones.IngredientId, StringComparison.Ordinal))
                    ?? model with { IngredientId = bones.IngredientId, Note = null, Refuse = null },
                bones.Mass.Kilograms / litres)));
            lines.AddRange(recipeLines.Where(line => line.Role != LineRole.Bones).Select(line => (line, line.PerLitre.Value.Kilograms)));
        }
        else
        {
            lines.AddRange(recipeLines.Select(line => (line, line.PerLitre.Value.Kilograms)));
        }

        return new BatchLoad([.. lines.Select(line => Item(request.Larder.Get(line.Line.IngredientId), line.Line, line.Kilograms, request))])
            .NoLooserThan(GapShare * request.Recipe.WaterLitresPerLitre.Value / 1000);
    }

    /// <summary>
    /// The recipe's own water covers its bones, so the gaps in the heap cannot be more than that (F.3). Bulk densities are estimates
    /// and light for fish frames and shells, which a cook chops and presses down.
    /// </summary>
    /// <param name="cubicMetres">Most room between the solids that go in with the water.</param>
    private BatchLoad NoLooserThan(double cubicMetres)
    {
        double gaps = Items.Where(GoesInFirst).Sum(item => item.Charge!.PackVolumeCubicMetres - item.Charge.VolumeCubicMetres);
        if (gaps <= cubicMetres)
        {
            return this;
        }

        double closer = cubicMetres / gaps;
        return new BatchLoad([.. Items.Select(item => !GoesInFirst(item) ? item : item with
        {
            Charge = item.Charge! with
            {
                PackVolumeCubicMetres = item.Charge.VolumeCubicMetres + (closer * (item.Charge.PackVolumeCubicMetres - item.Charge.VolumeCubicMetres)),
            },
        })]);
    }

    private static bool GoesInFirst(LoadItem item) => item.Charge is not null && item.Line.Joins == JoinMoment.Start;

    /// <summary>Litres of strained stock that bones at hand make at the recipe's strength.</summary>
    public static double Litres(PlanRequest request, PlanGoal.UseBones goal) =>
        goal.Bones.Sum(bones => bones.Mass.Kilograms)
        / request.Recipe.Lines.Where(line => line.Role == LineRole.Bones && request.Takes(line)).Sum(line => line.PerLitre.Value.Kilograms);

    public BatchLoad Scaled(double factor) => new([.. Items.Select(item => item with
    {
        RawKilograms = item.RawKilograms * factor,
        Charge = item.Charge?.Scaled(factor),
        LiquidKilograms = item.LiquidKilograms * factor,
        RoastedAwayKilograms = item.RoastedAwayKilograms * factor,
        FatDrainedKilograms = item.FatDrainedKilograms * factor,
        BlanchedAwayKilograms = item.BlanchedAwayKilograms * factor,
    })]);

    /// <summary>Solids that go in with the cold water.</summary>
    public IReadOnlyList<SolidCharge> StartSolids() =>
        [.. Items.Where(GoesInFirst).Select(item => item.Charge!)];

    private static LoadItem Item(Ingredient ingredient, RecipeLine line, double rawKilograms, PlanRequest request)
    {
        double roasted = line.Preparation == Preparation.Roast ? rawKilograms * (ingredient.RoastLoss?.Value.DecimalFractions ?? 0) : 0;
        double drained = line.Role == LineRole.Bones ? Math.Min(FatDrainedShare * ingredient.Fat.Value.DecimalFractions * rawKilograms, 0.8 * roasted) : 0;
        drained = roasted > 0 ? drained : 0;
        double blanched = line.Preparation == Preparation.Blanch ? BlanchLossShare * rawKilograms : 0;
        double inPot = rawKilograms - roasted - blanched;
        LoadItem item = new(ingredient, line, request.Cuts, rawKilograms, null, 0, roasted, drained, blanched);
        if (ingredient.Group is IngredientGroup.Liquid || request.Cuts.SolublesOf(ingredient).Dissolves || line.Role is LineRole.Acid or LineRole.Paste or LineRole.Fat or LineRole.Seasoning)
        {
            return item with { LiquidKilograms = inPot };
        }

        // What the oven drives off is water, and fat that drains: the rest keeps its volume (S.5).
        double rawVolume = rawKilograms / ingredient.TrueDensity.Value.KilogramsPerCubicMeter;
        double volume = Math.Max(rawVolume - ((roasted - drained + blanched) / 998.0) - (drained / 920.0), inPot / 2000.0);
        double packed = rawKilograms / (ingredient.PackDensity?.Value.KilogramsPerCubicMeter ?? UsualPackDensity);
        double packVolume = Math.Max(packed * volume / rawVolume, volume);
        double specificHeat = SpecificHeat(ingredient);
        SolidRelease release = LiquorExchange.Release(ingredient, line.Preparation, request.Cuts, item.Raw, item.InPot, drained, request.Assumptions, request.PieceSize);
        return item with { Charge = new SolidCharge(inPot, volume, packVolume, inPot * specificHeat, release with { Clings = release.Clings * ClingingLiquor.OverDefault(request.Site, request.Assumptions) }) };
    }

    private static double SpecificHeat(Ingredient ingredient)
    {
        double water = ingredient.Water.Value.DecimalFractions;
        double protein = ingredient.Protein.Value.DecimalFractions;
        double fat = ingredient.Fat.Value.DecimalFractions;
        double ash = ingredient.Ash.Value.DecimalFractions;
        double carbohydrate = Math.Max(0, 1 - water - protein - fat - ash);
        double sum = water + protein + fat + ash + carbohydrate;
        FoodComposition composition = FoodComposition.FromDecimalFractions(
            water / sum, protein / sum, fat / sum, carbohydrate / sum, 0, ash / sum);
        return FoodProperties.SpecificHeatJoulesPerKilogramKelvin(composition, 60);
    }
}
