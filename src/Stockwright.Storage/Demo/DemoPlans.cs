using System.Globalization;
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
    /// <param name="Query">The planner's query, version 1; a test of the web project reads it back.</param>
    /// <param name="Snapshot">What it is worked out from.</param>
    internal sealed record DemoPlan(string Name, string Note, string Query, PlanSnapshot Snapshot);

    /// <summary>The plans, for a Thursday three to nine days after a moment, so that both lie ahead.</summary>
    public static IReadOnlyList<DemoPlan> After(DateTimeOffset now)
    {
        DateOnly soonest = DateOnly.FromDateTime(now.UtcDateTime).AddDays(3);
        DateOnly lunch = soonest.AddDays(((int)DayOfWeek.Thursday - (int)soonest.DayOfWeek + 7) % 7);
        return
        [
            Plan("Thursday lunch: brown chicken", "For the barley soup. Portion in litre tubs.", "brown-chicken", 0, "litres", "3.5", lunch.AddDays(-2)),
            Plan("Vegetable stock for the big pot", "Use up the saved trimmings first.", "vegetable", 1, "litres", "10", lunch.AddDays(-1)),
        ];
    }

    private static DemoPlan Plan(string name, string note, string recipeId, int pot, string goal, string litres, DateOnly day)
    {
        if (!StandardRecipes.Book.TryFind(recipeId, out StockRecipe? recipe))
        {
            throw new InvalidOperationException($"There is no standing recipe '{recipeId}'.");
        }

        string date = day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        string query =
            $"units=metric&recipe={recipeId}&pot={DemoKitchen.Pots[pot].Id}&hob={DemoKitchen.Hobs[0].Id}&goal={goal}&litres={litres}&when=start&date={date}&time=09:00";
        PlanRequest request = new()
        {
            Recipe = recipe,
            Larder = StandardLarder.Table,
            Pot = DemoKitchen.Pots[pot],
            OtherPots = DemoKitchen.Pots,
            Hob = DemoKitchen.Hobs[0],
            Lid = recipe.Lid,
            Site = DemoKitchen.Details.Site,
            Oven = DemoKitchen.Oven,
            Trays = DemoKitchen.Trays,
            Goal = new PlanGoal.MakeVolume(Volume.FromLiters(double.Parse(litres, CultureInfo.InvariantCulture))),
            Schedule = new PlanSchedule { StartAt = new DateTimeOffset(day, new TimeOnly(9, 0), TimeSpan.Zero) },
        };
        return new DemoPlan(name, note, query, PlanSnapshot.Of(request, DemoKitchen.Details.Name, DemoKitchen.Details.TimeZoneId));
    }
}
