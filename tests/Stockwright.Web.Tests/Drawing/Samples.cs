using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Web.Tests.Drawing;

/// <summary>A day's batch made by hand, for the drawings to draw.</summary>
internal static class Samples
{
    public static Pot StraightPot { get; } = Pot.Straight("big", "Tall pot", Length.FromMillimeters(320), Length.FromMillimeters(320));

    public static Pot TaperedPot { get; } = StraightPot with { Name = "Cone", BaseDiameter = Length.FromMillimeters(240), BrimDiameter = Length.FromMillimeters(360) };

    public static Pot LowPot { get; } = Pot.Straight("low", "Low pan", Length.FromMillimeters(400), Length.FromMillimeters(150));

    public static FitReport Fit(Pot pot, double fill = 0.74, double peak = 0.78, double solids = 0.55) => new()
    {
        Verdict = FitVerdict.Fits,
        Potfuls = 1,
        LargestYield = Volume.FromLiters(12),
        PotsThatFit = [],
        SolidsDisplacement = Volume.FromLiters(6),
        SolidsHeight = pot.InnerHeight * solids,
        WaterToLine = Volume.FromLiters(11),
        FillLine = pot.InnerHeight * fill,
        HeldLine = pot.InnerHeight * fill,
        FillLineFromRim = pot.InnerHeight * (1 - fill),
        PeakLevel = pot.InnerHeight * peak,
        Freeboard = pot.InnerHeight * (1 - peak),
        SafeMaximum = pot.InnerHeight * 0.8437,
        Limit = FillLimit.FiveCentimetresFreeboard,
        CoverDepth = pot.InnerHeight * (fill - solids),
        CoverDecidesWater = false,
    };

    /// <summary>A level that falls by an eighth of the pot in twelve hours and is brought back at some checks.</summary>
    public static SimmerForecast Forecast(Pot pot, int hours = 12, int samplesPerHour = 20, bool topsUp = true, bool hasChecks = true)
    {
        double rim = pot.InnerHeight.Millimeters;
        double start = rim * 0.74;
        double level = start;
        double fall = rim * 0.012 / samplesPerHour;
        List<SimmerSample> samples = [];
        List<(Length Low, Length High)> band = [];
        List<SimmerCheck> checks = [];
        for (int i = 0; i <= hours * samplesPerHour; i++)
        {
            TimeSpan at = TimeSpan.FromHours((double)i / samplesPerHour);
            Add(at);
            bool isCheck = hasChecks && i > 0 && i % samplesPerHour == 0 && i < hours * samplesPerHour;
            if (isCheck)
            {
                double before = level;
                double added = topsUp && i / samplesPerHour % 3 == 0 ? start - level : 0;
                level += added;
                checks.Add(new SimmerCheck(
                    at,
                    Length.FromMillimeters(before),
                    new Band<Length>(Length.FromMillimeters(rim - before - 4), Length.FromMillimeters(rim - before), Length.FromMillimeters(rim - before + 6)),
                    new Band<Volume>(Volume.FromLiters(added * 0.06), Volume.FromLiters(added * 0.08), Volume.FromLiters(added * 0.11)),
                    Length.FromMillimeters(level)));
                if (added > 0)
                {
                    Add(at);
                }
            }

            level -= fall;
        }

        return new SimmerForecast
        {
            Samples = samples,
            LevelBand = band,
            Checks = checks,
            Length = TimeSpan.FromHours(hours),
            Evaporated = Litres(2.4, 3.2, 4.4),
            ToppedUp = topsUp ? Litres(2, 2.9, 4) : Litres(0, 0, 0),
            EvaporationRate = new Band<VolumeFlow>(VolumeFlow.FromLitersPerHour(0.2), VolumeFlow.FromLitersPerHour(0.27), VolumeFlow.FromLitersPerHour(0.36)),
            HobEnergy = new Band<Energy>(Energy.FromKilowattHours(5), Energy.FromKilowattHours(6), Energy.FromKilowattHours(8)),
            HoldSetting = Ratio.FromPercent(18),
            LowestLevel = Length.FromMillimeters(level),
            Books = new SimmerBooks(Mass.Zero, Mass.Zero, Mass.Zero, Energy.Zero, Energy.Zero, Energy.Zero),
        };

        void Add(TimeSpan at)
        {
            double hour = at.TotalHours;
            double celsius = Math.Min(93, 15 + (hour * 78));
            double swell = celsius >= 93 ? rim * 0.03 : rim * 0.03 * hour;
            double spread = 3 + (hour * 1.2);
            samples.Add(new SimmerSample(at, Temperature.FromDegreesCelsius(celsius), Length.FromMillimeters(level + swell), Volume.FromLiters(10), Volume.FromLiters(hour * 0.27), Power.FromWatts(900)));
            band.Add((Length.FromMillimeters(level + swell - spread), Length.FromMillimeters(level + swell + spread)));
        }
    }

    public static PlanSchedule Schedule { get; } = new() { StartAt = new DateTimeOffset(2025, 3, 7, 15, 0, 0, TimeSpan.Zero) };

    public static Timeline Timeline(int simmerHours = 12)
    {
        DateTimeOffset now = new(2025, 3, 7, 15, 0, 0, TimeSpan.Zero);
        DateTimeOffset start = now;
        List<PlanStep> steps = [];
        Step(StepKind.Gather, 20, 20);
        Step(StepKind.Roast, 75, 10);
        Step(StepKind.Fill, 10, 10);
        DateTimeOffset heatOn = now;
        Step(StepKind.HeatUp, 65, 5);
        Step(StepKind.Skim, 10, 10);
        DateTimeOffset simmerFrom = now;
        for (int hour = 0; hour < simmerHours; hour++)
        {
            now = simmerFrom.AddHours(hour);
            Step(StepKind.Simmer, 60, 0);
            now = simmerFrom.AddHours(hour + 1);
            Step(StepKind.Check, 4, 4);
        }

        DateTimeOffset heatOff = now;
        Step(StepKind.Strain, 20, 20);
        DateTimeOffset strained = now;
        Step(StepKind.Cool, 110, 15);
        Step(StepKind.Chill, 600, 5);
        Step(StepKind.Defat, 10, 10);
        Step(StepKind.Remelt, 15, 2);
        Step(StepKind.Portion, 25, 25);
        return new Timeline(steps, start, heatOn, heatOff, strained, now, TimeSpan.FromMinutes(180), []);

        void Step(StepKind kind, double minutes, double handsOn)
        {
            PlanStep step = new()
            {
                Key = $"{kind}-{steps.Count + 1}",
                Kind = kind,
                Title = kind.ToString(),
                At = now,
                Duration = TimeSpan.FromMinutes(minutes),
                HandsOn = TimeSpan.FromMinutes(handsOn),
                InNight = handsOn > 0 && !Schedule.IsAwake(now),
            };
            steps.Add(step);
            now = step.End;
        }
    }

    public static Tray Tray { get; } = new("gn11", "GN 1/1", Length.FromMillimeters(505), Length.FromMillimeters(300), 4);

    public static RoastPlan Roast(double share, int trays) => new()
    {
        Setting = null!,
        Solids = "the bones",
        Oven = null!,
        HasFan = true,
        Loads = [new TrayLoad("bones", Mass.FromKilograms(4), Tray.Area * (share * trays), null!)],
        TrayName = Tray.Name,
        TraysToFill = trays,
        TraysAtOnce = 2,
        OvenRounds = (trays + 1) / 2,
        TurnAt = TimeSpan.FromMinutes(30),
        TotalTime = TimeSpan.FromMinutes(75),
        MassLoss = new Band<Mass>(Mass.Zero, Mass.Zero, Mass.Zero),
        FatDrained = new Band<Mass>(Mass.Zero, Mass.Zero, Mass.Zero),
    };

    private static Band<Volume> Litres(double low, double central, double high) =>
        new(Volume.FromLiters(low), Volume.FromLiters(central), Volume.FromLiters(high));

    private static Band<Mass> Grams(double low, double central, double high) =>
        new(Mass.FromGrams(low), Mass.FromGrams(central), Mass.FromGrams(high));

    /// <summary>Chances and ranges, made up.</summary>
    public static PredictionSample Bodies { get; } = new()
    {
        Draws = 500,
        Seed = 1,
        Yield = new(Volume.FromLiters(3), Volume.FromLiters(4), Volume.FromLiters(5)),
        Gelatin = new(Ratio.FromPercent(1.5), Ratio.FromPercent(2.3), Ratio.FromPercent(3.5)),
        Effective = new(Ratio.FromPercent(1.4), Ratio.FromPercent(2.2), Ratio.FromPercent(3.3)),
        Brix = new(3, 4.2, 5.8),
        FatCap = new(Length.FromMillimeters(2), Length.FromMillimeters(3), Length.FromMillimeters(4)),
        FatRecovered = new(Mass.FromGrams(100), Mass.FromGrams(130), Mass.FromGrams(160)),
        PerHundredMillilitres = new(
            new(Energy.FromKilocalories(10), Energy.FromKilocalories(14), Energy.FromKilocalories(20)), Grams(2, 3, 4), Grams(0.1, 0.2, 0.3), Grams(0.2, 0.3, 0.5), Grams(0.02, 0.03, 0.05)),
        Ready = new(DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch, DateTimeOffset.UnixEpoch),
        Body = [.. new[] { 0, 0, 0.18, 0.62, 0.2, 0, 0, 0 }.Select((chance, index) => new BodyChance((BodyClass)index, Ratio.FromDecimalFractions(chance)))],
        BoilsDry = Ratio.Zero,
    };

    /// <summary>A course that rises to a height and falls, by the hour.</summary>
    public static BodyAgainstTime Course(double strongestPercent = 3.1, TimeSpan? small = null)
    {
        TimePoint[] points = [.. Enumerable.Range(3, 22).Select(hour =>
        {
            double percent = strongestPercent * (1 - Math.Pow((hour - 15) / 15.0, 2));
            return new TimePoint(TimeSpan.FromHours(hour), Ratio.FromPercent(percent * 1.2), Ratio.FromPercent(80), Ratio.FromPercent(percent), BodyClasses.Of(percent));
        })];
        return new BodyAgainstTime(points, small ?? TimeSpan.FromHours(8), TimeSpan.FromHours(1), TimeSpan.FromHours(15));
    }
}
