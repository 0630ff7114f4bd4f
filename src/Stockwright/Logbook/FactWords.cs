namespace Stockwright.Logbook;

/// <summary>Stable words for the kinds of facts, in storage, exports and forms.</summary>
public static class FactWords
{
    private static readonly (string Word, Type Type)[] Rows =
    [
        ("step-done", typeof(LogFact.StepDone)),
        ("level", typeof(LogFact.LevelRead)),
        ("water", typeof(LogFact.WaterAdded)),
        ("temperature", typeof(LogFact.TemperatureRead)),
        ("skimmed", typeof(LogFact.Skimmed)),
        ("heat-moved", typeof(LogFact.HeatMoved)),
        ("lid", typeof(LogFact.LidChanged)),
        ("heat-lost", typeof(LogFact.HeatLost)),
        ("off-the-boil", typeof(LogFact.OffTheBoil)),
        ("simmers", typeof(LogFact.Simmers)),
        ("boiled-over", typeof(LogFact.BoiledOver)),
        ("ran-low", typeof(LogFact.RanLow)),
        ("paused", typeof(LogFact.Paused)),
        ("resumed", typeof(LogFact.Resumed)),
        ("strained", typeof(LogFact.Strained)),
        ("spent", typeof(LogFact.SpentWeighed)),
        ("cooling-began", typeof(LogFact.CoolingBegan)),
        ("no-thermometer", typeof(LogFact.ColdUnmeasured)),
        ("correction-made", typeof(LogFact.CorrectionMade)),
        ("fat", typeof(LogFact.FatWeighed)),
        ("refractometer", typeof(LogFact.RefractometerRead)),
        ("set-felt", typeof(LogFact.SetFelt)),
        ("portioned", typeof(LogFact.Portioned)),
        ("note", typeof(LogFact.Noted)),
        ("photo", typeof(LogFact.PhotoTaken)),
        ("closed", typeof(LogFact.Closed)),
        ("never-cooked", typeof(LogFact.NeverCooked)),
        ("withdrawn", typeof(LogFact.Withdrawn)),
    ];

    /// <summary>Every word, in order.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Rows.Select(row => row.Word)];

    /// <summary>The word of a fact.</summary>
    public static string Of(LogFact fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        Type type = fact.GetType();
        return Rows.First(row => row.Type == type).Word;
    }
}
