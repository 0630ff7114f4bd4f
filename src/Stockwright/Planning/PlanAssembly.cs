using Stockwright.Evidence;
using Stockwright.Measures;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>Puts one plan together: fit, runs, ledger, preparation, timeline.</summary>
internal sealed class PlanAssembly
{
    private readonly PlanRequest request;
    private readonly PotEnvironment environment;
    private readonly BoilingReport boiling;
    private readonly BatchLoad perLitre;
    private readonly ScriptWriter writer;
    private readonly SimmerForecaster forecaster;
    private readonly PotFitter fitter;

    public PlanAssembly(PlanRequest request)
    {
        this.request = request;
        environment = new PotEnvironment(request.Pot, request.Hob, request.Lid, request.Site, Air.PressurePascals(request.Site));
        boiling = BoilingPlanner.Report(request, environment);
        perLitre = BatchLoad.PerLitre(request);
        writer = new ScriptWriter(request, boiling.Reached, boiling.PlannedTime);
        forecaster = new SimmerForecaster(environment, request.Hob, request.Lid, request.Site);
        fitter = new PotFitter(request, writer, forecaster, perLitre);
    }

    public PlanResult Make()
    {
        FittedLoad largest = fitter.Fill();
        (FittedLoad fitted, int rounds) = Fit(largest);
        IReadOnlyList<InputProblem> problems = Impossible(fitted, rounds, largest);
        if (problems.Count > 0)
        {
            return new PlanResult(null, problems);
        }

        RoastPlan? roast = RoastPlanner.Plan(request, fitted.Load);
        BlanchPlan? blanch = RoastPlanner.PlanBlanch(request, fitted.Load, fitter);
        (Timeline timeline, IReadOnlyList<NightWindow> nights) = Schedule(fitted, roast, blanch);
        SimmerScript script = writer.Write(fitted.Load, fitted.WaterKilograms, fitted.LineMetres, nights);
        SimmerRuns runs = forecaster.RunAll(script);
        LedgerWriter ledger = new(request, fitter, fitted, runs);
        Band<Volume> yield = ledger.Yield();
        if (yield.Central.Liters < 0.01)
        {
            return new PlanResult(null, [new("topup", "This pot would boil dry before the time is up: top up, put the lid on, or simmer for less.")]);
        }

        FitReport fit = FitReporter.Report(request, fitted, largest, rounds, runs.Central);
        return new PlanResult(
            new BatchPlan
            {
                Request = request,
                Yield = yield,
                Fit = fit,
                Amounts = Amounts(fitted, runs.Central),
                Roast = roast,
                Blanch = blanch,
                HeatUp = forecaster.HeatUp(writer.Write(fitted.Load, fitted.WaterKilograms, fitted.LineMetres), runs.Central),
                Simmer = forecaster.Write(runs),
                Ledger = ledger.Write(yield),
                Boiling = boiling,
                Timeline = timeline with { NightChoices = NightChooser.Choices(request, timeline, boiling) },
                Notices = Notices.List(request, fit, boiling, runs.Central, yield, fitted.Litres),
                Assumptions = Assumptions.List(request, fitted.Load, boiling),
                Workings = new PlanWorkings(environment, script, fitted, fitter, runs.Central),
            },
            []);
    }

    public Timeline? TimelineOnly()
    {
        (FittedLoad fitted, int rounds) = Fit(fitter.Fill());
        return rounds > BatchPlanner.MostRounds
            ? null
            : Schedule(fitted, RoastPlanner.Plan(request, fitted.Load), RoastPlanner.PlanBlanch(request, fitted.Load, fitter)).Timeline;
    }

    private (FittedLoad Fitted, int Rounds) Fit(FittedLoad largest)
    {
        double wanted = request.Goal switch
        {
            PlanGoal.MakeVolume make => make.Yield.Liters,
            PlanGoal.UseBones bones => BatchLoad.Litres(request, bones),
            _ => largest.Litres,
        };
        if (request.Goal is PlanGoal.FillPot)
        {
            return (largest, 1);
        }

        // The fitted largest batch is close to, not exactly at, the limit: a hair of tolerance keeps "make what fits" in one round.
        int rounds = (int)Math.Clamp(Math.Ceiling((wanted / largest.Litres) - 1e-3), 1, 1_000_000);
        return (fitter.ForLitres(wanted / rounds), rounds);
    }

    private IReadOnlyList<InputProblem> Impossible(FittedLoad fitted, int rounds, FittedLoad largest)
    {
        if (!double.IsFinite(fitted.WaterKilograms) || !double.IsFinite(fitted.Outcome.TotalSeconds) || largest.Litres <= 0)
        {
            return [new("pot-height", "Nothing fits this pot with room to spare under the rim.")];
        }

        if (rounds <= BatchPlanner.MostRounds)
        {
            return [];
        }

        string field = request.Goal switch
        {
            PlanGoal.UseBones => "bones-0-kg",
            PlanGoal.MakeVolume { PortionSize: not null } => "portion-count",
            _ => "litres",
        };
        double bones = perLitre.Items.Where(item => item.Line.Role == LineRole.Bones).Sum(item => item.RawKilograms) * largest.Litres;
        return
        [
            new(
                field,
                $"That needs {rounds} rounds in this pot. At once it makes at most {KitchenFormat.Both(Volume.FromLiters(largest.Litres))} from {KitchenFormat.Both(Mass.FromKilograms(bones))} of bones: ask for less, or take a bigger pot."),
        ];
    }

    /// <summary>Settles the timeline and the nights in it: the night moves the end, and a wish to be ready by a time moves the start.</summary>
    private (Timeline Timeline, IReadOnlyList<NightWindow> Nights) Schedule(FittedLoad fitted, RoastPlan? roast, BlanchPlan? blanch)
    {
        SimmerOutcome outcome = fitted.Outcome;
        double yieldLitres = fitter.YieldKilograms(outcome) / SimmerForecaster.ColdDensity * 1000;
        TimelineWriter Timelines(SimmerOutcome run) => new(new TimelineParts(request, fitted.Load, roast, blanch, run, fitted.WaterKilograms, yieldLitres));
        TimelineWriter lines = Timelines(outcome);
        DateTimeOffset heatOn = request.Schedule.StartAt is { } start ? start + lines.BeforeHeat : request.Schedule.ReadyBy!.Value - TimeSpan.FromHours(24);
        Timeline timeline = lines.Write(heatOn);
        IReadOnlyList<NightWindow> nights = [];
        for (int i = 0; i < 6; i++)
        {
            DateTimeOffset wanted = request.Schedule.ReadyBy is { } by ? heatOn + (by - timeline.Ready) : heatOn;
            bool settled = (wanted - heatOn).Duration() < TimeSpan.FromMinutes(1) && i > 0;
            if (settled)
            {
                break;
            }

            heatOn = wanted;
            if (request.Schedule.Night != NightPlan.GetUp)
            {
                TimeSpan heatUp = TimeSpan.FromSeconds(fitted.Outcome.HeatUpSeconds);
                DateTimeOffset simmering = heatOn + (TimeSpan.FromSeconds(fitted.Outcome.TotalSeconds) - boiling.PlannedTime);
                nights = NightWindows.Find(request.Schedule, simmering, boiling.PlannedTime, heatUp);
                outcome = forecaster.RunCentral(writer.Write(fitted.Load, fitted.WaterKilograms, fitted.LineMetres, nights));
            }

            timeline = Timelines(outcome).Write(heatOn);
        }

        return (timeline, nights);
    }

    private static List<AmountLine> Amounts(FittedLoad fitted, SimmerOutcome outcome)
    {
        List<AmountLine> lines = [];
        foreach (LoadItem item in fitted.Load.Items)
        {
            Mass raw = Mass.FromKilograms(item.RawKilograms);
            TimeSpan joins = item.Line.Joins == JoinMoment.Start || item.Charge is null
                ? TimeSpan.Zero
                : TimeSpan.FromSeconds(outcome.Actions.FirstOrDefault(action => action.Action.Solids?.Contains(item.Charge) ?? false).AtSeconds);
            lines.Add(new AmountLine(item.Ingredient, item.Line, raw, item.Ingredient.AsBought(raw), Mass.FromKilograms(item.InPotKilograms), joins));
        }

        return lines;
    }
}
