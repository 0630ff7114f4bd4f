using Stockwright.Kitchen;
using Stockwright.Measures;
using UnitsNet;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Planning;

/// <summary>What must hold of a vessel by itself, whatever is made in it.</summary>
public static class PotRules
{
    private static readonly (Volume Least, Volume Most) SlowVolume = (Volume.FromLiters(1), Volume.FromLiters(12));

    private static readonly (Volume Least, Volume Most) KettleVolume = (Volume.FromLiters(20), Volume.FromLiters(300));

    /// <summary>What is wrong with a vessel's pressure, heater or size for its kind, beside the fields they are typed in; empty when nothing is.</summary>
    /// <param name="pot">A vessel whose diameters and height lie within their ranges.</param>
    public static IReadOnlyList<InputProblem> Problems(Pot pot)
    {
        ArgumentNullException.ThrowIfNull(pot);
        List<InputProblem> problems = [];
        CheckGauge(pot, problems);
        CheckHeater(pot, problems);
        CheckSize(pot, problems);
        return problems;
    }

    private static void CheckGauge(Pot pot, List<InputProblem> problems)
    {
        if (pot.GaugePressure is not { } gauge)
        {
            return;
        }

        if (pot.Kind == PotKind.Kettle)
        {
            problems.Add(new("pot-gauge", "A kettle is an open vessel: the pressure of a steam-jacketed one is in its jacket, not over the stock. Leave this empty, or choose the pressure cooker."));
        }
        else if (pot.Kind != PotKind.PressureCooker)
        {
            problems.Add(new("pot-gauge", "Only a pressure cooker holds a pressure: leave this empty, or choose the pressure cooker."));
        }
        else if (!IsWithin(gauge.Pascals, Pot.GaugePressureRange.Least.Pascals, Pot.GaugePressureRange.Most.Pascals))
        {
            problems.Add(new("pot-gauge", $"A pressure cooker holds between {KitchenFormat.Gauge(Pot.GaugePressureRange.Least)} and {KitchenFormat.Gauge(Pot.GaugePressureRange.Most)} over the air."));
        }
    }

    private static void CheckHeater(Pot pot, List<InputProblem> problems)
    {
        if (!pot.HasOwnHeater)
        {
            if (pot.HeaterPower is not null)
            {
                problems.Add(new("pot-power", "Only a slow cooker or a kettle has a heater of its own: leave this empty, and choose the hob."));
            }

            return;
        }

        (Power least, Power most) = Pot.HeaterPowerRange(pot.Kind);
        if (pot.HeaterPower is not { } power || !IsWithin((double)power.Watts, (double)least.Watts, (double)most.Watts))
        {
            string range = $"between {KitchenFormat.Text(least, UnitSystem.Metric)} and {KitchenFormat.Text(most, UnitSystem.Metric)}";
            problems.Add(new("pot-power", pot.Kind == PotKind.SlowCooker
                ? $"Give the power of the slow cooker's heater, {range}: it stands on its rating plate."
                : $"Give the power of the kettle's heater or steam jacket, {range}: it stands on its rating plate."));
        }
    }

    private static void CheckSize(Pot pot, List<InputProblem> problems)
    {
        if (pot.Kind == PotKind.SlowCooker && !IsWithin(pot.BrimVolume.Liters, SlowVolume.Least.Liters, SlowVolume.Most.Liters))
        {
            problems.Add(new("pot-height", $"The crock of a slow cooker holds between {KitchenFormat.Both(SlowVolume.Least)} and {KitchenFormat.Both(SlowVolume.Most)} to the brim."));
        }
        else if (pot.Kind == PotKind.Kettle && !IsWithin(pot.BrimVolume.Liters, KettleVolume.Least.Liters, KettleVolume.Most.Liters))
        {
            problems.Add(new("pot-height", $"A kettle holds between {KitchenFormat.Both(KettleVolume.Least)} and {KitchenFormat.Both(KettleVolume.Most)} to the brim."));
        }
        else if (pot.Kind == PotKind.Kettle && pot.InnerHeight < Length.FromCentimeters(13))
        {
            problems.Add(new("pot-height", "A kettle this shallow leaves no room for 10 cm (4 in) under the rim and any stock below it."));
        }
    }

    private static bool IsWithin(double value, double least, double most) => value >= least * (1 - 1e-9) && value <= most * (1 + 1e-9);
}
