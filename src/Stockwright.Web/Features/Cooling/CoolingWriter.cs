using System.Globalization;
using Stockwright.Cooling;
using Stockwright.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Links to the cooling page.</summary>
internal static class CoolingWriter
{
    public const string Page = "/cooling";

    private const double NeatTolerance = 5e-3;

    /// <summary>The same case cooled another way; what was measured is left behind, for it was measured on this one.</summary>
    public static string LinkTo(CoolingView view, CoolingMethod method) => $"{Page}?{With(view.Typed, method, view.Units).ToQuery()}";

    /// <summary>A plan's yield in its pot, put in the fridge with the lid on.</summary>
    public static string LinkTo(PlanCooling cooling, string pot, UnitSystem units, Pot own)
    {
        ArgumentNullException.ThrowIfNull(cooling);
        ArgumentNullException.ThrowIfNull(own);
        TypedForm form = new(
        [
            KeyValuePair.Create(ReaderUnits.QueryKey, ReaderUnits.Word(units)),
            KeyValuePair.Create(CoolingFields.Litres, Write(CoolingFields.Litres, cooling.Volume.CubicMeters, units)),
            KeyValuePair.Create(CoolingFields.Start, Write(CoolingFields.Start, cooling.Start.Kelvins, units)),
            .. cooling.Fat is { } fat ? new[] { KeyValuePair.Create(CoolingFields.Fat, Write(CoolingFields.Fat, fat.Kilograms, units)) } : [],
            KeyValuePair.Create(CoolingFields.Vessel, pot),
            .. string.Equals(pot, CoolingReader.OwnPot, StringComparison.Ordinal)
                ? new[]
                {
                    KeyValuePair.Create(CoolingFields.PotDiameter, Write(CoolingFields.PotDiameter, own.BrimDiameter.Meters, units)),
                    KeyValuePair.Create(CoolingFields.PotHeight, Write(CoolingFields.PotHeight, own.InnerHeight.Meters, units)),
                }
                : [],
        ]);
        return $"{Page}?{form.ToQuery()}";
    }

    /// <summary>The same page in other measures; what cannot be read stays as typed, readings keep the scale they were read in.</summary>
    public static TypedForm InUnits(TypedForm form, UnitSystem standing, UnitSystem to)
    {
        UnitSystem from = ReaderUnits.Read(form[ReaderUnits.QueryKey].Trim()) ?? standing;
        TypedForm kept = form.Has(CoolingFields.Readings) && !form.Has(CoolingFields.Scale)
            ? form.With(CoolingFields.Scale, from == UnitSystem.UsCustomary ? MeasuredReader.FahrenheitWord : MeasuredReader.CelsiusWord)
            : form;
        return FormUnits.Turn(kept, CoolingFields.MeasureOf, standing, to);
    }

    /// <summary>A form with its steps replaced by those of a method.</summary>
    internal static TypedForm With(TypedForm form, CoolingMethod method, UnitSystem units)
    {
        string[] steps = [.. Enumerable.Range(1, CoolingFields.MostSteps).SelectMany(CoolingFields.Step), CoolingFields.Readings, CoolingFields.Now, CoolingFields.Reheated, CoolingFields.Around];
        return new TypedForm(
        [
            .. form.Entries.Where(entry => !steps.Contains(entry.Key, StringComparer.Ordinal)),
            .. method.Steps.SelectMany((step, index) => Step(index + 1, step, units)),
        ]);
    }

    private static IEnumerable<KeyValuePair<string, string>> Step(int row, CoolingStep step, UnitSystem units)
    {
        yield return Entry(CoolingFields.Place, Place(step.Place));
        if (step.Lid.Kind == LidKind.On)
        {
            yield return Entry(CoolingFields.Lid, "on");
        }

        if (step.StockStirring != Stirring.None)
        {
            yield return Entry(CoolingFields.StockStirring, Word(step.StockStirring));
        }

        if (step.HasBathToStir && step.BathStirring != Stirring.None)
        {
            yield return Entry(CoolingFields.BathStirring, Word(step.BathStirring));
        }

        (Mass Ice, Mass Water) around = step.Place switch
        {
            CoolingPlace.IceBath bath => (bath.Ice, bath.Water),
            CoolingPlace.TapSink { Running: false } sink => (Mass.Zero, sink.Water),
            _ => (Mass.Zero, Mass.Zero),
        };
        (string Part, double Si)[] numbers =
        [
            (CoolingFields.Ice, around.Ice.Kilograms), (CoolingFields.Water, around.Water.Kilograms),
            (CoolingFields.AddedIce, step.IceAdded.Kilograms), (CoolingFields.AddedWater, step.WaterAdded.Kilograms),
            (CoolingFields.Until, step.Until?.Kelvins ?? 0),
        ];
        foreach ((string part, double si) in numbers.Where(number => number.Si > 0))
        {
            yield return Entry(part, Write(CoolingFields.Step(row, part), si, units));
        }

        if (step.Pour is { } pour)
        {
            yield return Entry(CoolingFields.Into, pour.Vessel.Kind switch
            {
                VesselKind.Pan => "pans",
                VesselKind.Jar => "jars",
                _ => "tubs",
            });
            yield return Entry(CoolingFields.Count, pour.Count.ToString(CultureInfo.InvariantCulture));
        }

        if (step.Wands > 0)
        {
            yield return Entry(CoolingFields.Wands, step.Wands.ToString(CultureInfo.InvariantCulture));
        }

        if (step.For is { } time)
        {
            yield return Entry(CoolingFields.Minutes, KitchenNumber.Write(time.TotalMinutes, NeatTolerance));
        }

        KeyValuePair<string, string> Entry(string part, string value) => KeyValuePair.Create(CoolingFields.Step(row, part), value);
    }

    private static string Word(Stirring stirring) => stirring == Stirring.AllTheTime ? "all" : "few";

    private static string Place(CoolingPlace place) => place switch
    {
        CoolingPlace.Bench => "bench",
        CoolingPlace.TapSink { Running: true } => "running",
        CoolingPlace.TapSink => "sink",
        CoolingPlace.IceBath => "ice",
        CoolingPlace.ColdAir { Store.AirSpeed.MetersPerSecond: > 3 } => "blast",
        CoolingPlace.ColdAir { Store.AirSpeed.MetersPerSecond: > 0 } => "walk-in",
        _ => "fridge",
    };

    // A whole degree of a limit must come back as that degree, not a hair above it.
    private static string Write(string field, double si, UnitSystem units)
    {
        Measure measure = CoolingFields.MeasureOf(field)!;
        double typed = measure.In(units).FromSi(si);
        return ReferenceEquals(measure, Measure.Temperature) ? KitchenNumber.Write(Math.Round(typed, 1)) : KitchenNumber.Write(typed, NeatTolerance);
    }
}
