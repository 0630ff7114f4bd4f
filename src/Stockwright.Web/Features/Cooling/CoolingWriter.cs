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

    /// <summary>The same case cooled another way; what was measured is left behind, for it was measured on this one.</summary>
    public static string LinkTo(CoolingView view, CoolingMethod method) => $"{Page}?{With(view.Typed, method, view.Units).ToQuery()}";

    /// <summary>A plan's yield in its pot, put in the fridge with the lid on.</summary>
    public static string LinkTo(PlanCooling cooling, string pot, UnitSystem units, Pot own)
    {
        ArgumentNullException.ThrowIfNull(cooling);
        ArgumentNullException.ThrowIfNull(own);
        bool isOwn = string.Equals(pot, CoolingReader.OwnPot, StringComparison.Ordinal);
        TypedForm form = new TypedForm([KeyValuePair.Create(ReaderUnits.QueryKey, ReaderUnits.Word(units))])
            .With(CoolingFields.Litres.Name, CoolingFields.Litres.Text(cooling.Volume, units, CoolingFields.Neat))
            .With(CoolingFields.Start.Name, Degrees(cooling.Start, units))
            .With(CoolingFields.Fat.Name, cooling.Fat is { } fat ? CoolingFields.Fat.Text(fat, units, CoolingFields.Neat) : null)
            .With(CoolingFields.Vessel.Name, pot)
            .With(CoolingFields.PotDiameter.Name, isOwn ? CoolingFields.PotDiameter.Text(own.BrimDiameter, units, CoolingFields.Neat) : null)
            .With(CoolingFields.PotHeight.Name, isOwn ? CoolingFields.PotHeight.Text(own.InnerHeight, units, CoolingFields.Neat) : null);
        return $"{Page}?{form.ToQuery()}";
    }

    /// <summary>The same page in other measures; what cannot be read stays as typed, readings keep the scale they were read in.</summary>
    public static TypedForm InUnits(TypedForm form, UnitSystem standing, UnitSystem to)
    {
        UnitSystem from = ReaderUnits.Read(form[ReaderUnits.QueryKey].Trim()) ?? standing;
        TypedForm kept = form.Has(CoolingFields.Readings.Name) && !form.Has(CoolingFields.Scale.Name)
            ? form.With(CoolingFields.Scale.Name, CoolingFields.Scale.WordOf(CoolingFields.ScaleOf(from)))
            : form;
        return FormUnits.Turn(kept, CoolingFields.MeasureOf, standing, to);
    }

    /// <summary>A form with its steps replaced by those of a method.</summary>
    internal static TypedForm With(TypedForm form, CoolingMethod method, UnitSystem units)
    {
        string[] gone = [CoolingFields.Readings.Name, CoolingFields.Now.Name, CoolingFields.Reheated.Name, CoolingFields.Around.Name];
        return new TypedForm(
        [
            .. form.Entries.Where(entry => StepFields.Find(entry.Key) is null && !gone.Contains(entry.Key, StringComparer.Ordinal)),
            .. method.Steps.SelectMany((step, index) => Step(step, units)
                .Where(entry => entry.Value is not null)
                .Select(entry => KeyValuePair.Create(entry.Field.At(index + 1).Name, entry.Value!))),
        ]);
    }

    private static IEnumerable<(FieldRow Field, string? Value)> Step(CoolingStep step, UnitSystem units)
    {
        (Mass ice, Mass water) = step.Place switch
        {
            CoolingPlace.IceBath bath => (bath.Ice, bath.Water),
            CoolingPlace.TapSink { Running: false } sink => (Mass.Zero, sink.Water),
            _ => (Mass.Zero, Mass.Zero),
        };
        return
        [
            (StepFields.Place, StepFields.Place.WordOf(Place(step.Place))),
            (StepFields.Lid, step.Lid.Kind == LidKind.On ? StepFields.Lid.WordOf(true) : null),
            (StepFields.StockStirring, step.StockStirring == Stirring.None ? null : StepFields.StockStirring.WordOf(step.StockStirring)),
            (StepFields.BathStirring, !step.HasBathToStir || step.BathStirring == Stirring.None ? null : StepFields.BathStirring.WordOf(step.BathStirring)),
            (StepFields.Ice, Weight(ice)),
            (StepFields.Water, Weight(water)),
            (StepFields.AddedIce, Weight(step.IceAdded)),
            (StepFields.AddedWater, Weight(step.WaterAdded)),
            (StepFields.Until, step.Until is { } until && until.Kelvins > 0 ? Degrees(until, units) : null),
            (StepFields.Into, step.Pour is { } poured ? StepFields.Into.WordOf(Pour(poured.Vessel.Kind)) : null),
            (StepFields.Count, step.Pour?.Count.ToString(CultureInfo.InvariantCulture)),
            (StepFields.Wands, step.Wands > 0 ? step.Wands.ToString(CultureInfo.InvariantCulture) : null),
            (StepFields.Minutes, step.For is { } time ? StepFields.Minutes.Text(time, units, CoolingFields.Neat) : null),
        ];

        string? Weight(Mass mass) => mass > Mass.Zero ? StepFields.Ice.Text(mass, units, CoolingFields.Neat) : null;
    }

    private static PourKind Pour(VesselKind vessel) => vessel switch
    {
        VesselKind.Pan => PourKind.Pans,
        VesselKind.Jar => PourKind.Jars,
        _ => PourKind.Tubs,
    };

    private static PlaceKind Place(CoolingPlace place) => place switch
    {
        CoolingPlace.Bench => PlaceKind.Bench,
        CoolingPlace.TapSink { Running: true } => PlaceKind.Running,
        CoolingPlace.TapSink => PlaceKind.Sink,
        CoolingPlace.IceBath => PlaceKind.Ice,
        CoolingPlace.ColdAir { Store.AirSpeed.MetersPerSecond: > 3 } => PlaceKind.Blast,
        CoolingPlace.ColdAir { Store.AirSpeed.MetersPerSecond: > 0 } => PlaceKind.WalkIn,
        _ => PlaceKind.Fridge,
    };

    // A whole degree of a limit must come back as that degree, not a hair above it.
    private static string Degrees(Temperature temperature, UnitSystem units) => KitchenNumber.Write(Math.Round(Measure.Temperature.In(units).FromSi(temperature.Kelvins), 1));
}
