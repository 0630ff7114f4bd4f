using Stockwright.Kitchen;
using Stockwright.Physics;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>
/// Runs one method with one set of figures (equations C.1 to C.24 in docs/equations-cooling.md). Films and surroundings are
/// taken at the middle of a step, carried on from the step before, so that the whole is of second order.
/// </summary>
internal sealed class CoolingRun
{
    /// <summary>Longest time followed.</summary>
    internal static readonly TimeSpan Horizon = TimeSpan.FromHours(48);

    private const double FirstStepSeconds = 5;
    private const double MostStepSeconds = 900;
    private const double AimedChangeKelvins = 0.75;

    /// <summary>Steps are this much longer where only the difference of two courses is wanted.</summary>
    private const double CoarseSteps = 4;
    private const double WandStepShare = 0.1;
    private const double DoneCelsius = 3;
    private const double FrozenThroughCelsius = -18;

    /// <summary>Water that stays thin stops moving where it is densest.</summary>
    private const double GreatestDensityCelsius = 4;

    /// <summary>Until the pot has turned over once, the cold gathers in a film at the bottom thinner than a layer.</summary>
    private const double FirstTurnSeconds = 120;
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
    private readonly HeatLedger ledger;
    private readonly bool mayFreeze;
    private readonly double stopCelsius;
    private readonly double stepScale;
    private LidState? lid;
    private StockBody body;
    private int count = 1;
    private double seconds;
    private double bulkRate;
    private double warmestRate;
    private double steamKilograms;
    private double iceMelted;
    private double? iceGone;
    private (double Celsius, double Seconds)? warmestStore;
    private double? firstIce;
    private (double Kelvins, double Seconds) layering;
    private double doneCelsius = DoneCelsius;
    private int? stuck;

    private CoolingRun(CoolingCase stock, CoolingMethod method, CoolingFactors factors, double stopCelsius = double.NegativeInfinity)
    {
        this.stopCelsius = stopCelsius;
        stepScale = double.IsNegativeInfinity(stopCelsius) ? 1 : CoarseSteps;
        this.stock = stock;
        this.method = method;
        this.factors = factors;
        airPascals = Air.PressurePascals(stock.Site);
        specificHeat = FoodProperties.SpecificHeat(stock.Composition, Temperature.FromDegreesCelsius(50)).JoulesPerKilogramKelvin;
        conductivity = FoodProperties.Conductivity(stock.Composition, Temperature.FromDegreesCelsius(15)).WattsPerMeterKelvin;
        density = FoodProperties.Density(stock.Composition, Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter;
        mayFreeze = method.Steps.Any(step => Freezes(step.Place));
        body = new StockBody(stock.Vessel, stock.Volume.CubicMeters * density, stock.Start.DegreesCelsius, specificHeat, conductivity, density);
        ledger = new HeatLedger(body.HeldJoules);
    }

    internal static CoolingCourse Execute(CoolingCase stock, CoolingMethod method, CoolingFactors factors) =>
        new CoolingRun(stock, method, factors).Run();

    /// <summary>
    /// Seconds to each of some temperatures, falling, in coarser steps and no further than the last; the horizon for what is never
    /// reached. With them how warm a cold store gets, C; not a number without one.
    /// </summary>
    internal static (double[] Seconds, double StoreCelsius) Coarse(CoolingCase stock, CoolingMethod method, CoolingFactors factors, double[] marks)
    {
        CoolingCourse course = new CoolingRun(stock, method, factors, marks[^1]).Run();
        return (
            [.. marks.Select(mark => (course.Curve.FirstAtOrBelow(Temperature.FromDegreesCelsius(mark)) ?? Horizon).TotalSeconds)],
            course.WarmestStore?.Air.DegreesCelsius ?? double.NaN);
    }

    private CoolingCourse Run()
    {
        for (int i = 0; i < method.Steps.Count && !IsOver; i++)
        {
            stepStarts.Add(TimeSpan.FromSeconds(seconds));
            CoolingStep step = method.Steps[i];
            Cover(step);
            Begin(step);
            doneCelsius = Done(step.Place);
            Stand(step, i);
            if (IsOver && i < method.Steps.Count - 1 && body.WarmestCelsius > doneCelsius)
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
            FirstIceAt = firstIce is { } ice ? TimeSpan.FromSeconds(ice) : null,
            Layering = (TemperatureDelta.FromKelvins(layering.Kelvins), TimeSpan.FromSeconds(layering.Seconds)),
            StuckInStep = stuck,
            Books = ledger.Close(count * (body.HeldJoules + (lid?.HeldJoules ?? 0))),
        };
    }

    // A course that does not cool at all stops where it starts, but not before it has begun.
    private bool IsOver => seconds >= Horizon.TotalSeconds - 1e-6
        || body.WarmestCelsius <= doneCelsius
        || (samples.Count > 0 && body.WarmestCelsius <= stopCelsius);

    private static bool Freezes(CoolingPlace place) =>
        place is CoolingPlace.ColdAir { Store.Air.DegreesCelsius: < FreezingStock.StockFreezingCelsius };

    /// <summary>Left in air that freezes it, it is followed until it is frozen through.</summary>
    private static double Done(CoolingPlace place) => place is CoolingPlace.ColdAir cold && Freezes(place)
        ? Math.Clamp(cold.Store.Air.DegreesCelsius + 1, FrozenThroughCelsius, DoneCelsius)
        : DoneCelsius;

    /// <summary>A lid put on comes at room temperature; one taken off, or poured away from, goes with its heat.</summary>
    private void Cover(CoolingStep step)
    {
        bool covered = step.Lid.Kind != LidKind.Off;
        if (lid is { } old && (!covered || step.Pour is not null))
        {
            ledger.WithLids += count * old.HeldJoules;
            lid = null;
        }

        if (covered && lid is null)
        {
            CoolingVessel vessel = step.Pour?.Vessel ?? body.Vessel;
            lid = new LidState(vessel.LidHeatCapacity.JoulesPerKelvin, vessel.FloorSquareMetres, stock.Site.Room.DegreesCelsius);
            ledger.Added += (step.Pour?.Count ?? count) * lid.HeldJoules;
        }
    }

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
            ledger.LeftBehind += left;
            held -= left;
            vessel = pour.Vessel;
            count = pour.Count;
            fresh += count * vessel.WallHeatCapacityJoulesPerKelvin * stock.Site.Room.DegreesCelsius;
        }

        kilograms += ice + water;
        ledger.Added += fresh;
        double capacity = (kilograms * specificHeat) + (count * vessel.WallHeatCapacityJoulesPerKelvin);
        body = new StockBody(vessel, kilograms / count, (held + fresh) / capacity, specificHeat, conductivity, density);
    }

    private void Stand(CoolingStep step, int number)
    {
        Surroundings surroundings = Around(step.Place);
        FaceFilms films = new(step, lid, body.Vessel, count, body.DepthMetres, stock, airPascals, factors);
        WandState[] wands = [.. Enumerable.Range(0, step.Wands).Select(_ => new WandState(step.Wand, factors.Wand))];
        double end = Math.Min(Horizon.TotalSeconds, step.For is { } time ? seconds + time.TotalSeconds : double.PositiveInfinity);
        double until = step.Until?.DegreesCelsius ?? double.NegativeInfinity;
        double length = FirstStepSeconds;
        double wandSeconds = LongestWandStep(wands);
        bulkRate = 0;
        warmestRate = 0;
        Record(surroundings, number);
        while (seconds < end - 1e-6 && body.WarmestCelsius > until && !IsOver)
        {
            length = Math.Min(Math.Min(length, end - seconds), wandSeconds);
            if (warmestRate < 0 && !double.IsNegativeInfinity(until))
            {
                length = Math.Min(length, Math.Max(1, (body.WarmestCelsius - until) / -warmestRate));
            }

            double aroundBefore = surroundings.Celsius;
            Advance(films, surroundings, wands, length);
            Record(surroundings, number);
            double change = Math.Max(body.LastChange, Math.Abs(surroundings.Celsius - aroundBefore));
            length *= Math.Clamp(stepScale * AimedChangeKelvins / Math.Max(change, 1e-6), 0.3, 1.8);
            length = Math.Clamp(Math.Min(length, surroundings.LongestStepSeconds(body.WarmestCelsius)), 1, stepScale * MostStepSeconds);
        }

        if (surroundings is BathSurroundings bath)
        {
            iceMelted += bath.StartIceKilograms - bath.IceKilograms;
        }
    }

    /// <summary>What the wands take is fixed over a step, so a step is short against the time in which they alone would chill the vessel.</summary>
    private double LongestWandStep(WandState[] wands)
    {
        double conductance = wands.Sum(wand => wand.WattsPerKelvin);
        return conductance > 0 ? WandStepShare * body.HeatCapacity / conductance : double.PositiveInfinity;
    }

    private void Advance(FaceFilms films, Surroundings surroundings, WandState[] wands, double length)
    {
        double half = bulkRate * length / 2;
        double around = surroundings.MidCelsius(length);
        double surface = body.SurfaceCelsius + half;
        Faces faces = films.At(body.BulkCelsius + half, body.SideCelsius + half, surface, around, length);
        double? setting = factors.SettingCelsius ?? (mayFreeze ? GreatestDensityCelsius : null);
        if (setting is { } celsius && !films.KeepsEven)
        {
            body.MaySet(celsius, faces.InsideFilm, mayFreeze ? stock.Composition.Water.DecimalFractions : null);
        }

        double wandWatts = 0;
        foreach (WandState wand in wands)
        {
            wandWatts += wand.Take(body.MeanCelsius + half, length);
        }

        double warmest = body.WarmestCelsius;
        double bulk = body.BulkCelsius;
        double kilograms = body.Kilograms;
        HeatGiven given = body.Step(length, faces, LiquidWaterFit.LatentHeatJoulesPerKilogram(Math.Max(surface, 0)), wandWatts);
        warmestRate = (body.WarmestCelsius - warmest) / length;
        bulkRate = (body.BulkCelsius - bulk) / length;

        bool isStore = surroundings is StoreSurroundings;
        double walls = count * (given.Side + given.Bottom);
        double above = count * (lid?.Take(given.Top, length) ?? given.Top);
        ledger.ToSurroundings += walls + above;
        ledger.Steam += count * given.Steam;
        ledger.ToWands += count * given.Wand;
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
        if (!body.Conducts && seconds >= FirstTurnSeconds && body.WarmestCelsius - body.ColdestCelsius > layering.Kelvins)
        {
            layering = (body.WarmestCelsius - body.ColdestCelsius, seconds);
        }

        if (firstIce is null && body.ColdestCelsius < FreezingStock.StockFreezingCelsius)
        {
            firstIce = seconds;
        }

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
            CoolingPlace.ColdAir cold => new StoreSurroundings(cold.Store, room, factors.Machine, factors.Leak),
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
            step,
            Temperature.FromDegreesCelsius(body.ColdestCelsius),
            lid is { } cover ? Temperature.FromDegreesCelsius(cover.Celsius) : null,
            Ratio.FromDecimalFractions(body.FrozenShare));
        if (samples.Count > 0 && sample.At <= samples[^1].At)
        {
            // A new step starts where the last one ended: one moment, and the new surroundings.
            samples[^1] = sample;
            return;
        }

        samples.Add(sample);
    }
}
