using BenchmarkDotNet.Attributes;
using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Bench;

/// <summary>Cooling forecasts. Limits: one method with conduction 20 ms, eight methods with bands 600 ms on two cores (medians).</summary>
[MemoryDiagnoser]
[MedianColumn]
public class CoolingBenchmarks
{
    private static readonly CoolingCase Stock = new()
    {
        Volume = Volume.FromLiters(10),
        Start = Temperature.FromDegreesCelsius(95),
        Vessel = CoolingVessel.FromPot(Pot.FromBrimVolume("pot", "pot", Volume.FromLiters(15), Length.FromCentimeters(28)), Volume.FromLiters(10)),
    };

    private static readonly CoolingMethod[] Methods =
    [
        Of(new CoolingPlace.Bench(), LidPosition.On),
        Of(new CoolingPlace.Bench(), LidPosition.Off),
        Of(new CoolingPlace.ColdAir(ColdStore.DomesticFridge), LidPosition.On),
        Of(new CoolingPlace.ColdAir(ColdStore.WalkIn), LidPosition.Off),
        Of(new CoolingPlace.ColdAir(ColdStore.BlastChiller), LidPosition.On),
        Of(new CoolingPlace.IceBath(Mass.FromKilograms(14), Mass.FromKilograms(6)), LidPosition.Off),
        Of(new CoolingPlace.TapSink(true, Mass.Zero), LidPosition.Off),
        Of(new CoolingPlace.TapSink(false, Mass.FromKilograms(20)), LidPosition.Off),
    ];

    [Benchmark]
    public CoolingCourse OneMethodWithConduction() => CoolingForecaster.Central(Stock, Methods[5]);

    [Benchmark]
    public CoolingCourse OneMethodWithFreezing() => CoolingForecaster.Central(Stock, Methods[4]);

    [Benchmark]
    public IReadOnlyList<CoolingResult> EightMethodsWithBands() => CoolingForecaster.Compare(Stock, Methods);

    [Benchmark]
    public CoolingAdvice Advice() => CoolingAdvisor.Advise(Stock, new CoolingKit(), StandardLimits.Default);

    private static CoolingMethod Of(CoolingPlace place, LidPosition lid) =>
        CoolingMethod.Of("bench", "bench", new CoolingStep { Place = place, Lid = lid });
}
