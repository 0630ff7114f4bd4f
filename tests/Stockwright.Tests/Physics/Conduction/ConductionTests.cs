using Stockwright.Physics.Conduction;
using Xunit;

namespace Stockwright.Tests.Physics.Conduction;

/// <summary>The conduction solver against exact series, and the series against figures summed apart from the code.</summary>
public sealed class ConductionTests
{
    // First roots and coefficients at Bi 1: Incropera, table 5.1; at other Bi summed apart from the code.
    [Theory]
    [InlineData(0.1, 0.311053, 1.016094, 0.441682, 1.024579, 0.542281, 1.029798)]
    [InlineData(1, 0.860334, 1.119132, 1.255784, 1.207092, 1.570796, 1.273240)]
    [InlineData(10, 1.428870, 1.261963, 2.179497, 1.567692, 2.836300, 1.924909)]
    public void Series_have_the_printed_first_terms(double biot, double slab, double slabC, double cylinder, double cylinderC, double sphere, double sphereC)
    {
        (double Root, double Coefficient)[] got = [ExactConduction.SlabFirst(biot), ExactConduction.CylinderFirst(biot), ExactConduction.SphereFirst(biot)];
        Close.To(slab, got[0].Root, 1e-6);
        Close.To(slabC, got[0].Coefficient, 1e-6);
        Close.To(cylinder, got[1].Root, 1e-6);
        Close.To(cylinderC, got[1].Coefficient, 1e-6);
        Close.To(sphere, got[2].Root, 1e-6);
        Close.To(sphereC, got[2].Coefficient, 1e-6);
    }

    [Theory]
    [InlineData(3600, 47.946341, 39.948522, 45.246850)]
    [InlineData(7200, 36.478467, 30.566657, 34.482852)]
    [InlineData(14400, 21.738864, 18.509992, 20.648913)]
    public void Slab_of_forty_cells_matches_the_series(double seconds, double centre, double surface, double mean)
    {
        ExactConduction.Theta theta = ExactConduction.Slab(10 * 0.025 / ConstantMaterial.Conductivity, ConstantMaterial.Diffusivity * seconds / 0.000625);
        Close.To(centre, 4 + (56 * theta.Centre), 1e-6);
        Close.To(surface, 4 + (56 * theta.Surface), 1e-6);
        Close.To(mean, 4 + (56 * theta.Mean), 1e-6);

        ConductionField<ConstantMaterial> field = Run(ConductionGrid.HalfSlab(0.025, 40), 60, 10, 4, seconds, seconds / 400, allFaces: false);
        Close.To(centre, field.CelsiusAt(0, 0), 0.02);
        Close.To(mean, field.MeanCelsius(), 0.02);
    }

    // Finite cylinders with a film on all faces: the product of the series of cylinder and slab, summed apart from the code.
    [Theory]
    [InlineData(0.14, 0.1624, 8, 25, 4, 21600, 18.372403, 13.327890)]
    [InlineData(0.14, 0.1624, 8, 25, 4, 43200, 10.975042, 8.378093)]
    [InlineData(0.14, 0.1624, 8, 25, 4, 86400, 5.550680, 4.970349)]
    [InlineData(0.055, 0.105, 10, 60, 4, 7200, 38.935805, 29.659930)]
    [InlineData(0.10, 0.16, 300, 30, 0.5, 7200, 22.402631, 7.584468)]
    public void Cylinder_of_finite_height_matches_the_product_of_series(
        double radius, double height, double film, double start, double around, double seconds, double centre, double mean)
    {
        ExactConduction.Theta round = ExactConduction.Cylinder(film * radius / ConstantMaterial.Conductivity, ConstantMaterial.Diffusivity * seconds / (radius * radius));
        ExactConduction.Theta flat = ExactConduction.Slab(film * height / 2 / ConstantMaterial.Conductivity, ConstantMaterial.Diffusivity * seconds / (height * height / 4));
        Close.To(centre, around + ((start - around) * round.Centre * flat.Centre), 1e-6);
        Close.To(mean, around + ((start - around) * round.Mean * flat.Mean), 1e-6);

        ConductionField<ConstantMaterial> field = Run(ConductionGrid.Cylinder(radius, height, 30, 31), start, film, around, seconds, seconds / 400, allFaces: true);
        Close.To(centre, field.CelsiusAt(0, 15), 0.05);
        Close.To(mean, field.MeanCelsius(), 0.05);
    }

    // The grid the forecasts use: 10 rings, 12 layers, steps that change nothing by more than about a kelvin.
    [Fact]
    public void The_grid_of_the_forecasts_is_good_to_two_tenths_of_a_kelvin()
    {
        ConductionField<ConstantMaterial> field = Run(ConductionGrid.Cylinder(0.14, 0.1624, 10, 12), 25, 8, 4, 43200, 600, allFaces: true);
        Close.To(10.975042, (field.CelsiusAt(0, 5) + field.CelsiusAt(0, 6)) / 2, 0.2);
        Close.To(8.378093, field.MeanCelsius(), 0.1);
    }

    [Fact]
    public void Sphere_matches_the_series()
    {
        double theta = ExactConduction.SphereCentre(20 * 0.03 / ConstantMaterial.Conductivity, ConstantMaterial.Diffusivity * 1800 / 0.0009);
        Close.To(39.275746, 4 + (56 * theta), 1e-6);
        Close.To(39.275746, Run(ConductionGrid.Sphere(0.03, 40), 60, 20, 4, 1800, 4, allFaces: false).CelsiusAt(0, 0), 0.05);
    }

    // A half metre is a half space for ten minutes.
    [Theory]
    [InlineData(0.01, 600, 200, 0.330682)]
    [InlineData(0.02, 3600, 10, 0.136485)]
    public void Half_space_with_a_film(double x, double seconds, double film, double expected)
    {
        Close.To(expected, ExactConduction.HalfSpace(x, film, ConstantMaterial.Conductivity, ConstantMaterial.Diffusivity, seconds), 1e-6);
        ConductionField<ConstantMaterial> field = Run(ConductionGrid.HalfSlab(0.3, 600), 0, film, 1, seconds, seconds / 600, allFaces: false);

        // Cells are half a millimetre: x lies between two middles.
        int outer = 600 - (int)Math.Round(x / 0.0005);
        Close.To(expected, (field.CelsiusAt(outer - 1, 0) + field.CelsiusAt(outer, 0)) / 2, 1e-3);
    }

    [Fact]
    public void Complementary_error_function_at_a_centimetre_after_ten_minutes() =>
        Close.To(0.440007, ExactConduction.Erfc(0.01 / 2 / Math.Sqrt(ConstantMaterial.Diffusivity * 600)), 1e-6);

    // Reference problem R2: the forty-cell equations solved exactly by the matrix exponential.
    [Theory]
    [InlineData(3600, 24.96686708, 19.00629051, 22.68677481)]
    [InlineData(14400, 21.50479352, 14.17958342, 17.67683649)]
    [InlineData(43200, 11.92729997, 8.50570981, 10.10320496)]
    public void Forty_rings_match_the_exact_solution_of_the_same_cells(double seconds, double centre, double outer, double mean)
    {
        ConductionField<ConstantMaterial> field = Run(ConductionGrid.Cylinder(0.10, 1, 40, 1), 25, 8, 4, seconds, 1, allFaces: false);
        Close.To(centre, field.CelsiusAt(0, 0), 1e-6);
        Close.To(outer, field.CelsiusAt(39, 0), 1e-6);
        Close.To(mean, field.MeanCelsius(), 1e-6);
    }

    [Fact]
    public void Halving_the_step_quarters_the_error()
    {
        double exact = ExactMean(1);
        double coarse = Math.Abs(ExactMean(1200) - exact);
        double fine = Math.Abs(ExactMean(600) - exact);
        Assert.InRange(coarse / fine, 3, 5.5);

        static double ExactMean(double step) => Run(ConductionGrid.Cylinder(0.10, 1, 20, 1), 25, 8, 4, 43200, step, allFaces: false).MeanCelsius();
    }

    [Fact]
    public void Heat_is_kept_to_rounding()
    {
        ConductionGrid grid = ConductionGrid.Cylinder(0.14, 0.16, 12, 14);
        ConductionField<ConstantMaterial> field = new(grid, default, 60) { TopSinkWattsPerSquareMetre = 50, SinkWattsPerCubicMetre = 100 };
        field.Side = ConductionBoundary.Convective(300, 1);
        field.Top = ConductionBoundary.Convective(12, 20);
        field.Bottom = ConductionBoundary.Convective(2, 20);
        double before = field.HeldJoules();
        for (int i = 0; i < 300; i++)
        {
            field.Step(5 + i);
        }

        double gone = field.HeatOutJoules.Side + field.HeatOutJoules.Bottom + field.HeatOutJoules.Top + field.SinkJoules;
        Close.Relative(before - field.HeldJoules(), gone, 1e-11);
    }

    private static ConductionField<ConstantMaterial> Run(
        ConductionGrid grid, double start, double film, double around, double seconds, double step, bool allFaces)
    {
        ConductionBoundary face = ConductionBoundary.Convective(film, around);
        ConductionField<ConstantMaterial> field = new(grid, default, start) { Side = face };
        if (allFaces)
        {
            field.Top = face;
            field.Bottom = face;
        }

        int steps = (int)Math.Round(seconds / step);
        for (int i = 0; i < steps; i++)
        {
            field.Step(seconds / steps);
        }

        return field;
    }
}
