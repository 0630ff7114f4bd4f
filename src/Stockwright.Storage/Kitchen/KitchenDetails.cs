using Stockwright.Kitchen;

namespace Stockwright.Storage.Kitchen;

/// <summary>The kitchen itself, without what stands in it.</summary>
/// <param name="Name">What the cook calls it.</param>
/// <param name="TimeZoneId">IANA name of its time zone.</param>
/// <param name="Site">Air, room and tap.</param>
public sealed record KitchenDetails(string Name, string TimeZoneId, KitchenSite Site);

/// <summary>A kitchen as stored, every part with its version.</summary>
/// <param name="Details">The kitchen itself.</param>
/// <param name="Pots">Pots, in the cook's order.</param>
/// <param name="Hobs">Burners and plates, in the cook's order.</param>
/// <param name="Ovens">Ovens; the planner uses the first.</param>
/// <param name="Trays">Trays, in the cook's order.</param>
public sealed record KeptKitchen(
    Kept<KitchenDetails> Details,
    IReadOnlyList<Kept<Pot>> Pots,
    IReadOnlyList<Kept<Hob>> Hobs,
    IReadOnlyList<Kept<Oven>> Ovens,
    IReadOnlyList<Kept<Tray>> Trays)
{
    /// <summary>The kitchen as the planner takes it.</summary>
    public KitchenSetup Setup => new()
    {
        Name = Details.Value.Name,
        TimeZoneId = Details.Value.TimeZoneId,
        Site = Details.Value.Site,
        Pots = [.. Pots.Select(pot => pot.Value)],
        Hobs = [.. Hobs.Select(hob => hob.Value)],
        Oven = Ovens.Count > 0 ? Ovens[0].Value : null,
        Trays = [.. Trays.Select(tray => tray.Value)],
    };
}
