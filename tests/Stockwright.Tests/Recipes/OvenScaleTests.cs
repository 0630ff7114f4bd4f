using Stockwright.Recipes;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Recipes;

/// <summary>The oven scale as printed on oven doors and in cookery books (from memory).</summary>
public sealed class OvenScaleTests
{
    [Theory]
    [InlineData(200, "6", 180, 400)]
    [InlineData(230, "8", 210, 450)] // 446 °F by sum, called 450.
    [InlineData(180, "4", 160, 350)]
    [InlineData(110, "¼", 90, 225)]
    [InlineData(240, "9", 220, 475)]
    [InlineData(212, "7", 200, 425)]
    [InlineData(210, "6", 180, 400)]
    public void A_temperature_has_its_mark_its_fan_setting_and_its_name(double celsius, string mark, double fan, int fahrenheit)
    {
        OvenStep step = OvenScale.Nearest(Temperature.FromDegreesCelsius(celsius));
        Assert.Equal(mark, step.GasMark);
        Assert.Equal(fan, step.Fan.DegreesCelsius, 1e-9);
        Assert.Equal(fahrenheit, step.FahrenheitName);
    }

    [Fact]
    public void Names_stay_near_the_true_conversion()
    {
        // F = 1.8 C + 32; the names are round quarters, so within 12 °F.
        foreach (OvenStep step in OvenScale.Steps)
        {
            Assert.Equal((1.8 * step.Conventional.DegreesCelsius) + 32, step.FahrenheitName, 12.0);
        }
    }

    [Fact]
    public void Each_mark_is_25_Fahrenheit_above_the_last()
    {
        // From memory: gas mark 1 is 275 °F and each mark adds 25.
        foreach (OvenStep step in OvenScale.Steps.Skip(2))
        {
            Assert.Equal(250 + (25 * (step.GasMark[0] - '0')), step.FahrenheitName);
        }
    }

    [Theory]
    [InlineData(90)]
    [InlineData(260)]
    public void Off_the_scale_is_refused(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OvenScale.Nearest(Temperature.FromDegreesCelsius(celsius)));

    [Fact]
    public void A_mark_stands_once() =>
        Assert.Equal(200, Assert.Single(OvenScale.Steps, step => string.Equals(step.GasMark, "6", StringComparison.Ordinal)).Conventional.DegreesCelsius, 1e-9);
}
