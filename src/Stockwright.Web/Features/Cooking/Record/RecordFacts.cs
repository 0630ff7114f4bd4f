using Stockwright.Logbook;
using Stockwright.Measures;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Wording;
using UnitsNet;

namespace Stockwright.Web.Features.Cooking.Record;

/// <summary>A line of the record sheet's head: what stands there, or blank to be filled in by hand.</summary>
/// <param name="Name">What.</param>
/// <param name="Text">As entered; empty to be filled in.</param>
public sealed record RecordFact(string Name, string Text);

/// <summary>
/// What the record of a cooked and chilled batch is expected to say: the fields of the cooling logs of school-kitchen HACCP
/// material (USDA 2005) with those usual beside them (common practice, no source).
/// </summary>
internal sealed class RecordFacts(BatchView view, UnitSystem units)
{
    private readonly KitchenClock clock = new(view.Zone, units);

    public IEnumerable<RecordFact> Head()
    {
        yield return new("Product", view.Stored.Summary.RecipeName);
        yield return new("Date", clock.Local(view.Stored.Summary.Begins).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        yield return new("Batch", view.Id.ToString());
        yield return new("Recipe", view.Course?.Batch.Planned.Request.Recipe is { } recipe ? $"{recipe.Name} ({recipe.Id})" : view.Stored.Summary.RecipeName);
        yield return new("Pot", view.Stored.Summary.PotName);
        yield return new("Quantity", Quantity());
        yield return new("Cooked by", string.Join(", ", view.Log.All.Select(entry => entry.Who).Where(who => who.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)));
        yield return new("Cooking began", At(view.Log.Done("heatup-1") ?? view.Log.Last<LogFact.Simmers>(), FirstInPot()));
        yield return new("Cooking ended", At(view.Log.Done("stand-1") ?? view.Log.Last<LogFact.Strained>(), LastInPot()));
        yield return new("Cooling began", CoolingBegan());
        yield return new("Thermometers", string.Join(", ", Readings().Select(read => read.Fact.Probe).Where(probe => probe.Length > 0).Distinct(StringComparer.Ordinal)));
        yield return new("Allergens", Allergens());
    }

    /// <summary>Lines left blank, to be filled in with a pen.</summary>
    public static IReadOnlyList<string> ByHand { get; } =
        ["Ingredient lots, supplier", "Containers: kind, depth, cover", "Storage unit and its temperature", "Use by, or discard on", "Frozen on, thawed on", "Portions issued, discarded"];

    private string Quantity()
    {
        double portioned = view.Log.Of<LogFact.Portioned>().Sum(entry => entry.Fact.Volume.Liters);
        double strained = view.Log.Of<LogFact.Strained>().Sum(entry => entry.Fact.Volume.Liters);
        List<string> words = [];
        if (strained > 0)
        {
            words.Add($"{KitchenFormat.Precise(Volume.FromLiters(strained), units)} strained");
        }

        if (view.Log.Last<LogFact.SpentWeighed>()?.Fact is LogFact.SpentWeighed spent)
        {
            words.Add($"{FactText.Weighed(spent.Spent, units)} of spent solids");
        }

        if (view.Log.Last<LogFact.FatWeighed>()?.Fact is LogFact.FatWeighed fat)
        {
            words.Add($"{KitchenFormat.Precise(fat.Fat, units)} of fat");
        }

        if (portioned > 0)
        {
            words.Add($"{KitchenFormat.Precise(Volume.FromLiters(portioned), units)} portioned");
        }

        return string.Join(", ", words);
    }

    private string CoolingBegan()
    {
        LogEntry? entry = view.Log.Last<LogFact.CoolingBegan>();
        string how = entry?.Fact is LogFact.CoolingBegan { Method.Length: > 0 } began ? $", {began.Method}" : "";
        (LogEntry Entry, LogFact.TemperatureRead Fact) first = Readings().FirstOrDefault(read => read.Fact.Place == ReadingPlace.Cooling);
        return At(entry ?? view.Log.Last<LogFact.Strained>(), first.Fact) + how;
    }

    private string Allergens()
    {
        if (view.Course is not { } course)
        {
            return "";
        }

        IEnumerable<string> words = course.Batch.Planned.Ingredients.SelectMany(ingredient => ingredient.Allergens).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        string all = string.Join(", ", words);
        return all.Length > 0 ? all : "none on the larder's list";
    }

    private IEnumerable<(LogEntry Entry, LogFact.TemperatureRead Fact)> Readings() => view.Log.Of<LogFact.TemperatureRead>();

    private LogFact.TemperatureRead? FirstInPot() => Readings().Where(read => read.Fact.Place == ReadingPlace.Pot).Select(read => read.Fact).FirstOrDefault();

    private LogFact.TemperatureRead? LastInPot() => Readings().Where(read => read.Fact.Place == ReadingPlace.Pot).Select(read => read.Fact).LastOrDefault();

    private string At(LogEntry? entry, LogFact.TemperatureRead? read)
    {
        if (entry is null)
        {
            return "";
        }

        string when = clock.Moment(entry.HappenedAt);
        return read is null ? when : $"{when}, {FactText.AsRead(read.Temperature)}";
    }
}
