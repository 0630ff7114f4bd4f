using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Measures;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Web.Features.Recipes;

/// <summary>Recipes in words.</summary>
internal static class RecipeText
{
    /// <summary>What is done to a line and when it goes in, for instance <c>roasted, broken up, in for the last 1 h</c>.</summary>
    public static string Doing(RecipeLine line, StockRecipe recipe)
    {
        List<string> words = [];
        if (line.Cut.Length > 0)
        {
            words.Add(line.Cut);
        }

        if (line.Preparation != Preparation.None)
        {
            words.Add(RecipeFields.Prepared.LabelOf(line.Preparation));
        }

        switch (line.Joins)
        {
            case JoinMoment.AfterFirstSkim:
                words.Add("in when the first scum is off");
                break;
            case JoinMoment.BeforeEnd when line.BeforeEnd is { } before:
                words.Add($"in for the last {KitchenFormat.Text(before)}");
                break;
            case JoinMoment.WithStage when line.Stage >= 0 && line.Stage < recipe.Stages.Count:
                words.Add($"in for: {recipe.Stages[line.Stage].Name}");
                break;
        }

        if (line.IsOptional)
        {
            words.Add("may be left out");
        }

        return string.Join(", ", words);
    }

    /// <summary>What is left of a stock boiled down: <c>10 %, usual 8 to 12 %</c>.</summary>
    public static string Share(Stated<Ratio> share) => string.Create(
        CultureInfo.InvariantCulture, $"{share.Value.Percent:0} %, usual {share.Low.Percent:0} to {share.High.Percent:0} %,");

    public static string Times(TimeSpan shortest, TimeSpan time, TimeSpan longest) => shortest == longest
        ? KitchenFormat.Text(time)
        : $"{KitchenFormat.Text(time)}, usual {KitchenFormat.Text(shortest)} to {KitchenFormat.Text(longest)}";
}
