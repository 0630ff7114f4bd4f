using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What a vessel cannot do, told with the part of the request it belongs to.</summary>
internal static class VesselChecks
{
    /// <summary>A slow cooker and an oven are not worth it for a shorter simmer (common practice, no source).</summary>
    public static readonly TimeSpan ShortestLeftAlone = TimeSpan.FromHours(1);

    /// <summary>What is drawn cooler than this is spoilt just under the boil (estimate).</summary>
    private static readonly Temperature CoolestSlow = Temperature.FromDegreesCelsius(85);

    public static void Check(PlanRequest request, List<Problem> problems)
    {
        problems.AddRange(PotRules.Problems(request.Pot));
        if (request.Pot.Kind == PotKind.SlowCooker)
        {
            CheckSlowCooker(request, problems);
        }

        if (request.SimmersInOven)
        {
            CheckOven(request, problems);
        }
    }

    private static void CheckSlowCooker(PlanRequest request, List<Problem> problems)
    {
        problems.Require(request.Setting != SlowCookerSetting.Warm, PlanPart.SlowSetting, ProblemCode.SlowOnWarm, Figure.Of(OwnHeat.Warm));
        problems.Require(request.Lid.Kind == LidKind.On, PlanPart.Lid, ProblemCode.SlowLidOff);
        problems.Require(request.SimmerTemperature is null, PlanPart.SimmerTemperature, ProblemCode.SlowTemperature);
        if (!IsPlain(request.Recipe) || request.Recipe.Stages[0].Target < CoolestSlow)
        {
            problems.Add(new(PlanPart.Recipe, ProblemCode.SlowTakesOneSimmer));
        }
        else if (Simmer(request) < ShortestLeftAlone)
        {
            problems.Add(new(PlanPart.SimmerTime, ProblemCode.SlowTooShort, Figure.Of(ShortestLeftAlone)));
        }
    }

    private static void CheckOven(PlanRequest request, List<Problem> problems)
    {
        if (request.Pot.Kind != PotKind.Open)
        {
            problems.Add(new(PlanPart.SimmersInOven, ProblemCode.OvenTakesOpenPots));
            return;
        }

        if (request.Oven is not { } oven)
        {
            problems.Add(new(PlanPart.SimmersInOven, ProblemCode.NoOven));
        }
        else if (request.Pot.BrimDiameter.Meters > Math.Min(oven.ShelfLength.Meters, oven.ShelfWidth.Meters))
        {
            problems.Add(new(
                PlanPart.SimmersInOven, ProblemCode.PotTooWideForOven, Figure.Of(request.Pot.BrimDiameter), Figure.Of(oven.ShelfLength), Figure.Of(oven.ShelfWidth)));
        }

        if (!IsPlain(request.Recipe))
        {
            problems.Add(new(PlanPart.SimmersInOven, ProblemCode.OvenTakesOneSimmer));
        }
        else if (Simmer(request) < ShortestLeftAlone)
        {
            problems.Add(new(PlanPart.SimmersInOven, ProblemCode.OvenTooShort));
        }
    }

    /// <summary>One simmer that is held, and nothing else.</summary>
    private static bool IsPlain(StockRecipe recipe) => recipe.Stages is [{ IsRolling: false, ReducesTo: null, ClimbsSlowly: false, LiftsOut: false }];

    private static TimeSpan Simmer(PlanRequest request) => request.SimmerTime ?? request.Recipe.Stages[request.Recipe.MainStage].Time;
}
