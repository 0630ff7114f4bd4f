using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Logbook;
using Stockwright.Numerics;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>The plan worked out again from what happened, with the runs it rests on.</summary>
internal sealed class ExpectedPlan
{
    /// <summary>The rest of a simmer need not lose at just the pace read so far (estimate): standard deviation of the logarithm.</summary>
    private const double PaceSigma = 0.05;

    private readonly LogView view;
    private readonly HeatTimes times;
    private readonly CourseScript course;
    private readonly PotPrior prior;
    private readonly LossEstimator estimator;
    private readonly double[,] covariance;
    private readonly double[][] sensitivity;
    private readonly LogEntry? cold;

    private ExpectedPlan(LogView view, HeatTimes times, CourseScript course)
    {
        this.view = view;
        this.times = times;
        this.course = course;
        cold = ColdEvidence.Of(view, times);
        PlanWorkings workings = view.Plan.Workings;
        prior = PotPrior.Of(view.Plan);
        estimator = new LossEstimator(workings, prior, course.Script);
        Posterior = estimator.Estimate(course.Observations);
        Script = course.Script with { StartWaterKilograms = course.Script.StartWaterKilograms * Math.Exp(Posterior.Mean[2]) };
        covariance = (double[,])Posterior.Covariance.Clone();
        covariance[0, 0] = Posterior.KnowsLoss ? covariance[0, 0] + (PaceSigma * PaceSigma) : prior.LossSigma * prior.LossSigma;
        SimmerOutcome central = estimator.Run(course.Script, Posterior.Mean, sampled: true);
        sensitivity = Sensitivity(central);
        Belief = MakeBelief();
        Runs = new SimmerRuns(
            central,
            Belief.Run(workings.Environment, Script, -NormalQuantile.Ninety, sampled: true),
            Belief.Run(workings.Environment, Script, NormalQuantile.Ninety, sampled: true))
        {
            LineUp = false,
        };
        Notices = [.. course.Notices, .. CourseNotices.Of(view, times, this)];
        Plan = Write();
    }

    /// <summary>What the entries give to say.</summary>
    public IReadOnlyList<PlanNotice> Notices { get; }

    public PotPosterior Posterior { get; }

    public PotBelief Belief { get; }

    /// <summary>The script with the most probable water.</summary>
    public SimmerScript Script { get; }

    public SimmerRuns Runs { get; }

    /// <summary>The plan as it is expected now.</summary>
    public BatchPlan Plan { get; }

    public static ExpectedPlan Of(LogView view, HeatTimes times, CourseScript course) => new(view, times, course);

    /// <summary>Loss over that of the plan, whatever the water at the start was.</summary>
    public Band<double> LossOverPlan
    {
        get
        {
            double central = Belief.LossFactor;
            double factor = Math.Exp(NormalQuantile.Ninety * Math.Sqrt(Math.Max(0, covariance[0, 0])));
            return Posterior.KnowsLoss ? new Band<double>(central / factor, central, central * factor) : new Band<double>(prior.Less, 1, prior.More);
        }
    }

    /// <summary>Level and liquid now with their own bands, which readings narrow more than those of the end (R.10).</summary>
    public PotNow? Now()
    {
        if (!Runs.Central.Looks.TryGetValue(CourseScript.LookNow, out SimmerOutcome.Sight seen))
        {
            return null;
        }

        double height = view.Plan.Request.Pot.InnerHeight.Meters;
        Length Below(double metres) => Length.FromMeters(height - Math.Max(0, metres));
        (double level, double levelLess, double levelMore) = Spread(0, seen.LevelMetres, sight => sight.LevelMetres);
        (double liquid, double liquidLess, double liquidMore) = Spread(1, seen.LiquidKilograms, sight => sight.LiquidKilograms);
        return new PotNow(
            Temperature.FromDegreesCelsius(seen.Celsius),
            new Band<Length>(Below(levelLess), Below(level), Below(levelMore)),
            new Band<Volume>(Free(liquidMore), Free(liquid), Free(liquidLess)),
            Length.FromMeters(height - seen.HeapMetres));
    }

    /// <summary>Solids that swell can only take up what is there: no free liquid is the least.</summary>
    private static Volume Free(double kilograms) => SimmerForecaster.Cold(Math.Max(0, kilograms));

    /// <summary>Central figure, that at the edge that loses less, that at the edge that loses more.</summary>
    private (double Central, double Less, double More) Spread(int row, double central, Func<SimmerOutcome.Sight, double> figure)
    {
        if (Posterior.KnowsLoss)
        {
            double off = NormalQuantile.Ninety * Math.Sqrt(Math.Max(0, SmallMatrix.Dot(sensitivity[row], SmallMatrix.Times(covariance, sensitivity[row]))));
            return (central, central + off, central - off);
        }

        double less = figure(Runs.LosesLess.Looks[CourseScript.LookNow]);
        double more = figure(Runs.LosesMore.Looks[CourseScript.LookNow]);
        return (central, Math.Max(central, Math.Max(less, more)), Math.Min(central, Math.Min(less, more)));
    }

    /// <summary>How level now, liquid now, and what is left less what was poured in, move with each figure.</summary>
    private double[][] Sensitivity(SimmerOutcome central)
    {
        const double Nudge = 0.01;
        double[][] rows = [new double[LossEstimator.Count], new double[LossEstimator.Count], new double[LossEstimator.Count]];
        for (int k = 0; k < LossEstimator.Count; k++)
        {
            double[] nudged = [.. Posterior.Mean];
            nudged[k] += Nudge;
            SimmerOutcome other = estimator.Run(course.Script, nudged, sampled: false);
            rows[2][k] = (other.LiquidLeftKilograms - other.ToppedUpKilograms - central.LiquidLeftKilograms + central.ToppedUpKilograms) / Nudge;
            if (central.Looks.TryGetValue(CourseScript.LookNow, out SimmerOutcome.Sight here) && other.Looks.TryGetValue(CourseScript.LookNow, out SimmerOutcome.Sight there))
            {
                rows[0][k] = (there.LevelMetres - here.LevelMetres) / Nudge;
                rows[1][k] = (there.LiquidKilograms - here.LiquidKilograms) / Nudge;
            }
        }

        return rows;
    }

    /// <summary>R.9: the direction of one standard deviation towards losing more.</summary>
    private PotBelief MakeBelief()
    {
        double[] spread = SmallMatrix.Times(covariance, sensitivity[2]);
        double sigma = Math.Sqrt(Math.Max(0, SmallMatrix.Dot(sensitivity[2], spread)));
        double[] step = sigma > 1e-12 ? [.. spread.Select(value => -value / sigma)] : [prior.LossSigma, 0, 0];
        double less = Posterior.KnowsLoss ? 1 : -Math.Log(prior.Less) / NormalQuantile.Ninety / prior.LossSigma;
        double more = Posterior.KnowsLoss ? 1 : Math.Log(prior.More) / NormalQuantile.Ninety / prior.LossSigma;
        return new PotBelief(
            prior.Film,
            Math.Exp(Posterior.Mean[0]),
            step[0] * less,
            step[0] * more,
            Math.Min(0.95, prior.Efficiency * Math.Exp(Posterior.Mean[1])),
            step[1],
            step[2] * Script.StartWaterKilograms)
        {
            StrainedKilograms = Kilograms(view.Last<LogFact.Strained>() is { Fact: LogFact.Strained strained } ? strained.Volume : null),
            PortionedKilograms = Kilograms(view.Last<LogFact.Portioned>() is { Fact: LogFact.Portioned portioned } ? portioned.Volume : null),
        };

        static double? Kilograms(Volume? volume) => volume is { } known ? known.CubicMeters * SimmerForecaster.ColdDensity : null;
    }

    private BatchPlan Write()
    {
        BatchPlan plan = view.Plan;
        PlanWorkings workings = plan.Workings;
        double others = workings.Fitted.Load.Items.Sum(item => item.LiquidKilograms);
        FittedLoad fitted = workings.Fitted with { WaterKilograms = Script.StartWaterKilograms - others };
        LedgerWriter ledger = new(plan.Request, workings.Fitter, fitted, Runs);
        Band<Volume> yield = Yield(ledger);
        double efficiencySigma = Posterior.KnowsHeat ? Math.Sqrt(Math.Max(0, Posterior.Covariance[1, 1])) : prior.EfficiencySigma;
        Stated<Ratio> efficiency = Posterior.KnowsHeat ? Stated(Belief.Efficiency, efficiencySigma) : plan.Request.Heat.Efficiency;
        SimmerForecaster forecaster = new(workings.Environment, efficiency, Belief.FilmFactor, Belief.LossFactor);
        SimmerForecast simmer = forecaster.Write(Runs);
        TimelineWriter lines = new(new TimelineParts(plan.Request, workings.Fitted.Load, [new RoundLoad(1, plan.Roast)], plan.Blanch, Runs.Central, workings.Fitted.WaterKilograms, yield.Central.Liters)
        {
            LetDownKilograms = workings.Fitted.LetDownKilograms,
            Ended = (kind, end) => Milestones.Ended(view, kind, end, cold),
        });
        return plan with
        {
            Yield = yield,
            HeatUp = HeatUp(forecaster),
            Simmer = simmer,
            Ledger = Balanced(ledger.Write(yield)),
            SpentSolids = new SpentWriter(workings.Fitter, fitted, Runs).Write(),
            Timeline = lines.Write(times.HeatOn),
            Amounts = Amounts(plan),
            Notices = [.. plan.Notices, .. Notices],
            Assumptions = [.. plan.Assumptions.Select(Learnt)],
            Workings = workings with
            {
                Script = Script,
                Fitted = fitted,
                Central = Runs.Central,
                Belief = Belief,
            },
        };
    }

    private Band<Volume> Yield(LedgerWriter ledger)
    {
        if (Belief.PortionedKilograms is { } kept)
        {
            Volume measured = SimmerForecaster.Cold(kept);
            return new Band<Volume>(measured, measured, measured);
        }

        if (Belief.StrainedKilograms is { } strained)
        {
            bool defats = view.Plan.Request.Recipe.ChillsAndDefats;
            Volume After(Ratio lost) => SimmerForecaster.Cold((strained * (defats ? 1 - lost.DecimalFractions : 1)) + view.Plan.Workings.Fitted.LetDownKilograms);
            Stated<Ratio> lost = view.Plan.Request.Assumptions.DefatLoss;
            return new Band<Volume>(After(lost.High), After(lost.Value), After(lost.Low));
        }

        return ledger.Yield();
    }

    /// <summary>What was measured need not be what the calculation leaves: the difference is a row of its own.</summary>
    private static WaterLedger Balanced(WaterLedger ledger)
    {
        double missing = ledger.TotalIn.CubicMeters - ledger.TotalOut.CubicMeters;
        if (Math.Abs(missing) < 1e-9 * Math.Max(1e-3, ledger.TotalIn.CubicMeters))
        {
            return ledger;
        }

        Volume gap = Volume.FromCubicMeters(Math.Abs(missing));
        LedgerEntry row = new("unexplained", "Not accounted for", new Band<Volume>(gap, gap, gap), "between what was measured and what was calculated");
        return missing > 0
            ? ledger with { Out = [.. ledger.Out.Take(ledger.Out.Count - 1), row, ledger.Out[^1]] }
            : ledger with { In = [.. ledger.In, row] };
    }

    private HeatUp HeatUp(SimmerForecaster forecaster)
    {
        SimmerOutcome central = Runs.Central;
        TimeSpan time = TimeSpan.FromSeconds(central.HeatUpSeconds);
        return times.Simmers is null
            ? forecaster.HeatUp(Script with { EndsNotBeforeSeconds = 0 }, central)
            : new HeatUp(new Band<TimeSpan>(time, time, time), central.IsReached, Temperature.FromDegreesCelsius(central.FinalCelsius));
    }

    private IReadOnlyList<AmountLine> Amounts(BatchPlan plan)
    {
        SimmerOutcome central = Runs.Central;
        return [.. plan.Amounts.Select((line, i) =>
        {
            LoadItem item = plan.Workings.Fitted.Load.Items[i];
            if (item.Charge is null || line.JoinsAt == TimeSpan.Zero)
            {
                return line;
            }

            int at = central.Actions.FindIndex(action => action.Action.Solids?.Contains(item.Charge) ?? false);
            return line with { JoinsAt = TimeSpan.FromSeconds(at >= 0 ? central.Actions[at].AtSeconds : central.TotalSeconds) };
        })];
    }

    private Assumption Learnt(Assumption assumption)
    {
        if (Posterior.KnowsLoss && string.Equals(assumption.Key, "film-factor", StringComparison.Ordinal))
        {
            Band<double> loss = LossOverPlan;
            return assumption with
            {
                Value = new Band<IQuantity>(Share(loss.Low * prior.Film), Share(loss.Central * prior.Film), Share(loss.High * prior.Film)),
                Provenance = Provenance.CookStated,
                Source = string.Create(CultureInfo.InvariantCulture, $"worked out from {Posterior.Used.Count(one => one.Kind is ObservationKind.Level or ObservationKind.Cover or ObservationKind.Strained)} readings of this batch"),
            };
        }

        if (Posterior.KnowsHeat && string.Equals(assumption.Key, "hob-efficiency", StringComparison.Ordinal))
        {
            Stated<Ratio> learnt = Stated(Belief.Efficiency, Math.Sqrt(Math.Max(0, Posterior.Covariance[1, 1])));
            return assumption with { Value = new Band<IQuantity>(learnt.Low, learnt.Value, learnt.High), Provenance = learnt.Provenance, Source = learnt.Source };
        }

        return assumption;

        static IQuantity Share(double value) => Ratio.FromDecimalFractions(value);
    }

    private static Stated<Ratio> Stated(double efficiency, double sigma)
    {
        double factor = Math.Exp(NormalQuantile.Ninety * sigma);
        return new Stated<Ratio>(
            Ratio.FromDecimalFractions(efficiency),
            Ratio.FromDecimalFractions(efficiency / factor),
            Ratio.FromDecimalFractions(Math.Min(0.95, efficiency * factor)),
            Provenance.CookStated,
            "worked out from the heat-up of this batch");
    }
}
