using CsCheck;
using Stockwright.Kitchen;
using Stockwright.Tests.Physics;
using Stockwright.Tests.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Kitchen;

/// <summary>K.1: the inside of a pot as a frustum. Exact geometry; nothing about real pots is shown.</summary>
public sealed class PotGeometryTests
{
    private static readonly Gen<Pot> Pots = Gen.Select(Gen.Double[8, 120], Gen.Double[8, 120], Gen.Double[4, 120])
        .Select((bottom, brim, height) => PlanRequests.Tapered(bottom, brim, height));

    // Euclid's frustum, as in any mensuration handbook: h = 12, r = 6, R = 10 gives pi 12/3 (36 + 60 + 100) = 784 pi.
    [Fact]
    public void A_tapered_pot_holds_what_the_handbook_says() =>
        Close.Relative(784 * Math.PI, PlanRequests.Tapered(12, 20, 12).BrimVolume.CubicCentimeters, 1e-12);

    // The same solid the other way up holds the same.
    [Fact]
    public void A_pot_narrow_at_the_brim_holds_the_same_as_the_wide_one_turned_over() =>
        Close.Relative(784 * Math.PI, PlanRequests.Tapered(20, 12, 12).BrimVolume.CubicCentimeters, 1e-12);

    // Circle times height: 28 cm across and 20 cm high, 615.75 cm2 x 20 cm.
    [Fact]
    public void A_straight_pot_is_a_cylinder() =>
        Close.To(12.315, PlanRequests.Straight(28, 20).BrimVolume.Liters, 0.0005);

    // Prismoidal formula (exact for every solid whose section is a quadratic of the height): V = h/6 (A0 + 4 Am + A1).
    [Fact]
    public void The_volume_agrees_with_the_prismoidal_formula() =>
        Gen.Select(Pots, Gen.Double[0.01, 1]).Sample((pot, part) =>
        {
            Length level = pot.InnerHeight * part;
            double prismoid = level.Meters / 6 * (pot.SurfaceAtMetres(0) + (4 * pot.SurfaceAtMetres(level.Meters / 2)) + pot.SurfaceAtMetres(level.Meters));
            Close.Relative(prismoid, pot.VolumeAt(level).CubicMeters, 1e-9);
        });

    [Fact]
    public void A_level_comes_back_from_its_volume() =>
        Gen.Select(Pots, Gen.Double[0, 1]).Sample((pot, part) =>
        {
            Length level = pot.InnerHeight * part;
            Close.To(level.Meters, pot.LevelAt(pot.VolumeAt(level)).Meters, 1e-9);
        });

    [Fact]
    public void More_in_the_pot_stands_higher() =>
        Gen.Select(Pots, Gen.Double[0, 0.99]).Sample((pot, part) =>
            Assert.True(pot.LevelAt(pot.BrimVolume * part) < pot.LevelAt(pot.BrimVolume * (part + 0.01))));

    [Fact]
    public void A_pot_bought_by_its_volume_holds_it()
    {
        Pot pot = Pot.FromBrimVolume("pot", "Pot", Volume.FromLiters(8.7), Length.FromCentimeters(24));
        Close.Relative(8.7, pot.BrimVolume.Liters, 1e-12);
        Assert.False(pot.IsTapered);
    }

    [Fact]
    public void Only_a_level_inside_the_pot_has_a_volume()
    {
        Pot pot = PlanRequests.Straight(28, 20);
        Assert.Throws<ArgumentOutOfRangeException>(() => pot.VolumeAt(Length.FromCentimeters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => pot.VolumeAt(Length.FromCentimeters(20.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => pot.LevelAt(Volume.FromLiters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => pot.LevelAt(Volume.FromLiters(13)));
    }

    // A steel pot for 10 L weighs some 2.5 kg (common practice, no source); the estimate claims to be within 40 %.
    [Fact]
    public void The_guessed_weight_of_a_steel_pot_spans_a_usual_one()
    {
        double guess = Pot.EstimateEmptyMass(Length.FromCentimeters(26), Length.FromCentimeters(26), Length.FromCentimeters(24), WallMaterial.StainlessSteel).Kilograms;
        Assert.InRange(2.5, guess * 0.6, guess * 1.4);
    }

    [Theory]
    [InlineData(0.009)]
    [InlineData(0.601)]
    public void A_lid_ajar_leaves_between_a_hundredth_and_six_tenths_open(double open) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LidPosition.Ajar(Ratio.FromDecimalFractions(open)));

    [Fact]
    public void The_ends_of_the_range_of_a_lid_ajar_are_taken()
    {
        Assert.Equal(LidKind.Ajar, LidPosition.Ajar(Ratio.FromDecimalFractions(0.01)).Kind);
        Assert.Equal(LidKind.Ajar, LidPosition.Ajar(Ratio.FromDecimalFractions(0.6)).Kind);
    }
}
