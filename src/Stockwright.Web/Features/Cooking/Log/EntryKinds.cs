using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Recipes;

namespace Stockwright.Web.Features.Cooking.Log;

/// <summary>A kind of entry as a button.</summary>
/// <param name="Kind">Word of <see cref="FactDocument"/>.</param>
/// <param name="Title">On the button.</param>
/// <param name="Said">What an entry of it says, while it waits to be delivered.</param>
/// <param name="IsOneTap">True when the tap alone makes the entry.</param>
/// <param name="Submit">On the button that sends its form; null for the usual word.</param>
public sealed record EntryKind(string Kind, string Title, string Said, bool IsOneTap = false, string? Submit = null);

/// <summary>The entries a cook may make, those that fit the hour first.</summary>
internal static class EntryKinds
{
    private static readonly EntryKind[] Rows =
    [
        new("level", "Level", "Level read"),
        new("water", "Water added", "Water added"),
        new("skimmed", "Skimmed", "Skimmed", IsOneTap: true),
        new("temperature", "Temperature", "Temperature read"),
        new("simmers", "It simmers", "Simmers"),
        new("lid", "Lid", "Lid moved"),
        new("heat-moved", "Other heat", "Moved to another heat"),
        new("off-the-boil", "Off the boil", "Off the boil"),
        new("heat-lost", "Heat was gone", "Heat gone"),
        new("paused", "Paused", "Paused"),
        new("resumed", "Taken up again", "Taken up again"),
        new("boiled-over", "Boiled over", "Boiled over"),
        new("ran-low", "Ran low", "Ran low"),
        new("strained", "Strained", "Strained"),
        new("spent", "Spent solids", "Spent solids weighed"),
        new("cooling-began", "Cooling began", "Cooling began"),
        new("no-thermometer", "No thermometer", "Said to be cold, no thermometer", Submit: "It is cold right through"),
        new("correction-made", "Corrective action", "Corrective action"),
        new("fat", "Fat", "Fat weighed"),
        new("refractometer", "Refractometer", "Refractometer read"),
        new("set-felt", "Set", "Set felt"),
        new("portioned", "Portioned", "Portioned"),
        new("note", "Note", "Note"),
        new("photo", "Photo", "Photo"),
        new("step-done", "Step done earlier", "Step done"),
        new("closed", "Close the record", "Record closed"),
        new("never-cooked", "Put aside: never cooked", "Put aside as never cooked"),
        new("withdrawn", "Take back", "Taken back"),
    ];

    /// <summary>A kind by its word; the word itself when it is not known.</summary>
    public static EntryKind Find(string kind) =>
        Array.Find(Rows, row => string.Equals(row.Kind, kind, StringComparison.Ordinal)) ?? new EntryKind(kind, kind, kind);

    /// <summary>True for a kind this version knows.</summary>
    public static bool IsKnown(string kind) => Array.Exists(Rows, row => string.Equals(row.Kind, kind.Trim(), StringComparison.Ordinal));

    /// <summary>Those that fit how far the batch has come, the likeliest first.</summary>
    public static IReadOnlyList<EntryKind> For(BatchCourse course) => [.. Words(course.Phase).Select(Find).Select(kind => Told(kind, course))];

    /// <summary>The others. That there is no thermometer is asked only while it cools.</summary>
    public static IReadOnlyList<EntryKind> Beside(BatchCourse course)
    {
        string[] first = Words(course.Phase);
        return
        [
            .. Rows.Where(row => row.Kind is not ("withdrawn" or "closed" or "never-cooked" or "no-thermometer") && !first.Contains(row.Kind, StringComparer.Ordinal))
                .Select(kind => Told(kind, course)),
        ];
    }

    /// <summary>Kelp does not simmer.</summary>
    private static EntryKind Told(EntryKind kind, BatchCourse course) => string.Equals(kind.Kind, "simmers", StringComparison.Ordinal)
        ? kind with { Title = $"It {HeatWords.Of(course.Batch.Planned.Request.Recipe).Does}" }
        : kind;

    private static string[] Words(BatchPhase phase) => phase switch
    {
        BatchPhase.NotBegun => ["note"],
        BatchPhase.Preparing => ["temperature", "level", "water", "note", "photo"],
        BatchPhase.HeatingUp => ["simmers", "skimmed", "temperature", "lid", "boiled-over", "note"],
        BatchPhase.Simmering => ["level", "water", "skimmed", "temperature", "lid", "heat-moved", "off-the-boil", "note", "photo"],
        BatchPhase.HeatAway => ["resumed", "simmers", "temperature", "heat-lost", "level", "note"],
        BatchPhase.Straining => ["strained", "spent", "cooling-began", "temperature", "fat", "note", "photo"],
        BatchPhase.Cooling => ["temperature", "no-thermometer", "correction-made", "cooling-began", "strained", "spent", "note", "photo"],
        BatchPhase.Finishing => ["set-felt", "fat", "refractometer", "portioned", "temperature", "note", "photo"],
        _ => [],
    };
}
