using Stockwright.Evidence;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Recipes;
using Stockwright.Strength;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>One figure as planned, as worked out from the log, and as measured.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Planned">As planned, with its band.</param>
/// <param name="Expected">As worked out from the log, with its band.</param>
/// <param name="Measured">As measured or entered; null when it was not.</param>
public sealed record OutcomeFigure<T>(Band<T> Planned, Band<T> Expected, T? Measured)
    where T : struct;

/// <summary>Plan against reality, for the closed record.</summary>
public sealed record BatchOutcome
{
    /// <summary>Stock kept.</summary>
    public required OutcomeFigure<Volume> Yield { get; init; }

    /// <summary>Strained stock, before defatting.</summary>
    public required OutcomeFigure<Volume> Strained { get; init; }

    /// <summary>Drained solids with the liquor that clings to them; measured on the scale.</summary>
    public required OutcomeFigure<Mass> Spent { get; init; }

    /// <summary>Evaporated; cannot be measured by itself.</summary>
    public required OutcomeFigure<Volume> Evaporated { get; init; }

    /// <summary>Water added at the pot.</summary>
    public required OutcomeFigure<Volume> WaterAdded { get; init; }

    /// <summary>Gelatin by mass of the stock; measured by refractometer.</summary>
    public required OutcomeFigure<Ratio> Gelatin { get; init; }

    /// <summary>Range of the measured gelatin; null when no refractometer was read.</summary>
    public Stated<Ratio>? GelatinByRefractometer { get; init; }

    /// <summary>Set after a night in the fridge, lowest, likeliest and highest class; as felt.</summary>
    public required OutcomeFigure<BodyClass> Body { get; init; }

    /// <summary>Fat taken off.</summary>
    public required OutcomeFigure<Mass> Fat { get; init; }

    /// <summary>Heat on to first simmer.</summary>
    public required OutcomeFigure<TimeSpan> HeatUp { get; init; }

    /// <summary>First simmer to heat off.</summary>
    public required OutcomeFigure<TimeSpan> Simmer { get; init; }

    /// <summary>When it stood portioned.</summary>
    public required OutcomeFigure<DateTimeOffset> Ready { get; init; }

    /// <summary>The cook's own time: as planned; the hands-on time of the steps done; by the cook's own count.</summary>
    public required OutcomeFigure<TimeSpan> Attended { get; init; }

    /// <summary>Fuel or electricity of the hob; as read off a meter.</summary>
    public required OutcomeFigure<Energy> Energy { get; init; }

    /// <summary>Sets plan and reality side by side.</summary>
    /// <param name="course">The batch as it stands.</param>
    /// <param name="settings">What is known besides the plan; null for the defaults.</param>
    public static BatchOutcome Of(BatchCourse course, PredictionSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(course);
        BatchPlan planned = course.Batch.Planned;
        BatchPlan expected = course.Expected;
        LogView view = new(course.Batch, course.Log, course.Now);
        HeatTimes times = HeatTimes.Of(view);
        PredictionSample before = PredictionSampler.Sample(planned, settings);
        PredictionSample after = PredictionSampler.Sample(expected, settings);
        BatchPrediction central = Predictor.Predict(planned, settings);
        BatchPrediction now = Predictor.Predict(expected, settings);
        Stated<Ratio>? gelatin = Refracted(view, planned.Request.Recipe.Kind);
        LogFact.Closed? closed = view.Last<LogFact.Closed>()?.Fact as LogFact.Closed;
        bool entered = times.IsOn && !times.IsInferred;
        return new BatchOutcome
        {
            Yield = new(planned.Yield, expected.Yield, Last<LogFact.Portioned, Volume>(view, fact => fact.Volume)),
            Strained = new(Strain(planned), Strain(expected), Last<LogFact.Strained, Volume>(view, fact => fact.Volume)),
            Spent = new(planned.SpentSolids, expected.SpentSolids, Last<LogFact.SpentWeighed, Mass>(view, fact => fact.Spent)),
            Evaporated = new(planned.Simmer.Evaporated, expected.Simmer.Evaporated, null),
            WaterAdded = new(planned.Simmer.ToppedUp, expected.Simmer.ToppedUp, Water(view, times)),
            Gelatin = new(Around(before.Gelatin, central.Body.Gelatin), Around(after.Gelatin, now.Body.Gelatin), gelatin?.Value),
            GelatinByRefractometer = gelatin,
            Body = new(Bodies(before, central), Bodies(after, now), Last<LogFact.SetFelt, BodyClass>(view, fact => fact.Body)),
            Fat = new(Around(before.FatRecovered, central.Fat.Recovered), Around(after.FatRecovered, now.Fat.Recovered), Last<LogFact.FatWeighed, Mass>(view, fact => fact.Fat)),
            HeatUp = new(planned.HeatUp.Time, expected.HeatUp.Time, entered && times.Simmers is { } simmers ? simmers - times.HeatOn : null),
            Simmer = new(SimmerTime(planned), SimmerTime(expected), times is { Simmers: { } first, HeatOff: { } off } ? off - first : null),
            Ready = new(Same(planned.Timeline.Ready), Same(expected.Timeline.Ready), Milestones.Entered(view, StepKind.Portion)?.HappenedAt),
            Attended = new(Same(planned.Timeline.HandsOn), Same(HandsOn(course)), closed?.Attended),
            Energy = new(planned.Simmer.HobEnergy, expected.Simmer.HobEnergy, closed?.Metered),
        };
    }

    private static T? Last<TFact, T>(LogView view, Func<TFact, T> figure)
        where TFact : LogFact
        where T : struct => view.Last<TFact>()?.Fact is TFact fact ? figure(fact) : null;

    private static Volume? Water(LogView view, HeatTimes times)
    {
        List<Volume> poured = [.. view.Of<LogFact.WaterAdded>().Where(one => times.IsOn && one.Entry.HappenedAt >= times.HeatOn).Select(one => one.Fact.Volume)];
        return poured.Count == 0 ? null : Volume.FromCubicMeters(poured.Sum(volume => volume.CubicMeters));
    }

    /// <summary>Strained stock of a plan: what is kept and what goes with the fat.</summary>
    private static Band<Volume> Strain(BatchPlan plan)
    {
        if (plan.Workings.Belief?.StrainedKilograms is { } measured)
        {
            return Same(Simmering.SimmerForecaster.Cold(measured));
        }

        Volume lost = Volume.FromCubicMeters(plan.Ledger.Out.Where(row => string.Equals(row.Key, "defatting", StringComparison.Ordinal)).Sum(row => row.Volume.Central.CubicMeters));
        return new Band<Volume>(plan.Yield.Low + lost, plan.Yield.Central + lost, plan.Yield.High + lost);
    }

    private static Band<TimeSpan> SimmerTime(BatchPlan plan)
    {
        TimeSpan time = plan.Simmer.Length - plan.HeatUp.Time.Central;
        return Same(time > TimeSpan.Zero ? time : TimeSpan.Zero);
    }

    private static TimeSpan HandsOn(BatchCourse course) =>
        TimeSpan.FromTicks(course.Steps.Where(step => step.Standing == StepStanding.Done).Sum(step => step.Step.HandsOn.Ticks));

    /// <summary>The middle of the draws with the central prediction, which may lie beside it.</summary>
    private static Band<T> Around<T>(Band<T> drawn, T central)
        where T : IQuantity, IComparable<T> => new(
            central.CompareTo(drawn.Low) < 0 ? central : drawn.Low,
            central,
            central.CompareTo(drawn.High) > 0 ? central : drawn.High);

    private static Band<BodyClass> Bodies(PredictionSample sample, BatchPrediction central)
    {
        BodyClass low = BodyClasses.Of(sample.Effective.Low.Percent);
        BodyClass high = BodyClasses.Of(sample.Effective.High.Percent);
        BodyClass middle = central.Body.Class;
        return new Band<BodyClass>(low < middle ? low : middle, middle, high > middle ? high : middle);
    }

    private static Band<T> Same<T>(T value) => new(value, value, value);

    private static Stated<Ratio>? Refracted(LogView view, StockKind kind)
    {
        if (view.Last<LogFact.RefractometerRead>()?.Fact is not LogFact.RefractometerRead read)
        {
            return null;
        }

        ReadingKind reading = kind switch
        {
            StockKind.FishFumet or StockKind.Shellfish or StockKind.KelpAndDriedFish or StockKind.KelpOnly or StockKind.SecondDashi or StockKind.DriedAnchovy => ReadingKind.Fish,
            StockKind.Vegetable or StockKind.Mushroom or StockKind.CourtBouillon or StockKind.DriedMushroom or StockKind.SweetcornCob => ReadingKind.Vegetable,
            StockKind.WhiteChicken or StockKind.BrownChicken or StockKind.Turkey or StockKind.Duck or StockKind.DoubleStock or StockKind.WholeChickenBroth => ReadingKind.Poultry,
            _ => ReadingKind.MeatBones,
        };
        return Refractometer.Estimate(read.Brix, reading, scale: 85).Value?.Gelatin;
    }
}
