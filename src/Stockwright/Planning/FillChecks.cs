using Stockwright.Measures;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What must hold of how full the pot is asked to be, and of how many pots and hobs there are.</summary>
internal static class FillChecks
{
    /// <summary>Most pots one cook keeps an eye on at once.</summary>
    public const int MostAtOnce = 8;

    public static void Check(PlanRequest request, List<InputProblem> problems)
    {
        CheckFill(request, problems);
        CheckCounts(request, problems);
    }

    private static void CheckFill(PlanRequest request, List<InputProblem> problems)
    {
        if (request.FillTo is not { } mark || problems.Count > 0)
        {
            return;
        }

        Length level = mark.LevelIn(request.Pot);
        Length safe = PotFitter.SafeMaximum(request.Pot).Level;
        if (!double.IsFinite(level.Meters) || level > request.Pot.InnerHeight)
        {
            problems.Add(new("fill", $"That is above the rim of this pot. Fill it to {KitchenFormat.Both(request.Pot.InnerHeight - safe)} below the rim at most."));
        }
        else if (level > safe * 1.002)
        {
            problems.Add(new("fill", $"That leaves too little room to boil: fill this pot to {KitchenFormat.Both(request.Pot.InnerHeight - safe)} below the rim at most."));
        }
        else if (level < Length.FromCentimeters(1))
        {
            problems.Add(new("fill", "Fill it to 1 cm (0.4 in) at least: in less it burns."));
        }
    }

    private static void CheckCounts(PlanRequest request, List<InputProblem> problems)
    {
        if (request.PotCount < 1)
        {
            problems.Add(new("pots", "It takes at least one pot."));
        }
        else if (request.PotCount > MostAtOnce)
        {
            problems.Add(new("pots", $"Say up to {MostAtOnce} pots: one cook does not mind more at once."));
        }

        if (request.HobCount < 1)
        {
            problems.Add(new("hobs", "It takes at least one free hob. Without one, plan it for when one is free."));
        }
        else if (request.HobCount > MostAtOnce)
        {
            problems.Add(new("hobs", $"Say up to {MostAtOnce} hobs."));
        }

        if (request.Way == SplitWay.SideBySide && Math.Min(request.PotCount, request.HobCount) == 1)
        {
            problems.Add(new(request.PotCount == 1 ? "pots" : "hobs", "Side by side takes two such pots and two free hobs at least. One after the other, or with less water, one does."));
        }
    }
}
