using Stockwright.Cooking;
using Stockwright.Measures;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Web.Features.Cooking.Stove;

/// <summary>What the cook should find now, beside the field it is typed into.</summary>
internal static class ExpectedText
{
    public static string Level(StoveView view) => view.Course.Pot is { } pot
        ? $"You should find about {StoveText.Level(pot.BelowRim.Central, view.Units)} now, likely {StoveText.Level(pot.BelowRim, view.Units)}."
        : "Before any water is added.";

    public static string Water(StoveView view)
    {
        if (view.Course.Pot is not { } pot)
        {
            return "";
        }

        PlanRequest request = view.Course.Batch.Planned.Request;
        Length line = view.Course.Batch.Planned.Fit.FillLineFromRim;
        Length now = pot.BelowRim.Central;
        List<string> words = [];
        if (PotRoom.Between(request.Pot, pot.HeapBelowRim, now) is { } cover)
        {
            words.Add($"About {KitchenFormat.Text(cover, view.Units)} covers the solids again.");
        }

        if (PotRoom.Between(request.Pot, line, now) is { } full)
        {
            words.Add($"About {KitchenFormat.Text(full, view.Units)} brings it to the line, {StoveText.Level(line, view.Units)} below the rim.");
        }

        return words.Count > 0 ? string.Join(' ', words) : pot.IsUncovered ? "The solids stand out a little: hot water, a cup at a time, until they are covered." : "Nothing is needed now.";
    }
}
