using Stockwright.Larder;
using Stockwright.Simmering;

namespace Stockwright.Predicting;

/// <summary>The figures of one run that uncertainty moves; all others come with the cuts.</summary>
/// <param name="CollagenActivation">J/mol.</param>
/// <param name="BreakdownActivation">J/mol.</param>
/// <param name="BreakdownPerHour">At 98 °C.</param>
/// <param name="Acid">Factor of B.3.</param>
/// <param name="CollagenFactor">Times the collagen of every cut.</param>
/// <param name="KitchenFactor">Times that of every cut but gelatin itself: what this kitchen gets out of bones.</param>
/// <param name="SoftFactor">Times every soft rate.</param>
/// <param name="HardFactor">Times every hard rate.</param>
/// <param name="HeatUpStretch">Times the length of the heat-up.</param>
/// <param name="SimmerShiftKelvins">Added to every temperature after the heat-up.</param>
internal readonly record struct ExtractionFigures(
    double CollagenActivation,
    double BreakdownActivation,
    double BreakdownPerHour,
    double Acid,
    double CollagenFactor,
    double KitchenFactor,
    double SoftFactor,
    double HardFactor,
    double HeatUpStretch = 1,
    double SimmerShiftKelvins = 0)
{
    /// <summary>The central figures.</summary>
    public static ExtractionFigures Central(double ph, double kitchenFactor, SimmerAssumptions assumptions) => new(
        assumptions.CollagenActivation.Value,
        assumptions.BreakdownActivation.Value,
        assumptions.BreakdownPerHour.Value,
        ExtractionRates.Acid(ph),
        1,
        kitchenFactor,
        1,
        1);
}

/// <summary>Gelatin in grams, gelatin times Bloom as it is and as it was fresh, melting shift times gelatin.</summary>
internal readonly record struct ExtractionTotals(double Gelatin, double BloomNow, double BloomFresh, double Shift)
{
    public double Bloom => Gelatin > 0 ? BloomNow / Gelatin : 0;

    public double Intactness => BloomFresh > 0 ? BloomNow / BloomFresh : 1;

    public double MeltingShift => Gelatin > 0 ? Shift / Gelatin : 0;

    public static ExtractionTotals operator +(ExtractionTotals one, ExtractionTotals other) => new(
        one.Gelatin + other.Gelatin, one.BloomNow + other.BloomNow, one.BloomFresh + other.BloomFresh, one.Shift + other.Shift);
}

/// <summary>
/// Runs the cuts through a history (equations B.1 to B.6). Within a stretch of one temperature both pools and the strength
/// of what has dissolved have closed forms, so the only approximation is the cutting-up of slopes.
/// </summary>
internal sealed class ExtractionEngine
{
    private readonly HeatSegments segments;
    private readonly CutData[] cuts;
    private readonly int heatUpCount;
    private readonly double collagenActivation;

    /// <summary>Prepares to run.</summary>
    /// <param name="cuts">The cuts.</param>
    /// <param name="history">What the liquor goes through.</param>
    /// <param name="heatUpSeconds">How much of the history is heat-up; only a sample moves it.</param>
    /// <param name="otherMoments">When other things go in, for <see cref="WeakHours"/>; seconds.</param>
    /// <param name="assumptions">The figures; null for the standard ones.</param>
    public ExtractionEngine(IReadOnlyList<CutInPot> cuts, TemperatureHistory history, double heatUpSeconds = 0, IEnumerable<double>? otherMoments = null, SimmerAssumptions? assumptions = null)
    {
        collagenActivation = (assumptions ?? SimmerAssumptions.Standard).CollagenActivation.Value;
        double end = history.End.TotalSeconds;
        IEnumerable<double> moments = cuts.SelectMany(cut => new[] { cut.JoinsAt.TotalSeconds, cut.LeavesAt?.TotalSeconds ?? end });
        segments = new HeatSegments(history, [.. moments, heatUpSeconds, .. otherMoments ?? []]);
        heatUpCount = segments.IndexAt(heatUpSeconds);
        this.cuts = [.. cuts.Select(Data)];
    }

    /// <summary>Runs every cut; the results stand in the order of the cuts.</summary>
    /// <param name="figures">The figures of this run.</param>
    /// <param name="results">Filled; as long as the number of cuts.</param>
    public void Run(in ExtractionFigures figures, Span<ExtractionTotals> results)
    {
        int count = segments.Count;
        double[] progress = new double[count];
        double[] breakdown = new double[count];
        double[] kept = new double[count];
        for (int i = 0; i < count; i++)
        {
            HeatSegments.Segment segment = segments[i];
            double celsius = segment.Celsius + (i < heatUpCount ? 0 : figures.SimmerShiftKelvins);
            double hours = segment.Hours * (i < heatUpCount ? figures.HeatUpStretch : 1);
            progress[i] = hours * figures.Acid * ExtractionRates.Arrhenius(celsius, figures.CollagenActivation);
            breakdown[i] = hours * figures.BreakdownPerHour * ExtractionRates.Arrhenius(celsius, figures.BreakdownActivation);
            kept[i] = Math.Exp(-breakdown[i]);
        }

        for (int i = 0; i < cuts.Length; i++)
        {
            results[i] = Run(cuts[i], figures, progress, breakdown, kept);
        }
    }

    public ExtractionTotals Run(in ExtractionFigures figures)
    {
        Span<ExtractionTotals> results = new ExtractionTotals[cuts.Length];
        Run(figures, results);
        ExtractionTotals sum = default;
        foreach (ExtractionTotals result in results)
        {
            sum += result;
        }

        return sum;
    }

    /// <summary>Hours at 98 °C, for something with a share of the collagen's activation energy, between two moments (B.8).</summary>
    public double WeakHours(double fromSeconds, double toSeconds)
    {
        double sum = 0;
        int last = segments.IndexAt(toSeconds);
        for (int i = segments.IndexAt(fromSeconds); i < last; i++)
        {
            HeatSegments.Segment segment = segments[i];
            sum += segment.Hours * ExtractionRates.Arrhenius(segment.Celsius, ExtractionRates.WeakShare * collagenActivation);
        }

        return sum;
    }

    private ExtractionTotals Run(in CutData cut, in ExtractionFigures figures, double[] progress, double[] breakdown, double[] kept)
    {
        double collagen = cut.CollagenGrams * figures.CollagenFactor * (cut.IsGelatin ? 1 : figures.KitchenFactor);
        double soft = collagen * cut.SoftShare;
        double hard = collagen * (1 - cut.SoftShare);
        if (!(soft + hard > 0))
        {
            return default;
        }

        double softRate = cut.SoftPerHour * figures.SoftFactor;
        double hardRate = cut.HardPerHour * figures.HardFactor * cut.Piece;
        double gelatin = 0;
        double strength = 0;
        for (int i = cut.First; i < progress.Length; i++)
        {
            strength *= kept[i];
            if (i >= cut.Last || segments[i].Celsius <= cut.ThresholdCelsius)
            {
                continue;
            }

            gelatin += Dissolve(ref soft, softRate * progress[i], breakdown[i], kept[i], ref strength);
            gelatin += Dissolve(ref hard, hardRate * progress[i], breakdown[i], kept[i], ref strength);
        }

        return new ExtractionTotals(gelatin, strength * cut.Bloom, gelatin * cut.Bloom, gelatin * cut.Shift);
    }

    /// <summary>One pool over one stretch: what dissolves, and what of its strength is left at the end of the stretch (B.5).</summary>
    private static double Dissolve(ref double pool, double progress, double breakdown, double kept, ref double strength)
    {
        double stays = Math.Exp(-progress);

        // 1 - e^-x without losing digits near zero.
        double dissolved = pool * (progress < 1e-4 ? progress * (1 - (progress / 2 * (1 - (progress / 3)))) : 1 - stays);
        double gap = breakdown - progress;
        strength += pool * progress * (Math.Abs(gap) < 1e-7 ? kept : (stays - kept) / gap);
        pool *= stays;
        return dissolved;
    }

    private CutData Data(CutInPot cut)
    {
        double grams = cut.Mass.Grams;
        double share = cut.Collagen.DecimalFractions;
        if (!(grams >= 0) || !double.IsFinite(grams))
        {
            throw new ArgumentOutOfRangeException(nameof(cut), cut.Mass, "The mass of a cut must not be negative.");
        }

        if (!(share is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(cut), cut.Collagen, "The collagen of a cut lies between 0 and 100 % of its mass.");
        }

        double piece = (cut.PieceSize ?? cut.Cut.ReferencePiece).Meters;
        if (!(piece > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(cut), cut.PieceSize, "The size of the pieces must be above zero.");
        }

        return new CutData(
            grams * share,
            cut.Cut.SoftShare.Value.DecimalFractions,
            cut.Cut.SoftRate.Value.PerSecond * 3600,
            cut.Cut.HardRate.Value.PerSecond * 3600,
            ExtractionRates.Piece(piece, cut.Cut.ReferencePiece.Meters),
            cut.Cut.FreshBloom.Value.Grams,
            cut.Cut.ExtractsFrom.DegreesCelsius,
            cut.Cut.MeltingShift.Kelvins,
            cut.Cut.IsGelatin,
            segments.IndexAt(cut.JoinsAt.TotalSeconds),
            cut.LeavesAt is { } leaves ? segments.IndexAt(leaves.TotalSeconds) : segments.Count);
    }

    private readonly record struct CutData(
        double CollagenGrams,
        double SoftShare,
        double SoftPerHour,
        double HardPerHour,
        double Piece,
        double Bloom,
        double ThresholdCelsius,
        double Shift,
        bool IsGelatin,
        int First,
        int Last);
}
