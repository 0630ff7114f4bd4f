using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>Trays in one layer, oven rounds and blanching.</summary>
internal static class RoastPlanner
{
    /// <summary>Time for an oven to come up.</summary>
    public static readonly TimeSpan Preheat = TimeSpan.FromMinutes(15);

    /// <summary>Time at the end of a round to drain fat, deglaze and reload.</summary>
    public static readonly TimeSpan Deglaze = TimeSpan.FromMinutes(10);

    /// <summary>The tray taken when the kitchen owns none: GN 1/1.</summary>
    private static readonly Tray UsualTray = new("gn-1-1", "GN 1/1 tray", Length.FromMillimeters(530), Length.FromMillimeters(325), 2);

    public static RoastPlan? Plan(PlanRequest request, BatchLoad load)
    {
        IReadOnlyList<LoadItem> roasted = [.. load.Items.Where(item => item.Line.Preparation == Preparation.Roast)];
        if (request.Recipe.Roast is not { } setting || roasted.Count == 0)
        {
            return null;
        }

        Tray tray = request.Trays.OrderByDescending(owned => owned.Area.SquareMeters).FirstOrDefault() ?? UsualTray;
        List<TrayLoad> loads = [];
        foreach (IGrouping<LineRole, LoadItem> group in roasted.Where(item => item.Line.Role != LineRole.Paste).GroupBy(item => item.Line.Role == LineRole.Bones ? LineRole.Bones : LineRole.Mirepoix))
        {
            loads.AddRange(group.GroupBy(item => Loading(item.Ingredient)).Select(same => Load(same.Key, [.. same])));
        }

        double area = loads.Sum(one => one.AreaNeeded.SquareMeters);
        int trays = Math.Max(1, (int)Math.Ceiling((area / tray.Area.SquareMeters) - 1e-9));
        int atOnce = TraysAtOnce(request, tray);
        int rounds = (trays + atOnce - 1) / atOnce;
        double raw = roasted.Sum(item => item.RoastedAwayKilograms);
        double low = roasted.Sum(item => item.RawKilograms * (item.Ingredient.RoastLoss?.Low.DecimalFractions ?? 0));
        double high = roasted.Sum(item => item.RawKilograms * (item.Ingredient.RoastLoss?.High.DecimalFractions ?? 0));
        double fat = roasted.Sum(item => item.FatDrainedKilograms);
        return new RoastPlan
        {
            Setting = setting,
            Solids = SolidsText.Of(load, line => line.Preparation == Preparation.Roast, "everything"),
            VegetablesJoinBeforeEnd = roasted.Any(item => item.Line.Role is not LineRole.Bones and not LineRole.Paste) ? setting.VegetablesJoinBeforeEnd : null,
            PasteJoinsBeforeEnd = roasted.Any(item => item.Line.Role == LineRole.Paste) ? setting.PasteJoinsBeforeEnd : null,
            Oven = OvenScale.Nearest(setting.OvenTemperature),
            HasFan = request.Oven?.HasFan ?? false,
            Loads = loads,
            TrayName = tray.Name,
            TraysToFill = trays,
            TraysAtOnce = atOnce,
            OvenRounds = rounds,
            TurnAt = setting.Time / 2,
            TotalTime = Preheat + ((setting.Time + Deglaze) * rounds),
            MassLoss = Kilograms(low, raw, high),
            FatDrained = Kilograms(fat * 0.30 / BatchLoad.FatDrainedShare, fat, fat * 0.60 / BatchLoad.FatDrainedShare),
        };
    }

    public static BlanchPlan? PlanBlanch(PlanRequest request, BatchLoad load, PotFitter fitter)
    {
        IReadOnlyList<LoadItem> blanched = [.. load.Items.Where(item => item.Line.Preparation == Preparation.Blanch && item.Charge is not null)];
        if (request.Recipe.Blanch is not { } setting || blanched.Count == 0)
        {
            return null;
        }

        (double water, double seconds) = fitter.BlanchWater([.. blanched.Select(item => item.Charge!)]);
        double loss = blanched.Sum(item => item.BlanchedAwayKilograms);
        return new BlanchPlan(setting, Simmering.SimmerForecaster.Cold(water), TimeSpan.FromSeconds(seconds), Kilograms(loss * 0.5, loss, loss * 1.5));
    }

    /// <summary>One layer: mass per area by cut (estimate; heavy bones 2.0 to 3.1 kg on a GN 1/1).</summary>
    private static Stated<AreaDensity> Loading(Ingredient ingredient) => ingredient.Group switch
    {
        IngredientGroup.Vegetable or IngredientGroup.Aromatic => State(9, 8, 10),
        IngredientGroup.Poultry or IngredientGroup.Shellfish or IngredientGroup.Game => State(12, 10, 14),
        _ => State(15, 12, 18),
    };

    private static Stated<AreaDensity> State(double value, double low, double high) => new(
        AreaDensity.FromKilogramsPerSquareMeter(value),
        AreaDensity.FromKilogramsPerSquareMeter(low),
        AreaDensity.FromKilogramsPerSquareMeter(high),
        Provenance.Estimate,
        "estimate: one layer with air between the pieces");

    private static TrayLoad Load(Stated<AreaDensity> loading, IReadOnlyList<LoadItem> items)
    {
        double kilograms = items.Sum(item => item.RawKilograms);
        return new TrayLoad(
            string.Join(", ", items.Select(item => item.Ingredient.Name.ToLowerInvariant())),
            Mass.FromKilograms(kilograms),
            Area.FromSquareMeters(kilograms / loading.Value.KilogramsPerSquareMeter),
            loading);
    }

    private static int TraysAtOnce(PlanRequest request, Tray tray)
    {
        if (request.Oven is not { } oven)
        {
            return Math.Max(1, tray.Count);
        }

        int lengthwise = Across(oven.ShelfLength, tray.InnerLength) * Across(oven.ShelfWidth, tray.InnerWidth);
        int crosswise = Across(oven.ShelfLength, tray.InnerWidth) * Across(oven.ShelfWidth, tray.InnerLength);
        return Math.Max(1, Math.Min(tray.Count, oven.Levels * Math.Max(1, Math.Max(lengthwise, crosswise))));
    }

    private static int Across(Length shelf, Length tray) => (int)Math.Floor((shelf / tray) + 0.05);

    private static Band<Mass> Kilograms(double low, double central, double high) =>
        new(Mass.FromKilograms(low), Mass.FromKilograms(central), Mass.FromKilograms(high));
}
