using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Bench;

/// <summary>Brown chicken stock in a pot of ten litres, asked in three ways.</summary>
internal static class BenchRequests
{
    private static readonly DateTimeOffset Morning = new(2026, 3, 7, 9, 0, 0, TimeSpan.Zero);

    public static Pot Pot { get; } = Pot.Straight("pot-10", "10 L pot", Length.FromCentimeters(24), Length.FromCentimeters(22.1));

    public static Hob Hob { get; } = new() { Id = "hob", Name = "Induction hob", Kind = HobKind.Induction, RatedPower = Power.FromKilowatts(3.5) };

    public static KitchenSite Site { get; } = new() { Altitude = Length.FromMeters(120) };

    public static PlanRequest FillPot { get; } = new()
    {
        Recipe = StandardRecipes.Book.TryFind("brown-chicken", out StockRecipe? recipe) ? recipe : throw new InvalidOperationException("The recipe is gone."),
        Larder = StandardLarder.Table,
        Pot = Pot,
        Hob = Hob,
        Lid = LidPosition.Ajar(Ratio.FromPercent(10)),
        Site = Site,
        Oven = new Oven("oven", "Oven", HasFan: true, Levels: 2, Length.FromCentimeters(60), Length.FromCentimeters(40)),
        Trays = [new Tray("tray", "Oven tray", Length.FromCentimeters(53), Length.FromCentimeters(32.5), 3)],
        Goal = new PlanGoal.FillPot(),
        Schedule = new PlanSchedule { StartAt = Morning },
    };

    public static PlanRequest Litres { get; } = FillPot with { Goal = new PlanGoal.MakeVolume(Volume.FromLiters(3)) };

    /// <summary>Some three potfuls, with two pots and hobs.</summary>
    public static PlanRequest TooMuch { get; } = FillPot with { Goal = new PlanGoal.MakeVolume(Volume.FromLiters(12)), PotCount = 2, HobCount = 2 };

    public static PlanRequest Night { get; } = FillPot with
    {
        Schedule = new PlanSchedule { StartAt = Morning.AddHours(10), Night = NightPlan.OvenHold },
    };
}
