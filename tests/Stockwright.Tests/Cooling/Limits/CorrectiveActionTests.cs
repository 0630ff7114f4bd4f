using Stockwright.Cooling.Limits;
using Stockwright.Evidence;
using Xunit;

namespace Stockwright.Tests.Cooling.Limits;

/// <summary>What to do about a missed stage (US National Restaurant Association page, school operating procedures [from memory]; the codes' own words).</summary>
public sealed class CorrectiveActionTests
{
    [Theory]
    [InlineData("C 57@0 21@2:00 5@6:00", "6:00", CorrectiveStep.PutAway)]
    [InlineData("C 57@0 30@1:00", "1:00", CorrectiveStep.KeepCooling)]
    [InlineData("C 57@0 30@2:10", "2:10", CorrectiveStep.ReheatAndCoolAgain)]
    [InlineData("C 57@0 30@2:10", "4:00", CorrectiveStep.Discard)]
    [InlineData("C 57@0 21@2:00 8@6:05", "6:05", CorrectiveStep.Discard)]
    [InlineData("C 57@0 30@1:50", "2:30", CorrectiveStep.ReheatAndCoolAgain)]
    public void Us_food_code(string readings, string now, CorrectiveStep step) => Assert.Equal(step, For("us-food-code", readings, now).Step);

    [Fact]
    public void Only_one_reheat() => Assert.Equal(CorrectiveStep.Discard, For("us-food-code", "C 57@0 30@2:10", "2:10", alreadyReheated: true).Step);

    [Theory]
    [InlineData("au-3-2-2", "C 60@0 30@2:10")]
    [InlineData("nz-template", "C 60@0 30@2:10")]
    [InlineData("fr-2009", "C 63@0 30@2:10")]
    [InlineData("uk-cook-chill", "C 70@0 30@2:10")]
    public void Codes_without_a_second_chance_discard(string id, string readings)
    {
        CorrectiveAction action = For(id, readings, "2:10");
        Assert.Equal(CorrectiveStep.Discard, action.Step);
        Assert.NotEmpty(action.Clause);
    }

    [Fact]
    public void Time_left_runs_to_the_next_deadline()
    {
        Assert.Equal(TimeSpan.FromMinutes(45), For("us-food-code", "C 57@0 30@1:15", "1:15").TimeLeft);
        Assert.Equal(TimeSpan.FromMinutes(110), For("us-food-code", "C 57@0 30@2:10", "2:10").TimeLeft);
        Assert.Null(For("us-food-code", "C 95@0 80@1:15", "1:15").TimeLeft);
    }

    [Fact]
    public void Cautious_courses_without_a_clause_say_so() =>
        Assert.Equal(Provenance.CommonPractice, For("codex-39", "C 60@0 30@2:10", "2:10").Provenance);

    private static CorrectiveAction For(string id, string readings, string now, bool alreadyReheated = false) => CorrectiveAction.For(
        CoolingJudge.Judge(LimitTests.Curve(readings), StandardLimits.Find(id)!),
        TimeSpan.Parse(now, System.Globalization.CultureInfo.InvariantCulture),
        alreadyReheated);
}
