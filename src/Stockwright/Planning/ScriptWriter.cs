using Stockwright.Kitchen;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>Turns recipe, load and wishes into what is done to the pot, second by second.</summary>
internal sealed class ScriptWriter
{
    /// <summary>The oven keeps a covered pot at about this, C (common practice: 90 to 105 C oven).</summary>
    public const double OvenHoldCelsius = 93;

    private static readonly double[] LongSkims = [5 * 60, 15 * 60, 30 * 60, 45 * 60];
    private static readonly double[] ShortSkims = [5 * 60, 15 * 60];

    private readonly PlanRequest request;
    private readonly double targetCelsius;
    private readonly double mainSeconds;
    private readonly double boilingCelsius;
    private readonly int mainStage;

    /// <summary>Prepares to write scripts.</summary>
    /// <param name="request">The request.</param>
    /// <param name="target">Temperature of the main stage.</param>
    /// <param name="simmer">Time of the main stage.</param>
    /// <param name="boiling">Where water boils in the open here.</param>
    public ScriptWriter(PlanRequest request, Temperature target, TimeSpan simmer, Temperature boiling)
    {
        boilingCelsius = boiling.DegreesCelsius;
        this.request = request;
        targetCelsius = target.DegreesCelsius;
        mainSeconds = simmer.TotalSeconds;
        mainStage = request.Recipe.MainStage;
    }

    /// <summary>Writes the script for a load and its water.</summary>
    public SimmerScript Write(BatchLoad load, double waterKilograms, double heldMetres, IReadOnlyList<NightWindow>? nights = null, TopUpRule? topUp = null)
    {
        List<StageScript> stages = request.IsUnderPressure ? PressureStages.Write(request, load, targetCelsius, mainSeconds, boilingCelsius) : [];
        for (int i = 0; !request.IsUnderPressure && i < request.Recipe.Stages.Count; i++)
        {
            SimmerStage stage = request.Recipe.Stages[i];
            bool main = i == mainStage;
            double seconds = main ? MainSeconds(nights ?? []) : stage.Time.TotalSeconds;
            stages.Add(new StageScript(
                main ? targetCelsius : stage.Target.DegreesCelsius,
                seconds,
                stage.ClimbsSlowly,
                stage.LiftsOut,
                Actions(load, i, seconds, nights ?? []))
            {
                IsRolling = stage.IsRolling,
                ReducesTo = stage.ReducesTo?.Value.DecimalFractions,
            });
        }

        GiveKeys(stages);
        double liquid = waterKilograms + load.Items.Sum(item => item.LiquidKilograms);
        int skims = Math.Max(1, stages.Sum(stage => stage.Actions.Count(action => action.Kind == PotActionKind.Skim)));
        return new SimmerScript(
            load.StartSolids(),
            liquid,
            request.Site.TapWater.DegreesCelsius,
            stages,
            topUp ?? request.TopUp,
            request.Site.TapWater.DegreesCelsius,
            heldMetres,
            request.SimmersInOven ? targetCelsius : OvenHoldCelsius,
            request.Assumptions.Skimmed.Value.DecimalFractions / skims)
        {
            FilmGrows = true,
            HeatsUpCovered = request.HeatsUpCovered || request.Pot.Kind == PotKind.SlowCooker,
        };
    }

    /// <summary>Every action gets the key of the step it becomes, so that the step is known again when the plan is worked out anew from a log.</summary>
    private static void GiveKeys(List<StageScript> stages)
    {
        Dictionary<StepKind, int> counts = [];
        for (int i = 0; i < stages.Count; i++)
        {
            stages[i] = stages[i] with
            {
                Actions = [.. stages[i].Actions.Select(action => action with { Key = StepBuilder.NextKey(counts, StepBuilder.KindOf(action.Kind)) })],
            };
        }
    }

    /// <summary>Time of the main stage; a pot in the oven overnight stays there until the cook is up.</summary>
    private double MainSeconds(IReadOnlyList<NightWindow> nights) => nights.Count > 0 && nights[^1] is { Night: NightPlan.OvenHold } last
        ? Math.Max(mainSeconds, last.FromSeconds + last.Seconds)
        : mainSeconds;

    /// <summary>When a line goes in, on the simmer's clock of its stage, seconds.</summary>
    public static double JoinSeconds(RecipeLine line, double stageSeconds) => line.Joins switch
    {
        JoinMoment.AfterFirstSkim => Math.Min(3600, stageSeconds / 3),
        JoinMoment.BeforeEnd => Math.Max(0, stageSeconds - (line.BeforeEnd ?? TimeSpan.FromHours(1)).TotalSeconds),
        _ => 0,
    };

    /// <summary>
    /// When a line goes in beside the others of its stage, seconds. In a simmer too short for its moments "an hour before the end" is sooner
    /// than "after the first skim": what flavours then waits for the mirepoix.
    /// </summary>
    private static double JoinSeconds(RecipeLine line, double stageSeconds, double mirepoixSeconds) =>
        line is { Joins: JoinMoment.BeforeEnd, Role: LineRole.Aromatics or LineRole.Acid or LineRole.Seasoning or LineRole.Trimmings }
            ? Math.Max(JoinSeconds(line, stageSeconds), mirepoixSeconds)
            : JoinSeconds(line, stageSeconds);

    private List<PotAction> Actions(BatchLoad load, int stage, double seconds, IReadOnlyList<NightWindow> nights)
    {
        List<PotAction> actions = [];
        LoadItem[] joining = [.. load.Items.Where(item => item.Charge is not null && item.Line.Joins != JoinMoment.Start && StageOf(item.Line) == stage)];
        double mirepoix = joining.Where(item => item.Line is { Role: LineRole.Mirepoix, Joins: JoinMoment.AfterFirstSkim })
            .Select(item => JoinSeconds(item.Line, seconds)).DefaultIfEmpty(0).Max();
        actions.AddRange(joining
            .GroupBy(item => JoinSeconds(item.Line, seconds, mirepoix))
            .Select(group => new PotAction(group.Key, PotActionKind.Add, [.. group.Select(item => item.Charge!)], Label: Names(group))));
        if (stage == mainStage && request.Pot.Kind == PotKind.SlowCooker)
        {
            AddLastSkim(actions, seconds);
        }
        else if (stage == mainStage && !request.Recipe.BoilsDown)
        {
            AddSkims(actions, seconds);
            AddChecks(actions, seconds);
            foreach (NightWindow night in nights)
            {
                Sleep(actions, night, seconds);
            }

            if (request.SimmersInOven)
            {
                OvenStages.PutIn(actions, seconds);
            }
        }

        // A pot in the oven comes out before anything else is done to it.
        return [.. actions.OrderBy(action => action.AtSeconds).ThenBy(action => action.Kind == PotActionKind.HoldEnds ? -1 : (int)action.Kind)];
    }

    /// <summary>The name without its kind: "thyme, dried" is thyme once it is on the scale.</summary>
    internal static string PlainName(Larder.Ingredient ingredient) => ingredient.Name.Split(',')[0].ToLowerInvariant();

    internal static string Names(IEnumerable<LoadItem> items) =>
        string.Join(", ", items.OrderByDescending(item => item.RawKilograms).Select(item => PlainName(item.Ingredient)));

    private int StageOf(RecipeLine line) => line.Joins == JoinMoment.WithStage ? line.Stage : mainStage;

    /// <summary>A slow cooker keeps its lid until it is done.</summary>
    private void AddLastSkim(List<PotAction> actions, double seconds)
    {
        if (request.Recipe.Kind.IsSkimmed())
        {
            actions.Add(new PotAction(Math.Max(0, seconds - StepTimes.Skim.TotalSeconds), PotActionKind.Skim));
        }
    }

    private void AddSkims(List<PotAction> actions, double seconds)
    {
        if (!request.Recipe.Kind.IsSkimmed())
        {
            return;
        }

        double[] skims = seconds >= 2 * 3600 ? LongSkims : ShortSkims;
        actions.AddRange(skims.Where(at => at < seconds - 60).Select(at => new PotAction(at, PotActionKind.Skim)));
    }

    /// <summary>So near the end the level is looked at, and let be.</summary>
    private const double LastLookSeconds = 40 * 60;

    private void AddChecks(List<PotAction> actions, double seconds)
    {
        if (request.Recipe.Kind == StockKind.Consomme)
        {
            // Whatever is poured or stirred in breaks the raft.
            return;
        }

        double interval = request.CheckInterval.TotalSeconds;
        for (double at = Math.Min(3600, interval); at <= seconds - (15 * 60); at += interval)
        {
            // Nobody waters down a stock that is about to be strained (common practice, no source).
            actions.Add(new PotAction(at, PotActionKind.Check) { AddsNothing = request.TopUp == TopUpRule.KeepToLine && at > seconds - LastLookSeconds });
        }
    }

    private static void Sleep(List<PotAction> actions, NightWindow night, double seconds)
    {
        double until = Math.Min(night.FromSeconds + night.Seconds, seconds);
        if (night.Night == NightPlan.StopAndCool)
        {
            actions.Add(new PotAction(night.FromSeconds, PotActionKind.Pause, PauseSeconds: night.Seconds));
            return;
        }

        if (night.Night == NightPlan.OvenHold)
        {
            // Nobody comes by: no checks and no skimming; what was to go in goes in after waking, or before bed when that is too late.
            actions.RemoveAll(action => action.Kind is PotActionKind.Check or PotActionKind.Skim && Within(action, night, until));
            for (int i = 0; i < actions.Count; i++)
            {
                if (actions[i].Kind == PotActionKind.Add && Within(actions[i], night, until))
                {
                    actions[i] = actions[i] with { AtSeconds = until <= seconds - (30 * 60) ? until : night.FromSeconds };
                }
            }

            actions.Add(new PotAction(night.FromSeconds, PotActionKind.HoldBegins));
            actions.Add(new PotAction(until, PotActionKind.HoldEnds));
            if (until < seconds - (15 * 60))
            {
                actions.Add(new PotAction(until, PotActionKind.Check));
            }
        }
    }

    private static bool Within(PotAction action, NightWindow night, double until) =>
        action.AtSeconds > night.FromSeconds && action.AtSeconds < until;
}
