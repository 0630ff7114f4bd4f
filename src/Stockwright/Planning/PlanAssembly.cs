using Stockwright.Evidence;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>Puts one plan together: fit, runs, ledger, preparation, timeline.</summary>
internal sealed class PlanAssembly
{
    private const int MostNightFits = 2;

    private readonly PlanRequest request;
    private readonly PotEnvironment environment;
    private readonly BoilingReport boiling;
    private readonly BatchLoad perLitre;
    private readonly ScriptWriter writer;
    private readonly SimmerForecaster forecaster;
    private readonly PotFitter fitter;
    private readonly WishFitter wishes;
    private readonly BatchScheduler scheduler;

    public PlanAssembly(PlanRequest request)
    {
        this.request = request;
        environment = new PotEnvironment(request.Pot, request.Heat, request.Lid, request.Site, Air.PressurePascals(request.Site), request.Assumptions);
        boiling = BoilingPlanner.Report(request, environment);
        perLitre = BatchLoad.PerLitre(request);
        writer = new ScriptWriter(request, boiling.Reached, boiling.PlannedTime, boiling.BoilingPoint);
        forecaster = new SimmerForecaster(environment, request.Heat, request.Lid, request.Site);
        fitter = new PotFitter(request, writer, forecaster, perLitre);
        wishes = new WishFitter(request, fitter, perLitre);
        scheduler = Scheduler(request);
    }

    public PlanResult Make()
    {
        if (TooCoolToLock() is { } tooCool)
        {
            return new PlanResult(null, [tooCool]);
        }

        Settled settled = Settle();
        return request.Schedule.Night == NightPlan.KeepFree && settled.Laid is { } asLaid && KeptFree(settled, asLaid) is { } free
            ? free.By.Write(free.Settled, request)
            : Write(settled, request);
    }

    /// <summary>The best way to keep the night free of work; null when there is none to keep free, or no way.</summary>
    private NightWay? KeptFree(Settled settled, LaidTimeline asLaid)
    {
        if (!NightSettler.HasWork(request.Schedule, asLaid.Timeline))
        {
            return null;
        }

        List<NightWay> ways = [];
        foreach (NightPlan night in NightSettler.Ways(request, boiling))
        {
            PlanAssembly other = new(request with { Schedule = request.Schedule with { Night = night } });
            ways.Add(new NightWay(other, other.Settle()));
        }

        // A start the cook has set stays; what starts as soon as it can may as well start in the morning.
        if (asLaid.Punctuality != Punctuality.AsAsked && scheduler.FreeLater(settled.Wish, settled.Blanch, asLaid) is { } later)
        {
            ways.Add(new NightWay(this, settled with { Laid = later }));
        }

        IEnumerable<NightWay> free = ways.Where(way => way.Settled.Laid is { } laid && !laid.Timeline.Steps.Any(step => step.InNight));
        return request.Schedule.ReadyBy is { } by
            ? free.OrderBy(way => way.Settled.Laid!.Timeline.Ready > by).ThenBy(way => way.Settled.Laid!.Timeline.Ready).FirstOrDefault()
            : free.FirstOrDefault();
    }

    /// <summary>Writes the plan of a settled batch.</summary>
    /// <param name="settled">Size, water and timeline.</param>
    /// <param name="asked">What the cook asked; the night may have been settled since.</param>
    private PlanResult Write(Settled settled, PlanRequest asked)
    {
        FittedLoad fitted = settled.Wish.Fitted;
        IReadOnlyList<Problem> problems = Impossible(settled.Wish);
        if (problems.Count > 0 || settled.Laid is not { } laid)
        {
            return new PlanResult(null, problems);
        }

        SimmerScript script = writer.Write(fitted.Load, fitted.WaterKilograms, fitted.HeldMetres, laid.Nights);
        SimmerRuns runs = forecaster.RunAll(script);
        LedgerWriter ledger = new(request, fitter, fitted, runs);
        Band<Volume> yield = ledger.Yield();
        if (runs.Central.RanDry || yield.Central.Liters < 0.01)
        {
            return new PlanResult(null, [VesselNotices.BoilsDry(request)]);
        }

        FitReport fit = FitReporter.Report(request, fitter, settled.Wish, runs.Central);
        Timeline Laid(PlanRequest other) => Scheduler(other).Schedule(settled.Wish, settled.Blanch).Timeline;
        Timeline Moved(TimeSpan shift) => scheduler.Lay(settled.Wish, settled.Blanch, laid.HeatOn + shift).Timeline;
        return new PlanResult(
            new BatchPlan
            {
                Request = asked,
                Night = request.Schedule.Night,
                Yield = yield,
                Fit = fit,
                Amounts = Amounts(fitted, runs.Central),
                Roast = settled.Roast,
                Blanch = settled.Blanch,
                HeatUp = forecaster.HeatUp(script, runs.Central),
                Simmer = forecaster.Write(runs),
                Ledger = ledger.Write(yield),
                SpentSolids = new SpentWriter(fitter, fitted, runs).Write(),
                Boiling = boiling,
                Timeline = laid.Timeline with { NightChoices = NightChooser.Choices(asked, request.Schedule.Night, laid.Timeline, boiling, Moved, Laid) },
                OnePotTimeline = settled.Wish.Potfuls > 1 ? scheduler.LayOnePot(settled.Wish, settled.Blanch, laid) : null,
                Notices = [.. TimeNotices.List(asked, request.Schedule.Night, laid, runs.Central, Sooner), .. Notices.List(request, fitted.Load, fit, boiling, runs.Central, yield, fitted.Litres)],
                Assumptions = Assumptions.List(request, fitted.Load, boiling),
                Size = PotSize.Of(fitted, laid.Nights),
                Workings = new PlanWorkings(environment, script, fitted, fitter, runs.Central),
            },
            []);
    }

    /// <summary>When another request would be ready, started now; null when it cannot be made.</summary>
    private static DateTimeOffset? Sooner(PlanRequest other)
    {
        PlanAssembly assembly = new(other);
        Settled settled = assembly.Settle();
        LaidTimeline? laid = other.Schedule.Night == NightPlan.KeepFree && settled.Laid is { } asLaid && assembly.KeptFree(settled, asLaid) is { } free
            ? free.Settled.Laid
            : settled.Laid;
        return laid?.Timeline.Ready;
    }

    /// <summary>Behind a locked lid it boils first: less than that is for the open pot.</summary>
    private Problem? TooCoolToLock() => request.IsUnderPressure && request.SimmerTemperature <= boiling.BoilingPoint
        ? new Problem(
            PlanPart.SimmerTemperature,
            ProblemCode.TooCoolToLock,
            Figure.Of(boiling.BoilingPoint),
            Figure.Of(Temperature.FromDegreesCelsius(environment.HottestReachableCelsius)),
            Figure.Of(request.SimmerTemperature.Value))
        : null;

    /// <summary>Size, water and timeline. A night the pot is put away in changes what evaporates, so the batch is then fitted again.</summary>
    private Settled Settle()
    {
        Settled settled = SettleOnce();
        for (int i = 0; i < MostNightFits && settled.Laid is { } laid && !Alike(laid.Nights, fitter.Nights); i++)
        {
            fitter.Nights = laid.Nights;
            settled = SettleOnce();
        }

        return settled;
    }

    private Settled SettleOnce()
    {
        FittedWish wish = wishes.Fit();
        if (Impossible(wish).Count > 0)
        {
            return new Settled(wish, null, null, null);
        }

        RoastPlan? roast = RoastPlanner.Plan(request, wish.Fitted.Load);
        BlanchPlan? blanch = RoastPlanner.PlanBlanch(request, wish.Fitted.Load, fitter);
        return new Settled(wish, roast, blanch, scheduler.Schedule(wish, blanch));
    }

    private static bool Alike(IReadOnlyList<NightWindow> some, IReadOnlyList<NightWindow> others) =>
        some.Count == others.Count
        && some.Zip(others).All(pair => Math.Abs(pair.First.FromSeconds - pair.Second.FromSeconds) < 120 && Math.Abs(pair.First.Seconds - pair.Second.Seconds) < 120);

    private IReadOnlyList<Problem> Impossible(FittedWish wish)
    {
        (FittedLoad fitted, FittedLoad largest, int rounds) = (wish.Fitted, wish.Largest, wish.Potfuls);
        if (!double.IsFinite(fitted.WaterKilograms) || !double.IsFinite(fitted.Outcome.TotalSeconds) || largest.Litres <= 0)
        {
            // A pot that boils away more than it can hold is not too small.
            return largest.Outcome.SteamKilograms > largest.WaterKilograms / 2
                ? [VesselNotices.BoilsDry(request)]
                : [new(PlanPart.PotHeight, ProblemCode.NothingFits)];
        }

        if (rounds <= BatchPlanner.MostRounds)
        {
            return [];
        }

        if (request.TopUp == TopUpRule.None && fitted.Outcome.SteamKilograms > fitted.WaterKilograms / 2)
        {
            return [VesselNotices.BoilsDry(request)];
        }

        double bones = perLitre.Items.Where(item => item.Line.Role == LineRole.Bones).Sum(item => item.RawKilograms) * largest.Litres;
        return
        [
            new(
                PlanPart.Of(request.Goal),
                ProblemCode.TooManyPotfuls,
                Figure.Of(rounds),
                Figure.Of(Volume.FromLiters(largest.Litres)),
                Figure.Of(Mass.FromKilograms(bones)),
                Figure.Of(SolidsText.Bare(perLitre))),
        ];
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
            lines.Add(new AmountLine(item.Ingredient, item.Line, raw, AsBought(item, raw), Mass.FromKilograms(item.InPotKilograms), joins));
        }

        return lines;
    }

    private static Mass AsBought(LoadItem item, Mass raw) =>
        item.Line.Refuse is { } refuse ? raw / (1 - refuse.Value.DecimalFractions) : item.Ingredient.AsBought(raw);

    private BatchScheduler Scheduler(PlanRequest other) => new(other, writer, forecaster, fitter, boiling.PlannedTime);

    /// <summary>A way to keep the night free: who writes it, and what.</summary>
    private sealed record NightWay(PlanAssembly By, Settled Settled);

    private sealed record Settled(FittedWish Wish, RoastPlan? Roast, BlanchPlan? Blanch, LaidTimeline? Laid);
}
