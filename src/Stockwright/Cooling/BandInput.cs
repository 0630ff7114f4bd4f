using Stockwright.Evidence;
using Stockwright.Kitchen;

namespace Stockwright.Cooling;

/// <summary>
/// One input of a forecast with the range it is stated with, eight times in ten within its ends (equation C.15 in
/// docs/equations-cooling.md). The ends are named by what they do: slow and fast.
/// </summary>
/// <param name="Name">What it is.</param>
/// <param name="SlowLength">How far the slow end lies from the middle, in the measure the input is moved in.</param>
/// <param name="FastLength">How far the fast end lies.</param>
/// <param name="At">Moves it: -1 is the slow end, 0 the middle, 1 the fast end.</param>
internal sealed record BandInput(string Name, double SlowLength, double FastLength, Func<CoolingFactors, double, CoolingFactors> At)
{
    private const double LeastFlatEmissivity = 0.85;

    /// <summary>What a method depends on.</summary>
    internal static IReadOnlyList<BandInput> Of(CoolingCase stock, CoolingMethod method)
    {
        List<BandInput> inputs = [Scale("sizes and filling", 0.95, 1.05, (f, m) => f with { Size = m })];
        IReadOnlyList<CoolingStep> steps = method.Steps;
        bool isBlown = steps.Any(step => step.Place is CoolingPlace.ColdAir { Store.AirSpeed.MetersPerSecond: > 0 });
        inputs.Add(Scale("convection in air", isBlown ? 0.75 : 0.8, isBlown ? 1.33 : 1.25, (f, m) => f with { Convection = m }));
        inputs.Add(Scale("floor", 0.5, 1.5, (f, m) => f with { Floor = m }));
        if (Vessels(stock, method).Any(vessel => vessel.Emissivity.DecimalFractions < LeastFlatEmissivity))
        {
            inputs.Add(Scale("emissivity", 0.7, 1.4, (f, m) => f with { Emissivity = m }));
        }

        if (steps.Any(step => step.Place is CoolingPlace.ColdAir) && steps.Any(step => step.Pour is { Count: > 1 }))
        {
            inputs.Add(Scale("vessels side by side", 0.6 / 0.7, 0.8 / 0.7, (f, m) => f with { Crowding = m }));
        }

        AddTop(inputs, stock, steps);
        AddBaths(inputs, steps);
        if (steps.Any(step => step.Place is CoolingPlace.ColdAir))
        {
            inputs.Add(Scale("machine", 0.7, 1.5, (f, m) => f with { Machine = m }));
            inputs.Add(Scale("leak", 2 / 1.5, 1 / 1.5, (f, m) => f with { Leak = m }));
        }

        if (steps.Any(step => step.Wands > 0))
        {
            inputs.Add(Scale("wand", 8.0 / 12, 18.0 / 12, (f, m) => f with { Wand = m }));
        }

        if (steps.Any(step => step.StockStirring == Stirring.None))
        {
            inputs.Add(Scale("layers", CoolingFactors.LaminarWallShare / CoolingFactors.MiddleWallShare, CoolingFactors.TurbulentWallShare / CoolingFactors.MiddleWallShare, (f, m) => f with { WallShare = m * CoolingFactors.MiddleWallShare }));
            AddSetting(inputs, stock);
        }

        return inputs;
    }

    private static void AddTop(List<BandInput> inputs, CoolingCase stock, IReadOnlyList<CoolingStep> steps)
    {
        if (steps.Any(step => step.Lid.Kind != LidKind.Off))
        {
            inputs.Add(Scale("film under a lid", 0.75, 1.33, (f, m) => f with { UnderLid = m }));
            inputs.Add(Scale("what a lid lets past", 0.5, steps.Any(step => step.Lid.Kind == LidKind.Ajar) ? 1.5 : 2, (f, m) => f with { Escape = m }));
        }

        Stated<double> film = stock.FilmOver(stock.Vessel.FloorArea);
        if (steps.Any(step => step.Lid.Kind != LidKind.On) && film is { Low: > 0, Value: > 0 })
        {
            inputs.Add(Scale("evaporation", film.Low / film.Value, film.High / film.Value, (f, m) => f with { Film = m }));
        }
    }

    private static void AddBaths(List<BandInput> inputs, IReadOnlyList<CoolingStep> steps)
    {
        CoolingStep[] baths = [.. steps.Where(step => step.Place is CoolingPlace.IceBath or CoolingPlace.TapSink)];
        if (baths.Length == 0)
        {
            return;
        }

        inputs.Add(Scale("film of the stock", 0.8, baths.Max(step => step.StockStirring) switch { Stirring.AllTheTime => 2, Stirring.EveryFewMinutes => 1.5, _ => 1.25 }, (f, m) => f with { Inside = m }));
        CoolingStep[] still = [.. baths.Where(step => step.HasBathToStir && step.BathStirring != Stirring.AllTheTime)];
        if (still.Length > 0)
        {
            bool ice = still.Any(step => step.Place is CoolingPlace.IceBath);
            inputs.Add(Scale("bath that stands still", ice ? 0.25 / 0.4 : 0.8, ice ? 0.6 / 0.4 : 1.25, (f, m) => f with { StillBath = m }));
        }

        if (still.Any(step => step.Place is CoolingPlace.IceBath && step.StockStirring != Stirring.None))
        {
            inputs.Add(Scale("loose ice on the wall", 180 / FaceFilms.RockedLooseIce, 340 / FaceFilms.RockedLooseIce, (f, m) => f with { RockedIce = m }));
        }

        CoolingStep[] moving = [.. baths.Where(step => !step.HasBathToStir || step.BathStirring != Stirring.None)];
        if (moving.Length > 0)
        {
            bool ice = moving.All(step => step.Place is CoolingPlace.IceBath);
            inputs.Add(Scale("bath that moves", ice ? 400 / FaceFilms.MovingIceWater : 400.0 / 600, ice ? 800 / FaceFilms.MovingIceWater : 1000.0 / 600, (f, m) => f with { MovingBath = m }));
        }

        if (baths.Any(step => step.StockStirring == Stirring.EveryFewMinutes || (step.HasBathToStir && step.BathStirring == Stirring.EveryFewMinutes)))
        {
            inputs.Add(Scale("share of the time it moves", 0.25 / FaceFilms.EveryFewMinutesShare, 0.6 / FaceFilms.EveryFewMinutesShare, (f, m) => f with { StirShare = m }));
        }
    }

    private static void AddSetting(List<BandInput> inputs, CoolingCase stock)
    {
        if (stock.Setting is not { } setting)
        {
            return;
        }

        double middle = setting.Value.DegreesCelsius;
        double slow = setting.High.DegreesCelsius - middle;
        double fast = middle - setting.Low.DegreesCelsius;
        inputs.Add(new("setting", slow, fast, (f, u) => f with { SettingCelsius = middle - (u * (u < 0 ? slow : fast)) }));
    }

    private static IEnumerable<CoolingVessel> Vessels(CoolingCase stock, CoolingMethod method) =>
        [stock.Vessel, .. method.Steps.Select(step => step.Pour?.Vessel).OfType<CoolingVessel>()];

    private static BandInput Scale(string name, double slow, double fast, Func<CoolingFactors, double, CoolingFactors> set) =>
        new(name, Math.Abs(Math.Log(slow)), Math.Abs(Math.Log(fast)), (f, u) => set(f, u < 0 ? Math.Pow(slow, -u) : Math.Pow(fast, u)));
}
