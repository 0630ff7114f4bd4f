using System.Diagnostics;
using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Simmering;
using Xunit;

namespace Stockwright.Tests.Cooking;

public class ScratchTests(ITestOutputHelper output)
{
    [Fact]
    public void Look()
    {
        Batch batch = Batches.Chicken();
        var plan = batch.Planned;
        output.WriteLine($"{plan.Yield} {plan.Timeline.HeatOn} heatup {plan.HeatUp.Time} simmer {plan.Simmer.Length}");
        foreach (var s in plan.Timeline.Steps) output.WriteLine($"{s.At:HH:mm} {s.Key} {s.Title} | {s.Detail}");
        var w = batch.Writing();
        Show("empty", w.Now(-200));
        Show("empty late", w.Now(-60));
        w.Done(0, "heatup-1");
        Show("on", w.Now(1));
        double h = plan.HeatUp.Time.Central.TotalMinutes;
        w.Enter(h + 5, new LogFact.Simmers());
        Show("simmers late", w.Now(h + 6));
        w.Done(h + 5 + 60, "check-1").Level(h + 65, UnitsNet.Length.FromMeters(plan.Request.Pot.InnerHeight.Meters - plan.Simmer.Checks[0].LevelBefore.Meters) + UnitsNet.Length.FromMillimeters(4));
        Show("check1", w.Now(h + 66));
        w.Level(h + 125, UnitsNet.Length.FromMeters(plan.Request.Pot.InnerHeight.Meters - plan.Simmer.Checks[1].LevelBefore.Meters) + UnitsNet.Length.FromMillimeters(8));
        Show("check2", w.Now(h + 126));
        w.Enter(h + 140, new LogFact.HeatLost(w.At(h + 290)));
        var c = Show("gap", w.Now(h + 330));
        foreach (var s in c.Steps) output.WriteLine($"{s.Step.At:HH:mm:ss} {s.PlannedAt:HH:mm} {s.Key} {s.Standing} {s.Entry?.Number}");
        var sw = Stopwatch.StartNew();
        for (int i = 0; i < 100; i++) w.Now(h + 330);
        output.WriteLine($"{sw.ElapsedMilliseconds / 100.0} ms");
    }

    private BatchCourse Show(string what, BatchCourse c)
    {
        output.WriteLine($"== {what} {c.Phase} yield {c.Expected.Yield} ready {c.Expected.Timeline.Ready:dd HH:mm} heatOff {c.Expected.Timeline.HeatOff:HH:mm:ss} loss {c.LossOverPlan}");
        output.WriteLine($"   pot {c.Pot}");
        output.WriteLine($"   risk {c.Risk}");
        output.WriteLine($"   next {c.Next?.Key} {c.Next?.Standing} {c.Next?.Step.At:HH:mm} behind {string.Join(',', c.Behind.Select(s => s.Key))}");
        foreach (var g in c.HeatGaps) output.WriteLine($"   {g}");
        foreach (var n in c.Expected.Notices) output.WriteLine($"   ! {n.Code} {n.Message}");
        return c;
    }
}
