using System.Globalization;
using Stockwright.Cooling;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Where a step has the stock stand.</summary>
internal enum PlaceKind
{
    Fridge,
    Ice,
    Running,
    Sink,
    Bench,
    WalkIn,
    Blast,
}

/// <summary>What a step pours into.</summary>
internal enum PourKind
{
    Same,
    Pans,
    Tubs,
    Jars,
}

/// <summary>The fields of a step of cooling, each told once; on the page they carry the step's number, in the interface they are a step's properties.</summary>
internal static class StepFields
{
    /// <summary>Most steps a way of cooling may have.</summary>
    public const int Most = 6;

    private static readonly FieldWord<Stirring>[] Often =
        [new("no", Stirring.None, "no"), new("few", Stirring.EveryFewMinutes, "every few minutes"), new("all", Stirring.AllTheTime, "all the time")];

    public static readonly WordsRow<PlaceKind> Place = new("place", "Where",
    [
        new("fridge", PlaceKind.Fridge, "in the household fridge"), new("ice", PlaceKind.Ice, "in an ice bath"), new("running", PlaceKind.Running, "in running tap water"),
        new("sink", PlaceKind.Sink, "in a sink of tap water"), new("bench", PlaceKind.Bench, "on the bench"), new("walk-in", PlaceKind.WalkIn, "in the walk-in"), new("blast", PlaceKind.Blast, "in the blast chiller"),
    ])
    {
        Told = "Place",
        IsList = true,
        Description = "fridge, ice, running, sink, bench, walk-in or blast.",
    };

    public static readonly WordsRow<bool> Lid = new("lid", "Lid", [new("off", false, "off"), new("on", true, "on")]) { Description = "off (default) or on." };

    public static readonly NumberRow<Temperature> Until = NumberRow.Temperature("until", "Until it is", CoolingStep.UntilRange) with { Told = "Until", Description = "Temperature it ends at; °C or °F." };

    public static readonly NumberRow<TimeSpan> Minutes = NumberRow.Span("minutes", "or for", Measure.Minutes, CoolingStep.TimeRange) with { Told = "Time", Unit = "min", Description = "Longest it lasts, in minutes." };

    public static readonly WordsRow<Stirring> StockStirring = new("stir", "Stir the stock", Often)
    {
        IsList = true,
        Hint = "Every few minutes: half a minute each time, on to the end. All the time: somebody stands there.",
        Description = "How often the stock is stirred: no (default), few (every few minutes) or all (all the time). True, as older callers send it, is few for stock and bath.",
    };

    public static readonly WordsRow<Stirring> BathStirring = new("stir-bath", "Stir the ice or water around it", Often)
    {
        Told = "Stir the bath",
        IsList = true,
        Hint = "Counts in an ice bath or a sink of standing water.",
        Description = "How often the water of an ice bath or a sink is stirred: no (default), few or all.",
    };

    public static readonly WordsRow<PourKind> Into = new("into", "Poured into",
        [new("same", PourKind.Same, "stays where it is"), new("pans", PourKind.Pans, "pans"), new("tubs", PourKind.Tubs, "tubs"), new("jars", PourKind.Jars, "glass jars")])
    {
        IsList = true,
        Description = "same (default), pans, tubs or jars.",
    };

    public static readonly WholeRow Count = new("count", "How many", PourInto.CountRange) { Placeholder = "as few as hold it", Description = "How many of them; as few as hold it when left out." };

    public static readonly NumberRow<Length> Deep = NumberRow.Length("deep", "or this deep", PourInto.DepthRange) with { Told = "Depth", Description = "How deep it stands in them, in place of count; cm or in." };

    public static readonly NumberRow<Mass> Ice = NumberRow.Mass("ice", "Ice in the bath", CoolingStep.AddedRange) with { Placeholder = "as much as it takes", Description = "Ice in the bath; kg or lb." };

    public static readonly NumberRow<Mass> Water = NumberRow.Mass("water", "Water in bath or sink", CoolingStep.AddedRange) with { Told = "Water around it", Description = "Water in bath or sink; kg or lb." };

    public static readonly WholeRow Wands = new("wands", "Frozen wands, each vessel", CoolingStep.WandsRange) { Told = "Frozen wands", Blank = 0, Description = "Frozen wands in each vessel." };

    public static readonly NumberRow<Mass> AddedIce = NumberRow.Mass("add-ice", "Ice put in the stock", CoolingStep.AddedRange) with
    {
        Blank = Mass.Zero,
        Hint = "Clean ice, instead of water of the recipe.",
        Description = "Ice put in the stock; kg or lb.",
    };

    public static readonly NumberRow<Mass> AddedWater = NumberRow.Mass("add-water", "Cold water put in the stock", CoolingStep.AddedRange) with
    {
        Told = "Water put in the stock",
        Blank = Mass.Zero,
        Description = "Cold water put in the stock; kg or lb.",
    };

    /// <summary>How it stands and how long.</summary>
    private static readonly IReadOnlyList<ShownField<CoolingView>> Standing = [new(Lid), new(Until), new(Minutes)];

    private static readonly IReadOnlyList<ShownField<CoolingView>> Stirred = [new(StockStirring), new(BathStirring)];

    private static readonly IReadOnlyList<ShownField<CoolingView>> Poured =
    [
        new(Into), new(Count), new(Deep), new(Ice),
        new(Water) { Hint = view => view.Units == UnitSystem.Metric ? "A litre is a kilogram." : "A quart is two pounds." },
        new(Wands), new(AddedIce), new(AddedWater),
    ];

    /// <summary>Every field of a step.</summary>
    public static readonly IReadOnlyList<FieldRow> All = [Place, .. Standing.Concat(Stirred).Concat(Poured).Select(shown => shown.Row)];

    public static IEnumerable<ShownField<CoolingView>> StandingAt(int step, bool needsEnd) => Standing.Select(shown => needsEnd && ReferenceEquals(shown.Row, Until)
        ? At(shown, step) with { Hint = _ => "This or a time ends the step." }
        : At(shown, step));

    public static IEnumerable<ShownField<CoolingView>> StirredAt(int step) => Stirred.Select(shown => At(shown, step));

    public static IEnumerable<ShownField<CoolingView>> PouredAt(int step) => Poured.Select(shown => At(shown, step));

    /// <summary>The field of a step, counted from one.</summary>
    public static T At<T>(this T row, int step)
        where T : FieldRow => (T)(row with { Name = NameOf(step, row.Name) });

    /// <summary>Name of a part of a step, counted from one.</summary>
    public static string NameOf(int step, string part) => string.Create(CultureInfo.InvariantCulture, $"s{step}-{part}");

    /// <summary>Names of everything a step may carry.</summary>
    public static IEnumerable<string> NamesAt(int step) => All.Select(row => NameOf(step, row.Name));

    /// <summary>The field a name of some step stands for; null for other names.</summary>
    public static FieldRow? Find(string name) => name is ['s', >= '1' and <= (char)('0' + Most), '-', .. var part]
        ? All.FirstOrDefault(row => string.Equals(row.Name, part, StringComparison.Ordinal))
        : null;

    /// <summary>True when a step says it is stirred by the one tick of older links: stock and bath, every few minutes.</summary>
    public static bool HasOneTick(TypedForm form, int step) => string.Equals(form[StockStirring.At(step).Name].Trim(), "1", StringComparison.Ordinal);

    /// <summary>A form whose older ticks are written as the two choices they stand for.</summary>
    public static TypedForm WithoutTicks(TypedForm form) => Enumerable.Range(1, Most)
        .Where(step => HasOneTick(form, step))
        .Aggregate(form, (each, step) => each
            .With(StockStirring.At(step).Name, "few")
            .With(BathStirring.At(step).Name, each.Has(BathStirring.At(step).Name) ? each[BathStirring.At(step).Name] : "few"));

    private static ShownField<CoolingView> At(ShownField<CoolingView> shown, int step) => shown with { Row = shown.Row.At(step) };
}
