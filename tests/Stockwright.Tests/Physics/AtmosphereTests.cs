using CsCheck;
using Stockwright.Physics;
using Xunit;

namespace Stockwright.Tests.Physics;

public class AtmosphereTests
{
    // ICAO Doc 7488 / ISO 2533 tables [from memory], hectopascals to the last digit printed; 11000 m on public pages.
    [Theory]
    [InlineData(0, 1013.25, 0.0005)]
    [InlineData(1000, 898.746, 0.0006)]
    [InlineData(2000, 794.952, 0.0006)]
    [InlineData(3000, 701.085, 0.0006)]
    [InlineData(11000, 226.32, 0.01)]
    public void Pressure_reproduces_the_standard_atmosphere(double metres, double hectopascals, double tolerance) =>
        Close.To(hectopascals, StandardAtmosphere.PressurePascals(metres) / 100, tolerance);

    // Worked apart from the code: ISO 2533 with IAPWS region 4.
    [Theory]
    [InlineData(0, 99.9743)]
    [InlineData(1609.344, 94.6184)]
    [InlineData(3000, 89.9723)]
    public void Water_boils_lower_with_altitude(double metres, double celsius) =>
        Close.To(celsius, SaturationLine.SaturationKelvins(StandardAtmosphere.PressurePascals(metres)) - 273.15, 0.0005);

    [Fact]
    public void Pressure_falls_with_altitude() =>
        Gen.Double[-400, 10900].SelectMany(a => Gen.Double[0.1, 100].Select(b => (a, b))).Sample(x =>
            StandardAtmosphere.PressurePascals(x.a + x.b) < StandardAtmosphere.PressurePascals(x.a));

    // 9 g/kg of salt: 9/58.44 mol/kg, van 't Hoff factor 1.86, ebullioscopic constant 0.513 K kg/mol of the handbooks.
    [Fact]
    public void Salt_lifts_the_boil_a_little() => Close.To(0.1469, Reference.BoilingPointElevation(9 / 58.44, 1.86, 373.124), 0.0005);
}
