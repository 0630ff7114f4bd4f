using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Predicting;
using UnitsNet;

namespace Stockwright.Logbook;

/// <summary>Where a thermometer was put.</summary>
public enum ReadingPlace
{
    /// <summary>In the pot on the heat.</summary>
    Pot,

    /// <summary>In the stock while it cools, at the point that cools slowest.</summary>
    Cooling,
}

/// <summary>One thing that happened to a batch. What it was, when, and who says so stands in its <see cref="LogEntry"/>.</summary>
public abstract record LogFact
{
    private LogFact()
    {
    }

    /// <summary>True when the record is closed by it: <see cref="Closed"/> or <see cref="NeverCooked"/>.</summary>
    public bool ClosesRecord => this is Closed or NeverCooked;

    /// <summary>A step of the plan was done.</summary>
    /// <param name="StepKey">Key of the step, as in <see cref="Planning.PlanStep.Key"/>.</param>
    public sealed record StepDone(string StepKey) : LogFact;

    /// <summary>The level was read, before any water was added.</summary>
    /// <param name="BelowRim">Distance from the rim down to the liquid, zero to the pot's height.</param>
    public sealed record LevelRead(Length BelowRim) : LogFact;

    /// <summary>Water was added.</summary>
    /// <param name="Volume">Measured cold, above zero.</param>
    public sealed record WaterAdded(Volume Volume) : LogFact;

    /// <summary>A temperature was read.</summary>
    /// <param name="Temperature">As read; the unit it was read in is kept, for a limit printed in °F is judged in °F.</param>
    /// <param name="Place">Where.</param>
    /// <param name="Probe">Which thermometer, as the kitchen calls it; empty when not said.</param>
    public sealed record TemperatureRead(Temperature Temperature, ReadingPlace Place, string Probe = "") : LogFact;

    /// <summary>Scum and fat were lifted.</summary>
    public sealed record Skimmed : LogFact;

    /// <summary>The pot was moved to another heat.</summary>
    /// <param name="HobId">Hob it stands on now, or <see cref="Oven"/>, or <see cref="NoHeat"/>.</param>
    public sealed record HeatMoved(string HobId) : LogFact
    {
        /// <summary>In the oven or a slow appliance.</summary>
        public const string Oven = "oven";

        /// <summary>On no heat.</summary>
        public const string NoHeat = "none";
    }

    /// <summary>The lid was moved.</summary>
    /// <param name="Lid">How it sits now.</param>
    public sealed record LidChanged(LidPosition Lid) : LogFact;

    /// <summary>The heat was away for a while (power cut, flame out), from the moment of the entry.</summary>
    /// <param name="Until">When it came back; null while it is still away.</param>
    /// <param name="Why">In the cook's words; may be empty.</param>
    public sealed record HeatLost(DateTimeOffset? Until, string Why = "") : LogFact;

    /// <summary>It went off the simmer though the heat was on.</summary>
    public sealed record OffTheBoil : LogFact;

    /// <summary>It simmers (for the first time, or again).</summary>
    public sealed record Simmers : LogFact;

    /// <summary>It boiled over.</summary>
    /// <param name="Lost">What was lost, as far as the cook can say; null when unknown.</param>
    public sealed record BoiledOver(Volume? Lost) : LogFact;

    /// <summary>Found with the solids uncovered, or nearly dry.</summary>
    public sealed record RanLow : LogFact;

    /// <summary>Taken off and put aside by choice.</summary>
    /// <param name="Why">In the cook's words; may be empty.</param>
    public sealed record Paused(string Why = "") : LogFact;

    /// <summary>Taken up again after a pause.</summary>
    public sealed record Resumed : LogFact;

    /// <summary>The stock was strained and measured.</summary>
    /// <param name="Volume">Strained stock.</param>
    public sealed record Strained(Volume Volume) : LogFact;

    /// <summary>The drained solids were weighed after straining, those lifted out earlier with them.</summary>
    /// <param name="Spent">Spent solids with the liquor that clings to them, without colander or bowl; above zero.</param>
    public sealed record SpentWeighed(Mass Spent) : LogFact;

    /// <summary>Cooling began.</summary>
    /// <param name="Method">How, in the cook's words; may be empty.</param>
    public sealed record CoolingBegan(string Method = "") : LogFact;

    /// <summary>The cook says that the stock is cold and that there is no thermometer to measure it with.</summary>
    /// <param name="Sign">How the cook can tell, in the cook's words; may be empty.</param>
    public sealed record ColdUnmeasured(string Sign = "") : LogFact;

    /// <summary>What was done about a missed stage of cooling.</summary>
    /// <param name="Step">What was done.</param>
    /// <param name="Text">In the cook's words; may be empty.</param>
    public sealed record CorrectionMade(CorrectiveStep Step, string Text = "") : LogFact;

    /// <summary>The fat was weighed.</summary>
    /// <param name="Fat">Above zero.</param>
    public sealed record FatWeighed(Mass Fat) : LogFact;

    /// <summary>A refractometer was read.</summary>
    /// <param name="Brix">Degrees Brix, 0 to 85.</param>
    public sealed record RefractometerRead(double Brix) : LogFact;

    /// <summary>The set was felt, cold.</summary>
    /// <param name="Body">As felt.</param>
    public sealed record SetFelt(BodyClass Body) : LogFact;

    /// <summary>Portioned stock was measured.</summary>
    /// <param name="Volume">Stock kept, after defatting.</param>
    public sealed record Portioned(Volume Volume) : LogFact;

    /// <summary>A remark.</summary>
    /// <param name="Text">In the cook's words.</param>
    public sealed record Noted(string Text) : LogFact;

    /// <summary>A photo was taken; it is kept under the id of its entry.</summary>
    /// <param name="Caption">In the cook's words; may be empty.</param>
    public sealed record PhotoTaken(string Caption = "") : LogFact;

    /// <summary>The record is closed.</summary>
    /// <param name="NextTime">What the cook would change next time; may be empty.</param>
    /// <param name="Attended">Own time spent, by the cook's own count; null when not said.</param>
    /// <param name="Metered">Fuel or electricity read off a meter; null when not read.</param>
    public sealed record Closed(string NextTime = "", TimeSpan? Attended = null, Energy? Metered = null) : LogFact;

    /// <summary>The batch was started by mistake and put aside: nothing was cooked. Closes the record as <see cref="Closed"/> does.</summary>
    /// <param name="Why">In the cook's words; may be empty.</param>
    public sealed record NeverCooked(string Why = "") : LogFact;

    /// <summary>An earlier entry is taken back; <see cref="LogEntry.Corrects"/> says which.</summary>
    /// <param name="Why">In the cook's words; may be empty.</param>
    public sealed record Withdrawn(string Why = "") : LogFact;
}
