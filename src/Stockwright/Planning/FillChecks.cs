using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What must hold of how full the pot is asked to be, and of how many pots and hobs there are.</summary>
internal static class FillChecks
{
    /// <summary>Most pots one cook keeps an eye on at once.</summary>
    public const int MostAtOnce = 8;

    private static readonly Length LowestFill = Length.FromCentimeters(1);

    public static void Check(PlanRequest request, List<Problem> problems)
    {
        CheckFill(request, problems);
        CheckCounts(request, problems);
    }

    private static void CheckFill(PlanRequest request, List<Problem> problems)
    {
        if (request.FillTo is not { } mark || problems.Count > 0)
        {
            return;
        }

        Length level = mark.LevelIn(request.Pot);
        Length safe = PotFitter.SafeMaximum(request.Pot).Level;
        Figure room = Figure.Of(request.Pot.InnerHeight - safe);
        if (!double.IsFinite(level.Meters) || level > request.Pot.InnerHeight)
        {
            problems.Add(new(PlanPart.FillTo, ProblemCode.FilledOverRim, room));
        }
        else if (level > safe * 1.002)
        {
            problems.Add(new(PlanPart.FillTo, ProblemCode.FilledTooHigh, room));
        }
        else if (level < LowestFill)
        {
            problems.Add(new(PlanPart.FillTo, ProblemCode.FilledTooLow, Figure.Of(LowestFill)));
        }
    }

    private static void CheckCounts(PlanRequest request, List<Problem> problems)
    {
        problems.Require(request.PotCount >= 1, PlanPart.PotCount, ProblemCode.NoPot);
        problems.Require(request.PotCount <= MostAtOnce, PlanPart.PotCount, ProblemCode.TooManyPots, Figure.Of(MostAtOnce));
        problems.Require(request.HobCount >= 1, PlanPart.HobCount, ProblemCode.NoHob);
        problems.Require(request.HobCount <= MostAtOnce, PlanPart.HobCount, ProblemCode.TooManyHobs, Figure.Of(MostAtOnce));
        problems.Require(
            request.Way != SplitWay.SideBySide || Math.Min(request.PotCount, request.HobCount) != 1,
            request.PotCount == 1 ? PlanPart.PotCount : PlanPart.HobCount,
            ProblemCode.SideBySideTakesTwo);
    }
}
