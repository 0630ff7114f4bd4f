using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What a vessel cannot do, said beside the field it belongs to.</summary>
internal static class VesselChecks
{
    /// <summary>A slow cooker and an oven are not worth it for a shorter simmer (common practice, no source).</summary>
    public static readonly TimeSpan ShortestLeftAlone = TimeSpan.FromHours(1);

    /// <summary>What is drawn cooler than this is spoilt just under the boil (estimate).</summary>
    private static readonly Temperature CoolestSlow = Temperature.FromDegreesCelsius(85);

    public static void Check(PlanRequest request, List<InputProblem> problems)
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

    private static void CheckSlowCooker(PlanRequest request, List<InputProblem> problems)
    {
        if (request.Setting == SlowCookerSetting.Warm)
        {
            problems.Add(new("slow-setting", $"The warm setting only keeps hot what is cooked, at about {KitchenFormat.Both(OwnHeat.Warm)}: it does not heat a cold pot through in time. Choose low or high."));
        }

        if (request.Lid.Kind != LidKind.On)
        {
            problems.Add(new("lid", "A slow cooker cooks with its lid on: without it, it does not get hot enough. Set the lid on."));
        }

        if (request.SimmerTemperature is not null)
        {
            problems.Add(new("simmer", "A slow cooker finds its own temperature, just under the boil: leave this empty."));
        }

        if (!IsPlain(request.Recipe) || request.Recipe.Stages[0].Target < CoolestSlow)
        {
            problems.Add(new("recipe", "A slow cooker only goes slowly to just under the boil: what is made in steps, drawn cooler, boiled hard or boiled down is made in an open pot."));
        }
        else if (Simmer(request) < ShortestLeftAlone)
        {
            problems.Add(new("hours", "A slow cooker takes hours to get hot, and this is too short for it. Give it at least 1 h at the simmer, 6 to 10 h for bones, or make it in an open pot on the hob."));
        }
    }

    private static void CheckOven(PlanRequest request, List<InputProblem> problems)
    {
        if (request.Pot.Kind != PotKind.Open)
        {
            problems.Add(new("in-oven", "Only an ordinary pot goes into the oven, never a pressure cooker, a slow cooker or a kettle: choose another pot, or do without the oven."));
            return;
        }

        if (request.Oven is not { } oven)
        {
            problems.Add(new("in-oven", "This kitchen has no oven: add it to the kitchen, or simmer on the hob."));
        }
        else if (request.Pot.BrimDiameter.Meters > Math.Min(oven.ShelfLength.Meters, oven.ShelfWidth.Meters))
        {
            problems.Add(new("in-oven", $"This pot is {KitchenFormat.Both(request.Pot.BrimDiameter)} across, too wide for the oven's shelf of {KitchenFormat.Both(oven.ShelfLength)} by {KitchenFormat.Both(oven.ShelfWidth)}: take a narrower pot, or simmer on the hob."));
        }

        if (!IsPlain(request.Recipe))
        {
            problems.Add(new("in-oven", "In the oven it only simmers: what is made in steps, boiled hard or boiled down stays on the hob."));
        }
        else if (Simmer(request) < ShortestLeftAlone)
        {
            problems.Add(new("in-oven", "This simmers for less than an hour: that is done on the hob before the oven pays. Simmer on the hob, or give it 1 h or more."));
        }
    }

    /// <summary>One simmer that is held, and nothing else.</summary>
    private static bool IsPlain(StockRecipe recipe) => recipe.Stages is [{ IsRolling: false, ReducesTo: null, ClimbsSlowly: false, LiftsOut: false }];

    private static TimeSpan Simmer(PlanRequest request) => request.SimmerTime ?? request.Recipe.Stages[request.Recipe.MainStage].Time;
}
