using Stockwright.Evidence;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What should happen: the whole answer to a <see cref="PlanRequest"/>. Amounts and volumes are for one round in the pot.</summary>
public sealed record BatchPlan
{
    /// <summary>What was asked.</summary>
    public required PlanRequest Request { get; init; }

    /// <summary>The ready stock the pot is filled with; null for water.</summary>
    public Larder.Ingredient? Wetting => Request.Recipe.Wetting is { } id ? Request.Larder.Get(id) : null;

    /// <summary>Everything that goes in, the liquid the pot is filled with included.</summary>
    public IEnumerable<Larder.Ingredient> Ingredients => Amounts.Select(line => line.Ingredient).Concat(Wetting is { } wetting ? [wetting] : []);

    /// <summary>What the pot is filled with, in a word or two: <c>water</c> or <c>brown stock</c>.</summary>
    public string Liquid => Wetting is { } wetting ? ScriptWriter.PlainName(wetting) : "water";

    /// <summary>What lies in the pot from the start, with its article: <c>the bones</c>, <c>the vegetables</c>, <c>the kelp</c>.</summary>
    public string Solids => SolidsText.Of(Amounts);

    /// <summary>Strained, defatted stock from one round, measured cold (20 C).</summary>
    public required Band<Volume> Yield { get; init; }

    /// <summary>Does it fit, and how high it stands.</summary>
    public required FitReport Fit { get; init; }

    /// <summary>What goes in, for one round.</summary>
    public required IReadOnlyList<AmountLine> Amounts { get; init; }

    /// <summary>Roasting, or null.</summary>
    public RoastPlan? Roast { get; init; }

    /// <summary>Blanching, or null.</summary>
    public BlanchPlan? Blanch { get; init; }

    /// <summary>Getting to the first simmer.</summary>
    public required HeatUp HeatUp { get; init; }

    /// <summary>The pot over time, with its checks.</summary>
    public required SimmerForecast Simmer { get; init; }

    /// <summary>Every litre in and out.</summary>
    public required WaterLedger Ledger { get; init; }

    /// <summary>
    /// What the drained solids of one round will weigh, with the liquor that clings to them and those lifted out before the end counted in (F.7 in
    /// docs/equations.md); nothing when none go in.
    /// </summary>
    public required Band<Mass> SpentSolids { get; init; }

    /// <summary>Boiling here, and whether the asked simmer can be reached.</summary>
    public required BoilingReport Boiling { get; init; }

    /// <summary>Every step of the whole wish, in order, with the moment it starts.</summary>
    public required Timeline Timeline { get; init; }

    /// <summary>Every step of one potful, begun when the whole is; the timeline itself when the wish is one potful.</summary>
    public Timeline? OnePotTimeline { get; init; }

    /// <summary>What is done about the night: as asked, or as the planner chose.</summary>
    public NightPlan Night { get; init; }

    /// <summary>Stock of all potfuls.</summary>
    public Band<Volume> Total => new(Yield.Low * Fit.Potfuls, Yield.Central * Fit.Potfuls, Yield.High * Fit.Potfuls);

    /// <summary>The plan of one of its potfuls: what a batch is started from.</summary>
    public BatchPlan ForOnePot() => Fit.Potfuls == 1
        ? this
        : this with
        {
            Timeline = OnePotTimeline ?? Timeline,
            Fit = Fit with { Verdict = FitVerdict.Fits, Potfuls = 1, AtOnce = 1 },
            Notices = [.. Notices.Where(notice => notice.Code is not NoticeCode.DoesNotFit)],
        };

    /// <summary>Things the cook should know first.</summary>
    public required IReadOnlyList<PlanNotice> Notices { get; init; }

    /// <summary>The numbers this plan leans on.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What one potful was settled at: with the request all that is needed to run its pot again.</summary>
    public required PotSize Size
    {
        get;
        init
        {
            field = value;
            workings = null;
        }
    }

    /// <summary>What it was worked out with; the pot is run again when that is asked of a plan that was kept.</summary>
    internal PlanWorkings Workings
    {
        get => workings ??= PlanWorkings.Of(this);
        init => workings = value;
    }

    private PlanWorkings? workings;
}

/// <summary>How urgent a notice is.</summary>
public enum NoticeLevel
{
    /// <summary>Good to know.</summary>
    Hint,

    /// <summary>Read before you start.</summary>
    Warning,
}

/// <summary>Something to know first. The page puts it into words; plain, so that it can be stored.</summary>
/// <param name="Level">How urgent.</param>
/// <param name="Code">What it is: one of <see cref="NoticeCode"/>.</param>
/// <param name="Part">Part of the request it belongs beside: one of <see cref="PlanPart"/>; null when it is about the whole plan.</param>
/// <param name="Figures">What its sentence needs, as <see cref="NoticeCode"/> says.</param>
public sealed record PlanNotice(NoticeLevel Level, string Code, string? Part, params IReadOnlyList<Figure> Figures)
{
    /// <summary>The sentence as an earlier version stored it; null for a text of the page.</summary>
    public string? Words { get; init; }
}
