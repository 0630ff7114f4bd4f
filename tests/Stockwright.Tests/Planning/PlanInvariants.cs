using System.Collections;
using System.Reflection;
using Stockwright.Evidence;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Tests.Planning;

/// <summary>What holds of every plan, whatever was asked.</summary>
internal static class PlanInvariants
{
    private const double Books = 1e-9;

    /// <summary>Lists what is broken; empty when all holds.</summary>
    internal static IReadOnlyList<string> Broken(BatchPlan plan)
    {
        List<string> broken = [];
        void Need(bool holds, string what)
        {
            if (!holds)
            {
                broken.Add(what);
            }
        }

        SimmerBooks books = plan.Simmer.Books;
        Need(Balances(books.MassIn.Kilograms, books.MassOut.Kilograms + books.MassLeft.Kilograms), $"mass {books.MassIn.Kilograms:R} in, {books.MassOut.Kilograms + books.MassLeft.Kilograms:R} out and left");
        Need(Balances(books.EnergyIn.Joules, books.EnergyOut.Joules + books.EnergyLeft.Joules), $"energy {books.EnergyIn.Joules:R} in, {books.EnergyOut.Joules + books.EnergyLeft.Joules:R} out and left");
        Need(Balances(plan.Ledger.TotalIn.Liters, plan.Ledger.TotalOut.Liters), $"ledger {plan.Ledger.TotalIn.Liters:R} in, {plan.Ledger.TotalOut.Liters:R} out");
        Need(plan.Ledger.In.Concat(plan.Ledger.Out).All(row => row.Volume.Central.Milliliters >= -1e-3), "a ledger row is negative");

        double brim = plan.Request.Pot.InnerHeight.Meters;
        Need(plan.Simmer.Samples.All(sample => sample.Level.Meters >= 0 && sample.Level.Meters <= brim), "a level stands over the brim or below the base");
        Need(plan.Simmer.Samples.All(sample => sample.Level.Meters <= plan.Fit.PeakLevel.Meters * 1.005), "a sample stands over the peak");

        // A night that moves as the size does may not settle: then it is said. The drawn course is finer than the fitted one by up to a percent.
        bool told = plan.HasNotice("over-safe-maximum");
        Need(plan.Fit.PeakLevel.Meters <= plan.Fit.SafeMaximum.Meters * 1.005 || (told && (plan.Request.Schedule.Night != NightPlan.GetUp || plan.Fit.PeakLevel.Meters <= plan.Fit.SafeMaximum.Meters * 1.01)), $"peak {plan.Fit.PeakLevel} over safe {plan.Fit.SafeMaximum}");
        Need(plan.Fit.FillLine <= plan.Fit.PeakLevel + Length.FromMicrometers(1), "the line stands over the peak");
        Need(plan.Simmer.LowestLevel <= plan.Fit.PeakLevel, "lowest over highest");

        Need(plan.Simmer.Samples.Count is > 1 and <= 300, $"{plan.Simmer.Samples.Count} samples");
        Need(plan.Simmer.LevelBand.Count == plan.Simmer.Samples.Count, "band and samples differ in number");
        Need(plan.Simmer.LevelBand.All(level => level.Low.Meters >= -1e-3 && level.Low <= level.High), $"the band of levels is out of order: {plan.Simmer.LevelBand.FirstOrDefault(level => !(level.Low.Meters >= -1e-3 && level.Low <= level.High))}");
        Need(Ordered(plan.Simmer.Samples.Select(sample => sample.At.Ticks)), "samples are out of order");
        Need(Ordered(plan.Simmer.Checks.Select(check => check.At.Ticks)), "checks are out of order");
        Need(Ordered(plan.Timeline.Steps.Select(step => step.At.UtcTicks)), "steps are out of order");
        Need(plan.Timeline.Steps.All(step => step.Duration >= TimeSpan.Zero && step.HandsOn >= TimeSpan.Zero && step.HandsOn <= step.Duration), "a step's times make no sense");
        Need(plan.Timeline.Steps[0].At >= plan.Timeline.Start, "a step before the start");
        Need(plan.Timeline.Steps.Max(step => step.End) == plan.Timeline.Ready, "ready is not the end of the last step");
        Need(plan.Timeline.Start < plan.Timeline.HeatOn && plan.Timeline.HeatOn < plan.Timeline.HeatOff && plan.Timeline.HeatOff < plan.Timeline.Strained && plan.Timeline.Strained < plan.Timeline.Ready, "the milestones are out of order");
        Need((plan.Timeline.HeatOff - plan.Timeline.HeatOn - plan.Simmer.Length).Duration() < TimeSpan.FromSeconds(1), "timeline and forecast disagree on the length");
        Need(!(plan.Timeline.Start < plan.Request.Schedule.Now), "it starts in the past");
        if (plan.Request.Schedule.StartAt is { } start)
        {
            Need(plan.Timeline.Start == start || plan.HasNotice("start-passed"), "it does not start when told");
        }

        if (plan.Request.Schedule.ReadyBy is { } by)
        {
            Need(plan.Timeline.Ready <= by + TimeSpan.FromMinutes(1) || plan.HasNotice("too-late"), $"ready {plan.Timeline.Ready - by} late");
            Need(!plan.HasNotice("too-late") || plan.Timeline.Ready > by, "told too late, and is in time");
        }

        if (plan.Request is { Goal: PlanGoal.FillPot, FillTo: null, Schedule.Night: NightPlan.GetUp } && plan.Simmer.Evaporated.Central < plan.Fit.WaterToLine / 3)
        {
            // Where most of the water boils away, topping up to stay covered leaves a gap between sizes, and the fill may stop below it.
            Volume full = plan.Request.Pot.VolumeAt(plan.Fit.SafeMaximum);
            Need(plan.Request.Pot.VolumeAt(plan.Fit.PeakLevel) >= full * 0.95 || !plan.HeatUp.IsReached, $"fills to {plan.Fit.PeakLevel} of {plan.Fit.SafeMaximum}");
        }

        Need(plan.Amounts.All(line => line.Mass > Mass.Zero && line.AsBought >= line.Mass * (1 - 1e-9) && line.MassInPot > Mass.Zero && line.MassInPot <= line.Mass * (1 + 1e-9)), "an amount is not positive");
        Need(plan.Amounts.All(line => line.JoinsAt >= TimeSpan.Zero && line.JoinsAt <= plan.Simmer.Length), "something joins after the end");
        Need(plan.Yield.Central > Volume.Zero, "no yield");
        Whole(plan, Need);
        if (plan.Request.Goal is PlanGoal.MakeVolume wanted && !plan.Fit.CoverDecidesWater && plan.Request.Way != SplitWay.Stronger)
        {
            // Where top-ups or a weak hob's settling make the yield jump over what was asked, it is said.
            double made = plan.Total.Central.Liters;
            Need(plan.HasNotice("yield-differs") || Math.Abs(made - wanted.Yield.Liters) <= 0.03 * wanted.Yield.Liters, $"makes {made:0.####} of {wanted.Yield.Liters:0.####} L");
        }

        Walk("plan", plan, broken, new HashSet<object>(ReferenceEqualityComparer.Instance));
        return broken;
    }

    /// <summary>The whole wish: headline, potfuls, rounds, timetable and pot say the same.</summary>
    private static void Whole(BatchPlan plan, Action<bool, string> need)
    {
        FitReport fit = plan.Fit;
        need(fit.Potfuls >= 1 && fit.AtOnce >= 1 && fit.AtOnce <= Math.Min(plan.Request.PotCount, plan.Request.HobCount), $"{fit.AtOnce} pots at once");
        need(fit.AtOnce * fit.Rounds >= fit.Potfuls && fit.AtOnce * (fit.Rounds - 1) < fit.Potfuls, "rounds and potfuls disagree");
        need(plan.Timeline.Rounds.Count == fit.Rounds, $"{plan.Timeline.Rounds.Count} rounds in the timetable of {fit.Rounds}");
        need(Balances(plan.Total.Central.Liters, plan.Yield.Central.Liters * fit.Potfuls), "the total is not the sum of the potfuls");
        need((fit.Verdict == FitVerdict.NeedsRounds) == (fit.Potfuls > 1), $"{fit.Verdict} in {fit.Potfuls} potfuls");
        need(fit.LetDown.CubicMeters is 0 || fit.Verdict == FitVerdict.FitsStronger, "let down though it fits");
        need(fit.Potfuls == 1 || plan.Yield.Central <= fit.LargestYield * 1.03 || fit.CoverDecidesWater || plan.HasNotice("yield-differs"), $"each of {fit.Potfuls} makes {plan.Yield.Central}, the largest {fit.LargestYield}");
        need(plan.Timeline.Steps.Select(step => step.Key).Distinct(StringComparer.Ordinal).Count() == plan.Timeline.Steps.Count, "two steps of one name");
        need(plan.Timeline.Rounds.Zip(plan.Timeline.Rounds.Skip(1)).All(pair => pair.Second.Start >= pair.First.Strained), "a round begins before its pot is free");
        DateTimeOffset free = DateTimeOffset.MinValue;
        foreach (PlanStep step in plan.Timeline.Steps.Where(step => step.HandsOn > TimeSpan.Zero))
        {
            need(step.At >= free, $"two things in one hand: {step.Title} at {step.At}");
            free = step.At + step.HandsOn;
        }

        need(plan.Timeline.HandsOn == TimeSpan.FromTicks(plan.Timeline.Steps.Sum(step => step.HandsOn.Ticks)), "own time is not the sum of the steps");
        IReadOnlyList<PlanStep> steps = plan.Timeline.Steps;
        int locked = steps.ToList().FindIndex(step => step.Kind == StepKind.Lock);
        int opened = steps.ToList().FindIndex(step => step.Kind == StepKind.Open);
        need(locked < 0 || opened < 0 || steps.Skip(locked + 1).Take(opened - locked - 1).All(step => step.Kind is not (StepKind.Skim or StepKind.Check or StepKind.Add or StepKind.LiftOut) || plan.Fit.Rounds > 1), "something is done to a sealed pot");
    }

    private static bool Balances(double one, double other) => Math.Abs(one - other) <= Books * Math.Max(Math.Abs(one), Math.Abs(other));

    private static bool Ordered(IEnumerable<long> ticks)
    {
        long[] all = [.. ticks];
        return all.Zip(all.Skip(1)).All(pair => pair.First <= pair.Second);
    }

    /// <summary>Every number in the plan is finite and every band is in order; the request itself is left out.</summary>
    private static void Walk(string path, object? value, List<string> broken, HashSet<object> seen)
    {
        switch (value)
        {
            case null or string or bool or Enum or DateTimeOffset or TimeSpan or TimeOnly or int or PlanRequest:
                return;
            case double number:
                Check(double.IsFinite(number), path, number, broken);
                return;
            case IQuantity quantity:
                Check(double.IsFinite((double)quantity.Value), path, quantity, broken);
                return;
            case IEnumerable list:
                int index = 0;
                foreach (object? item in list)
                {
                    Walk($"{path}[{index++}]", item, broken, seen);
                }

                return;
        }

        Type type = value.GetType();
        if (type.Namespace?.StartsWith("Stockwright.Larder", StringComparison.Ordinal) == true
            || type.Namespace?.StartsWith("Stockwright.Recipes", StringComparison.Ordinal) == true
            || (!type.IsValueType && !seen.Add(value)))
        {
            return;
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Band<>))
        {
            CheckBand(path, value, broken);
        }

        foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0))
        {
            Walk($"{path}.{property.Name}", property.GetValue(value), broken, seen);
        }

        foreach (FieldInfo field in type.GetFields(BindingFlags.Public | BindingFlags.Instance))
        {
            Walk($"{path}.{field.Name}", field.GetValue(value), broken, seen);
        }
    }

    private static void CheckBand(string path, object band, List<string> broken)
    {
        IComparable? Part(string name) => band.GetType().GetProperty(name)!.GetValue(band) as IComparable;
        (IComparable? low, IComparable? central, IComparable? high) = (Part("Low"), Part("Central"), Part("High"));
        Check(low is null || (low.CompareTo(central) <= 0 && central!.CompareTo(high) <= 0), path, band, broken);
    }

    private static void Check(bool holds, string path, object value, List<string> broken)
    {
        if (!holds)
        {
            broken.Add($"{path} = {value}");
        }
    }
}
