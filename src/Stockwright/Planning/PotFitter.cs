using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>A load with the water that goes over it, and what one run of the pot gave.</summary>
/// <param name="Litres">Size of the load.</param>
/// <param name="Load">What goes in.</param>
/// <param name="WaterKilograms">Water to the line.</param>
/// <param name="LineMetres">The fill line.</param>
/// <param name="Outcome">The central run.</param>
/// <param name="CoverDecides">True when covering the solids set the water.</param>
internal sealed record FittedLoad(double Litres, BatchLoad Load, double WaterKilograms, double LineMetres, SimmerOutcome Outcome, bool CoverDecides)
{
    /// <summary>The level top-ups bring it back to; under the fill line where covering the solids takes more water than the yield needs.</summary>
    public double HeldMetres { get; init; } = LineMetres;

    /// <summary>Water stirred in after straining, kg.</summary>
    public double LetDownKilograms { get; init; }
}

/// <summary>Finds the water for a size of batch, and the largest batch for the pot (equations F.1 to F.6 in docs/equations.md).</summary>
internal sealed class PotFitter(PlanRequest request, ScriptWriter writer, SimmerForecaster forecaster, BatchLoad perLitre)
{
    private const double Closeness = 2e-4;
    private const double FillCloseness = 1e-3;
    private const int MostTries = 30;
    private const double LeastLitres = 0.02;
    private const double LeastWaterKilograms = 0.05;

    private readonly double safeCubicMetres = request.Pot.VolumeAtMetres(SafeMaximum(request.Pot).Level.Meters);
    private readonly double limitCubicMetres = request.Pot.VolumeAtMetres(Limit(request).Level.Meters);
    private TopUpRule rule = request.TopUp;

    /// <summary>Liquor that clings to drained bones in this kitchen, of their weight.</summary>
    public Stated<Ratio> Clinging { get; } = ClingingLiquor.For(request.Site, request.Assumptions);

    /// <summary>Nights the pot is put away in; they change what evaporates, and so water, level and yield.</summary>
    public IReadOnlyList<NightWindow> Nights { get; set; } = [];

    /// <summary>Safe maximum level of a pot and the rule behind it (F.1; common practice, no source).</summary>
    public static (Length Level, FillLimit Limit) SafeMaximum(Pot pot)
    {
        if (VesselFill.Maximum(pot) is { } own)
        {
            return own;
        }

        Length freeboard = Length.FromCentimeters(5);
        Length fifth = pot.InnerHeight * 0.2;
        return fifth < freeboard ? (pot.InnerHeight - fifth, FillLimit.FifthOfHeight) : (pot.InnerHeight - freeboard, FillLimit.FiveCentimetresFreeboard);
    }

    /// <summary>How high this batch may stand: as the cook says, and never above the safe maximum. Over bones at hand the cook's level is the fill line itself.</summary>
    public static (Length Level, FillLimit Limit) Limit(PlanRequest request)
    {
        (Length Level, FillLimit Limit) safe = SafeMaximum(request.Pot);
        return request.Goal is not PlanGoal.UseBones && request.FillTo?.LevelIn(request.Pot) is { } asked && asked < safe.Level ? (asked, FillLimit.AsAsked) : safe;
    }

    /// <summary>Water for a wanted size, whether or not it fits (F.3, F.5).</summary>
    public FittedLoad ForLitres(double litres) => ForLitres(litres, litres * request.Recipe.WaterLitresPerLitre.Value);

    /// <summary>
    /// The largest batch whose highest level stays at the limit (F.2); its litres are zero when even a spoonful stands too high. Its solids are those
    /// of a pot that is topped up to the line, so that what boils away never shrinks them; what is kept in it then is as asked.
    /// </summary>
    public FittedLoad Fill()
    {
        rule = request.Recipe.BoilsDown ? request.TopUp : TopUpRule.KeepToLine;
        FittedLoad filled = FillHeld();
        bool differs = rule != request.TopUp;
        rule = request.TopUp;
        return differs && filled.Litres > 0 ? Run(filled.Litres, filled.WaterKilograms) : filled;
    }

    private FittedLoad FillHeld()
    {
        double Excess(FittedLoad fitted) => ExcessCubicMetres(fitted);
        double safeVolume = limitCubicMetres;
        double guess = safeVolume / (perLitre.Items.Sum(item => item.Charge?.VolumeCubicMetres ?? 0) + 1.5e-3);
        double least = Math.Min(LeastLitres, guess / 10);
        FittedLoad low = ForLitres(least);
        if (!(Excess(low) <= 0))
        {
            return low with { Litres = 0 };
        }

        // The volume under the peak grows almost straight with the size, so the secant through two sizes lands close.
        FittedLoad high = ForLitres(guess);
        for (int i = 0; i < MostTries; i++)
        {
            FittedLoad best = Excess(high) <= 0 ? high : low;
            if (Excess(best) > -FillCloseness * safeVolume)
            {
                return best;
            }

            bool bracketed = Excess(high) > 0;
            double gap = high.Litres - low.Litres;
            double secant = low.Litres + (gap * (Excess(low) + (FillCloseness / 2 * safeVolume)) / (Excess(low) - Excess(high)));
            double next = bracketed
                ? i % 3 == 2 ? low.Litres + (gap / 2) : Math.Clamp(secant, low.Litres + (0.02 * gap), high.Litres - (0.02 * gap))
                : Math.Clamp(secant, high.Litres * 1.001, high.Litres * 4);
            FittedLoad tried = ForLitres(next, best.WaterKilograms * next / best.Litres);
            if (bracketed && Excess(tried) > 0)
            {
                high = tried;
            }
            else
            {
                (low, high) = bracketed ? (tried, high) : (high, tried);
            }
        }

        return Excess(high) <= 0 ? high : low;
    }

    /// <summary>True when a load never stands over the limit, to what a pot is filled to by eye.</summary>
    public bool Fits(FittedLoad fitted) => ExcessCubicMetres(fitted) <= 0.004 * limitCubicMetres;

    /// <summary>True when a load stands under the safe maximum, whatever level the cook asked for.</summary>
    public bool IsUnderSafeMaximum(FittedLoad fitted) => fitted.Outcome.PeakMetres <= SafeMaximum(request.Pot).Level.Meters * 1.005;

    /// <summary>A load with water up to a given line, whatever that yields.</summary>
    public FittedLoad ToLine(double litres, Length line)
    {
        BatchLoad load = perLitre.Scaled(litres);
        double liquid = Contents(load).LiquidForLevel(line.Meters, request.Site.TapWater.DegreesCelsius, default);
        return RunAt(litres, Math.Max(LeastWaterKilograms, liquid - load.Items.Sum(item => item.LiquidKilograms)));
    }

    /// <summary>
    /// A load with as much water as the limit leaves room for, hot and with everything in; null when its solids would stand out of it.
    /// </summary>
    public FittedLoad? ToLimit(double litres)
    {
        FittedLoad fitted = ToLine(litres, Length.FromMeters(request.Pot.LevelAtCubicMetres(limitCubicMetres)));
        for (int i = 0; i < 6 && Math.Abs(ExcessCubicMetres(fitted)) > FillCloseness * limitCubicMetres; i++)
        {
            // Water and level go together almost straight: a litre less stands a litre lower.
            double water = fitted.WaterKilograms - (ExcessCubicMetres(fitted) * SimmerForecaster.ColdDensity);
            if (water <= LeastWaterKilograms)
            {
                return null;
            }

            fitted = RunAt(litres, water);
        }

        return ExcessCubicMetres(fitted) <= 0.005 * limitCubicMetres && fitted.LineMetres >= fitted.Outcome.StartHeapMetres ? fitted : null;
    }

    /// <summary>How much more than it may the pot holds at its highest, or when filled where the cook said to which line, m3.</summary>
    private double ExcessCubicMetres(FittedLoad fitted)
    {
        double peak = request.Pot.VolumeAtMetres(fitted.Outcome.PeakMetres) - safeCubicMetres;
        return limitCubicMetres < safeCubicMetres ? Math.Max(peak, request.Pot.VolumeAtMetres(fitted.LineMetres) - limitCubicMetres) : peak;
    }

    /// <summary>Strained, defatted stock of a run, kg.</summary>
    public double YieldKilograms(SimmerOutcome outcome) => YieldKilograms(
        outcome,
        Clinging.Value.DecimalFractions,
        request.Assumptions.StrainLoss.Value.DecimalFractions,
        request.Assumptions.DefatLoss.Value.DecimalFractions);

    /// <summary>Strained, defatted stock of a run with other figures for the losses, kg (F.5).</summary>
    public double YieldKilograms(SimmerOutcome outcome, double retained, double strainLoss, double defatLoss)
    {
        double strained = Math.Max(0, outcome.LiquidLeftKilograms - RetainedKilograms(outcome, retained)) * (1 - strainLoss);
        return request.Recipe.ChillsAndDefats ? strained * (1 - defatLoss) : strained;
    }

    /// <summary>Liquor that clings to the spent solids, kg, when a kilogram of drained bones holds so much; what clings to the rest moves with it (F.4).</summary>
    public double RetainedKilograms(SimmerOutcome outcome, double retained) =>
        outcome.ClingingKilograms * retained / Clinging.Value.DecimalFractions;

    /// <summary>Cold water to blanch solids under, and the time to bring it to the boil, kg and s.</summary>
    public (double WaterKilograms, double Seconds) BlanchWater(IReadOnlyList<SolidCharge> solids)
    {
        double tap = request.Site.TapWater.DegreesCelsius;
        PotContents contents = new(request.Pot);
        contents.Add(solids, default);
        double level = contents.HeapHeight(default) + request.Assumptions.CoverDepthMetres;
        double water = contents.LiquidForLevel(level, tap, default);
        SimmerScript script = new(
            solids, water, tap, [new StageScript(forecaster.BoilingCelsius, 1, Climbs: false, LiftsOut: false, [])], TopUpRule.None, tap, level, ScriptWriter.OvenHoldCelsius, 0);
        return (water, BlanchPot.Forecaster(request, forecaster).RunCentral(script).HeatUpSeconds);
    }

    /// <summary>
    /// Finds the water whose run yields the litres wanted. The yield never falls as the water rises, but where top-ups keep the pot covered
    /// it may not answer at all for a while: the step then doubles until it does, and the gap is halved from there.
    /// </summary>
    private FittedLoad ForLitres(double litres, double guessKilograms)
    {
        double wanted = litres * SimmerForecaster.ColdDensity / 1000;
        double keeps = (1 - request.Assumptions.StrainLoss.Value.DecimalFractions)
            * (request.Recipe.ChillsAndDefats ? 1 - request.Assumptions.DefatLoss.Value.DecimalFractions : 1);
        double asked = guessKilograms;
        FittedLoad fitted = Run(litres, asked);
        double tooLittle = 0;
        double tooMuch = double.PositiveInfinity;
        double lastMissing = 0;
        double stride = 1;
        double left = request.Recipe.Stages.Aggregate(1.0, (share, stage) => share * (stage.ReducesTo?.Value.DecimalFractions ?? 1));
        for (int i = 0; i < MostTries; i++)
        {
            double missing = (wanted - YieldKilograms(fitted.Outcome)) / keeps;

            // Under the cover only the level it is brought back to moves; when even that does not, covering the solids decides.
            bool idle = rule != TopUpRule.KeepToLine || (i > 0 && Math.Abs(missing - lastMissing) <= 1e-6 * wanted);
            if (Math.Abs(missing) <= Closeness * wanted || (missing < 0 && fitted.CoverDecides && idle))
            {
                break;
            }

            bool stuck = missing * lastMissing > 0 && Math.Abs(missing) > 0.5 * Math.Abs(lastMissing);
            stride = stuck ? stride * 2 : 1;
            lastMissing = missing;
            if (missing > 0)
            {
                tooLittle = asked;
            }
            else
            {
                tooMuch = asked;
            }

            if (tooMuch - tooLittle < GapKilograms(fitted.WaterKilograms))
            {
                // A top-up too small to pour makes the yield jump; nothing lies between.
                break;
            }

            double next = asked + (stride * missing / left);
            if (next <= tooLittle || next >= tooMuch)
            {
                next = (tooLittle + tooMuch) / 2;
            }

            asked = next;
            fitted = Run(litres, asked);
        }

        return fitted with { CoverDecides = fitted.CoverDecides && YieldKilograms(fitted.Outcome) > wanted * (1 + Closeness) };
    }

    private static double GapKilograms(double waterKilograms) => Math.Max(1e-4 * waterKilograms, 1e-4);

    /// <summary>Runs a size with water for its yield, or as much as covers the solids; then the level falls to where the yield wants it.</summary>
    private FittedLoad Run(double litres, double waterKilograms)
    {
        BatchLoad load = perLitre.Scaled(litres);
        double cover = CoverKilograms(load);
        double water = Math.Max(waterKilograms, cover);
        double line = LineMetres(load, water);
        double held = rule == TopUpRule.KeepToLine && waterKilograms < cover ? LineMetres(load, Math.Max(0, waterKilograms)) : line;
        SimmerOutcome outcome = forecaster.RunCentral(writer.Write(load, water, held, Nights, rule));
        return new FittedLoad(litres, load, water, line, outcome, water <= cover * (1 + (2 * Closeness))) { HeldMetres = held };
    }

    /// <summary>Runs a size with just so much water, as finely as it is drawn: here the level is the limit, and no yield is looked for.</summary>
    private FittedLoad RunAt(double litres, double waterKilograms)
    {
        BatchLoad load = perLitre.Scaled(litres);
        double line = LineMetres(load, waterKilograms);
        return new FittedLoad(litres, load, waterKilograms, line, forecaster.RunDrawn(writer.Write(load, waterKilograms, line, Nights, rule)), CoverDecides: false);
    }

    /// <summary>Least water: the heap lies under the liquid by the usual cover (F.3).</summary>
    private double CoverKilograms(BatchLoad load)
    {
        PotContents contents = Contents(load);
        if (contents.SolidsLoaded <= 0)
        {
            return LeastWaterKilograms;
        }

        double level = contents.HeapHeight(default) + request.Assumptions.CoverDepthMetres;
        return Math.Max(LeastWaterKilograms, contents.LiquidForLevel(level, request.Site.TapWater.DegreesCelsius, default) - load.Items.Sum(item => item.LiquidKilograms));
    }

    private double LineMetres(BatchLoad load, double waterKilograms) =>
        Contents(load).Level(waterKilograms + load.Items.Sum(item => item.LiquidKilograms), request.Site.TapWater.DegreesCelsius, default);

    private PotContents Contents(BatchLoad load)
    {
        PotContents contents = new(request.Pot);
        contents.Add(load.StartSolids(), default);
        return contents;
    }
}
