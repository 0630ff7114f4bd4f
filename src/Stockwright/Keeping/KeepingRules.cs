using Stockwright.Cooling.Limits;
using Stockwright.Evidence;
using Stockwright.Files;

namespace Stockwright.Keeping;

/// <summary>How long one source says stock keeps.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Source">Whose chart.</param>
/// <param name="FridgeDays">Days in the fridge, least and most.</param>
/// <param name="FreezerMonths">Months in the freezer, for quality, least and most; null where the source gives none.</param>
/// <param name="Provenance">Grade.</param>
public sealed record StorageTime(string Id, string Source, (int Least, int Most) FridgeDays, (int Least, int Most)? FreezerMonths, Provenance Provenance);

/// <summary>The date-marking rule of one code; the day of making is the first.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Name">Whose rule.</param>
/// <param name="Clause">Clause.</param>
/// <param name="Standing">How binding it is.</param>
/// <param name="Days">Days allowed, the day of making counted.</param>
/// <param name="AtMost">Warmest it may be kept at.</param>
/// <param name="Text">In plain words.</param>
/// <param name="Provenance">Grade.</param>
public sealed record DateMarkRule(string Id, string Name, string Clause, LimitStanding Standing, int Days, PrintedTemperature AtMost, string Text, Provenance Provenance);

/// <summary>Hot holding, cold holding and reheating in one place.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Name">Where.</param>
/// <param name="Clause">Clause.</param>
/// <param name="Standing">How binding it is.</param>
/// <param name="HotAtLeast">Hold hot at this or above.</param>
/// <param name="ColdAtMost">Hold cold at this or below, or null when the rule gives no figure.</param>
/// <param name="ReheatTo">Reheat to this.</param>
/// <param name="Reheat">Reheating in plain words.</param>
/// <param name="Provenance">Grade.</param>
/// <param name="Source">Where it was read.</param>
public sealed record HoldingRule(
    string Id, string Name, string Clause, LimitStanding Standing, PrintedTemperature HotAtLeast, PrintedTemperature? ColdAtMost, PrintedTemperature ReheatTo, string Reheat, Provenance Provenance, string Source);

/// <summary>The rules of keeping that come with the tool. Charts disagree: show each, and start from the shortest.</summary>
public static class KeepingRules
{
    private static readonly Lazy<(IReadOnlyList<StorageTime> Storage, IReadOnlyList<DateMarkRule> Dates, IReadOnlyList<HoldingRule> Holding)> Loaded =
        new(() => Parse(EmbeddedText.Read("Keeping.Data.keeping.json")));

    /// <summary>How long each source says stock keeps.</summary>
    public static IReadOnlyList<StorageTime> Storage => Loaded.Value.Storage;

    /// <summary>The one to start from: the shortest time in the fridge, and of those the shortest in the freezer.</summary>
    public static StorageTime Shortest => Storage.OrderBy(row => row.FridgeDays.Most).ThenBy(row => row.FreezerMonths?.Most ?? int.MaxValue).First();

    /// <summary>Date-marking rules.</summary>
    public static IReadOnlyList<DateMarkRule> DateMarking => Loaded.Value.Dates;

    /// <summary>Holding and reheating.</summary>
    public static IReadOnlyList<HoldingRule> Holding => Loaded.Value.Holding;

    /// <summary>Reads a file of keeping rules.</summary>
    /// <exception cref="DataFileException">The text is not JSON, or a row is incomplete or unsound; the message names row and field.</exception>
    internal static (IReadOnlyList<StorageTime> Storage, IReadOnlyList<DateMarkRule> Dates, IReadOnlyList<HoldingRule> Holding) Parse(string json) =>
        JsonRow.ReadFile(json, "Keeping rules", file =>
        {
            file.OptionalText("about");
            return ((IReadOnlyList<StorageTime>)file.Rows("storage", "storage time", ReadStorage),
                (IReadOnlyList<DateMarkRule>)file.Rows("dateMarking", "date-marking rule", ReadDate),
                (IReadOnlyList<HoldingRule>)file.Rows("holding", "holding rule", ReadHolding));
        });

    private static StorageTime ReadStorage(JsonRow row) =>
        new(row.Text("id"), row.Text("source"), row.WholeRange("fridgeDays"), row.Has("freezerMonths") ? row.WholeRange("freezerMonths") : null, row.Choice<Provenance>("grade"));

    private static DateMarkRule ReadDate(JsonRow row) =>
        new(row.Text("id"), row.Text("name"), row.Text("clause"), row.Choice<LimitStanding>("standing"), row.WholeNumber("days", 0), row.Printed("atMost"), row.Text("text"), row.Choice<Provenance>("grade"));

    private static HoldingRule ReadHolding(JsonRow row) =>
        new(
            row.Text("id"),
            row.Text("name"),
            row.Text("clause"),
            row.Choice<LimitStanding>("standing"),
            row.Printed("hot"),
            row.OptionalPrinted("cold"),
            row.Printed("reheat"),
            row.Text("reheat"),
            row.Choice<Provenance>("grade"),
            row.Text("source"));
}
