using Stockwright.Cooling;
using Stockwright.Cooling.Growth;
using Stockwright.Tests.Cooling.Limits;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling.Growth;

/// <summary>The growth indicator: rates, closed form, integrated rows (computed for the project by RK4), and published observations with their scatter.</summary>
public sealed class GrowthTests
{
    private static readonly GrowthModel Chicken = GrowthModel.ClostridiumPerfringens;

    // Cardinal temperature model, Rosso et al. 1993; rates from the published cardinal values (Food Control abstract).
    [Theory]
    [InlineData(12, 0.0575, 0.0271)]
    [InlineData(15, 0.2149, 0.2028)]
    [InlineData(20, 0.6959, 0.8295)]
    [InlineData(25, 1.4405, 1.8082)]
    [InlineData(30, 2.4292, 3.0274)]
    [InlineData(35, 3.6211, 4.3088)]
    [InlineData(40, 4.9146, 5.3463)]
    [InlineData(43.5, 5.7242, 5.6400)]
    [InlineData(46.4, 6.0600, 5.3472)]
    [InlineData(50, 4.4068, 3.7683)]
    public void Rates(double celsius, double chicken, double beef)
    {
        Close.To(chicken, Chicken.CardinalRatePerHour(celsius), 5.1e-5);
        Close.To(beef, Beef.CardinalRatePerHour(celsius), 5.1e-5);
    }

    [Fact]
    public void Rate_at_37_and_at_the_optimum()
    {
        Close.To(4.13614, Chicken.CardinalRatePerHour(37), 1e-4);
        Close.To(6.06, Chicken.CardinalRatePerHour(46.4), 1e-6);
    }

    [Theory]
    [InlineData(8.8)]
    [InlineData(51.5)]
    [InlineData(60)]
    [InlineData(-5)]
    public void No_growth_outside_the_cardinal_temperatures(double celsius) => Assert.Equal(0, Chicken.CardinalRatePerHour(celsius));

    // Spores showed no growth at 12 °C in three weeks: Juneja, abstracts 2001 and 2003.
    [Theory]
    [InlineData(12)]
    [InlineData(10)]
    [InlineData(4)]
    public void Exactly_nothing_at_or_below_twelve(double celsius)
    {
        GrowthEstimate estimate = GrowthIndicator.Assess(Held(celsius, 21 * 24), Chicken);
        Assert.Equal(0, estimate.Best);
        Assert.Equal(0, estimate.Cautious);
        Assert.Equal(0, estimate.Worst);
    }

    // Baranyi and Roberts 1994, closed form at constant temperature: 5.850409 log at 37 °C, h0 3, 4 h, 2 to 9 log.
    [Fact]
    public void Isothermal_closed_form() => Close.To(5.850409, GrowthIndicator.Assess(Held(37, 4), Chicken).Cautious, 1e-6);

    [Theory]
    [InlineData(1.5, 3)]
    [InlineData(4, 7)]
    [InlineData(2, 0)]
    public void Far_below_the_ceiling_the_ratio_formula_holds(double work, double lag)
    {
        double ratio = 1 + ((Math.Exp(work) - 1) * Math.Exp(-lag));
        Close.Relative(ratio, Math.Pow(10, GrowthIndicator.Log10Growth(Chicken, work, lag)), 1e-3);
    }

    // Integrated by RK4 for the project; the rows ending below 12 °C were run without the floor there, worth up to 0.004.
    [Theory]
    [InlineData("C 50@0 15@3:00", 4.0753, 2.7736, 1.0740)]
    [InlineData("C 57@0 21@2:00 5@6:00", 3.0345, 1.7393, 0.2981)]
    [InlineData("C 60@0 21@2:00 5@6:00", 2.83, 1.54, 0.21)]
    [InlineData("C 70@0 3@1:30", 1.1082, 0.2011, 0.0047)]
    [InlineData("C 63@0 10@2:00", 1.87, 0.66, 0.03)]
    [InlineData("C 54.4@0 26.7@1:30 4.4@6:30", 3.46, 2.16, 0.56)]
    public void Integrated_rows(string readings, double worst, double cautious, double best)
    {
        GrowthEstimate estimate = GrowthIndicator.Assess(LimitTests.Curve(readings), Chicken);
        Close.To(best, estimate.Best, 0.01);
        Close.To(cautious, estimate.Cautious, 0.02);
        Close.To(worst, estimate.Worst, 0.03);
    }

    // De Jong et al. 2004 (abstract): pea soup 50 to 15 °C in 3 h gains 1 log, in 10 h reaches the maximum. Replicates scatter by half a log and more.
    [Fact]
    public void Pea_soup()
    {
        Close.To(1, GrowthIndicator.Assess(LimitTests.Curve("C 50@0 15@3:00"), Chicken).Best, 0.5);
        Assert.True(GrowthIndicator.Assess(LimitTests.Curve("C 50@0 15@10:00"), Chicken).Best >= 5);
    }

    // Shigehisa et al. 1985 (record): 60 to 15 °C at 25 K/h, no change; at 5 K/h exponential growth.
    [Fact]
    public void Straight_cooling_at_known_rates()
    {
        Assert.InRange(GrowthIndicator.Assess(LimitTests.Curve("C 60@0 15@1:48"), Chicken).Best, 0, 0.3);
        Assert.True(GrowthIndicator.Assess(LimitTests.Curve("C 60@0 15@9:00"), Chicken).Best > 3);
    }

    // B. cereus in four rice dishes, exponential cooling 54.5 to 7.2 °C (J Food Prot 2018 81:430, abstract; 6 h: IAFP 2017 abstract).
    [Theory]
    [InlineData(6, 0, 0.5)]
    [InlineData(15, 2.55, 4.18)]
    [InlineData(18, 3.39, 4.94)]
    [InlineData(21, 4.41, 5.82)]
    public void Bacillus_cereus_in_rice(double hours, double least, double most)
    {
        CoolingCurve curve = new(Enumerable.Range(0, 201).Select(i => new CoolingPoint(
            TimeSpan.FromHours(hours * i / 200), Temperature.FromDegreesCelsius(54.5 * Math.Pow(7.2 / 54.5, i / 200.0)))));
        Assert.InRange(GrowthIndicator.Assess(curve, GrowthModel.BacillusCereus).Best, least, most);
    }

    [Fact]
    public void Worse_sets_never_say_less_and_longer_never_grows_less()
    {
        double before = -1;
        for (double hours = 1; hours <= 12; hours++)
        {
            GrowthEstimate estimate = GrowthIndicator.Assess(new CoolingCurve(
                [new(TimeSpan.Zero, Temperature.FromDegreesCelsius(60)), new(TimeSpan.FromHours(hours), Temperature.FromDegreesCelsius(5))]), Chicken);
            Assert.True(estimate.Best <= estimate.Cautious && estimate.Cautious <= estimate.Worst && estimate.Best >= before);
            before = estimate.Best;
        }
    }

    // Credit only where the reheat kills six logs of growing cells, never for a toxin former, never in the worst case.
    [Fact]
    public void Heating_is_credited_only_where_it_is_justified()
    {
        CoolingCurve reheated = LimitTests.Curve("C 57@0 30@4:00 74@4:30 74@5:00 57@5:15 20@6:00 5@7:00");
        CoolingCurve warmed = LimitTests.Curve("C 57@0 30@4:00 56@4:30 56@4:31 20@6:00 5@7:00");
        GrowthEstimate credited = GrowthIndicator.Assess(reheated, Chicken);
        Assert.True(credited.HeatingCredited);
        Assert.True(credited.Best < 1 && credited.Worst > 4);
        Assert.False(GrowthIndicator.Assess(warmed, Chicken).HeatingCredited);
        Assert.False(GrowthIndicator.Assess(reheated, GrowthModel.BacillusCereus).HeatingCredited);
    }

    // Juneja et al. 2001: D62 0.41 min in chicken broth. Sarker et al. 2000: D100 60 min, 124 min for NCTC 8239. UK rule: 70 °C for 2 min, z 7.5 [from memory].
    [Fact]
    public void Heat_kills_by_the_minute()
    {
        Close.To(5.0, 2.05 / Salmonella.DMinutes(62), 0.01);
        Close.To(3.00, 180 / Spores.DMinutes(100), 0.01);
        Close.To(1.45, 180 / (Spores with { DecimalReduction = TimeSpan.FromMinutes(124) }).DMinutes(100), 0.01);
        HeatInactivation rule = new("rule", TimeSpan.FromMinutes(0.33), Temperature.FromDegreesCelsius(70), 7.5, "test");
        Close.To(9.28, 2 * rule.DMinutes(65) / rule.DMinutes(70), 0.05);
        Close.To(43.1, 2 * rule.DMinutes(60) / rule.DMinutes(70), 0.1);
    }

    // The four points of the same abstract, least squares on log10 D, give the z that is used.
    [Fact]
    public void Salmonella_z_follows_from_its_four_points()
    {
        double[] celsius = [55, 58, 60, 62];
        double[] logs = [Math.Log10(4.87), Math.Log10(2.72), Math.Log10(1.30), Math.Log10(0.41)];
        double mean = celsius.Average();
        double slope = celsius.Select((t, i) => (t - mean) * (logs[i] - logs.Average())).Sum() / celsius.Sum(t => (t - mean) * (t - mean));
        Close.To(Salmonella.ZKelvins, -1 / slope, 0.05);
    }

    /// <summary>The same organism in braised beef, to compare with.</summary>
    private static readonly GrowthModel Beef = Chicken with
    {
        Least = Temperature.FromDegreesCelsius(10.3),
        Optimum = Temperature.FromDegreesCelsius(43.5),
        Most = Temperature.FromDegreesCelsius(53.4),
        OptimumRatePerHour = 5.64,
    };

    /// <summary>Juneja et al. 2001 (abstract); z by regression of its four points.</summary>
    private static readonly HeatInactivation Salmonella = new("Salmonella in chicken broth", TimeSpan.FromMinutes(0.41), Temperature.FromDegreesCelsius(62), 6.65, "Juneja et al. 2001");

    /// <summary>Spores of food-poisoning C. perfringens, mean strain.</summary>
    private static readonly HeatInactivation Spores = new(
        "Clostridium perfringens, spores", TimeSpan.FromMinutes(60), Temperature.FromDegreesCelsius(100), 10, "Sarker et al. 2000, table; z of 10 K is customary [from memory]");

    private static CoolingCurve Held(double celsius, double hours) => new(
        [new(TimeSpan.Zero, Temperature.FromDegreesCelsius(celsius)), new(TimeSpan.FromHours(hours), Temperature.FromDegreesCelsius(celsius))]);
}
