using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>Body after a time, with the same bones brought to the same volume of stock.</summary>
/// <param name="Simmer">Time at the simmer.</param>
/// <param name="Gelatin">Gelatin by mass of stock.</param>
/// <param name="Intactness">How much of its strength the gelatin kept.</param>
/// <param name="Effective">Effective concentration.</param>
/// <param name="Class">Body class.</param>
public sealed record TimePoint(TimeSpan Simmer, Ratio Gelatin, Ratio Intactness, Ratio Effective, BodyClass Class);

/// <summary>Body against time.</summary>
/// <param name="Points">In order of time.</param>
/// <param name="SmallReturn">From here another step adds less than 3 % to the effective concentration, or takes from it; null when every step shown still adds more, or there is no gelatin.</param>
/// <param name="Step">The step: an hour, or a quarter of one for quick stocks.</param>
/// <param name="Strongest">Time of the highest effective concentration shown.</param>
public sealed record BodyAgainstTime(IReadOnlyList<TimePoint> Points, TimeSpan? SmallReturn, TimeSpan Step, TimeSpan Strongest);

/// <summary>Body at a temperature, all else alike.</summary>
/// <param name="Simmer">Temperature of the simmer.</param>
/// <param name="Gelatin">Gelatin by mass of stock.</param>
/// <param name="Intactness">How much of its strength the gelatin kept.</param>
/// <param name="Effective">Effective concentration.</param>
/// <param name="Class">Body class.</param>
public sealed record TemperatureEffect(Temperature Simmer, Ratio Gelatin, Ratio Intactness, Ratio Effective, BodyClass Class);

/// <summary>
/// What another time, temperature or choice of cuts would do (B.25). All are for the plan's own volume of stock: the cook tops up or reduces to it.
/// </summary>
public static class WhatIf
{
    /// <summary>A further step that adds less than this share is of small return.</summary>
    internal const double SmallReturnShare = 0.03;

    private const double QuickHours = 2;

    /// <summary>Body against time: 3 to 24 h by the hour; stocks planned for two hours or less, a quarter to 3 h by the quarter.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="settings">What else is known; null for the defaults.</param>
    public static BodyAgainstTime AgainstTime(BatchPlan plan, PredictionSettings? settings = null)
    {
        PredictionCase made = PredictionCase.Of(plan, settings ?? new PredictionSettings());
        bool quick = (plan.Simmer.Length - plan.HeatUp.Time.Central).TotalHours <= QuickHours;
        TimeSpan step = quick ? TimeSpan.FromMinutes(15) : TimeSpan.FromHours(1);
        TimeSpan first = quick ? step : TimeSpan.FromHours(3);
        int count = quick ? 12 : 22;

        // One more than is shown, to know what the last hour shown would still bring.
        List<TimePoint> points = [];
        for (int i = 0; i <= count; i++)
        {
            TimeSpan simmer = first + (i * step);
            TemperatureHistory history = PlanHistory.WithSimmerTime(plan, simmer, made.Settings.CoolingTo60);
            (Ratio gelatin, Ratio intactness, Ratio effective, BodyClass body) = Judge(made.Over(history, plan.HeatUp.Time.Central + simmer), made.LiquorKilograms);
            points.Add(new TimePoint(simmer, gelatin, intactness, effective, body));
        }

        TimeSpan? small = null;
        for (int i = 0; i < count && small is null && points[i].Effective > Ratio.Zero; i++)
        {
            small = points[i + 1].Effective.DecimalFractions < points[i].Effective.DecimalFractions * (1 + SmallReturnShare) ? points[i].Simmer : null;
        }

        points.RemoveAt(count);
        return new BodyAgainstTime(points, small, step, points.MaxBy(point => point.Effective.DecimalFractions)!.Simmer);
    }

    /// <summary>Body against the temperature of the simmer, from 80 °C by steps to what the pot can reach.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="settings">What else is known; null for the defaults.</param>
    public static IReadOnlyList<TemperatureEffect> AgainstTemperature(BatchPlan plan, PredictionSettings? settings = null)
    {
        PredictionCase made = PredictionCase.Of(plan, settings ?? new PredictionSettings());
        double boiling = plan.Boiling.BoilingPoint.DegreesCelsius;
        double hottest = plan.Request.IsUnderPressure ? plan.Workings.Environment.HottestReachableCelsius : boiling;
        List<TemperatureEffect> effects = [];
        for (double celsius = plan.Request.IsUnderPressure ? Math.Floor(boiling) + 2 : 80; celsius < hottest - 0.5; celsius += 2)
        {
            effects.Add(At(celsius));
        }

        effects.Add(At(hottest));
        return effects;

        TemperatureEffect At(double celsius)
        {
            Temperature simmer = Temperature.FromDegreesCelsius(celsius);
            TemperatureHistory history = PlanHistory.WithTemperature(plan, simmer, made.Settings.CoolingTo60);
            (Ratio gelatin, Ratio intactness, Ratio effective, BodyClass body) = Judge(made.Over(history, plan.Simmer.Length), made.LiquorKilograms);
            return new TemperatureEffect(simmer, gelatin, intactness, effective, body);
        }
    }

    /// <summary>The body with cuts added or taken out.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="changes">What is added (from the start) and taken out.</param>
    /// <param name="settings">What else is known; null for the defaults.</param>
    /// <exception cref="ArgumentException">More is taken out than is in.</exception>
    /// <exception cref="KeyNotFoundException">An ingredient is not in the plan's larder.</exception>
    public static BodyPrediction WithCuts(BatchPlan plan, IReadOnlyList<CutChange> changes, PredictionSettings? settings = null)
    {
        PredictionCase made = PredictionCase.Of(plan, settings ?? new PredictionSettings(), changes);
        ExtractionTotals totals = made.Engine.Run(made.Central);
        return BodyPrediction.Of(
            Ratio.FromPercent(totals.Gelatin / 10 / made.LiquorKilograms),
            Mass.FromGrams(totals.Bloom),
            TemperatureDelta.FromKelvins(totals.MeltingShift),
            made.Settings.FridgeTime,
            made.Settings.Fridge);
    }

    private static (Ratio Gelatin, Ratio Intactness, Ratio Effective, BodyClass Class) Judge(PredictionCase made, double liquorKilograms)
    {
        ExtractionTotals totals = made.Engine.Run(made.Central);
        double percent = totals.Gelatin / 10 / liquorKilograms;
        double effective = GelStrength.EffectivePercent(percent, totals.Bloom);
        return (Ratio.FromPercent(percent), Ratio.FromDecimalFractions(totals.Intactness), Ratio.FromPercent(effective), BodyClasses.Of(effective, percent));
    }
}
