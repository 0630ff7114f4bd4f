using System.Text.Json.Serialization;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Predicting;
using UnitsNet;
using UnitsNet.Units;

namespace Stockwright.Logbook;

/// <summary>Where a thermometer was put.</summary>
public enum ReadingPlace
{
    /// <summary>In the pot on the heat.</summary>
    Pot,

    /// <summary>In the stock while it cools, at the point that cools slowest.</summary>
    Cooling,
}

/// <summary>
/// One thing that happened to a batch. What it was, when, and who says so stands in its <see cref="LogEntry"/>. Everything the core knows of a kind
/// stands in this file: its word here, then its record with what it holds, its ranges, the JSON form it is stored in and how it is checked.
/// </summary>
/// <remarks>
/// Stored in SI, the unit in the name (<see cref="FactDocument"/>). A quantity is stored through an internal property of that name and read through the
/// constructor marked for JSON. What may be left out is nullable there, or has a default, and is then not written. Names once stored are never changed.
/// Ranges catch typing errors: our estimates, wider than any kitchen needs.
/// </remarks>
[JsonDerivedType(typeof(StepDone), "step-done")]
[JsonDerivedType(typeof(LevelRead), "level")]
[JsonDerivedType(typeof(WaterAdded), "water")]
[JsonDerivedType(typeof(TemperatureRead), "temperature")]
[JsonDerivedType(typeof(Skimmed), "skimmed")]
[JsonDerivedType(typeof(HeatMoved), "heat-moved")]
[JsonDerivedType(typeof(LidChanged), "lid")]
[JsonDerivedType(typeof(HeatLost), "heat-lost")]
[JsonDerivedType(typeof(OffTheBoil), "off-the-boil")]
[JsonDerivedType(typeof(Simmers), "simmers")]
[JsonDerivedType(typeof(BoiledOver), "boiled-over")]
[JsonDerivedType(typeof(RanLow), "ran-low")]
[JsonDerivedType(typeof(Paused), "paused")]
[JsonDerivedType(typeof(Resumed), "resumed")]
[JsonDerivedType(typeof(Strained), "strained")]
[JsonDerivedType(typeof(SpentWeighed), "spent")]
[JsonDerivedType(typeof(CoolingBegan), "cooling-began")]
[JsonDerivedType(typeof(ColdUnmeasured), "no-thermometer")]
[JsonDerivedType(typeof(CorrectionMade), "correction-made")]
[JsonDerivedType(typeof(FatWeighed), "fat")]
[JsonDerivedType(typeof(RefractometerRead), "refractometer")]
[JsonDerivedType(typeof(SetFelt), "set-felt")]
[JsonDerivedType(typeof(Portioned), "portioned")]
[JsonDerivedType(typeof(Noted), "note")]
[JsonDerivedType(typeof(PhotoTaken), "photo")]
[JsonDerivedType(typeof(Closed), "closed")]
[JsonDerivedType(typeof(NeverCooked), "never-cooked")]
[JsonDerivedType(typeof(Withdrawn), "withdrawn")]
public abstract record LogFact
{
    /// <summary>Volumes that are taken: a spoonful to half a cubic metre.</summary>
    public static readonly (Volume Least, Volume Most) VolumeRange = (Volume.FromCubicMeters(1e-6), Volume.FromCubicMeters(0.5));

    private LogFact()
    {
    }

    /// <summary>True when the record is closed by it: <see cref="Closed"/> or <see cref="NeverCooked"/>.</summary>
    [JsonIgnore]
    public bool ClosesRecord => this is Closed or NeverCooked;

    /// <summary>Says what is wrong with it in this batch.</summary>
    internal abstract void Check(FactChecks checks);

    /// <summary>A step of the plan was done.</summary>
    /// <param name="StepKey">Key of the step, as in <see cref="Planning.PlanStep.Key"/>.</param>
    public sealed record StepDone([property: JsonPropertyName("step")] string StepKey) : LogFact
    {
        internal override void Check(FactChecks checks) =>
            checks.Need(checks.Plan.Timeline.Steps.Any(step => string.Equals(step.Key, StepKey, StringComparison.Ordinal)), "step", "This plan has no such step.");
    }

    /// <summary>The level was read, before any water was added.</summary>
    /// <param name="BelowRim">Distance from the rim down to the liquid, zero to the pot's height.</param>
    public sealed record LevelRead([property: JsonIgnore] Length BelowRim) : LogFact
    {
        /// <summary>Levels that are taken before the pot is asked, whose own height counts.</summary>
        public static readonly (Length Least, Length Most) Range = (Length.Zero, Length.FromMeters(3));

        [JsonConstructor]
        internal LevelRead(double belowRimMetres) : this(Length.FromMeters(belowRimMetres)) { }

        [JsonInclude]
        internal double BelowRimMetres => BelowRim.Meters;

        internal override void Check(FactChecks checks) => checks.Need(
            BelowRim >= Length.Zero && BelowRim.Meters <= checks.Pot.InnerHeight.Meters * (1 + 1e-9),
            "below",
            $"The level lies between the rim and the base: this pot is {KitchenFormat.Both(checks.Pot.InnerHeight)} deep.");
    }

    /// <summary>Water was added.</summary>
    /// <param name="Volume">Measured cold, above zero.</param>
    public sealed record WaterAdded([property: JsonIgnore] Volume Volume) : LogFact
    {
        [JsonConstructor]
        internal WaterAdded(double cubicMetres) : this(Volume.FromCubicMeters(cubicMetres)) { }

        [JsonInclude]
        internal double CubicMetres => Volume.CubicMeters;

        internal override void Check(FactChecks checks) => checks.NeedVolume(Volume, "water", "Water added");
    }

    /// <summary>A temperature was read.</summary>
    /// <param name="Temperature">As read; the unit it was read in is kept, for a limit printed in °F is judged in °F.</param>
    /// <param name="Place">Where.</param>
    /// <param name="Probe">Which thermometer, as the kitchen calls it; empty when not said.</param>
    public sealed record TemperatureRead([property: JsonIgnore] Temperature Temperature, ReadingPlace Place, string Probe = "") : LogFact
    {
        /// <summary>Lowest and highest temperature a kitchen thermometer is believed.</summary>
        public static readonly (Temperature Least, Temperature Most) Range = (Temperature.FromDegreesCelsius(-30), Temperature.FromDegreesCelsius(130));

        [JsonConstructor]
        internal TemperatureRead(ReadingPlace place, double? degreesFahrenheit, double? degreesCelsius, string probe = "")
            : this(
                (degreesFahrenheit, degreesCelsius) switch
                {
                    ({ } fahrenheit, null) => Temperature.FromDegreesFahrenheit(fahrenheit),
                    (null, { } celsius) => Temperature.FromDegreesCelsius(celsius),
                    _ => throw new FormatException("one of 'degreesCelsius' and 'degreesFahrenheit' must be there"),
                },
                place,
                probe)
        {
        }

        [JsonInclude, JsonPropertyOrder(-1)]
        internal double? DegreesFahrenheit => Temperature.Unit == TemperatureUnit.DegreeFahrenheit ? Temperature.DegreesFahrenheit : null;

        [JsonInclude, JsonPropertyOrder(-1)]
        internal double? DegreesCelsius => Temperature.Unit == TemperatureUnit.DegreeFahrenheit ? null : Temperature.DegreesCelsius;

        internal override void Check(FactChecks checks)
        {
            bool isBelieved = Temperature.DegreesCelsius >= Range.Least.DegreesCelsius && Temperature.DegreesCelsius <= Range.Most.DegreesCelsius;
            checks.Need(isBelieved, "degrees", "A temperature lies between -30 and 130 °C (-22 and 266 °F).");
            checks.NeedText(Probe, "probe");
        }
    }

    /// <summary>Scum and fat were lifted.</summary>
    public sealed record Skimmed : LogFact
    {
        internal override void Check(FactChecks checks) { }
    }

    /// <summary>The pot was moved to another heat.</summary>
    /// <param name="HobId">Hob it stands on now, or <see cref="Oven"/>, or <see cref="NoHeat"/>.</param>
    public sealed record HeatMoved([property: JsonPropertyName("hob")] string HobId) : LogFact
    {
        /// <summary>In the oven or a slow appliance.</summary>
        public const string Oven = "oven";

        /// <summary>On no heat.</summary>
        public const string NoHeat = "none";

        internal override void Check(FactChecks checks) => checks.Need(!string.IsNullOrWhiteSpace(HobId), "hob", "Say which heat it stands on now.");
    }

    /// <summary>The lid was moved.</summary>
    /// <param name="Lid">How it sits now.</param>
    public sealed record LidChanged([property: JsonIgnore] LidPosition Lid) : LogFact
    {
        [JsonConstructor]
        internal LidChanged(LidKind kind, double? openFraction)
            : this((kind, openFraction) switch
            {
                (LidKind.Off, null) => LidPosition.Off,
                (LidKind.On, null) => LidPosition.On,
                (LidKind.Ajar, { } open) => LidPosition.Ajar(Ratio.FromDecimalFractions(open)),
                _ => throw new FormatException("'openFraction' belongs to a lid ajar"),
            })
        {
        }

        [JsonInclude, JsonPropertyName("lid")]
        internal LidKind Kind => Lid.Kind;

        [JsonInclude]
        internal double? OpenFraction => Lid.Kind == LidKind.Ajar ? Lid.OpenFraction.DecimalFractions : null;

        internal override void Check(FactChecks checks) => checks.Need(
            Enum.IsDefined(Lid.Kind) && (Lid.Kind != LidKind.Ajar || (Lid.OpenFraction >= LidPosition.OpenRange.Least && Lid.OpenFraction <= LidPosition.OpenRange.Most)),
            "lid",
            "A lid ajar leaves 1 to 60 % of the mouth open.");
    }

    /// <summary>The heat was away for a while (power cut, flame out), from the moment of the entry.</summary>
    /// <param name="Until">When it came back; null while it is still away.</param>
    /// <param name="Why">In the cook's words; may be empty.</param>
    public sealed record HeatLost(DateTimeOffset? Until = null, string Why = "") : LogFact
    {
        internal override void Check(FactChecks checks)
        {
            checks.Need(Until is not { } until || until > checks.HappenedAt, "until", "The heat cannot come back before it goes.");
            checks.Need(Until is not { } back || back <= checks.Now + LogEntry.ClockSlack, "until", "Leave this empty while the heat is still away.");
            checks.NeedText(Why, "why");
        }
    }

    /// <summary>It went off the simmer though the heat was on.</summary>
    public sealed record OffTheBoil : LogFact
    {
        internal override void Check(FactChecks checks) { }
    }

    /// <summary>It simmers (for the first time, or again).</summary>
    public sealed record Simmers : LogFact
    {
        internal override void Check(FactChecks checks) { }
    }

    /// <summary>It boiled over.</summary>
    /// <param name="Lost">What was lost, as far as the cook can say; null when unknown.</param>
    public sealed record BoiledOver([property: JsonIgnore] Volume? Lost = null) : LogFact
    {
        [JsonConstructor]
        internal BoiledOver(double? lostCubicMetres) : this(lostCubicMetres is { } lost ? Volume.FromCubicMeters(lost) : (Volume?)null) { }

        [JsonInclude]
        internal double? LostCubicMetres => Lost?.CubicMeters;

        internal override void Check(FactChecks checks)
        {
            if (Lost is { } lost)
            {
                checks.NeedVolume(lost, "lost", "What boiled over");
            }
        }
    }

    /// <summary>Found with the solids uncovered, or nearly dry.</summary>
    public sealed record RanLow : LogFact
    {
        internal override void Check(FactChecks checks) { }
    }

    /// <summary>Taken off and put aside by choice.</summary>
    /// <param name="Why">In the cook's words; may be empty.</param>
    public sealed record Paused(string Why = "") : LogFact
    {
        internal override void Check(FactChecks checks) => checks.NeedText(Why, "why");
    }

    /// <summary>Taken up again after a pause.</summary>
    public sealed record Resumed : LogFact
    {
        internal override void Check(FactChecks checks) { }
    }

    /// <summary>The stock was strained and measured.</summary>
    /// <param name="Volume">Strained stock.</param>
    public sealed record Strained([property: JsonIgnore] Volume Volume) : LogFact
    {
        [JsonConstructor]
        internal Strained(double cubicMetres) : this(Volume.FromCubicMeters(cubicMetres)) { }

        [JsonInclude]
        internal double CubicMetres => Volume.CubicMeters;

        internal override void Check(FactChecks checks) => checks.NeedVolume(Volume, "strained", "Strained stock");
    }

    /// <summary>The drained solids were weighed after straining, those lifted out earlier with them.</summary>
    /// <param name="Spent">Spent solids with the liquor that clings to them, without colander or bowl; above zero.</param>
    public sealed record SpentWeighed([property: JsonIgnore] Mass Spent) : LogFact
    {
        /// <summary>Weights that are taken before the plan is asked.</summary>
        public static readonly (Mass Least, Mass Most) Range = (Mass.FromKilograms(1e-3), Mass.FromKilograms(200));

        [JsonConstructor]
        internal SpentWeighed(double kilograms) : this(Mass.FromKilograms(kilograms)) { }

        [JsonInclude]
        internal double Kilograms => Spent.Kilograms;

        internal override void Check(FactChecks checks) => checks.Need(
            Spent > Mass.Zero && Spent <= checks.HeaviestSpent,
            "spent",
            $"Spent solids weigh more than nothing, and no more than all that went in with what soaks in and clings, {KitchenFormat.Both(checks.HeaviestSpent)}. Take off what bowl and colander weigh.");
    }

    /// <summary>Cooling began.</summary>
    /// <param name="Method">How, in the cook's words; may be empty.</param>
    public sealed record CoolingBegan(string Method = "") : LogFact
    {
        internal override void Check(FactChecks checks) => checks.NeedText(Method, "method");
    }

    /// <summary>The cook says that the stock is cold and that there is no thermometer to measure it with.</summary>
    /// <param name="Sign">How the cook can tell, in the cook's words; may be empty.</param>
    public sealed record ColdUnmeasured(string Sign = "") : LogFact
    {
        internal override void Check(FactChecks checks) => checks.NeedText(Sign, "text");
    }

    /// <summary>What was done about a missed stage of cooling.</summary>
    /// <param name="Step">What was done.</param>
    /// <param name="Text">In the cook's words; may be empty.</param>
    public sealed record CorrectionMade([property: JsonPropertyName("action")] CorrectiveStep Step, string Text = "") : LogFact
    {
        internal override void Check(FactChecks checks)
        {
            checks.Need(Enum.IsDefined(Step), "action", "Say what was done.");
            checks.NeedText(Text, "text");
        }
    }

    /// <summary>The fat was weighed.</summary>
    /// <param name="Fat">Above zero.</param>
    public sealed record FatWeighed([property: JsonIgnore] Mass Fat) : LogFact
    {
        /// <summary>Weights that are taken before the plan is asked.</summary>
        public static readonly (Mass Least, Mass Most) Range = (Mass.FromKilograms(1e-4), Mass.FromKilograms(50));

        [JsonConstructor]
        internal FatWeighed(double kilograms) : this(Mass.FromKilograms(kilograms)) { }

        [JsonInclude]
        internal double Kilograms => Fat.Kilograms;

        internal override void Check(FactChecks checks) => checks.Need(
            Fat > Mass.Zero && Fat <= checks.AllThatWentIn,
            "fat",
            $"The fat weighs more than nothing and no more than all that went in, {KitchenFormat.Both(checks.AllThatWentIn)}.");
    }

    /// <summary>A refractometer was read.</summary>
    /// <param name="Brix">Degrees Brix, 0 to 85.</param>
    public sealed record RefractometerRead(double Brix) : LogFact
    {
        /// <summary>What the scale of a hand refractometer reaches (common practice, no source).</summary>
        public static readonly (double Least, double Most) Range = (0, 85);

        internal override void Check(FactChecks checks) => checks.Need(Brix >= Range.Least && Brix <= Range.Most, "brix", "A refractometer reads 0 to 85 °Brix.");
    }

    /// <summary>The set was felt, cold.</summary>
    /// <param name="Body">As felt.</param>
    public sealed record SetFelt(BodyClass Body) : LogFact
    {
        internal override void Check(FactChecks checks) => checks.Need(Enum.IsDefined(Body), "body", "Choose how it stands.");
    }

    /// <summary>Portioned stock was measured.</summary>
    /// <param name="Volume">Stock kept, after defatting.</param>
    public sealed record Portioned([property: JsonIgnore] Volume Volume) : LogFact
    {
        [JsonConstructor]
        internal Portioned(double cubicMetres) : this(Volume.FromCubicMeters(cubicMetres)) { }

        [JsonInclude]
        internal double CubicMetres => Volume.CubicMeters;

        internal override void Check(FactChecks checks) => checks.NeedVolume(Volume, "portioned", "Portioned stock");
    }

    /// <summary>A remark.</summary>
    /// <param name="Text">In the cook's words.</param>
    public sealed record Noted(string Text) : LogFact
    {
        internal override void Check(FactChecks checks) => checks.NeedText(Text, "text", isRequired: true);
    }

    /// <summary>A photo was taken; it is kept under the id of its entry.</summary>
    /// <param name="Caption">In the cook's words; may be empty.</param>
    public sealed record PhotoTaken(string Caption = "") : LogFact
    {
        internal override void Check(FactChecks checks) => checks.NeedText(Caption, "text");
    }

    /// <summary>The record is closed.</summary>
    /// <param name="NextTime">What the cook would change next time; may be empty.</param>
    /// <param name="Attended">Own time spent, by the cook's own count; null when not said.</param>
    /// <param name="Metered">Fuel or electricity read off a meter; null when not read.</param>
    public sealed record Closed(string NextTime = "", [property: JsonIgnore] TimeSpan? Attended = null, [property: JsonIgnore] Energy? Metered = null) : LogFact
    {
        /// <summary>Own time that is taken.</summary>
        public static readonly (TimeSpan Least, TimeSpan Most) AttendedRange = (TimeSpan.Zero, TimeSpan.FromHours(100));

        /// <summary>Energy that is taken.</summary>
        public static readonly (Energy Least, Energy Most) MeteredRange = (Energy.Zero, Energy.FromJoules(1e10));

        [JsonConstructor]
        internal Closed(double? attendedSeconds, double? meteredJoules, string nextTime = "")
            : this(
                nextTime,
                attendedSeconds switch
                {
                    null => null,
                    { } seconds and >= 0 and < 1e9 => TimeSpan.FromTicks((long)Math.Round(seconds * TimeSpan.TicksPerSecond)),
                    _ => throw new FormatException("'attendedSeconds' must be between nothing and a thousand million"),
                },
                meteredJoules is { } joules ? Energy.FromJoules(joules) : null)
        {
        }

        [JsonInclude]
        internal double? AttendedSeconds => Attended?.TotalSeconds;

        [JsonInclude]
        internal double? MeteredJoules => Metered?.Joules;

        internal override void Check(FactChecks checks)
        {
            checks.NeedText(NextTime, "next-time");
            checks.Need(Attended is not { } attended || attended >= AttendedRange.Least, "attended", "Time spent is not below zero.");
            checks.Need(Metered is not { } metered || metered >= MeteredRange.Least, "metered", "Energy used is not below zero.");
        }
    }

    /// <summary>The batch was started by mistake and put aside: nothing was cooked. Closes the record as <see cref="Closed"/> does.</summary>
    /// <param name="Why">In the cook's words; may be empty.</param>
    public sealed record NeverCooked(string Why = "") : LogFact
    {
        internal override void Check(FactChecks checks) => checks.NeedText(Why, "why");
    }

    /// <summary>An earlier entry is taken back; <see cref="LogEntry.Corrects"/> says which.</summary>
    /// <param name="Why">In the cook's words; may be empty.</param>
    public sealed record Withdrawn(string Why = "") : LogFact
    {
        internal override void Check(FactChecks checks) => checks.NeedText(Why, "why");
    }
}
