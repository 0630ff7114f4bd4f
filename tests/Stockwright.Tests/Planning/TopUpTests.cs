using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>What is poured in at the checks, against what each rule asks for (F.3 and S.8 in docs/equations.md).</summary>
public sealed class TopUpTests
{
    // Kept to the line: every check but one in the last 40 minutes brings it back there, less 0.4 mm for the cold water's cooling it.
    [Fact]
    public void Kept_to_the_line_it_is_brought_back_there()
    {
        BatchPlan plan = PlanRequests.For("brown-beef").Uncovered().WithFilm(0.6).Making(6).Plan();
        SimmerCheck[] poured = [.. plan.Simmer.Checks.Where(check => check.TopUp.Central > Volume.Zero)];
        Assert.True(poured.Length >= 6);
        Assert.All(poured, check => Close.To(plan.Fit.HeldLine.Centimeters, check.LevelAfter.Centimeters, 0.06));
        Assert.All(plan.Simmer.Checks, check => Assert.True(check.LevelBefore <= plan.Fit.PeakLevel));
    }

    // Covered more than the wish needs, it falls to the lower line; but not so far that the solids stand out before the next look, and never over where it began.
    [Fact]
    public void Where_it_falls_first_the_solids_stay_covered()
    {
        BatchPlan plan = PlanRequests.For("brown-beef").In(PlanRequests.Straight(40, 12)).Uncovered().WithFilm(0.5).Making(1).Plan();
        Assert.True(plan.Fit.HeldLine < plan.Fit.FillLine - Length.FromMillimeters(5));
        Covered(plan);
        Assert.All(plan.Simmer.Checks, check => Assert.True(check.LevelAfter <= plan.Fit.FillLine + Length.FromMillimeters(0.1), $"{check.LevelAfter}"));
    }

    // Two hours between looks take more than the line holds over the solids: it is filled to where it began, and no higher.
    [Fact]
    public void Long_between_looks_it_is_filled_no_higher_than_it_began()
    {
        BatchPlan plan = (PlanRequests.For("brown-beef").In(PlanRequests.Straight(40, 12)).Uncovered().WithFilm(0.8).Making(1) with { CheckInterval = TimeSpan.FromHours(2) }).Plan();
        Assert.Contains(plan.Simmer.Checks, check => check.TopUp.Central > Volume.Zero);
        Assert.All(plan.Simmer.Checks, check => Assert.True(check.LevelAfter <= plan.Fit.FillLine + Length.FromMillimeters(0.5), $"{check.LevelAfter} over {plan.Fit.FillLine}"));
    }

    // Keep covered: under the line, and under a centimetre of liquid at every look.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Kept_covered_the_solids_are_under_a_centimetre_at_every_look(double hours)
    {
        BatchPlan plan = (PlanRequests.For("brown-beef").In(PlanRequests.Straight(40, 14)).Uncovered().WithFilm(0.7).Making(3) with { TopUp = TopUpRule.KeepCovered, CheckInterval = TimeSpan.FromHours(hours) }).Plan();
        Covered(plan);
        Assert.All(plan.Simmer.Checks, check => Assert.True(check.LevelAfter <= plan.Fit.HeldLine + Length.FromMillimeters(0.1) || !(check.TopUp.Central > Volume.Zero), $"{check.LevelAfter}"));
    }

    // A cupful is poured, a spoonful is not: 30 g is the least.
    [Fact]
    public void No_less_than_30_grams_is_poured()
    {
        BatchPlan ajar = (PlanRequests.For("brown-beef").Making(5).SimmeringFor(12) with { CheckInterval = TimeSpan.FromMinutes(20) }).Plan();
        double[] poured = [.. ajar.Simmer.Checks.Select(check => check.TopUp.Central.Milliliters).Where(millilitres => millilitres > 0)];
        Assert.NotEmpty(poured);
        Assert.All(poured, millilitres => Assert.True(millilitres >= 29.9, $"{millilitres}"));
        Assert.True(poured.Min() < 150, $"{poured.Min()}");
    }

    /// <summary>At every look after one that poured, the solids as they are at the end, when they are smallest, lie under a centimetre of liquid.</summary>
    private static void Covered(BatchPlan plan)
    {
        Assert.Contains(plan.Simmer.Checks, check => check.TopUp.Central > Volume.Zero);
        PotContents contents = new(plan.Request.Pot);
        contents.Add(plan.Workings.Script.StartSolids, default);
        SolidGave end = plan.Workings.Central.Gave[0];
        contents.Hottest = end.Hottest;
        double heap = contents.HeapHeight(end.Since);
        Assert.True(heap < plan.Fit.SolidsHeight.Meters);
        foreach ((SimmerCheck check, SimmerCheck next) in plan.Simmer.Checks.Zip(plan.Simmer.Checks.Skip(1)).Where(pair => pair.First.TopUp.Central > Volume.Zero))
        {
            Assert.True(next.LevelBefore.Meters >= heap + LiquorExchange.LeastCover.Meters - 0.002, $"{next.At}: {next.LevelBefore} over {heap}");
        }
    }
}
