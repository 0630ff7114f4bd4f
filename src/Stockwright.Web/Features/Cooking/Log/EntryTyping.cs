using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;
using UnitsNet.Units;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>Writes a stored entry back into its form, to be corrected.</summary>
internal static class EntryTyping
{
    public static TypedForm Of(LogEntry entry, KitchenClock clock)
    {
        // A reading in °F stays one: it was judged in °F.
        UnitSystem units = entry.Fact is LogFact.TemperatureRead read
            ? read.Temperature.Unit == TemperatureUnit.DegreeFahrenheit ? UnitSystem.UsCustomary : UnitSystem.Metric
            : clock.Units;
        Typing typing = new(units);
        typing.Put(PlanFields.Units, ReaderUnits.Word(units))
            .Put(EntryFields.Kind, FactDocument.Word(entry.Fact))
            .Put(EntryFields.At, clock.Typed(entry.HappenedAt))
            .Put(EntryFields.Who, entry.Who);
        Fact(typing, entry.Fact, clock);
        return typing.Form;
    }

    private static void Fact(Typing typing, LogFact fact, KitchenClock clock)
    {
        switch (fact)
        {
            case LogFact.StepDone done:
                typing.Put(EntryFields.Step, done.StepKey);
                break;
            case LogFact.LevelRead level:
                typing.Put(EntryFields.Below, Measure.PotLength, level.BelowRim.Meters);
                break;
            case LogFact.WaterAdded water:
                typing.Put(EntryFields.Water, Measure.Stock, water.Volume.CubicMeters);
                break;
            case LogFact.TemperatureRead read:
                typing.Put(EntryFields.Degrees, KitchenNumber.Write(read.Temperature.Unit == TemperatureUnit.DegreeFahrenheit ? read.Temperature.DegreesFahrenheit : read.Temperature.DegreesCelsius))
                    .Put(EntryFields.Place, EntryReader.Places.First(place => place.Value == read.Place).Word)
                    .Put(EntryFields.Probe, read.Probe);
                break;
            case LogFact.HeatMoved moved:
                typing.Put(EntryFields.Hob, moved.HobId);
                break;
            case LogFact.LidChanged lid:
                typing.Put(EntryFields.Lid, WordTable.Of(EquipmentWords.Lids, lid.Lid.Kind))
                    .Put(EntryFields.LidOpen, Measure.Percent, lid.Lid.Kind == LidKind.Ajar ? lid.Lid.OpenFraction.DecimalFractions : null);
                break;
            case LogFact.HeatLost lost:
                typing.Put(EntryFields.Until, lost.Until is { } until ? clock.Typed(until) : null).Put(EntryFields.Why, lost.Why);
                break;
            case LogFact.BoiledOver over:
                typing.Put(EntryFields.Lost, Measure.Stock, over.Lost?.CubicMeters);
                break;
            case LogFact.NeverCooked aside:
                typing.Put(EntryFields.Why, aside.Why);
                break;
            case LogFact.Paused paused:
                typing.Put(EntryFields.Why, paused.Why);
                break;
            case LogFact.Strained strained:
                typing.Put(EntryFields.Strained, Measure.Stock, strained.Volume.CubicMeters);
                break;
            case LogFact.SpentWeighed spent:
                typing.Put(EntryFields.Spent, Measure.Mass, spent.Spent.Kilograms);
                break;
            case LogFact.CoolingBegan began:
                typing.Put(EntryFields.Method, began.Method);
                break;
            case LogFact.ColdUnmeasured cold:
                typing.Put(EntryFields.Text, cold.Sign);
                break;
            case LogFact.CorrectionMade made:
                typing.Put(EntryFields.Action, EntryReader.Actions.First(action => action.Value == made.Step).Word).Put(EntryFields.Text, made.Text);
                break;
            case LogFact.FatWeighed fat:
                typing.Put(EntryFields.Fat, Measure.SmallMass, fat.Fat.Kilograms);
                break;
            case LogFact.RefractometerRead read:
                typing.Put(EntryFields.Brix, KitchenNumber.Write(read.Brix));
                break;
            case LogFact.SetFelt felt:
                typing.Put(EntryFields.Body, EntryReader.Bodies.First(body => body.Value == felt.Body).Word);
                break;
            case LogFact.Portioned portioned:
                typing.Put(EntryFields.Portioned, Measure.Stock, portioned.Volume.CubicMeters);
                break;
            case LogFact.Noted noted:
                typing.Put(EntryFields.Text, noted.Text);
                break;
            case LogFact.PhotoTaken photo:
                typing.Put(EntryFields.Text, photo.Caption);
                break;
            case LogFact.Closed closed:
                typing.Put(EntryFields.NextTime, closed.NextTime)
                    .Put(EntryFields.Attended, Measure.Hours, closed.Attended?.TotalSeconds)
                    .Put(EntryFields.Metered, EntryReader.Energy, closed.Metered?.Joules);
                break;
        }
    }
}
