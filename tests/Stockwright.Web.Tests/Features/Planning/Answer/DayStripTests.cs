using System.Xml.Linq;
using Stockwright.Planning;
using Stockwright.Web.Features.Planning.Answer;
using Stockwright.Web.Tests.Drawing;
using Xunit;

namespace Stockwright.Web.Tests.Features.Planning.Answer;

public sealed class DayStripTests
{
    private static readonly Timeline s_empty = new([], Samples.Schedule.StartAt!.Value, default, default, default, Samples.Schedule.StartAt!.Value, TimeSpan.Zero, []);

    [Fact]
    public void There_is_a_row_for_every_calendar_day_and_bars_lie_at_their_hours()
    {
        DayStripLayout layout = new(Samples.Timeline(), Samples.Schedule);
        Assert.Equal(2, layout.Rows.Count);
        Assert.Equal("Fri 7 Mar", layout.Rows[0].Name);
        Assert.Equal("start 15:00", layout.Rows[0].Note);

        // The roast runs from 15:20 to 16:35.
        DayBar roast = Assert.Single(layout.Rows[0].Bars, bar => bar.Family == StepFamily.Oven);
        Assert.Equal(DayStripLayout.HourX(15 + (20.0 / 60)), roast.X, 1e-6);
        Assert.Equal(DayStripLayout.HourX(16 + (35.0 / 60)), roast.X + roast.Width, 1e-6);

        // The simmer runs over midnight: to the end of one row and from the start of the next.
        Assert.Equal(DayStripLayout.Right, layout.Rows[0].Bars.Where(bar => bar.Family == StepFamily.Simmer).Max(bar => bar.X + bar.Width), 1e-6);
        Assert.Equal(DayStripLayout.Left, layout.Rows[1].Bars.Where(bar => bar.Family == StepFamily.Simmer).Min(bar => bar.X), 1e-6);
    }

    [Fact]
    public void Hours_are_those_of_the_kitchens_own_clock()
    {
        PlanSchedule east = Samples.Schedule with { Zone = TimeZoneInfo.CreateCustomTimeZone("east", TimeSpan.FromHours(10), "east", "east") };
        DayStripLayout layout = new(Samples.Timeline(), east);
        Assert.Equal("Sat 8 Mar", layout.Rows[0].Name);
        Assert.Equal("start 01:00", layout.Rows[0].Note);
    }

    [Theory]
    [InlineData(6.5, 22.5)]
    [InlineData(9, 1)]
    [InlineData(0, 23.99)]
    public void The_shaded_night_is_the_schedules_own(double wakes, double sleeps)
    {
        PlanSchedule schedule = Samples.Schedule with { WakesAt = TimeOnly.FromTimeSpan(TimeSpan.FromHours(wakes)), SleepsAt = TimeOnly.FromTimeSpan(TimeSpan.FromHours(sleeps)) };
        IReadOnlyList<(double From, double To)> nights = DayStripLayout.NightHours(schedule);
        for (int minutes = 5; minutes < 24 * 60; minutes += 10)
        {
            DateTimeOffset moment = new DateTimeOffset(2025, 3, 7, 0, 0, 0, TimeSpan.Zero).AddMinutes(minutes);
            bool isShaded = nights.Any(night => minutes / 60.0 >= night.From && minutes / 60.0 < night.To);
            Assert.Equal(!schedule.IsAwake(moment), isShaded);
        }
    }

    [Fact]
    public void Every_hands_on_step_is_marked_and_its_number_stands_over_it()
    {
        Timeline timeline = Samples.Timeline(24);
        DayStripLayout layout = new(timeline, Samples.Schedule);
        Assert.Equal(timeline.Steps.Count(step => step.HandsOn > TimeSpan.Zero), layout.Rows.Sum(row => row.Hands.Count));
        Assert.Equal(timeline.Steps.Count(step => step.InNight), layout.Rows.Sum(row => row.Hands.Count(mark => mark.IsNight)));
        Assert.True(layout.HasNightHands);
        foreach (IGrouping<int, StepNumbers> lane in layout.Rows[1].Numbers.GroupBy(numbers => numbers.Lane))
        {
            StepNumbers[] ordered = lane.OrderBy(numbers => numbers.X).ToArray();
            for (int i = 1; i < ordered.Length; i++)
            {
                Assert.True(ordered[i].X - ordered[i - 1].X > (ordered[i].Text.Length + ordered[i - 1].Text.Length) * 4);
            }
        }
    }

    [Fact]
    public void Steps_side_by_side_take_their_own_lanes()
    {
        DateTimeOffset at = Samples.Schedule.StartAt!.Value;
        PlanStep roast = new() { Key = "roast-1", Kind = StepKind.Roast, Title = "Roast", At = at, Duration = TimeSpan.FromHours(2), HandsOn = TimeSpan.Zero };
        PlanStep soak = roast with { Key = "soak-1", Kind = StepKind.Soak, At = at.AddHours(1) };
        DayStripLayout layout = new(s_empty with { Steps = [roast, soak], Ready = at.AddHours(3) }, Samples.Schedule);
        Assert.Equal(2, layout.Lanes);
        Assert.Equal(2, layout.Rows[0].Bars.Select(bar => bar.Y).Distinct().Count());
    }

    [Fact]
    public async Task No_steps_and_no_night_still_draw()
    {
        XElement drawing = await Rendering.XmlAsync<DayStrip>(
            ("Timeline", s_empty), ("Schedule", Samples.Schedule with { WakesAt = TimeOnly.MinValue, SleepsAt = TimeOnly.MaxValue }), ("IdPrefix", "days"));
        Assert.DoesNotContain("NaN", drawing.ToString(), StringComparison.Ordinal);

        // Only the legend's swatch is night.
        Assert.Single(drawing.Descendants("rect"), rect => string.Equals((string?)rect.Attribute("class"), "drawing-night", StringComparison.Ordinal));
    }
}
