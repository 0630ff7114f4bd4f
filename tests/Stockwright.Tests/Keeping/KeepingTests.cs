using Stockwright.Cooling.Limits;
using Stockwright.Evidence;
using Stockwright.Keeping;
using Stockwright.Kitchen;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Keeping;

/// <summary>Charts, date marks, headspace and canning, each with its source beside it.</summary>
public sealed class KeepingTests
{
    // USDA Complete Guide, guide 5, meat stock, hot pack (copies: Michigan State University Extension 1997, PNW361), as printed: pints 20
    // minutes, quarts 25; dial 11, 12, 13, 14 lb up to 2000, 4000, 6000, 8000 ft; weighted 10 lb up to 1000 ft, 15 above; 1 in of headspace.
    // Half-pints as pints: NCHFP [from memory]. Each step at its end and a foot beyond.
    [Theory]
    [InlineData(CannerGauge.Dial, -200, 11)]
    [InlineData(CannerGauge.Dial, 0, 11)]
    [InlineData(CannerGauge.Dial, 2000, 11)]
    [InlineData(CannerGauge.Dial, 2001, 12)]
    [InlineData(CannerGauge.Dial, 4000, 12)]
    [InlineData(CannerGauge.Dial, 4001, 13)]
    [InlineData(CannerGauge.Dial, 6000, 13)]
    [InlineData(CannerGauge.Dial, 6001, 14)]
    [InlineData(CannerGauge.Dial, 8000, 14)]
    [InlineData(CannerGauge.Weighted, -200, 10)]
    [InlineData(CannerGauge.Weighted, 0, 10)]
    [InlineData(CannerGauge.Weighted, 1000, 10)]
    [InlineData(CannerGauge.Weighted, 1001, 15)]
    [InlineData(CannerGauge.Weighted, 8000, 15)]
    public void Pressure_canning(CannerGauge gauge, double feet, int pounds)
    {
        CanningProcess?[] found = [.. Enum.GetValues<ContainerSize>().Select(jar => PressureCanning.For(CannedStock.Meat, jar, gauge, Length.FromFeet(feet)).Process)];
        Assert.Equal(
            [
                new CanningProcess(ContainerSize.HalfPint, 20, pounds, 1),
                new CanningProcess(ContainerSize.Pint, 20, pounds, 1),
                new CanningProcess(ContainerSize.Quart, 25, pounds, 1),
            ],
            found);
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

    // USDA Complete Guide, guide 1: do not force-cool the canner.
    [Fact]
    public void The_canner_loses_its_pressure_by_itself() => Assert.Contains(PressureCanning.Cautions, text => text.Contains("lose its pressure by itself", StringComparison.Ordinal));

    // NCHFP, headspace to allow, row Juices (So Easy to Preserve, 5th ed. 2006): pint 1/2 in wide, 1 1/2 in narrow; quart 1 in wide, 1 1/2 in
    // narrow. The row Liquid pack, 3/4 in for a narrow pint, is for fruit in syrup. Half-pint as pint: common practice, no source.
    [Theory]
    [InlineData(ContainerSize.HalfPint, false, 0.5, Provenance.CommonPractice)]
    [InlineData(ContainerSize.HalfPint, true, 1.5, Provenance.CommonPractice)]
    [InlineData(ContainerSize.Pint, false, 0.5, Provenance.Published)]
    [InlineData(ContainerSize.Pint, true, 1.5, Provenance.Published)]
    [InlineData(ContainerSize.Quart, false, 1, Provenance.Published)]
    [InlineData(ContainerSize.Quart, true, 1.5, Provenance.Published)]
    public void Headspace_by_jar(ContainerSize size, bool narrow, double inches, Provenance grade)
    {
        HeadspaceFigure figure = Headspace.ForFreezing(size, narrow);
        Close.To(inches, figure.Height.Inches, 1e-12);
        Assert.Equal(grade, figure.Provenance);
    }

    // The same row in one sentence, in millimetres: 12.7, 25.4 and 38.1.
    [Fact]
    public void The_rule_of_headspace_in_words() => Assert.Equal(
        "leave 12.7 free in a wide-mouthed jar of a pint (500 mL) or less, 25.4 in a wide quart or litre, and 38.1 in any jar that narrows at the top",
        Headspace.Rule(length => length.Millimeters.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)));

    // Densities of water and ice at 0 °C: 999.8 and 916.7 kg/m3.
    [Fact]
    public void Ice_takes_nine_percent_more() => Close.To(9.07, Headspace.IceExpansion.Percent, 0.05);

    [Fact]
    public void A_full_litre_leaves_room_for_its_ice() =>
        Close.To(1, Headspace.MostLiquid(Volume.FromLiters(1)).Liters * (1 + Headspace.IceExpansion.DecimalFractions), 1e-12);

    // USDA cold storage chart (DuPage County Health): meat broth; FDA chart: soups; UK advice of FSA and NHS (Pendle district): cooled within 90
    // minutes, two days, best within three months frozen; FSAI (press, 18 October 2022): 2 to 3 days; French hotel schools: 72 hours; trade: no source.
    [Fact]
    public void Charts_as_they_disagree() => Assert.Equal(
        [
            "usda-meat-broth 1-2 days, 2-3 months, Published",
            "fda-soups 3-4 days, 2-3 months, Published",
            "usda-opened-broth 3-4 days, 2-3 months, FromMemory",
            "uk-advice 2-2 days, 3-3 months, Published",
            "ie-fsai 2-3 days, no months, Published",
            "fr-schools 3-3 days, no months, CommonPractice",
            "trade 5-5 days, 6-6 months, CommonPractice",
        ],
        KeepingRules.Storage.Select(row =>
            $"{row.Id} {row.FridgeDays.Least}-{row.FridgeDays.Most} days, {(row.FreezerMonths is var (least, most) ? $"{least}-{most}" : "no")} months, {row.Provenance}"),
        StringComparer.Ordinal);

    // 3-501.17; Department of Health 1989; CXC 39-1993 [all from memory].
    [Fact]
    public void Date_marks() => Assert.Equal(
        [
            ("us-food-code", 7, 5.0, LimitStanding.ModelCode, Provenance.FromMemory),
            ("uk-cook-chill", 5, 3.0, LimitStanding.Guidance, Provenance.FromMemory),
            ("codex-39", 5, 4.0, LimitStanding.Guidance, Provenance.FromMemory),
        ],
        KeepingRules.DateMarking.Select(rule => (rule.Id, rule.Days, rule.AtMost.Celsius ?? 0, rule.Standing, rule.Provenance)));

    [Fact]
    public void The_shortest_is_the_default() => Assert.Equal("usda-meat-broth", KeepingRules.Shortest.Id);

    // Food Code 3-501.16, FSA guidance May 2016, SSI 2006/3 schedule 4, Access Canberra, Eastern Ontario Health Unit; reheating in Canada, and
    // France, from memory.
    [Fact]
    public void Holding_and_reheating() => Assert.Equal(
        [
            ("us-food-code", 57, 5.0, 74, LimitStanding.ModelCode, Provenance.Published),
            ("uk", 63, 8, 70, LimitStanding.Law, Provenance.Published),
            ("uk-scotland", 63, null, 82, LimitStanding.Law, Provenance.Published),
            ("au-3-2-2", 60, 5, 60, LimitStanding.Law, Provenance.Published),
            ("ca-food-code", 60, 4, 74, LimitStanding.ModelCode, Provenance.FromMemory),
            ("fr-2009", 63, 3, 63, LimitStanding.Law, Provenance.FromMemory),
        ],
        KeepingRules.Holding.Select(rule => (rule.Id, rule.HotAtLeast.Celsius ?? 0, rule.ColdAtMost?.Celsius, rule.ReheatTo.Celsius ?? 0, rule.Standing, rule.Provenance)));

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
