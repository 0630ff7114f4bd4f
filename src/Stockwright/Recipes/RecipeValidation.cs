using System.Globalization;
using Stockwright.Larder;

namespace Stockwright.Recipes;

/// <summary>Looks a recipe over before it is planned from or kept.</summary>
public static class RecipeValidation
{
    /// <summary>Ends of what a stock is boiled down to: below a thirtieth it is dry and burns.</summary>
    private const double LeastLeft = 0.03;
    private const double MostLeft = 0.95;

    /// <summary>Lists what is wrong, in the cook's words; empty when the recipe can be planned from.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="larder">The larder its lines are looked up in.</param>
    /// <returns>The field, for instance <c>Lines[2].PerLitre</c>, and the message.</returns>
    public static IReadOnlyList<(string Field, string Message)> Check(StockRecipe recipe, LarderTable larder)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        ArgumentNullException.ThrowIfNull(larder);
        List<(string Field, string Message)> found = [];
        if (string.IsNullOrWhiteSpace(recipe.Name))
        {
            found.Add(("Name", "The recipe needs a name."));
        }

        CheckLines(recipe, larder, found);
        CheckWetting(recipe, larder, found);
        if (!(recipe.WaterLitresPerLitre.Value > 0) || recipe.WaterLitresPerLitre.Value > 20)
        {
            found.Add(("WaterLitresPerLitre", "The water for a litre of stock must be more than nothing and at most 20 litres."));
        }

        CheckStages(recipe, found);
        if (recipe.Roast is { } roast)
        {
            CheckTimes("Roast", "Roasting", roast.ShortestTime, roast.Time, roast.LongestTime, found);
            if (!(roast.OvenTemperature >= RoastSetting.OvenRange.Least && roast.OvenTemperature <= RoastSetting.OvenRange.Most))
            {
                found.Add(("Roast.OvenTemperature", "The oven must be between 95 and 255 °C (200 and 490 °F)."));
            }
        }

        if (recipe.Blanch is { } blanch)
        {
            CheckTime("Blanch.Time", "Blanching", blanch.Time, found);
        }

        if (recipe.Soak is { } soak)
        {
            CheckTime("Soak", "Soaking", soak, found);
        }

        return found;
    }

    private static void CheckLines(StockRecipe recipe, LarderTable larder, List<(string Field, string Message)> found)
    {
        if (recipe.Lines.Count == 0 && recipe.Wetting is not null)
        {
            return;
        }

        if (recipe.Lines.Count == 0)
        {
            found.Add(("Lines", "The recipe has nothing in it yet: add at least one ingredient."));
            return;
        }

        if (recipe.Wetting is null && recipe.Lines.All(line => line.IsOptional))
        {
            found.Add(("Lines", "Every ingredient is marked as optional: at least one must stay."));
        }

        for (int index = 0; index < recipe.Lines.Count; index++)
        {
            RecipeLine line = recipe.Lines[index];
            string field = $"Lines[{index.ToString(CultureInfo.InvariantCulture)}]";
            if (!larder.TryFind(line.IngredientId, out Ingredient? ingredient))
            {
                found.Add(($"{field}.IngredientId", $"There is no '{line.IngredientId}' in the larder."));
            }

            CheckLine(recipe, line, field, ingredient?.Name ?? line.IngredientId, found);
        }
    }

    private static void CheckLine(StockRecipe recipe, RecipeLine line, string field, string name, List<(string Field, string Message)> found)
    {
        if (!(line.PerLitre.Value >= RecipeLine.PerLitreRange.Least && line.PerLitre.Value <= RecipeLine.PerLitreRange.Most))
        {
            found.Add(($"{field}.PerLitre", $"{name}: the amount for a litre of stock must be more than nothing and at most 10 kg."));
        }

        string? lacking = line.Preparation switch
        {
            Preparation.Roast when recipe.Roast is null => $"{name} is to be roasted, but the recipe has no oven setting.",
            Preparation.Blanch when recipe.Blanch is null => $"{name} is to be blanched, but the recipe has no blanching time.",
            Preparation.Soak when recipe.Soak is null => $"{name} is to be soaked, but the recipe has no soaking time.",
            _ => null,
        };
        if (lacking is not null)
        {
            found.Add(($"{field}.Preparation", lacking));
        }

        if (line.Joins == JoinMoment.BeforeEnd)
        {
            if (line.BeforeEnd is not { } before)
            {
                found.Add(($"{field}.BeforeEnd", $"{name}: say how long before the end it goes in."));
            }
            else
            {
                CheckTime($"{field}.BeforeEnd", name, before, found);
            }
        }

        int stage = line.Joins == JoinMoment.WithStage ? line.Stage : recipe.MainStage;
        if (line.Joins is JoinMoment.BeforeEnd or JoinMoment.AfterFirstSkim && recipe.Stages.ElementAtOrDefault(stage) is { ReducesTo: not null })
        {
            found.Add(($"{field}.Joins", $"{name} goes in by the clock, but this stock boils down until so much is left: nobody knows beforehand how long that takes. Put it in at the start."));
        }

        if (line.Joins == JoinMoment.WithStage && (line.Stage < 0 || line.Stage >= recipe.Stages.Count))
        {
            found.Add(($"{field}.Stage", $"{name} goes in with a step the recipe does not have."));
        }
    }

    private static void CheckWetting(StockRecipe recipe, LarderTable larder, List<(string Field, string Message)> found)
    {
        if (recipe.Wetting is { } wetting && !(larder.TryFind(wetting, out Ingredient? liquid) && liquid.Group == IngredientGroup.Liquid))
        {
            found.Add(("Wetting", $"The pot is to be filled with '{wetting}', which is not among the liquids of the larder."));
        }
    }

    private static void CheckStages(StockRecipe recipe, List<(string Field, string Message)> found)
    {
        if (recipe.Stages.Count == 0)
        {
            found.Add(("Stages", "The recipe needs at least one simmer."));
        }

        for (int index = 0; index < recipe.Stages.Count; index++)
        {
            SimmerStage stage = recipe.Stages[index];
            string field = $"Stages[{index.ToString(CultureInfo.InvariantCulture)}]";
            if (!(stage.Least <= stage.Target && stage.Target <= stage.Most))
            {
                found.Add(($"{field}.Target", $"{stage.Name}: the temperatures are the wrong way round; lowest, aim and highest must rise."));
            }

            if (stage.Least < SimmerStage.TemperatureRange.Least || stage.Most > SimmerStage.TemperatureRange.Most)
            {
                found.Add(($"{field}.Target", $"{stage.Name}: the pot must be between 20 and 125 °C."));
            }

            CheckTimes(field, stage.Name, stage.ShortestTime, stage.Time, stage.LongestTime, found);
            if (stage.ReducesTo is { } share && !(share.Low.DecimalFractions >= LeastLeft && share.High.DecimalFractions <= MostLeft))
            {
                found.Add(($"{field}.ReducesTo", $"{stage.Name}: between 3 and 95 % of the liquid must be left."));
            }

            if (stage.ReducesTo is not null && stage.ClimbsSlowly)
            {
                found.Add(($"{field}.ReducesTo", $"{stage.Name}: it cannot climb slowly and boil down at once."));
            }
        }
    }

    private static void CheckTimes(string field, string what, TimeSpan shortest, TimeSpan time, TimeSpan longest, List<(string Field, string Message)> found)
    {
        if (!(shortest <= time && time <= longest))
        {
            found.Add(($"{field}.Time", $"{what}: the times are the wrong way round; shortest, aim and longest must rise."));
        }

        CheckTime($"{field}.ShortestTime", what, shortest, found, allowZero: true);
        CheckTime($"{field}.Time", what, time, found);
        CheckTime($"{field}.LongestTime", what, longest, found);
    }

    private static void CheckTime(string field, string what, TimeSpan time, List<(string Field, string Message)> found, bool allowZero = false)
    {
        if (time < TimeSpan.Zero || (time == TimeSpan.Zero && !allowZero) || time > SimmerStage.TimeRange.Most)
        {
            found.Add((field, $"{what}: the time must be more than nothing and at most 72 hours."));
        }
    }
}
