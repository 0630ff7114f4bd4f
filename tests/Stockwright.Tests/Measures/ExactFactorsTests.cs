using Stockwright.Measures;
using Xunit;

namespace Stockwright.Tests.Measures;

public sealed class ExactFactorsTests
{
    // NIST SP 811 (2008) appendix B.8 and NIST Handbook 44 appendix C: exact by definition.
    [Fact]
    public void The_exact_factors_are_those_of_the_handbooks()
    {
        Assert.Equal(28.349523125, ExactFactors.OunceGrams);
        Assert.Equal(25.4, ExactFactors.InchMillimetres);
        Assert.Equal(0.3048, ExactFactors.FootMetres);
        Assert.Equal(946.352946, ExactFactors.QuartMillilitres);
        Assert.Equal(236.5882365, ExactFactors.CupMillilitres);
        Assert.Equal(29.5735295625, ExactFactors.FluidOunceMillilitres);
        Assert.Equal(4.92892159375, ExactFactors.TeaspoonMillilitres);
        Assert.Equal(1055.05585262, ExactFactors.BritishThermalUnitJoules);
        Assert.Equal(3386.389, ExactFactors.InchOfMercuryPascals);
    }

    // A pound is 453.59237 g, a gallon 231 cubic inches (Handbook 44 appendix C), 4 quarts, 16 cups, 128 fluid ounces, 768 teaspoons.
    [Fact]
    public void The_factors_hang_together()
    {
        double gallonMillilitres = 231 * Math.Pow(ExactFactors.InchMillimetres, 3) / 1000;
        Assert.Equal(3785.411784, gallonMillilitres, 1e-9);
        Assert.Equal(4 * ExactFactors.QuartMillilitres, gallonMillilitres, 1e-9);
        Assert.Equal(16 * ExactFactors.CupMillilitres, gallonMillilitres, 1e-9);
        Assert.Equal(128 * ExactFactors.FluidOunceMillilitres, gallonMillilitres, 1e-9);
        Assert.Equal(768 * ExactFactors.TeaspoonMillilitres, gallonMillilitres, 1e-9);
        Assert.Equal(453.59237, 16 * ExactFactors.OunceGrams, 1e-9);
        Assert.Equal(ExactFactors.FootMetres * 1000, 12 * ExactFactors.InchMillimetres, 1e-9);
    }
}
