using Stockwright.Cooling.Limits;
using Stockwright.Cooling.Readings;
using Xunit;

namespace Stockwright.Tests.Cooling.Readings;

/// <summary>Lists of readings as people type and export them; every row is kept or handed back with a reason.</summary>
public sealed class ReadingTests
{
    [Theory]
    [InlineData("10:00,57\n11:00,35\n12:00,21")]
    [InlineData("\uFEFFtime;temp\r\n10:00;57,0\r\n11:00;35,0\r\n12:00;21,0\r\n")]
    [InlineData("Time\tTemperature (°C)\n10:00\t57.0\n11:00\t35.0\n12:00\t21.0")]
    [InlineData("10:00 57\n11:00 35 C\n12:00 21°C")]
    [InlineData("0 57\n60 35\n120 21")]
    [InlineData("0 min, 57\n1 h, 35\n2h, 21")]
    [InlineData("0:00;57\n1:00;35\n2:00;21")]
    [InlineData("2026-03-01 22:00,57\n2026-03-01 23:00,35\n2026-03-02 00:00,21")]
    [InlineData("2026-03-01T22:00:00Z,57\n2026-03-01T23:00:00Z,35\n2026-03-02T00:00:00Z,21")]
    [InlineData("date,time,temp\n2026-03-01,22:00,57\n2026-03-01,23:00,35\n2026-03-02,00:00,21")]
    [InlineData("\"10:00\",\"57,0\"\n\"11:00\",\"35,0\"\n\"12:00\",\"21,0\"")]
    [InlineData("10:00,57,0\n11:00,35,0\n12:00,21,0")]
    [InlineData("# batch 3\n22:00 57\n\n23:00 35\n0:00 21")]
    [InlineData("10:00 am, 57\n11:00 AM, 35\n12:00 pm, 21")]
    [InlineData("10:00 57,0\n11:00 35,0\n12:00 21,0")]
    public void The_same_three_readings(string text)
    {
        ParsedReadings parsed = ReadingParser.Parse(text, ReadingScale.Celsius);
        Assert.Empty(parsed.Rejected);
        Assert.Equal([0.0, 1, 2], parsed.Readings.Select(reading => reading.At.TotalHours));
        Assert.Equal([57.0, 35, 21], parsed.Readings.Select(reading => Math.Round(reading.Temperature.DegreesCelsius, 9)));
        Assert.Null(parsed.SuggestedScale);
    }

    [Theory]
    [InlineData("10:00,57\n11:00,warm\n12:00,21", 2, "not a temperature")]
    [InlineData("10:00,57\nlater,35\n12:00,21", 2, "not a time")]
    [InlineData("10:00,57\n11:00,\n12:00,21", 2, "missing")]
    [InlineData("10:00,57\n11:00,3500\n12:00,21", 2, "No stock is at that temperature")]
    [InlineData("10:00,57\n9:30,35\n12:00,21", 2, "Out of order")]
    [InlineData("10:00,57\n10:00,56\n12:00,21", 2, "another reading at that time")]
    [InlineData("10:00,57\n11:75,35\n12:00,21", 2, "not a time")]
    public void A_row_that_cannot_be_used_comes_back_with_the_reason(string text, int line, string reason)
    {
        ParsedReadings parsed = ReadingParser.Parse(text, ReadingScale.Celsius);
        RejectedRow row = Assert.Single(parsed.Rejected);
        Assert.Equal(line, row.Line);
        Assert.Contains(reason, row.Reason, StringComparison.Ordinal);
        Assert.Equal(2, parsed.Readings.Count);
    }

    [Fact]
    public void One_wrong_time_costs_one_row()
    {
        ParsedReadings parsed = ReadingParser.Parse("10:00,57\n10:20,50\n21:30,45\n10:40,40\n11:00,33\n11:20,28", ReadingScale.Celsius);
        Assert.Equal(3, Assert.Single(parsed.Rejected).Line);
        Assert.Equal(5, parsed.Readings.Count);
    }

    [Theory]
    [InlineData("0,203\n60,135\n120,70", ReadingScale.Celsius, ReadingScale.Fahrenheit)]
    [InlineData("0,95\n60,57\n120,21", ReadingScale.Fahrenheit, ReadingScale.Celsius)]
    [InlineData("0,57\n60,35\n120,21", ReadingScale.Fahrenheit, ReadingScale.Celsius)]
    public void The_wrong_scale_is_noticed_and_the_other_offered(string text, ReadingScale said, ReadingScale meant)
    {
        ParsedReadings parsed = ReadingParser.Parse(text, said);
        Assert.Equal(meant, parsed.SuggestedScale);
        Assert.Contains(parsed.Warnings, warning => warning.Code is "scale");
        ParsedReadings again = ReadingParser.Parse(text, meant);
        Assert.Empty(again.Rejected);
        Assert.Equal(3, again.Readings.Count);
        Assert.Null(again.SuggestedScale);
    }

    [Fact]
    public void Written_units_win_and_fahrenheit_is_judged_as_read()
    {
        ParsedReadings parsed = ReadingParser.Parse("Time,Temp (°F)\n10:00,135\n12:00,70\n16:00,41", ReadingScale.Celsius);
        Assert.True(parsed.Curve!.IsFahrenheit);
        Assert.Equal(CoolingOutcome.Meets, CoolingJudge.Judge(parsed.Curve, StandardLimits.Default).Outcome);
    }

    [Fact]
    public void Gaps_stuck_probes_and_rises_are_pointed_out_and_kept()
    {
        ParsedReadings parsed = ReadingParser.Parse("0,57\n5,55\n10,53\n15,51\n90,30\n95,30\n100,30\n105,30\n110,30\n115,36", ReadingScale.Celsius);
        Assert.Equal(10, parsed.Readings.Count);
        Assert.Equal("gap rises stuck", string.Join(' ', parsed.Warnings.Select(warning => warning.Code).Order(StringComparer.Ordinal)));
        Assert.Equal(5, parsed.Warnings.Single(warning => warning.Code is "stuck").Line);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("no readings here")]
    [InlineData(";;;\n,,,\n\t\t")]
    [InlineData("\u0000\uFFFD 99 99 99")]
    public void Nothing_useful_is_no_crash(string text)
    {
        ParsedReadings parsed = ReadingParser.Parse(text, ReadingScale.Celsius);
        Assert.Null(parsed.Curve);
    }

    [Fact]
    public void A_row_too_long_for_a_time_and_a_temperature_is_put_aside_with_the_reason()
    {
        ParsedReadings parsed = ReadingParser.Parse($"0 60\n1{new string(' ', 400)}50\n2 40", ReadingScale.Celsius);
        Assert.Equal(2, parsed.Readings.Count);
        Assert.Contains("too long", Assert.Single(parsed.Rejected).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void No_row_is_ever_lost() => CsCheck.Gen.String[CsCheck.Gen.Char["0123456789:.,;\t\n -CFhmin\"°"], 0, 200].Sample(
        text =>
        {
            ParsedReadings parsed = ReadingParser.Parse(text, ReadingScale.Celsius);
            int rows = text.ReplaceLineEndings("\n").Split('\n').Count(line => line.Trim().Length > 0);
            Assert.InRange(parsed.Readings.Count + parsed.Rejected.Count, rows - 1, rows);
        },
        iter: 3000,
        threads: 2);
}
