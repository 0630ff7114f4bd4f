using Stockwright.Cooling;
using Stockwright.Evidence;
using Stockwright.Physics;
using Stockwright.Physics.Conduction;
using UnitsNet;

namespace Stockwright.Keeping;

/// <summary>A portion to freeze or thaw: a round tub or jar, or a bag lying flat.</summary>
/// <param name="Diameter">Diameter; null for a flat bag, cold on both faces and wide against its thickness.</param>
/// <param name="Height">Height of what is in it, or thickness of the bag.</param>
public sealed record FrozenPortion(Length? Diameter, Length Height)
{
    /// <summary>Smallest and largest portion.</summary>
    public static readonly (Volume Least, Volume Most) VolumeRange = (Volume.FromMilliliters(20), Volume.FromLiters(30));

    /// <summary>Narrowest and widest tub or jar.</summary>
    public static readonly (Length Least, Length Most) WidthRange = (Length.FromCentimeters(2), Length.FromCentimeters(60));

    /// <summary>Thinnest and thickest bag.</summary>
    public static readonly (Length Least, Length Most) ThicknessRange = (Length.FromCentimeters(0.5), Length.FromCentimeters(30));
}

/// <summary>How long it takes.</summary>
/// <param name="Time">By the enthalpy method; the band comes from film, size and what has thawed (equation C.57 in docs/equations-cooling.md).</param>
/// <param name="Plank">Plank's time: the freezing itself only. Null when thawing.</param>
/// <param name="Formula">Pham's time for freezing; for a flat bag thawing, the published thawing formula. Null otherwise.</param>
public sealed record FreezingEstimate(Band<TimeSpan> Time, TimeSpan? Plank, TimeSpan? Formula);

/// <summary>Freezing and thawing of a portion of stock by finite volumes in enthalpy (equations C.12 to C.14 and C.50 to C.52 in docs/equations-cooling.md).</summary>
public static class FreezingTime
{
    /// <summary>Coldest and warmest freezer taken, for freezing in and for what comes out of it.</summary>
    public static readonly (Temperature Least, Temperature Most) FreezerRange = (Temperature.FromDegreesCelsius(-80), Temperature.FromDegreesCelsius(-12));

    /// <summary>Coldest and hottest portion put into a freezer.</summary>
    public static readonly (Temperature Least, Temperature Most) StartRange = (Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(100));

    /// <summary>Coldest and warmest fridge a portion thaws in.</summary>
    public static readonly (Temperature Least, Temperature Most) FridgeRange = (Temperature.FromDegreesCelsius(0.5), Temperature.FromDegreesCelsius(15));

    /// <summary>What takes longer has no figure: it lies in something hardly colder or warmer than it is to get.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromDays(60);

    private const int SlabCells = 40;
    private const int Rings = 12;
    private const int Layers = 12;
    private const double StepsPerPlankTime = 400;

    /// <summary>A tub is as wide as it says to a twentieth; a bag lies as thick to a tenth (estimates).</summary>
    private const double TubSpread = 1.05;
    private const double BagSpread = 1.1;

    /// <summary>Thin stock that has thawed moves, and carries up to twice what it conducts (estimate); stock that has set does not.</summary>
    private const double ThawedMoves = 2;

    /// <summary>Time until the centre is frozen down to a temperature.</summary>
    /// <param name="portion">1 to 60 cm across.</param>
    /// <param name="start">0 to 100 °C.</param>
    /// <param name="freezer">Colder than <paramref name="centre"/>.</param>
    /// <param name="centre">Below -0.5 °C.</param>
    /// <param name="film">1 to 2000 W/m2K at its ends; null for still air.</param>
    /// <returns>Null when it takes longer than <see cref="Longest"/> with the weakest film.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static FreezingEstimate? Freeze(FrozenPortion portion, Temperature start, Temperature freezer, Temperature centre, FilmRange? film = null)
    {
        FilmRange range = film ?? FilmRange.StillAir;
        (double h, FreezingFood food) = Checked(portion, range);
        PhysicsRange.Within(start.DegreesCelsius, 0, 100, "°C", "The starting temperature", nameof(start));
        double freezing = food.FreezingPoint.DegreesCelsius;
        if (!(centre.DegreesCelsius < freezing && freezer < centre && freezer >= FreezerRange.Least))
        {
            throw new ArgumentOutOfRangeException(nameof(freezer), freezer, "The freezer must be colder than the centre is to get, and the centre below -0.5 °C.");
        }

        double half = Shorter(portion) / 2;
        HeatTransferCoefficient used = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(h);
        TimeSpan plankSlab = FreezingFormulas.Plank(food, FreezingShape.Slab, Length.FromMeters(2 * half), used, freezer);
        double biot = h * half / food.FrozenConductivity.WattsPerMeterKelvin;
        double factor = portion.Diameter is { } diameter ? ShapeFactor(diameter.Meters, portion.Height.Meters, biot) : 1;
        return Band(portion, range, plankSlab, start.DegreesCelsius, freezer.DegreesCelsius, centre.DegreesCelsius) is { } time
            ? new FreezingEstimate(time, plankSlab / factor, FreezingFormulas.Pham(food, factor, Length.FromMeters(half), used, freezer, start, centre))
            : null;
    }

    /// <summary>Time until the centre reaches a temperature, lying in air or water.</summary>
    /// <param name="portion">1 to 60 cm across.</param>
    /// <param name="start">Frozen, from the coldest of <see cref="FreezerRange"/> to -1 °C.</param>
    /// <param name="around">Temperature of air or water, warmer than <paramref name="centre"/>, at most 60 °C.</param>
    /// <param name="centre">Above -0.5 °C; 0 °C for thawed.</param>
    /// <param name="film">1 to 2000 W/m2K at its ends; null for still air.</param>
    /// <returns>Null when it takes longer than <see cref="Longest"/> with the weakest film.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside its range.</exception>
    public static FreezingEstimate? Thaw(FrozenPortion portion, Temperature start, Temperature around, Temperature centre, FilmRange? film = null)
    {
        FilmRange range = film ?? FilmRange.StillAir;
        (double h, FreezingFood food) = Checked(portion, range);
        PhysicsRange.Within(start.DegreesCelsius, FreezerRange.Least.DegreesCelsius, -1, "°C", "The starting temperature", nameof(start));
        if (!(centre.DegreesCelsius > food.FreezingPoint.DegreesCelsius && around > centre && around.DegreesCelsius <= 60))
        {
            throw new ArgumentOutOfRangeException(nameof(around), around, "To thaw it must lie in something warmer than it is to get, at most 60 °C.");
        }

        HeatTransferCoefficient used = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(h);
        TimeSpan slab = FreezingFormulas.ThawSlab(
            food, Length.FromMeters(Shorter(portion)), used, around, start, ThermalConductivity.FromWattsPerMeterKelvin(0.57));
        return Band(portion, range, slab, start.DegreesCelsius, around.DegreesCelsius, centre.DegreesCelsius) is { } time
            ? new FreezingEstimate(time, null, portion.Diameter is null ? slab : null)
            : null;
    }

    /// <summary>Seconds until the innermost cell passes a temperature, infinite beyond <see cref="Longest"/>; the grid is given, for checks against finer ones.</summary>
    internal static double Seconds(ConductionGrid grid, FreezingStock material, double film, bool allFaces, double start, double around, double centre, double step)
    {
        ConductionBoundary face = ConductionBoundary.Convective(film, around);
        ConductionField<FreezingStock> field = new(grid, material, start) { Side = face };
        if (allFaces)
        {
            field.Bottom = face;
            field.Top = face;
        }

        int layer = grid.Layers / 2;
        bool falls = start > centre;
        double seconds = 0;
        double before = start;
        while (seconds < Longest.TotalSeconds)
        {
            field.Step(step);
            seconds += step;
            double now = field.CelsiusAt(0, layer);
            if (falls ? now <= centre : now >= centre)
            {
                return seconds - (step * (centre - now) / (before - now));
            }

            before = now;
        }

        return double.PositiveInfinity;
    }

    /// <summary>The middle, and what each input does at each end by itself, in quadrature (C.57).</summary>
    private static Band<TimeSpan>? Band(FrozenPortion portion, FilmRange film, TimeSpan scale, double start, double around, double centre)
    {
        bool thaws = around > centre;
        double spread = portion.Diameter is null ? BagSpread : TubSpread;
        double middle = film.Central.WattsPerSquareMeterKelvin;
        (double Film, double Size, double Moves)[] runs =
        [
            (middle, 1, 1),
            (film.High.WattsPerSquareMeterKelvin, 1, 1), (film.Low.WattsPerSquareMeterKelvin, 1, 1),
            (middle, 1 / spread, 1), (middle, spread, 1),
            (middle, 1, thaws ? ThawedMoves : 1),
        ];
        double[] times = new double[runs.Length];
        Parallel.For(0, thaws ? runs.Length : runs.Length - 1, i =>
        {
            double height = portion.Height.Meters * runs[i].Size;
            ConductionGrid grid = portion.Diameter is { } diameter
                ? ConductionGrid.Cylinder(diameter.Meters * runs[i].Size / 2, height, Rings, Layers)
                : ConductionGrid.HalfSlab(height / 2, SlabCells);
            double step = Math.Max(1, scale.TotalSeconds / StepsPerPlankTime);
            times[i] = Seconds(grid, FreezingStock.Thawing(runs[i].Moves), runs[i].Film, portion.Diameter is not null, start, around, centre, step);
        });
        if (!times.All(double.IsFinite))
        {
            return null;
        }

        double sooner = Together(times[0], times[1], times[3], thaws ? times[5] : times[0]);
        double later = Together(times[0], times[2], times[4]);
        return new Band<TimeSpan>(TimeSpan.FromSeconds(times[0] * Math.Exp(-sooner)), TimeSpan.FromSeconds(times[0]), TimeSpan.FromSeconds(times[0] * Math.Exp(later)));
    }

    private static double Together(double middle, params ReadOnlySpan<double> moved)
    {
        double sum = 0;
        foreach (double each in moved)
        {
            double part = Math.Log(each / middle);
            sum += part * part;
        }

        return Math.Sqrt(sum);
    }

    private static double Shorter(FrozenPortion portion) => Math.Min(portion.Height.Meters, portion.Diameter?.Meters ?? double.PositiveInfinity);

    /// <summary>Squat: a slab with cold edges. Tall: a cylinder with cold ends, so twice a slab and a little more.</summary>
    private static double ShapeFactor(double diameter, double height, double biot) => diameter >= height
        ? FreezingFormulas.FiniteCylinderFactor(diameter / height, biot)
        : Math.Min(3, 2 + ((FreezingFormulas.FiniteCylinderFactor(height / diameter, biot) - 1) / 2));

    private static (double Film, FreezingFood Food) Checked(FrozenPortion portion, FilmRange film)
    {
        ArgumentNullException.ThrowIfNull(portion);
        PhysicsRange.Within(portion.Height.Centimeters, 0.5, 60, "cm", "The height of a portion", nameof(portion));
        if (portion.Diameter is { } diameter)
        {
            PhysicsRange.Within(diameter.Centimeters, 1, 60, "cm", "The diameter of a portion", nameof(portion));
        }

        PhysicsRange.Within(film.Low.WattsPerSquareMeterKelvin, 1, 2000, "W/m2K", "The film", nameof(film));
        PhysicsRange.Within(film.High.WattsPerSquareMeterKelvin, 1, 2000, "W/m2K", "The film", nameof(film));
        return (PhysicsRange.Within(film.Central.WattsPerSquareMeterKelvin, 1, 2000, "W/m2K", "The film", nameof(film)), FreezingFood.Stock);
    }
}
