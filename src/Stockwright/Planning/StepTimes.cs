using Stockwright.Recipes;

namespace Stockwright.Planning;

/// <summary>How long the handwork takes (common practice, no source): one cook, without hurry.</summary>
internal static class StepTimes
{
    public static readonly TimeSpan Gather = TimeSpan.FromMinutes(15);
    public static readonly TimeSpan LoadTrays = TimeSpan.FromMinutes(5);
    public static readonly TimeSpan Turn = TimeSpan.FromMinutes(5);
    public static readonly TimeSpan DrainAndRinse = TimeSpan.FromMinutes(10);
    public static readonly TimeSpan Fill = TimeSpan.FromMinutes(5);
    public static readonly TimeSpan Sweat = TimeSpan.FromMinutes(10);
    public static readonly TimeSpan FirstScum = TimeSpan.FromMinutes(5);
    public static readonly TimeSpan SwitchOn = TimeSpan.FromMinutes(1);
    public static readonly TimeSpan OvenLift = TimeSpan.FromMinutes(5);
    public static readonly TimeSpan Skim = TimeSpan.FromMinutes(2);
    public static readonly TimeSpan Check = TimeSpan.FromMinutes(3);
    public static readonly TimeSpan Add = TimeSpan.FromMinutes(2);
    public static readonly TimeSpan OpenBoil = TimeSpan.FromMinutes(12);
    public static readonly TimeSpan Lock = TimeSpan.FromMinutes(2);
    public static readonly TimeSpan Open = TimeSpan.FromMinutes(2);
    public static readonly TimeSpan Strain = TimeSpan.FromMinutes(20);
    public static readonly TimeSpan Cool = TimeSpan.FromMinutes(90);
    public static readonly TimeSpan CoolHands = TimeSpan.FromMinutes(15);
    public static readonly TimeSpan Chill = TimeSpan.FromHours(12);
    public static readonly TimeSpan Defat = TimeSpan.FromMinutes(10);
    public static readonly TimeSpan Remelt = TimeSpan.FromMinutes(15);
    public static readonly TimeSpan RemeltHands = TimeSpan.FromMinutes(5);

    /// <summary>Time to stand off the heat before straining, so that it settles and scalds less.</summary>
    public static TimeSpan Stand(StockRecipe recipe) => recipe.Kind switch
    {
        StockKind.KelpAndDriedFish or StockKind.KelpOnly or StockKind.SecondDashi or StockKind.DriedAnchovy or StockKind.DriedMushroom or StockKind.Glace => TimeSpan.FromMinutes(2),
        StockKind.FishFumet or StockKind.Shellfish or StockKind.Vegetable or StockKind.Mushroom or StockKind.CourtBouillon or StockKind.SweetcornCob => TimeSpan.FromMinutes(10),
        _ => TimeSpan.FromMinutes(20),
    };

    /// <summary>Measuring, portioning and labelling.</summary>
    public static TimeSpan Portion(double litres) => TimeSpan.FromMinutes(Math.Clamp(Math.Ceiling(10 + (2 * litres)), 10, 120));
}
