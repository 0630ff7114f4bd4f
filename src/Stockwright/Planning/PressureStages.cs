using Stockwright.Recipes;
using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>
/// The course of a pot under pressure: to the boil open, where it is skimmed; locked and held; heat off until the pressure is gone; open again
/// for what goes in late. Nothing is done to the pot between lock and opening. What the recipe adds after the first skim goes in after the
/// last one, before the lock; what it adds before the end goes in after opening and simmers in the open pot for the time the recipe gives it;
/// a time at least as long as the whole simmer means from the start, so that goes in before the lock too.
/// </summary>
internal static class PressureStages
{
    /// <summary>Stage in which it boils open and is skimmed.</summary>
    public const int Boil = 0;

    /// <summary>Stage in which it is locked.</summary>
    public const int Pressure = 1;

    /// <summary>Stage in which the pressure falls.</summary>
    public const int Release = 2;

    /// <summary>Stage after opening; there only when something goes in then.</summary>
    public const int Late = 3;

    private const double FirstSkim = 60;
    private const double SecondSkim = 5 * 60;
    private const double LastAdd = 8 * 60;

    public static List<StageScript> Write(PlanRequest request, BatchLoad load, double pressureCelsius, double seconds, double boilingCelsius)
    {
        List<LoadItem> joining = [.. load.Items.Where(item => item.Charge is not null && item.Line.Joins != JoinMoment.Start)];
        List<LoadItem> late = [.. joining.Where(item => IsLate(item.Line, seconds))];
        List<PotAction> before = !request.Recipe.Kind.IsSkimmed()
            ? []
            : [new PotAction(FirstSkim, PotActionKind.Skim), new PotAction(SecondSkim, PotActionKind.Skim)];
        LoadItem[] early = [.. joining.Except(late)];
        if (early.Length > 0)
        {
            before.Add(new PotAction(LastAdd, PotActionKind.Add, [.. early.Select(item => item.Charge!)], Label: ScriptWriter.Names(early)));
        }

        List<StageScript> stages =
        [
            new StageScript(boilingCelsius, StepTimes.OpenBoil.TotalSeconds, Climbs: false, LiftsOut: false, before) { Cover = StageCover.Open },
            new StageScript(pressureCelsius, seconds, Climbs: false, LiftsOut: false, []) { Cover = StageCover.Locked },
            new StageScript(boilingCelsius, StepTimes.Open.TotalSeconds, Climbs: false, LiftsOut: false, []) { Cover = StageCover.Falling },
        ];
        if (late.Count > 0)
        {
            double longest = late.Max(item => LateSeconds(item.Line));
            stages.Add(new StageScript(
                Math.Min(request.Recipe.Stages[0].Target.DegreesCelsius, boilingCelsius),
                longest,
                Climbs: false,
                LiftsOut: false,
                [.. late.GroupBy(item => longest - LateSeconds(item.Line)).OrderBy(group => group.Key)
                    .Select(group => new PotAction(group.Key, PotActionKind.Add, [.. group.Select(item => item.Charge!)], Label: ScriptWriter.Names(group)))])
            {
                Cover = StageCover.Open,
            });
        }

        return stages;
    }

    /// <summary>True for what goes in after opening.</summary>
    internal static bool IsLate(RecipeLine line, double seconds) => line.Joins == JoinMoment.BeforeEnd && LateSeconds(line) < seconds;

    private static double LateSeconds(RecipeLine line) => (line.BeforeEnd ?? TimeSpan.FromHours(1)).TotalSeconds;
}
