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
internal sealed record FittedLoad(double Litres, BatchLoad Load, double WaterKilograms, double LineMetres, SimmerOutcome Outcome, bool CoverDecides);

/// <summary>Finds the water for a size of batch, and the largest batch for the pot (equations F.1 to F.6 in docs/equations.md).</summary>
internal sealed class PotFitter(PlanRequest request, ScriptWriter writer, SimmerForecaster forecaster, BatchLoad perLitre)
{
    private const double Closeness = 2e-4;
    private const int MostTries = 14;

    /// <summary>Safe maximum level of a pot and the rule behind it (common practice, no source).</summary>
    public static (Length Level, FillLimit Limit) SafeMaximum(Pot pot)
    {
        if (pot.Kind == PotKind.PressureCooker)
        {
            return (pot.LevelAt(pot.BrimVolume * (2.0 / 3)), FillLimit.TwoThirds);
        }

        Length eighty = pot.LevelAt(pot.BrimVolume * 0.8);
        Length freeboard = pot.InnerHeight - Length.FromCentimeters(5);
        return freeboard < eighty ? (freeboard, FillLimit.FiveCentimetresFreeboard) : (eighty, FillLimit.EightyPercentOfBrim);
    }

    /// <summary>Water for a wanted size, whether or not it fits.</summary>
    public FittedLoad ForLitres(double litres)
    {
        double water = litres * request.Recipe.WaterLitresPerLitre.Value;
        FittedLoad fitted = Run(litres, water);
        for (int i = 0; i < MostTries; i++)
        {
            double next = NextWater(fitted);
            double change = Math.Abs(next - fitted.WaterKilograms);
            if (change <= Closeness * fitted.WaterKilograms)
            {
                break;
            }

            fitted = Run(litres, next);
        }

        return fitted;
    }

    /// <summary>The largest batch whose highest level stays at the safe maximum.</summary>
    public FittedLoad Fill()
    {
        double safeLevel = SafeMaximum(request.Pot).Level.Meters;
        double safeVolume = request.Pot.VolumeAtMetres(safeLevel);
        double litres = safeVolume * 1000 / (perLitre.Items.Sum(item => item.Charge?.VolumeCubicMetres ?? 0) * 1000 + 1.5);
        FittedLoad fitted = Run(litres, litres * request.Recipe.WaterLitresPerLitre.Value);
        for (int i = 0; i < MostTries; i++)
        {
            double scale = safeVolume / request.Pot.VolumeAtMetres(fitted.Outcome.PeakMetres);
            double water = NextWater(fitted) * scale;
            bool close = Math.Abs(scale - 1) < Closeness && Math.Abs(water - fitted.WaterKilograms) < Closeness * water;
            if (close)
            {
                break;
            }

            fitted = Run(fitted.Litres * scale, water);
        }

        return fitted;
    }

    /// <summary>Strained, defatted stock of a run, kg.</summary>
    public double YieldKilograms(SimmerOutcome outcome) => YieldKilograms(
        outcome,
        LiquorExchange.Retained.Value.DecimalFractions,
        LiquorExchange.StrainLoss.Value.DecimalFractions,
        LiquorExchange.DefatLoss.Value.DecimalFractions);

    /// <summary>Strained, defatted stock of a run with other figures for the losses, kg (F.5).</summary>
    public double YieldKilograms(SimmerOutcome outcome, double retained, double strainLoss, double defatLoss)
    {
        double strained = Math.Max(0, outcome.LiquidLeftKilograms - RetainedKilograms(outcome, retained)) * (1 - strainLoss);
        return request.Recipe.ChillsAndDefats ? strained * (1 - defatLoss) : strained;
    }

    /// <summary>Liquor that stays in the spent solids, kg: they hold a share of their wet mass (F.4).</summary>
    public static double RetainedKilograms(SimmerOutcome outcome, double retained) =>
        outcome.SpentSolidsKilograms * retained / (1 - retained);

    /// <summary>Cold water to blanch solids under, and the time to bring it to the boil, kg and s.</summary>
    public (double WaterKilograms, double Seconds) BlanchWater(IReadOnlyList<SolidCharge> solids)
    {
        double tap = request.Site.TapWater.DegreesCelsius;
        PotContents contents = new(request.Pot);
        contents.Add(solids, 0);
        double level = contents.HeapHeight(0) + LiquorExchange.CoverDepth.Value.Meters;
        double water = contents.LiquidForLevel(level, tap, 0);
        SimmerScript script = new(
            solids, water, tap, [new StageScript(1000, 1, Climbs: false, LiftsOut: false, [])], TopUpRule.None, tap, level, ScriptWriter.OvenHoldCelsius, 0, 0);
        return (water, forecaster.RunCentral(script).HeatUpSeconds);
    }

    private double NextWater(FittedLoad fitted)
    {
        double keeps = (1 - LiquorExchange.StrainLoss.Value.DecimalFractions)
            * (request.Recipe.ChillsAndDefats ? 1 - LiquorExchange.DefatLoss.Value.DecimalFractions : 1);
        double missing = ((fitted.Litres * SimmerForecaster.ColdDensity / 1000) - YieldKilograms(fitted.Outcome)) / keeps;
        return Math.Max(fitted.WaterKilograms + missing, CoverKilograms(fitted.Load));
    }

    private FittedLoad Run(double litres, double waterKilograms)
    {
        BatchLoad load = perLitre.Scaled(litres);
        double cover = CoverKilograms(load);
        double water = Math.Max(waterKilograms, cover);
        double line = LineMetres(load, water);
        SimmerOutcome outcome = forecaster.RunCentral(writer.Write(load, water, line));
        return new FittedLoad(litres, load, water, line, outcome, water <= cover * (1 + (2 * Closeness)));
    }

    /// <summary>Least water: the heap lies under the liquid by the usual cover (F.3).</summary>
    private double CoverKilograms(BatchLoad load)
    {
        PotContents contents = Contents(load);
        if (contents.SolidsLoaded <= 0)
        {
            return 0.05;
        }

        double level = contents.HeapHeight(0) + LiquorExchange.CoverDepth.Value.Meters;
        return Math.Max(0.05, contents.LiquidForLevel(level, request.Site.TapWater.DegreesCelsius, 0) - load.Items.Sum(item => item.LiquidKilograms));
    }

    private double LineMetres(BatchLoad load, double waterKilograms) =>
        Contents(load).Level(waterKilograms + load.Items.Sum(item => item.LiquidKilograms), request.Site.TapWater.DegreesCelsius, 0);

    private PotContents Contents(BatchLoad load)
    {
        PotContents contents = new(request.Pot);
        contents.Add(load.StartSolids(), 0);
        return contents;
    }
}
