using BenchmarkDotNet.Attributes;
using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Bench;

/// <summary>
/// Ten litres at 95 °C. Limits: one method with conduction 20 ms median, eight methods with their bands 600 ms on two cores.
/// </summary>
[MemoryDiagnoser]
[MedianColumn]
public class CoolingBenchmarks
{
    private static readonly CoolingCase Stock = new()
    {
        Volume = Volume.FromLiters(10),
        Start = Temperature.FromDegreesCelsius(95),
        Vessel = CoolingVessel.FromPot(Pot.Straight("pot-16", "16 L pot", Length.FromCentimeters(28), Length.FromCentimeters(26)), Volume.FromLiters(10)),
    };

    private static readonly CoolingMethod Fridge =
        CoolingMethod.Of("fridge", "Pot in the fridge", new CoolingStep { Place = new CoolingPlace.ColdAir(ColdStore.DomesticFridge), Lid = LidPosition.On });

    private static readonly CoolingMethod[] Eight =
    [
        Fridge,
        CoolingMethod.Of("bench", "Bench", new CoolingStep { Place = new CoolingPlace.Bench() }),
        CoolingMethod.Of("sink", "Running tap", new CoolingStep { Place = new CoolingPlace.TapSink(true, Mass.Zero) }),
        CoolingMethod.Of("still", "Ice bath", new CoolingStep { Place = new CoolingPlace.IceBath(Mass.FromKilograms(15), Mass.FromKilograms(5), Stirred: false) }),
        CoolingMethod.Of("stirred", "Ice bath, stirred", new CoolingStep { Place = new CoolingPlace.IceBath(Mass.FromKilograms(15), Mass.FromKilograms(5), Stirred: true) }),
        CoolingMethod.Of("walk-in", "Walk-in", new CoolingStep { Place = new CoolingPlace.ColdAir(ColdStore.WalkIn) }),
        CoolingMethod.Of("blast", "Blast chiller", new CoolingStep { Place = new CoolingPlace.ColdAir(ColdStore.BlastChiller) }),
        CoolingMethod.Of("tubs", "Tubs in the fridge", new CoolingStep { Place = new CoolingPlace.ColdAir(ColdStore.DomesticFridge), Pour = new PourInto(CoolingVessel.Tub(Volume.FromLiters(1)), 10) }),
    ];

    private static readonly CoolingKit Kit = new() { Vessels = [new OwnedVessels(CoolingVessel.Tub(Volume.FromLiters(1)), 20)], Wands = 2 };

    /// <summary>One course without its band is a third of this.</summary>
    [Benchmark]
    public CoolingResult OneMethodWithItsBand() => CoolingForecaster.Forecast(Stock, Fridge);

    [Benchmark]
    public IReadOnlyList<CoolingResult> EightMethodsWithBands() => CoolingForecaster.Compare(Stock, Eight);

    [Benchmark]
    public CoolingAdvice Advice() => CoolingAdvisor.Advise(Stock, Kit, StandardLimits.Default);
}
