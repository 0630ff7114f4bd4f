using Stockwright.Physics;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>
/// Runs one method with one set of figures (equations C.1 to C.15 in docs/equations-cooling.md). Films and surroundings are
/// taken at the middle of a step, carried on from the step before, so that the whole is of second order.
/// </summary>
internal sealed class CoolingRun
{
    /// <summary>Longest time followed.</summary>
    internal static readonly TimeSpan Horizon = TimeSpan.FromHours(48);

    private const double FirstStepSeconds = 5;
    private const double MostStepSeconds = 900;
    private const double AimedChangeKelvins = 0.75;
    private const double DoneCelsius = 3;
    private const double IceSpecificHeat = 2050;
    private const double IceCelsius = -5;

    private readonly CoolingCase stock;
    private readonly CoolingMethod method;
    private readonly CoolingFactors factors;
    private readonly double airPascals;
    private readonly double specificHeat;
    private readonly double conductivity;
    private readonly double density;
    private readonly List<CoolingSample> samples = [];
    private readonly List<TimeSpan> stepStarts = [];
    private StockBody body;
    private int count = 1;
    private double seconds;
    private double bulkRate;
    private double added;
    private double toSurroundings;
    private double steamJoules;
    private double steamKilograms;
    private double toWands;
    private double leftBehind;
    private double iceMelted;
    private double? iceGone;
    private (double Celsius, double Seconds)? warmestStore;
    private bool freezes;
    private int? stuck;

    private CoolingRun(CoolingCase stock, CoolingMethod method, CoolingFactors factors)
    {
        this.stock = stock;
        this.method = method;
        this.factors = factors;
        airPascals = Air.PressurePascals(stock.Site);
        specificHeat = FoodProperties.SpecificHeat(stock.Composition, Temperature.FromDegreesCelsius(50)).JoulesPerKilogramKelvin;
        conductivity = FoodProperties.Conductivity(stock.Composition, Temperature.FromDegreesCelsius(15)).WattsPerMeterKelvin;
        density = FoodProperties.Density(stock.Composition, Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter;
        body = new StockBody(stock.Vessel, stock.Volume.CubicMeters * density, stock.Start.DegreesCelsius, specificHeat, conductivity, density);
    }

    internal static CoolingCourse Execute(CoolingCase stock, CoolingMethod method, CoolingFactors factors) =>
        new CoolingRun(stock, method, factors).Run();

    private CoolingCourse Run()
    {
        double atStart = count * body.HeldJoules;
        for (int i = 0; i < method.Steps.Count && !IsOver; i++)
        {
            stepStarts.Add(TimeSpan.FromSeconds(seconds));
            CoolingStep step = method.Steps[i];
            Begin(step);
            Stand(step, i);
            if (IsOver && i < method.Steps.Count - 1 && body.WarmestCelsius > DoneCelsius)
            {
                stuck = i;
            }
        }

        return new CoolingCourse
        {
            Samples = samples,
            Curve = new CoolingCurve(samples.Select(sample => new CoolingPoint(sample.At, sample.Warmest))),
            StepStarts = stepStarts,
            IceMelted = Mass.FromKilograms(iceMelted),
            IceGoneAt = iceGone is { } gone ? TimeSpan.FromSeconds(gone) : null,
            WarmestStore = warmestStore is { } warmest ? (Temperature.FromDegreesCelsius(warmest.Celsius), TimeSpan.FromSeconds(warmest.Seconds)) : null,
            Evaporated = Mass.FromKilograms(steamKilograms),
            Freezes = freezes,
            StuckInStep = stuck,
            Books = new CoolingBooks(
                Energy.FromJoules(atStart),
                Energy.FromJoules(added),
                Energy.FromJoules(toSurroundings),
                Energy.FromJoules(steamJoules),
                Energy.FromJoules(toWands),
                Energy.FromJoules(leftBehind),
                Energy.FromJoules(count * body.HeldJoules)),
        };
    }

    private bool IsOver => seconds >= Horizon.TotalSeconds - 1e-6 || body.WarmestCelsius <= DoneCelsius;

    /// <summary>What is done at once: pouring, ice, water. Pouring and adding mix the stock.</summary>
    private void Begin(CoolingStep step)
    {
        double ice = step.IceAdded.Kilograms;
        double water = step.WaterAdded.Kilograms;
        if (step.Pour is null && ice == 0 && water == 0)
        {
            return;
        }

        double mean = body.MeanCelsius;
        double kilograms = count * body.Kilograms;
        double held = count * body.HeldJoules;
        double fresh = (ice * ((IceSpecificHeat * IceCelsius) - BathSurroundings.LatentHeat)) + (water * specificHeat * stock.Site.TapWater.DegreesCelsius);
        CoolingVessel vessel = body.Vessel;
        if (step.Pour is { } pour)
        {
            // The old vessel keeps what its wall holds; the new ones come at room temperature.
            double left = count * vessel.WallHeatCapacityJoulesPerKelvin * mean;
            leftBehind += left;
            held -= left;
            vessel = pour.Vessel;
            count = pour.Count;
            fresh += count * vessel.WallHeatCapacityJoulesPerKelvin * stock.Site.Room.DegreesCelsius;
        }

        kilograms += ice + water;
        added += fresh;
        double capacity = (kilograms * specificHeat) + (count * vessel.WallHeatCapacityJoulesPerKelvin);
        body = new StockBody(vessel, kilograms / count, (held + fresh) / capacity, specificHeat, conductivity, density);
    }

    private void Stand(CoolingStep step, int number)
    {
        Surroundings surroundings = Around(step.Place);
        FaceFilms films = new(step, body.Vessel, count, body.DepthMetres, stock.Site, airPascals, factors);
        WandState[] wands = [.. Enumerable.Range(0, step.Wands).Select(_ => new WandState(step.Wand, factors.Wand))];
        double end = Math.Min(Horizon.TotalSeconds, step.For is { } time ? seconds + time.TotalSeconds : double.PositiveInfinity);
        double until = step.Until?.DegreesCelsius ?? double.NegativeInfinity;
        double length = FirstStepSeconds;
        bulkRate = 0;
        Record(surroundings, number);
        while (seconds < end - 1e-6 && body.WarmestCelsius > until && !IsOver)
        {
            length = Math.Min(length, end - seconds);
            if (bulkRate < 0 && !double.IsNegativeInfinity(until))
            {
                length = Math.Min(length, Math.Max(1, (body.WarmestCelsius - until) / -bulkRate));
            }

            double aroundBefore = surroundings.Celsius;
            Advance(films, surroundings, wands, length);
            Record(surroundings, number);
            double change = Math.Max(body.LastChange, Math.Abs(surroundings.Celsius - aroundBefore));
            length = Math.Clamp(length * Math.Clamp(AimedChangeKelvins / Math.Max(change, 1e-6), 0.3, 1.8), 1, MostStepSeconds);
        }

        if (surroundings is BathSurroundings bath)
        {
            iceMelted += bath.StartIceKilograms - bath.IceKilograms;
        }
    }

    private void Advance(FaceFilms films, Surroundings surroundings, WandState[] wands, double length)
    {
        double half = bulkRate * length / 2;
        double around = surroundings.MidCelsius(length);
        double surface = body.SurfaceCelsius + half;
        Faces faces = films.At(body.WarmestCelsius + half, body.SideCelsius + half, surface, around);
        if (factors.SettingCelsius is { } setting && !films.KeepsEven)
        {
            body.MaySet(setting, faces.InsideFilm);
        }

        double wandWatts = 0;
        foreach (WandState wand in wands)
        {
            wandWatts += wand.Take(body.MeanCelsius + half, length);
        }

        double before = body.WarmestCelsius;
        double kilograms = body.Kilograms;
        HeatGiven given = body.Step(length, faces, LiquidWaterFit.LatentHeatJoulesPerKilogram(Math.Max(surface, 0)), wandWatts);
        bulkRate = (body.WarmestCelsius - before) / length;

        bool isStore = surroundings is StoreSurroundings;
        double walls = count * (given.Side + given.Bottom);
        double above = count * given.Top;
        toSurroundings += walls + above;
        steamJoules += count * given.Steam;
        toWands += count * given.Wand;
        steamKilograms += body.Conducts
            ? count * faces.SteamKilogramsPerSquareMetreSecond * body.Vessel.FloorSquareMetres * length
            : count * (kilograms - body.Kilograms);

        // In a store the steam settles on the coil; over a bath it goes to the room.
        double? gone = surroundings.Take(walls + (isStore ? above + (count * given.Steam) : 0), length);
        if (gone is { } into)
        {
            iceGone ??= seconds + into;
        }

        seconds += length;
        freezes |= body.ColdestCelsius < -0.5;
        if (isStore && (warmestStore is null || surroundings.Celsius > warmestStore.Value.Celsius))
        {
            warmestStore = (surroundings.Celsius, seconds);
        }
    }

    private Surroundings Around(CoolingPlace place)
    {
        double room = stock.Site.Room.DegreesCelsius;
        double tap = stock.Site.TapWater.DegreesCelsius;
        return place switch
        {
            CoolingPlace.ColdAir cold => new StoreSurroundings(cold.Store, room, factors.Machine),
            CoolingPlace.IceBath bath => new BathSurroundings(bath.Ice.Kilograms, bath.Water.Kilograms, tap, room),
            CoolingPlace.TapSink { Running: false } sink => new BathSurroundings(0, sink.Water.Kilograms, tap, room),
            CoolingPlace.TapSink => new ConstantSurroundings(tap),
            _ => new ConstantSurroundings(room),
        };
    }

    private void Record(Surroundings surroundings, int step)
    {
        CoolingSample sample = new(
            TimeSpan.FromSeconds(seconds),
            Temperature.FromDegreesCelsius(body.WarmestCelsius),
            Temperature.FromDegreesCelsius(body.MeanCelsius),
            Temperature.FromDegreesCelsius(surroundings.Celsius),
            Mass.FromKilograms(surroundings.IceKilograms),
            step);
        if (samples.Count > 0 && sample.At <= samples[^1].At)
        {
            // A new step starts where the last one ended: one moment, and the new surroundings.
            samples[^1] = sample;
            return;
        }

        samples.Add(sample);
    }
}
