using CsCheck;
using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;
using Stockwright.Tests.Planning;
using UnitsNet;

namespace Stockwright.Tests.Cooking;

/// <summary>Random logs over plans of several kinds: late, early, absurd but valid, corrected, taken back, in any order of receipt.</summary>
internal static class CourseGenerator
{
    /// <summary>Plans that differ in kind: topped up or not, several stages, oven or stop for the night, sealed, tapered, slow hob.</summary>
    private static readonly Lazy<Batch[]> Made = new(() =>
    [
        Batches.Chicken(),
        Batches.Of((PlanRequests.For("brown-chicken") with { TopUp = TopUpRule.KeepCovered }).In(PlanRequests.Tapered(24, 32, 30)).Plan(), "au-3-2-2"),
        Batches.Of((PlanRequests.For("brown-beef") with { TopUp = TopUpRule.KeepToLine }).Starting(PlanRequests.Morning.AddHours(8), NightPlan.OvenHold).Plan(), "uk-cook-chill"),
        Batches.Of(PlanRequests.For("white-veal").Starting(PlanRequests.Morning.AddHours(6), NightPlan.StopAndCool, PlanRequests.London).Plan(), "fr-2009"),
        Batches.Of(PlanRequests.For("kelp-and-dried-fish").Making(2).Plan(), "fsis-2"),
        Batches.Of(PlanRequests.For("fish-fumet").On(PlanRequests.Hob(HobKind.Gas, 1.2)).Plan(), "ca-food-code"),
        Batches.Of((PlanRequests.For("white-chicken") with { Lid = LidPosition.On }).In(PlanRequests.PressureCooker(24, 22)).Making(2).Plan(), "nz-template"),
    ]);

    private static readonly Gen<LogFact> Facts = Gen.OneOf(
        Gen.Double[0, 0.4].Select(metres => (LogFact)new LogFact.LevelRead(Length.FromMeters(metres))),
        Gen.Double[0.01, 15].Select(litres => (LogFact)new LogFact.WaterAdded(Volume.FromLiters(litres))),
        Gen.Select(Gen.Double[-30, 130], Gen.Bool, Gen.Bool).Select((celsius, cooling, fahrenheit) => (LogFact)new LogFact.TemperatureRead(
            fahrenheit ? Temperature.FromDegreesFahrenheit((celsius * 1.8) + 32) : Temperature.FromDegreesCelsius(celsius), cooling ? ReadingPlace.Cooling : ReadingPlace.Pot)),
        Gen.Double[80, 99].Select(celsius => (LogFact)new LogFact.TemperatureRead(Temperature.FromDegreesCelsius(celsius), ReadingPlace.Pot)),
        Gen.OneOfConst<LogFact>(
            new LogFact.Skimmed(),
            new LogFact.OffTheBoil(),
            new LogFact.Simmers(),
            new LogFact.BoiledOver(),
            new LogFact.RanLow(),
            new LogFact.Paused(),
            new LogFact.Resumed(),
            new LogFact.CoolingBegan("in ice"),
            new LogFact.CoolingBegan(),
            new LogFact.CorrectionMade(CorrectiveStep.ReheatAndCoolAgain),
            new LogFact.ColdUnmeasured(),
            new LogFact.RefractometerRead(5),
            new LogFact.SetFelt(BodyClass.SoftJelly),
            new LogFact.Noted("as it was"),
            new LogFact.PhotoTaken()),
        Gen.OneOfConst("hob", "other", LogFact.HeatMoved.Oven, LogFact.HeatMoved.NoHeat).Select(hob => (LogFact)new LogFact.HeatMoved(hob)),
        Gen.OneOfConst(LidPosition.Off, LidPosition.On, LidPosition.Ajar(Ratio.FromPercent(10))).Select(lid => (LogFact)new LogFact.LidChanged(lid)),
        Gen.Double[0.05, 20].Select(litres => (LogFact)new LogFact.BoiledOver(Volume.FromLiters(litres))),
        Gen.Double[0.1, 15].Select(litres => (LogFact)new LogFact.Strained(Volume.FromLiters(litres))),
        Gen.Double[0.1, 15].Select(litres => (LogFact)new LogFact.Portioned(Volume.FromLiters(litres))),
        Gen.Double[0.01, 2].Select(kilograms => (LogFact)new LogFact.FatWeighed(Mass.FromKilograms(kilograms))),
        Gen.Double[0.05, 9].Select(kilograms => (LogFact)new LogFact.SpentWeighed(Mass.FromKilograms(kilograms))),
        Gen.Const((LogFact)new LogFact.Closed()));

    /// <summary>When, in hours after the planned start.</summary>
    private static readonly Gen<double> Hours = Gen.Frequency((8, Gen.Double[0, 14]), (2, Gen.Double[-20, 60]), (1, Gen.Double[-24, 600]));

    internal static Gen<(Batch Batch, BatchLog Log, DateTimeOffset Now)> Courses =>
        from batch in Gen.Int[0, 6].Select(index => Made.Value[index])
        from heats in Gen.Bool
        from rows in Gen.Select(Hours, Gen.Int[0, 3], Facts, Gen.Int[0, 60], Gen.Double[0, 6]).Array[0, 30]
        from nowHours in Hours
        select (batch, Log(batch, heats, rows), batch.Planned.Timeline.Start.AddHours(nowHours));

    private static BatchLog Log(Batch batch, bool heats, (double Hours, int Kind, LogFact Fact, int Pick, double Length)[] rows)
    {
        BatchPlan plan = batch.Planned;
        Batches.LogWriter log = batch.Writing();
        if (heats)
        {
            log.Done(3, plan.Timeline.Steps.Any(step => step.Kind == StepKind.HeatUp) ? "heatup-1" : "simmer-1");
        }

        foreach ((double hours, int kind, LogFact fact, int pick, double length) in rows)
        {
            DateTimeOffset at = plan.Timeline.Start.AddHours(hours);
            PlanStep step = plan.Timeline.Steps[pick % plan.Timeline.Steps.Count];
            switch (kind)
            {
                case 0:
                    log.Enter(at, new LogFact.StepDone(step.Key));
                    break;
                case 1 when pick < 12:
                    log.Enter(at, new LogFact.HeatLost(pick % 2 == 0 ? null : at.AddHours(length + 0.01)));
                    break;
                case 1 when pick < 20 && log.Log.All.Count > 0:
                    log.Enter(at, pick % 2 == 0 ? new LogFact.Withdrawn() : fact, log.Log.All[pick % log.Log.All.Count].Id);
                    break;
                default:
                    log.Enter(at, fact);
                    break;
            }
        }

        return log.Log;
    }
}
