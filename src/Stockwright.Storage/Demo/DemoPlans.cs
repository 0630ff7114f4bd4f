using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Storage.Demo;

/// <summary>Two saved plans of the demonstration kitchen, dated to the lunch that comes next. Invented.</summary>
internal static class DemoPlans
{
    /// <summary>A plan to be saved.</summary>
    /// <param name="Name">What the cook calls it.</param>
    /// <param name="Note">The cook's note.</param>
    /// <param name="Document">What is asked.</param>
    internal sealed record DemoPlan(string Name, string Note, StoredPlan Document);

    /// <summary>The plans, for a Thursday three to nine days after a moment, so that both lie ahead.</summary>
    public static IReadOnlyList<DemoPlan> After(DateTimeOffset now)
    {
        DateOnly soonest = DateOnly.FromDateTime(now.UtcDateTime).AddDays(3);
        DateOnly lunch = soonest.AddDays(((int)DayOfWeek.Thursday - (int)soonest.DayOfWeek + 7) % 7);
        return
        [
            Plan("Thursday lunch: brown chicken", "For the barley soup. Portion in litre tubs.", "brown-chicken", 0, 3.5, lunch.AddDays(-2)),
            Plan("Vegetable stock for the big pot", "Use up the saved trimmings first.", "vegetable", 1, 10, lunch.AddDays(-1)),
        ];
    }

    private static DemoPlan Plan(string name, string note, string recipeId, int pot, double litres, DateOnly day)
    {
        if (!StandardRecipes.Book.TryFind(recipeId, out StockRecipe? recipe))
        {
            throw new InvalidOperationException($"There is no standing recipe '{recipeId}'.");
        }

        TimeZoneInfo zone = TimeZoneInfo.TryFindSystemTimeZoneById(DemoKitchen.Details.TimeZoneId, out TimeZoneInfo? known) ? known : TimeZoneInfo.Utc;
        DateTime nine = day.ToDateTime(new TimeOnly(9, 0));
        PlanRequest request = new()
        {
            Recipe = recipe,
            Larder = StandardLarder.Table,
            Pot = DemoKitchen.Pots[pot],
            OtherPots = [.. DemoKitchen.Pots.Where((_, other) => other != pot)],
            Hob = DemoKitchen.Hobs[0],
            Lid = recipe.Lid,
            Site = DemoKitchen.Details.Site,
            Oven = DemoKitchen.Oven,
            Trays = DemoKitchen.Trays,
            Goal = new PlanGoal.MakeVolume(Volume.FromLiters(litres)),
            Schedule = new PlanSchedule { Zone = zone, StartAt = new DateTimeOffset(nine, zone.GetUtcOffset(nine)) },
        };
        return new DemoPlan(name, note, StoredPlan.Of(request, DemoKitchen.Details.Name));
    }
}
