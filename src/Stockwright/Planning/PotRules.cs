using Stockwright.Evidence;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What must hold of a vessel by itself, whatever is made in it.</summary>
public static class PotRules
{
    private static readonly (Volume Least, Volume Most) SlowVolume = (Volume.FromLiters(1), Volume.FromLiters(12));

    private static readonly (Volume Least, Volume Most) KettleVolume = (Volume.FromLiters(20), Volume.FromLiters(300));

    private static readonly Length LowestKettle = Length.FromCentimeters(13);

    /// <summary>What is wrong with a vessel's pressure, heater or size for its kind; empty when nothing is.</summary>
    /// <param name="pot">A vessel whose diameters and height lie within their ranges.</param>
    public static IReadOnlyList<Problem> Problems(Pot pot)
    {
        ArgumentNullException.ThrowIfNull(pot);
        List<Problem> problems = [];
        CheckGauge(pot, problems);
        CheckHeater(pot, problems);
        CheckSize(pot, problems);
        return problems;
    }

    private static void CheckGauge(Pot pot, List<Problem> problems)
    {
        if (pot.GaugePressure is not { } gauge)
        {
            return;
        }

        if (pot.Kind != PotKind.PressureCooker)
        {
            problems.Add(new(PlanPart.PotGauge, pot.Kind == PotKind.Kettle ? ProblemCode.KettleHoldsNoPressure : ProblemCode.HoldsNoPressure));
            return;
        }

        (Pressure least, Pressure most) = Pot.GaugePressureRange;
        problems.Require(IsWithin(gauge.Pascals, least.Pascals, most.Pascals), PlanPart.PotGauge, ProblemCode.GaugeRange, Figure.Gauge(least), Figure.Gauge(most));
    }

    private static void CheckHeater(Pot pot, List<Problem> problems)
    {
        if (!pot.HasOwnHeater)
        {
            problems.Require(pot.HeaterPower is null, PlanPart.PotHeater, ProblemCode.NoOwnHeater);
            return;
        }

        (Power least, Power most) = Pot.HeaterPowerRange(pot.Kind);
        problems.Require(
            pot.HeaterPower is { } power && IsWithin((double)power.Watts, (double)least.Watts, (double)most.Watts),
            PlanPart.PotHeater,
            pot.Kind == PotKind.SlowCooker ? ProblemCode.SlowPower : ProblemCode.KettlePower,
            Figure.Of(least),
            Figure.Of(most));
    }

    private static void CheckSize(Pot pot, List<Problem> problems)
    {
        if (pot.HasOwnHeater)
        {
            bool isSlow = pot.Kind == PotKind.SlowCooker;
            (Volume least, Volume most) = isSlow ? SlowVolume : KettleVolume;
            if (!IsWithin(pot.BrimVolume.Liters, least.Liters, most.Liters))
            {
                problems.Add(new(PlanPart.PotHeight, isSlow ? ProblemCode.SlowSize : ProblemCode.KettleSize, Figure.Of(least), Figure.Of(most)));
            }
            else if (!isSlow && pot.InnerHeight < LowestKettle)
            {
                problems.Add(new(PlanPart.PotHeight, ProblemCode.KettleShallow, Figure.Of(VesselFill.KettleFreeboard)));
            }
        }
    }

    private static bool IsWithin(double value, double least, double most) => value >= least * (1 - 1e-9) && value <= most * (1 + 1e-9);
}
