using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Vegetables go in before herbs, however short the simmer.</summary>
public sealed class JoinOrderTests
{
    public static TheoryData<string> Recipes => [.. StandardRecipes.Book.Recipes.Where(recipe => !recipe.BoilsDown).Select(recipe => recipe.Id)];

    // By hand. 4 h: after an hour, and an hour before the end. 70 min: a third of it is 23 min 20 s, and an hour before the end, after
    // 10 min, would be sooner. 90 min: both after half an hour.
    [Theory]
    [InlineData("brown-chicken", 240, 60, 180)]
    [InlineData("brown-chicken", 90, 30, 30)]
    [InlineData("brown-chicken", 70, 23.333, 23.333)]
    [InlineData("whole-chicken-broth", 30, 10, 10)]
    [InlineData("star-anise-beef", 60, 20, 20)]
    public void Herbs_wait_for_the_vegetables(string recipe, double minutes, double onion, double herbs)
    {
        (double Minutes, LoadItem Item)[] joined = [.. Joined(PlanRequests.For(recipe), minutes)];
        Assert.All(joined.Where(one => one.Item.Line.Role == LineRole.Mirepoix), one => Assert.Equal(onion, one.Minutes, 0.01));
        (double Minutes, LoadItem Item)[] late = [.. joined.Where(one => one.Item.Line is { Role: LineRole.Aromatics, Joins: JoinMoment.BeforeEnd })];
        Assert.NotEmpty(late);
        Assert.All(late, one => Assert.Equal(herbs, one.Minutes, 0.01));
    }

    [Theory]
    [MemberData(nameof(Recipes))]
    public void Nothing_that_flavours_goes_in_before_the_mirepoix_it_follows(string recipe)
    {
        PlanRequest all = PlanRequests.For(recipe);
        all = all with { WithOptional = all.Recipe.Lines.Where(line => line.IsOptional).Select(line => line.IngredientId).ToHashSet(StringComparer.Ordinal) };
        foreach (MirepoixTime? when in (MirepoixTime?[])[null, MirepoixTime.Early, MirepoixTime.LastHour])
        {
            for (double minutes = 10; minutes <= 24 * 60; minutes += minutes < 180 ? 5 : 60)
            {
                (double Minutes, LoadItem Item)[] joined = [.. Joined(all with { Mirepoix = when }, minutes)];
                foreach ((double at, LoadItem mirepoix) in joined.Where(one => one.Item.Line.Role == LineRole.Mirepoix))
                {
                    Assert.All(
                        joined.Where(one => one.Item.Line.Role is LineRole.Aromatics or LineRole.Acid or LineRole.Seasoning && Follows(one.Item.Line, mirepoix.Line)),
                        one => Assert.True(one.Minutes >= at - 1e-6, $"{minutes} min: {one.Item.Ingredient.Id} at {one.Minutes}, {mirepoix.Ingredient.Id} at {at}"));
                }
            }
        }
    }

    /// <summary>In the order a long simmer has: after the first skim, then so long before the end.</summary>
    private static bool Follows(RecipeLine line, RecipeLine mirepoix) => (mirepoix.Joins, line.Joins) switch
    {
        (JoinMoment.Start, _) or (JoinMoment.AfterFirstSkim, JoinMoment.AfterFirstSkim or JoinMoment.BeforeEnd) => true,
        (JoinMoment.BeforeEnd, JoinMoment.BeforeEnd) => line.BeforeEnd <= mirepoix.BeforeEnd,
        _ => false,
    };

    /// <summary>What goes in later, and when on the clock of its stage.</summary>
    private static IEnumerable<(double Minutes, LoadItem Item)> Joined(PlanRequest request, double minutes)
    {
        BatchLoad load = BatchLoad.PerLitre(request).Scaled(4);
        ScriptWriter writer = new(request, request.Recipe.Stages[request.Recipe.MainStage].Target, TimeSpan.FromMinutes(minutes), Temperature.FromDegreesCelsius(100));
        foreach (PotAction action in writer.Write(load, 5, 0.1).Stages.SelectMany(stage => stage.Actions).Where(action => action.Kind == PotActionKind.Add))
        {
            foreach (LoadItem item in load.Items.Where(item => item.Charge is not null && action.Solids!.Contains(item.Charge)))
            {
                yield return (action.AtSeconds / 60, item);
            }
        }
    }
}
