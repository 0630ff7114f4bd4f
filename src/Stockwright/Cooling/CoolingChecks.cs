using System.Globalization;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>What is wrong with a question, in the cook's words.</summary>
internal static class CoolingChecks
{
    private static readonly double MostKilograms = CoolingStep.AddedRange.Most.Kilograms;

    internal static IReadOnlyList<CoolingProblem> Problems(CoolingCase stock, CoolingMethod method)
    {
        List<CoolingProblem> problems = [];
        Within(problems, "litres", stock.Volume.Liters, CoolingCase.VolumeRange.Least.Liters, CoolingCase.VolumeRange.Most.Liters, "The volume of stock", "L");
        Within(problems, "start", stock.Start.DegreesCelsius, CoolingCase.StartRange.Least.DegreesCelsius, CoolingCase.StartRange.Most.DegreesCelsius, "The starting temperature", "°C");
        Within(problems, "room", stock.Site.Room.DegreesCelsius, 0, 50, "The room temperature", "°C");
        Within(problems, "tap", stock.Site.TapWater.DegreesCelsius, 0, 40, "The tap temperature", "°C");
        Within(problems, "humidity", stock.Site.Humidity.DecimalFractions, 0, 1, "The humidity", "(as a fraction)");
        Within(problems, "altitude", stock.Site.Altitude.Meters, -400, 5000, "The altitude", "m");
        if (stock.Setting is { } setting)
        {
            Within(problems, "setting", setting.Value.DegreesCelsius, CoolingCase.SettingRange.Least.DegreesCelsius, CoolingCase.SettingRange.Most.DegreesCelsius, "The setting temperature", "°C");
        }

        if (method.Steps.Count == 0)
        {
            problems.Add(new("steps", "A way of cooling needs at least one step."));
        }

        if (problems.Count == 0)
        {
            double litres = stock.Volume.Liters;
            Holds(problems, "vessel", stock.Vessel, 1, litres);
            CoolingVessel vessel = stock.Vessel;
            int count = 1;
            for (int i = 0; i < method.Steps.Count; i++)
            {
                CoolingStep step = method.Steps[i];
                litres += step.IceAdded.Kilograms + step.WaterAdded.Kilograms;
                (vessel, count) = step.Pour is { } pour ? (pour.Vessel, pour.Count) : (vessel, count);
                CheckStep(problems, $"step-{(i + 1).ToString(CultureInfo.InvariantCulture)}", stock, step, vessel, count, litres, isLast: i == method.Steps.Count - 1);
            }
        }

        return problems;
    }

    private static void CheckStep(
        List<CoolingProblem> problems, string field, CoolingCase stock, CoolingStep step, CoolingVessel vessel, int count, double litres, bool isLast)
    {
        Within(problems, field + "-added-ice", step.IceAdded.Kilograms, 0, MostKilograms, "The ice added", "kg");
        Within(problems, field + "-added-water", step.WaterAdded.Kilograms, 0, MostKilograms, "The water added", "kg");
        Within(problems, field + "-wands", step.Wands, CoolingStep.WandsRange.Least, CoolingStep.WandsRange.Most, "The number of wands", "");
        if (step.Wands > 0)
        {
            Within(problems, field + "-wand-kg", step.Wand.Water.Kilograms, FrozenWand.WaterRange.Least.Kilograms, FrozenWand.WaterRange.Most.Kilograms, "The water in a wand", "kg");
            Within(problems, field + "-wand-start", step.Wand.Start.DegreesCelsius, FrozenWand.StartRange.Least.DegreesCelsius, FrozenWand.StartRange.Most.DegreesCelsius, "The temperature of a frozen wand", "°C");
        }

        if (step.Pour is not null && Within(problems, field + "-count", count, 1, PourInto.MostVessels, "The number of vessels", ""))
        {
            Holds(problems, field + "-pour", vessel, count, litres);
        }
        else if (step.IceAdded > Mass.Zero || step.WaterAdded > Mass.Zero)
        {
            Holds(problems, field + "-added-ice", vessel, count, litres);
        }

        // Ice takes 333.6 kJ/kg and the chill of a freezer; more than this would freeze the stock itself.
        double most = stock.Volume.Liters * 4.1 * stock.Start.DegreesCelsius / 344;
        if (step.IceAdded.Kilograms > most)
        {
            problems.Add(new(field + "-added-ice", string.Create(
                CultureInfo.InvariantCulture, $"That much ice would freeze the stock: {most:0.#} kg already brings it to 0 °C.")));
        }

        if (step.For is { } time)
        {
            Within(problems, field + "-minutes", time.TotalMinutes, CoolingStep.TimeRange.Least.TotalMinutes, CoolingStep.TimeRange.Most.TotalMinutes, "The time of a step", "minutes");
        }

        if (step.Until is { } until)
        {
            Within(problems, field + "-until", until.DegreesCelsius, CoolingStep.UntilRange.Least.DegreesCelsius, CoolingStep.UntilRange.Most.DegreesCelsius, "The temperature a step ends at", "°C");
        }

        if (!isLast && step.For is null && step.Until is null)
        {
            problems.Add(new(field + "-minutes", "A step before the last needs an end: a time, or a temperature."));
        }

        if (step.Lid.Kind == LidKind.Ajar)
        {
            Within(problems, field + "-lid", step.Lid.OpenFraction.DecimalFractions, 0.01, 0.6, "The opening of a lid ajar", "of the mouth");
        }

        CheckPlace(problems, field, stock, step.Place);
    }

    private static void CheckPlace(List<CoolingProblem> problems, string field, CoolingCase stock, CoolingPlace place)
    {
        switch (place)
        {
            case CoolingPlace.IceBath bath:
                Within(problems, field + "-ice", bath.Ice.Kilograms, 0, MostKilograms, "The ice in the bath", "kg");
                Within(problems, field + "-water", bath.Water.Kilograms, 0.5, MostKilograms, "The water in the bath", "kg");
                break;
            case CoolingPlace.TapSink { Running: false } sink:
                Within(problems, field + "-water", sink.Water.Kilograms, 0.5, MostKilograms, "The water in the sink", "kg");
                break;
            case CoolingPlace.ColdAir { Store: var store }:
                Within(problems, field + "-air", store.Air.DegreesCelsius, ColdStore.AirRange.Least.DegreesCelsius, ColdStore.AirRange.Most.DegreesCelsius, $"The air of the {store.Name}", "°C");
                Within(problems, field + "-watts", (double)store.Capacity.Watts, (double)ColdStore.CapacityRange.Least.Watts, (double)ColdStore.CapacityRange.Most.Watts, $"The strength of the {store.Name}", "W");
                Within(problems, field + "-leak", store.LeakWattsPerKelvin, 0, 1000, $"The leak of the {store.Name}", "W/K");
                Within(problems, field + "-heat-capacity", store.HeatCapacity.JoulesPerKelvin, 1000, 1e8, $"The heat capacity of the {store.Name}", "J/K");
                Within(problems, field + "-speed", store.AirSpeed.MetersPerSecond, 0, 15, "The speed of the air", "m/s");
                if (store.LeakWattsPerKelvin * (stock.Site.Room.DegreesCelsius - store.Air.DegreesCelsius) > (double)store.Capacity.Watts)
                {
                    problems.Add(new(field + "-watts", $"The {store.Name} is too weak to hold its own temperature in this room, even empty."));
                }

                if (store.Air >= stock.Start)
                {
                    problems.Add(new(field + "-air", $"The {store.Name} is no colder than the stock, so it cannot cool it."));
                }

                break;
            default:
                break;
        }
    }

    private static void Holds(List<CoolingProblem> problems, string field, CoolingVessel vessel, int count, double litres)
    {
        double capacity = vessel.Usable.Liters * count;
        if (litres > capacity * 1.0001)
        {
            string each = count == 1 ? $"The {vessel.Name} holds" : string.Create(CultureInfo.InvariantCulture, $"{count} of {vessel.Name} hold");
            string headspace = vessel.FillLimit.DecimalFractions < 1 ? " with room left at the top" : "";
            problems.Add(new(field, string.Create(CultureInfo.InvariantCulture, $"{each} {capacity:0.#} L{headspace}, less than the {litres:0.#} L of stock.")));
        }
    }

    private static bool Within(List<CoolingProblem> problems, string field, double value, double least, double most, string what, string unit)
    {
        if (value >= least && value <= most)
        {
            return true;
        }

        problems.Add(new(field, string.Create(CultureInfo.InvariantCulture, $"{what} must lie between {least:0.##} and {most:0.##} {unit}.").Replace(" .", ".", StringComparison.Ordinal)));
        return false;
    }
}
