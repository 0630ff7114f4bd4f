using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Cooling.Readings;
using Stockwright.Tests.Cooling.Limits;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling.Readings;

/// <summary>Rates from readings (Hedeen, Schaffner and Brown 2022, abstract: the two-point formula) and what follows from them.</summary>
public sealed class CoolingRateTests
{
    // C.34 worked by hand: what 57.2 to 21.1 °C in 2 h, and to 5 °C in 6 h, ask of a cooler at a temperature; log10 of degrees per hour.
    [Theory]
    [InlineData(1.7, 0.228, 0.204)]
    [InlineData(2.8, 0.237, 0.232)]
    [InlineData(3.3, 0.241, 0.250)]
    [InlineData(4.4, 0.250, 0.324)]
    public void Two_point_rates_the_code_asks_for(double air, double stage, double whole)
    {
        Close.To(stage, TwoPoint(57.2, 21.1, 2, air), 0.001);
        Close.To(whole, TwoPoint(57.2, 5, 6, air), 0.001);
    }

    // J Food Prot 2006 69(1), turkey roasts at 4 °C: 57 to 21 °C in 2.27 h (quartered) and 8.71 h (three to a bag).
    [Theory]
    [InlineData(0.50, 2.27)]
    [InlineData(0.1305, 8.71)]
    public void Newtons_law_on_published_roasts(double perHour, double hours)
    {
        CoolingRate rate = new(perHour, 0, T(4), new CoolingPoint(TimeSpan.Zero, T(57)));
        CoolingCurve measured = new([new(TimeSpan.Zero, T(57)), new(TimeSpan.FromSeconds(1), T(57))]);
        Close.To(hours, rate.CarryOn(measured, StandardLimits.Default).Central.FirstAtOrBelow(T(21))!.Value.TotalHours, 0.02);
    }

    [Fact]
    public void A_fit_finds_the_rate_that_made_the_readings()
    {
        CoolingPoint[] points = [.. Enumerable.Range(0, 7).Select(i => new CoolingPoint(TimeSpan.FromMinutes(20 * i), T(4 + (53 * Math.Exp(-0.5 * i / 3.0)))))];
        CoolingRate rate = CoolingRate.Fit(points, T(4))!;
        Close.To(0.5, rate.PerHour, 1e-9);
        Close.To(0, rate.StandardErrorPerHour, 1e-6);
        Assert.True(rate.SlowPerHour < 0.5 && rate.FastPerHour > 0.5);
    }

    [Fact]
    public void Carried_on_it_is_judged_by_the_same_limit()
    {
        CoolingCurve measured = LimitTests.Curve("C 57@0 40@0:30 28.5@1:00");
        CoolingRate good = CoolingRate.Fit(measured.Points, T(1))!;
        Assert.Equal(CoolingOutcome.Fails, CoolingRate.Fit(LimitTests.Curve("C 57@0 54@0:30 52@1:00").Points, T(4))!
            .CarryOn(LimitTests.Curve("C 57@0 54@0:30 52@1:00"), StandardLimits.Default).Verdict.Outcome);
        var carried = good.CarryOn(measured, StandardLimits.Default);
        Assert.Equal(CoolingOutcome.Meets, carried.Verdict.Central.Outcome);
        Assert.Equal(28.5, carried.Slow.TemperatureAt(TimeSpan.FromHours(1)).DegreesCelsius, 9);
    }

    [Fact]
    public void A_cooler_at_the_goal_never_gets_there()
    {
        Assert.Null(CoolingRate.Fit([new(TimeSpan.Zero, T(20)), new(TimeSpan.FromHours(1), T(30))], T(4)));
        Assert.Null(CoolingRate.Fit([new(TimeSpan.Zero, T(20))], T(4)));
    }

    /// <summary>Rate of C.34, log10 of kelvins per hour.</summary>
    private static double TwoPoint(double from, double to, double hours, double around) => Math.Log10((from - around) / (to - around)) / hours;

    private static Temperature T(double celsius) => Temperature.FromDegreesCelsius(celsius);
}
