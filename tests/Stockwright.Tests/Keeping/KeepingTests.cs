using Stockwright.Evidence;
using Stockwright.Keeping;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Keeping;

/// <summary>Charts, date marks, headspace and canning, each with its source beside it.</summary>
public sealed class KeepingTests
{
    // USDA Complete Guide, guide 5, meat stock, hot pack (copies: Michigan State University Extension 1997, PNW361); as printed, with both sides of each step.
    [Theory]
    [InlineData(ContainerSize.Quart, CannerGauge.Dial, 5000, 25, 13)]
    [InlineData(ContainerSize.Pint, CannerGauge.Weighted, 1500, 20, 15)]
    [InlineData(ContainerSize.Pint, CannerGauge.Dial, 0, 20, 11)]
    [InlineData(ContainerSize.Pint, CannerGauge.Dial, 2000, 20, 11)]
    [InlineData(ContainerSize.Pint, CannerGauge.Dial, 2001, 20, 12)]
    [InlineData(ContainerSize.Pint, CannerGauge.Dial, 4000, 20, 12)]
    [InlineData(ContainerSize.Pint, CannerGauge.Dial, 4001, 20, 13)]
    [InlineData(ContainerSize.Pint, CannerGauge.Dial, 6001, 20, 14)]
    [InlineData(ContainerSize.Pint, CannerGauge.Dial, 8000, 20, 14)]
    [InlineData(ContainerSize.Pint, CannerGauge.Dial, -200, 20, 11)]
    [InlineData(ContainerSize.Quart, CannerGauge.Weighted, 1000, 25, 10)]
    [InlineData(ContainerSize.Quart, CannerGauge.Weighted, 1001, 25, 15)]
    public void Pressure_canning(ContainerSize jar, CannerGauge gauge, double feet, int minutes, int pounds)
    {
        CanningAnswer answer = PressureCanning.For(CannedStock.Meat, jar, gauge, Length.FromFeet(feet));
        Assert.Equal(new CanningProcess(jar, minutes, pounds, 1), answer.Process);
    }

    [Theory]
    [InlineData(CannedStock.Fish, 0)]
    [InlineData(CannedStock.Vegetable, 0)]
    [InlineData(CannedStock.Meat, 8001)]
    public void No_entry_is_said_and_not_guessed(CannedStock stock, double feet)
    {
        CanningAnswer answer = PressureCanning.For(stock, ContainerSize.Pint, CannerGauge.Dial, Length.FromFeet(feet));
        Assert.Null(answer.Process);
        Assert.NotEmpty(answer.Reason);
    }

    [Fact]
    public void Boiling_water_is_warned_off() => Assert.Contains(PressureCanning.Cautions, text => text.Contains("Never a boiling-water canner", StringComparison.Ordinal));

    // NCHFP, adapted from So Easy to Preserve, 2006: liquid pack.
    [Theory]
    [InlineData(ContainerSize.Pint, false, 0.5)]
    [InlineData(ContainerSize.Quart, false, 1)]
    [InlineData(ContainerSize.Pint, true, 0.75)]
    [InlineData(ContainerSize.Quart, true, 1.5)]
    public void Headspace_by_jar(ContainerSize size, bool narrow, double inches) => Close.To(inches, Headspace.ForFreezing(size, narrow).Height.Inches, 1e-12);

    // Densities of water and ice at 0 °C: 999.8 and 916.7 kg/m3.
    [Fact]
    public void Ice_takes_nine_percent_more() => Close.To(9.07, Headspace.IceExpansion.Percent, 0.05);

    [Fact]
    public void A_full_litre_leaves_room_for_its_ice() =>
        Close.To(1, Headspace.MostLiquid(Volume.FromLiters(1)).Liters * (1 + Headspace.IceExpansion.DecimalFractions), 1e-12);

    // USDA cold storage chart (DuPage County Health): meat broth 1 to 2 days; FDA chart: soups 3 to 4 days; trade: five days, six months, no source.
    [Theory]
    [InlineData("usda-meat-broth", 1, 2, 2, 3, Provenance.Published)]
    [InlineData("fda-soups", 3, 4, 2, 3, Provenance.Published)]
    [InlineData("trade", 5, 5, 6, 6, Provenance.CommonPractice)]
    public void Charts_as_they_disagree(string id, int days, int mostDays, int months, int mostMonths, Provenance grade)
    {
        StorageTime row = KeepingRules.Storage.Single(time => string.Equals(time.Id, id, StringComparison.Ordinal));
        Assert.Equal((days, mostDays), row.FridgeDays);
        Assert.Equal((months, mostMonths), row.FreezerMonths);
        Assert.Equal(grade, row.Provenance);
    }

    [Fact]
    public void The_shortest_is_the_default() => Assert.Equal("usda-meat-broth", KeepingRules.Shortest.Id);

    // Food Code 3-501.16, FSA guidance May 2016, Access Canberra, Eastern Ontario Health Unit; France and Scotland [from memory].
    [Theory]
    [InlineData("us-food-code", 57, 5.0, 74)]
    [InlineData("uk", 63, 8.0, 70)]
    [InlineData("uk-scotland", 63, null, 82)]
    [InlineData("au-3-2-2", 60, 5.0, 60)]
    [InlineData("ca-food-code", 60, 4.0, 74)]
    [InlineData("fr-2009", 63, 3.0, 63)]
    public void Holding_and_reheating(string id, double hot, double? cold, double reheat)
    {
        HoldingRule rule = KeepingRules.Holding.Single(row => string.Equals(row.Id, id, StringComparison.Ordinal));
        Assert.Equal(hot, rule.HotAtLeast.Celsius);
        Assert.Equal(cold, rule.ColdAtMost?.Celsius);
        Assert.Equal(reheat, rule.ReheatTo.Celsius);
    }

    // 3-501.17 [from memory]: seven days, the day of preparation is day one.
    [Fact]
    public void Day_one_is_the_day_it_is_made()
    {
        Assert.Equal(new DateOnly(2026, 3, 7), DateMark.LastDay(new DateOnly(2026, 3, 1), 7));
        Assert.Equal(7, DateMark.DaysLeft(new DateOnly(2026, 3, 1), 7, new DateOnly(2026, 3, 1)));
        Assert.Equal(1, DateMark.DaysLeft(new DateOnly(2026, 3, 1), 7, new DateOnly(2026, 3, 7)));
        Assert.Equal(0, DateMark.DaysLeft(new DateOnly(2026, 3, 1), 7, new DateOnly(2026, 3, 9)));
    }

    // The same clause: freezing stops the clock, days already used are counted on thawing.
    [Fact]
    public void Freezing_stops_the_clock()
    {
        DateOnly made = new(2026, 3, 1);
        FrozenSpell spell = new(new DateOnly(2026, 3, 2), new DateOnly(2026, 4, 2));

        // Days used: 1 and 2 March, 2 April; four are left, 3 to 6 April.
        Assert.Equal(new DateOnly(2026, 4, 6), DateMark.LastDay(made, 7, spell));
        Assert.Null(DateMark.LastDay(made, 7, spell with { Out = null }));
        Assert.Equal(DateMark.DaysLeft(made, 7, new DateOnly(2026, 3, 20), spell with { Out = null }), DateMark.DaysLeft(made, 7, new DateOnly(2026, 5, 20), spell with { Out = null }));
        Assert.Equal(new DateOnly(2026, 3, 7), DateMark.LastDay(made, 7, new FrozenSpell(spell.In, spell.In)));
    }

    [Fact]
    public void Dates_that_cannot_be_are_refused()
    {
        DateOnly made = new(2026, 3, 1);
        Assert.Throws<ArgumentException>(() => DateMark.LastDay(made, 3, new FrozenSpell(new DateOnly(2026, 3, 9), null)));
        Assert.Throws<ArgumentException>(() => DateMark.LastDay(made, 3, new FrozenSpell(new DateOnly(2026, 2, 1), null)));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateMark.LastDay(made, 0));
    }

    // FDA and FSIS risk assessment 2003 [from memory]: EGR(T) = EGR5 ((T + 1.18)/6.18)^2.
    [Theory]
    [InlineData(3, 0.4575)]
    [InlineData(4, 0.7026)]
    [InlineData(7, 1.7520)]
    [InlineData(8, 2.2065)]
    public void A_warmer_fridge_costs(double celsius, double ratio) =>
        Close.To(ratio, FridgeGrowth.RelativeToFiveCelsius(Temperature.FromDegreesCelsius(celsius)), 1e-3);
}
