using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Cooling.Limits;

/// <summary>Every pass and fail row of the limits, with its clause, at and beside the boundary, in °C and in °F.</summary>
public sealed class LimitTests
{
    // FDA Food Code 3-501.14(A), read in Delaware Administrative Code title 16, s. 3-501.14; time carried over: US National Restaurant Association page.
    [Theory]
    [InlineData("C 57@0 21@2:00 5@6:00", CoolingOutcome.Meets, null)]
    [InlineData("C 57@0 21.5@2:00 5@6:00", CoolingOutcome.Fails, 1)]
    [InlineData("C 57@0 21@1:00 5@5:30", CoolingOutcome.Meets, null)]
    [InlineData("C 57@0 21@1:00 5@6:10", CoolingOutcome.Fails, 2)]
    [InlineData("C 57@0 21@2:00 5.1@6:00", CoolingOutcome.Unfinished, null)]
    [InlineData("C 57@0 21@2:00 5.1@6:00 5@6:01", CoolingOutcome.Fails, 2)]
    [InlineData("F 135@0 70@2:00 41@6:00", CoolingOutcome.Meets, null)]
    [InlineData("F 135@0 70.1@2:00 41@6:00", CoolingOutcome.Fails, 1)]
    [InlineData("F 135@0 70@2:00 41.1@6:00 40@6:05", CoolingOutcome.Fails, 2)]
    [InlineData("C 95@0 57@3:00 21@5:00 5@9:00", CoolingOutcome.Meets, null)]
    [InlineData("C 95@0 57@3:00 21@5:01 5@8:00", CoolingOutcome.Fails, 1)]
    public void Us_food_code(string readings, CoolingOutcome outcome, int? stage) => Check("us-food-code", readings, outcome, stage);

    // Standard 3.2.2 clause 7(3), as quoted by Access Canberra: 60 to 21 in 2 h, and to 5 in a further 4 h.
    [Theory]
    [InlineData("C 60@0 21@2:00 5@6:00", CoolingOutcome.Meets, null)]
    [InlineData("C 60@0 21@1:00 5@5:00", CoolingOutcome.Meets, null)]
    [InlineData("C 60@0 21@1:00 5@5:01", CoolingOutcome.Fails, 2)]
    [InlineData("C 60@0 21.1@2:00 5@4:00", CoolingOutcome.Fails, 1)]
    [InlineData("F 140@0 70@2:00 41@6:00", CoolingOutcome.Fails, 1)]
    public void Australia(string readings, CoolingOutcome outcome, int? stage) => Check("au-3-2-2", readings, outcome, stage);

    // First stage: Eastern Ontario Health Unit page. Second stage: a Canadian food handlers' course.
    [Theory]
    [InlineData("C 60@0 20@2:00 4@6:00", CoolingOutcome.Meets, null)]
    [InlineData("C 60@0 21@2:00 4@5:00", CoolingOutcome.Fails, 1)]
    [InlineData("F 140@0 68@2:00 40@6:00", CoolingOutcome.Meets, null)]
    public void Canada(string readings, CoolingOutcome outcome, int? stage) => Check("ca-food-code", readings, outcome, stage);

    // FSIS Stabilization Guideline (86 FR 71007), options 1 and 2, numbers as in Appendix B 1999; Ohio State University, Meat Science, 1999.
    [Theory]
    [InlineData("fsis-1", "F 130@0 80@1:30 40@6:30", CoolingOutcome.Meets, null)]
    [InlineData("fsis-1", "F 130@0 80@1:31 40@6:00", CoolingOutcome.Fails, 1)]
    [InlineData("fsis-1", "F 130@0 80@1:30 40@6:31", CoolingOutcome.Fails, 2)]
    [InlineData("fsis-2", "F 120@0 80@1:00 55@6:00", CoolingOutcome.Meets, null)]
    [InlineData("fsis-2", "F 120@0 81@1:00 55@6:00", CoolingOutcome.Fails, 1)]
    public void Fsis_yardsticks(string id, string readings, CoolingOutcome outcome, int? stage) => Check(id, readings, outcome, stage);

    // Arrêté of 21 December 2009, NZ template; CXC 39-1993, UK guideline of 1989 [both from memory]; decree and NZ plan as in LimitFiguresTests.
    [Theory]
    [InlineData("fr-2009", "C 63@0 10@2:00", CoolingOutcome.Meets, null)]
    [InlineData("fr-2009", "C 63@0 10.5@2:00 10@2:01", CoolingOutcome.Fails, 1)]
    [InlineData("codex-39", "C 60@0 10@2:00", CoolingOutcome.Meets, null)]
    [InlineData("codex-39", "C 60@0 10@2:10", CoolingOutcome.Fails, 1)]
    [InlineData("uk-cook-chill", "C 70@0 3@1:30", CoolingOutcome.Meets, null)]
    [InlineData("uk-cook-chill", "C 70@0 3@1:31", CoolingOutcome.Fails, 1)]
    [InlineData("nz-template", "C 60@0 21@2:00 5@6:00", CoolingOutcome.Meets, null)]
    public void Others(string id, string readings, CoolingOutcome outcome, int? stage) => Check(id, readings, outcome, stage);

    [Fact]
    public void Cook_chill_counts_from_the_start_of_chilling_and_that_within_half_an_hour()
    {
        CoolingLimit limit = StandardLimits.Find("uk-cook-chill")!;
        CoolingCurve curve = Curve("C 95@0 85@0:30 3@2:00");
        Assert.Equal(CoolingOutcome.Meets, CoolingJudge.Judge(curve, limit, TimeSpan.FromMinutes(30)).Outcome);
        Assert.Equal(CoolingOutcome.Fails, CoolingJudge.Judge(curve, limit).Outcome);
        CoolingVerdict late = CoolingJudge.Judge(Curve("C 95@0 85@0:40 3@2:00"), limit, TimeSpan.FromMinutes(40));
        Assert.True(late.StartsTooLate);
        Assert.Equal(CoolingOutcome.Fails, late.Outcome);
    }

    [Fact]
    public void A_missed_stage_says_by_how_long()
    {
        CoolingVerdict verdict = CoolingJudge.Judge(Curve("C 57@0 22@2:00 21@2:20 5@6:00"), StandardLimits.Default);
        Assert.Equal(TimeSpan.FromMinutes(20), verdict.FailedStage!.OverBy);
        Assert.False(verdict.FailedStage.IsOverByAtLeast);
        CoolingVerdict open = CoolingJudge.Judge(Curve("C 57@0 22@2:30"), StandardLimits.Default);
        Assert.Equal(TimeSpan.FromMinutes(30), open.FailedStage!.OverBy);
        Assert.True(open.FailedStage.IsOverByAtLeast);
    }

    [Fact]
    public void The_clock_starts_on_the_way_down_and_not_before()
    {
        // Straight from 95 to 19 in two hours: 57 is passed at one hour.
        CoolingVerdict verdict = CoolingJudge.Judge(Curve("C 95@0 19@2:00"), StandardLimits.Default);
        Assert.Equal(TimeSpan.FromHours(1), verdict.ClockStartedAt);
        CoolingVerdict hot = CoolingJudge.Judge(Curve("C 95@0 80@9:00"), StandardLimits.Default);
        Assert.Null(hot.ClockStartedAt);
        Assert.Equal(CoolingOutcome.Unfinished, hot.Outcome);
        CoolingVerdict below = CoolingJudge.Judge(Curve("C 50@0 20@2:00 5@5:00"), StandardLimits.Default);
        Assert.True(below.StartsBelowClock);
        Assert.Equal(CoolingOutcome.Meets, below.Outcome);
    }

    // NRA page: reheated to 165 °F it may be cooled again.
    [Fact]
    public void A_reheat_starts_the_clock_anew_where_the_code_has_one()
    {
        const string Readings = "C 57@0 30@2:00 74@3:00 57@3:30 21@5:00 5@9:00";
        Assert.Equal(CoolingOutcome.Meets, CoolingJudge.Judge(Curve(Readings), StandardLimits.Default).Outcome);
        Assert.Equal(CoolingOutcome.Fails, CoolingJudge.Judge(Curve(Readings), StandardLimits.Find("au-3-2-2")!).Outcome);
    }

    [Fact]
    public void A_band_that_straddles_may_fail()
    {
        CoolingCurve fast = Curve("C 57@0 21@1:30 5@5:00");
        CoolingCurve central = Curve("C 57@0 21@1:50 5@5:30");
        CoolingCurve slow = Curve("C 57@0 21@2:30 5@7:00");
        BandVerdict may = CoolingJudge.JudgeBand(fast, central, slow, StandardLimits.Default);
        Assert.Equal(CoolingOutcome.MayFail, may.Outcome);
        Assert.Equal(1, may.StageAtRisk);
        Assert.Equal(CoolingOutcome.Meets, CoolingJudge.JudgeBand(fast, fast, central, StandardLimits.Default).Outcome);
        Assert.Equal(CoolingOutcome.Fails, CoolingJudge.JudgeBand(slow, slow, slow, StandardLimits.Default).Outcome);
    }

    // What was not read in a text must be marked as such: the sources are named in LimitFiguresTests.
    [Theory]
    [InlineData("us-food-code", false)]
    [InlineData("au-3-2-2", false)]
    [InlineData("ca-food-code", false)]
    [InlineData("uk-cook-chill", true)]
    [InlineData("fr-2009", false)]
    [InlineData("codex-39", true)]
    [InlineData("nz-template", false)]
    [InlineData("fsis-1", false)]
    [InlineData("fsis-2", false)]
    public void Figures_from_memory_say_so(string id, bool needsChecking) => Assert.Equal(needsChecking, StandardLimits.Find(id)!.NeedsChecking);

    [Fact]
    public void Every_limit_has_its_clause_its_stages_in_line_and_a_way_out() => Assert.All(StandardLimits.All, limit =>
    {
        Assert.NotEmpty(limit.Clause);
        Assert.NotEmpty(limit.Source);
        Assert.NotEmpty(limit.Correction.Text);
        Assert.Equal(limit.Total, limit.Stages.Aggregate(TimeSpan.Zero, (sum, stage) => stage.Clock == StageClock.FromClock ? stage.Within : sum + stage.Within));
        for (int i = 1; i < limit.Stages.Count; i++)
        {
            Assert.Equal(limit.Stages[i - 1].To, limit.Stages[i].From);
        }
    });

    [Theory]
    [InlineData("{\"limits\":[]}", "limits")]
    [InlineData("{\"limits\":[{\"id\":\"x\",\"name\":\"n\",\"clause\":\"c\",\"standing\":\"Law\",\"clock\":\"FallsThrough\",\"stages\":[{\"fromC\":20,\"toC\":60,\"hours\":2,\"counted\":\"FromClock\"}],\"totalHours\":2}]}", "colder")]
    public void A_bad_file_is_refused_by_name(string json, string word) =>
        Assert.Contains(word, Assert.ThrowsAny<FormatException>(() => CoolingLimitFile.Parse(json)).Message, StringComparison.Ordinal);

    internal static CoolingCurve Curve(string readings)
    {
        string[] words = readings.Split(' ');
        bool fahrenheit = string.Equals(words[0], "F", StringComparison.Ordinal);
        return new CoolingCurve(words.Skip(1).Select(word =>
        {
            string[] parts = word.Split('@');
            double degrees = double.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture);
            string[] time = parts[1].Split(':');
            TimeSpan at = TimeSpan.FromHours(int.Parse(time[0], System.Globalization.CultureInfo.InvariantCulture))
                + TimeSpan.FromMinutes(time.Length > 1 ? int.Parse(time[1], System.Globalization.CultureInfo.InvariantCulture) : 0);
            return new CoolingPoint(at, fahrenheit ? Temperature.FromDegreesFahrenheit(degrees) : Temperature.FromDegreesCelsius(degrees));
        }));
    }

    private static void Check(string id, string readings, CoolingOutcome outcome, int? stage)
    {
        CoolingVerdict verdict = CoolingJudge.Judge(Curve(readings), StandardLimits.Find(id)!);
        Assert.Equal(outcome, verdict.Outcome);
        Assert.Equal(stage, verdict.FailedStage?.Number);
    }
}
