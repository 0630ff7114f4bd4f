using CsCheck;
using Stockwright.Measures;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Tests.Measures;

public sealed class KitchenRoundingTests
{
    private static readonly Gen<UnitSystem> s_system = Gen.OneOfConst(UnitSystem.Metric, UnitSystem.UsCustomary);

    // Logarithmic, so that every decade is tried as often as any other.
    private static readonly Gen<double> s_grams = Gen.Double[Math.Log(0.01), Math.Log(500_000)].Select(Math.Exp);
    private static readonly Gen<double> s_millilitres = Gen.Double[Math.Log(0.1), Math.Log(500_000)].Select(Math.Exp);

    [Fact]
    public void A_mass_never_moves_by_more_than_two_per_cent() =>
        Gen.Select(s_grams, s_system).Sample((grams, system) =>
            Math.Abs((KitchenRounding.Round(Mass.FromGrams(grams), system).Grams / grams) - 1) <= 0.02, iter: 20_000);

    [Fact]
    public void A_volume_never_moves_by_more_than_two_per_cent() =>
        Gen.Select(s_millilitres, s_system).Sample((millilitres, system) =>
            Math.Abs((KitchenRounding.Round(Volume.FromMilliliters(millilitres), system).Milliliters / millilitres) - 1) <= 0.02, iter: 20_000);

    [Fact]
    public void Rounding_twice_changes_nothing_more() =>
        Gen.Select(s_grams, s_system).Sample((amount, system) =>
        {
            double mass = KitchenRounding.Round(Mass.FromGrams(amount), system).Grams;
            double volume = KitchenRounding.Round(Volume.FromMilliliters(amount), system).Milliliters;
            return Math.Abs((KitchenRounding.Round(Mass.FromGrams(mass), system).Grams / mass) - 1) < 1e-12
                && Math.Abs((KitchenRounding.Round(Volume.FromMilliliters(volume), system).Milliliters / volume) - 1) < 1e-12;
        }, iter: 20_000);

    [Fact]
    public void More_never_rounds_to_less() =>
        Gen.Select(s_grams, Gen.Double[1, 1.05], s_system).Sample((amount, factor, system) =>
            KitchenRounding.Round(Mass.FromGrams(amount * factor), system).Grams >= KitchenRounding.Round(Mass.FromGrams(amount), system).Grams * (1 - 1e-12)
            && KitchenRounding.Round(Volume.FromMilliliters(amount * factor), system).Milliliters >= KitchenRounding.Round(Volume.FromMilliliters(amount), system).Milliliters * (1 - 1e-12),
            iter: 20_000);

    // Common practice, no source: what a kitchen scale and a jug can be read to.
    [Theory]
    [InlineData(0.83, 0.83)]
    [InlineData(3.14159, 3.1)]
    [InlineData(18.26, 18.5)]
    [InlineData(47.4, 47)]
    [InlineData(152, 150)]
    [InlineData(683, 680)]
    [InlineData(1788, 1800)]
    [InlineData(3449, 3400)]
    [InlineData(31_400, 31_500)]
    public void Metric_amounts_land_on_the_marks_of_scale_and_jug(double raw, double expected)
    {
        Assert.Equal(expected, KitchenRounding.Round(Mass.FromGrams(raw), UnitSystem.Metric).Grams, 1e-9);
        Assert.Equal(expected, KitchenRounding.Round(Volume.FromMilliliters(raw), UnitSystem.Metric).Milliliters, 1e-9);
    }

    [Fact]
    public void A_negative_amount_rounds_as_its_opposite() =>
        Assert.Equal(-150, KitchenRounding.Round(Mass.FromGrams(-152), UnitSystem.Metric).Grams, 1e-9);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_number_is_refused(double grams) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => KitchenRounding.RoundMetric(grams));
}
