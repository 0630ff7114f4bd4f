using System.Xml.Linq;
using Stockwright.Simmering;
using Stockwright.Web.Drawing;
using Stockwright.Web.Features.Planning.Answer;
using Stockwright.Web.Tests.Drawing;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Planning.Answer;

public sealed class LevelChartTests
{
    [Fact]
    public async Task Long_forecasts_are_thinned_to_three_hundred_points_a_curve()
    {
        XElement chart = await ChartAsync(Samples.Forecast(Samples.StraightPot, 24, 120));
        foreach (XElement path in chart.Descendants("path"))
        {
            Assert.InRange(path.Attribute("d")!.Value.Count(c => c is 'M' or 'L'), 2, 300);
        }
    }

    [Fact]
    public void Thinning_keeps_both_ends_and_both_sides_of_every_jump()
    {
        List<double> hours = [];
        List<int> jumps = [];
        for (int i = 0; i < 2000; i++)
        {
            hours.Add(i / 100.0);
            if (i % 97 == 96)
            {
                jumps.Add(hours.Count - 1);
                hours.Add(i / 100.0);
            }
        }

        IReadOnlyList<int> kept = CurveThinning.Keep(hours, 300);
        Assert.Equal(300, kept.Count);
        Assert.Equal(kept.Order(), kept);
        Assert.Contains(0, kept);
        Assert.Contains(hours.Count - 1, kept);
        Assert.All(jumps, jump =>
        {
            Assert.Contains(jump, kept);
            Assert.Contains(jump + 1, kept);
        });

        // Nowhere a hole: 2020 points over 258 free places is one in eight, twice that at the joins.
        Assert.True(kept.Zip(kept.Skip(1), (one, next) => next - one).Max() <= 16);
    }

    [Fact]
    public void Depths_lie_to_scale_from_the_rim()
    {
        LevelChartLayout layout = new(Samples.StraightPot, Samples.Fit(Samples.StraightPot), Samples.Forecast(Samples.StraightPot), UnitSystem.Metric);
        double perMillimetre = (layout.DepthY(100) - layout.DepthY(0)) / 100;
        Assert.Equal(LevelChartLayout.RimY, layout.DepthY(0), 1e-9);
        Assert.Equal(LevelChartLayout.RimY + (perMillimetre * 0.26 * 320), layout.FillY, 0.1);
        Assert.Equal(LevelChartLayout.RimY + (perMillimetre * 0.1563 * 320), layout.SafeY, 0.1);
        Assert.Equal(LevelChartLayout.RimY + (perMillimetre * 0.45 * 320), layout.SolidsY, 0.1);
        Assert.All(layout.Level.Concat(layout.Band), dot => Assert.InRange(dot.Y, LevelChartLayout.RimY, LevelChartLayout.LevelBottom));
        Assert.Equal((LevelChartLayout.Left + LevelChartLayout.Right) / 2, layout.HourX(6), 1e-9);
    }

    [Fact]
    public void Temperature_ticks_agree_in_both_scales()
    {
        LevelChartLayout metric = new(Samples.StraightPot, Samples.Fit(Samples.StraightPot), Samples.Forecast(Samples.StraightPot), UnitSystem.Metric);
        LevelChartLayout us = new(Samples.StraightPot, Samples.Fit(Samples.StraightPot), Samples.Forecast(Samples.StraightPot), UnitSystem.UsCustomary);

        // 50 F is 10 C by definition of the scales.
        double ten = metric.HeatY(Temperature.FromDegreesCelsius(10));
        Assert.Equal(ten, Assert.Single(us.HeatTicks, tick => string.Equals(tick.Text, "50", StringComparison.Ordinal)).At, 0.01);
    }

    [Fact]
    public void Every_top_up_is_marked_and_words_do_not_touch()
    {
        SimmerForecast forecast = Samples.Forecast(Samples.StraightPot, 48);
        LevelChartLayout layout = new(Samples.StraightPot, Samples.Fit(Samples.StraightPot), forecast, UnitSystem.UsCustomary);
        Assert.Equal(forecast.Checks.Count(check => check.TopUp.Central > Volume.Zero), layout.TopUps.Count);
        double[] words = layout.TopUps.Where(mark => mark.Text is not null).Select(mark => mark.TextX).ToArray();
        Assert.NotEmpty(words);
        Assert.All(words.Zip(words.Skip(1), (one, next) => next - one), gap => Assert.True(gap > 60));
    }

    [Theory]
    [InlineData(1, true, false)]
    [InlineData(12, false, true)]
    [InlineData(0, false, false)]
    public async Task Degenerate_forecasts_draw_finite_numbers(int hours, bool topsUp, bool hasChecks)
    {
        SimmerForecast forecast = Samples.Forecast(Samples.LowPot, hours, 20, topsUp, hasChecks);
        Assert.DoesNotContain("NaN", (await ChartAsync(forecast)).ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", (await ChartAsync(forecast with { Samples = [], LevelBand = [] })).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_table_has_a_row_for_every_check()
    {
        SimmerForecast forecast = Samples.Forecast(Samples.StraightPot);
        XElement table = await Rendering.XmlAsync<LevelTable>(
            ("Forecast", forecast), ("Pot", Samples.StraightPot), ("UnitSystem", UnitSystem.Metric), ("IdPrefix", "checks"), ("HeatOn", new DateTimeOffset(2025, 3, 7, 22, 0, 0, TimeSpan.Zero)));
        XElement[] rows = table.Descendants("tbody").Single().Elements("tr").ToArray();
        Assert.Equal(11, rows.Length);
        Assert.Contains("Fri 23:00", rows[0].Value, StringComparison.Ordinal);
        Assert.Contains("none", rows[0].Value, StringComparison.Ordinal);
        Assert.Contains("95\u00A0mm", rows[2].Value, StringComparison.Ordinal);
        Assert.Contains("920\u00A0mL", rows[2].Value, StringComparison.Ordinal);

        // Brought back to the line: 83 mm below the rim.
        Assert.EndsWith("83\u00A0mm", rows[2].Value.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_checks_the_table_says_so()
    {
        string html = await Rendering.HtmlAsync<LevelTable>(
            ("Forecast", Samples.Forecast(Samples.StraightPot, 2, 20, false, false)), ("Pot", Samples.StraightPot), ("UnitSystem", UnitSystem.Metric), ("IdPrefix", "checks"));
        Assert.DoesNotContain("<table", html, StringComparison.Ordinal);
    }

    private static async Task<XElement> ChartAsync(SimmerForecast forecast) =>
        await Rendering.XmlAsync<LevelChart>(
            ("Forecast", forecast), ("Fit", Samples.Fit(Samples.StraightPot)), ("Pot", Samples.StraightPot), ("UnitSystem", UnitSystem.Metric), ("IdPrefix", "level"));
}
