using Stockwright.Larder;
using Stockwright.Numerics;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>One plan with its uncertain figures, ready to be run at any point of the sample; safe for several threads.</summary>
internal sealed class SampleModel
{
    private readonly PredictionCase made;
    private readonly Spread[] spreads;
    private readonly Solutes solutes;
    private readonly double hottestShift;

    public SampleModel(PredictionCase made)
    {
        this.made = made;
        solutes = made.Solutes;
        spreads = [.. UncertainInput.All.Select(input => input.Range(made))];
        PlanWorkings workings = made.Plan.Workings;
        hottestShift = Math.Max(0, workings.Environment.HottestReachableCelsius - workings.Central.FinalCelsius);
    }

    /// <summary>Runs one draw.</summary>
    /// <param name="deviations">Standard deviations from the middle, one for each of <see cref="UncertainInput.All"/>.</param>
    public Draw Run(IReadOnlyList<double> deviations)
    {
        DrawnFigures drawn = new();
        for (int i = 0; i < spreads.Length; i++)
        {
            drawn = UncertainInput.All[i].Set(drawn, new DrawnInput(spreads[i], deviations[i]));
        }

        return Run(drawn);
    }

    private Draw Run(DrawnFigures drawn)
    {
        PlanWorkings workings = made.Plan.Workings;
        double lidFactor = LossSpread.OfLid(workings.Environment, drawn.Lid, drawn.Film);
        double efficiency = Math.Min(drawn.Efficiency, 0.95);
        SimmerScript script = WithReleased(workings, drawn.ReleaseDeviations);
        SimmerOutcome outcome = workings.Belief is { } belief
            ? belief.Run(workings.Environment, script, drawn.LossDeviations, sampled: false)
            : SimmerRun.Execute(workings.Environment, script, drawn.Film, lidFactor, efficiency, sampled: false);
        double heatUp = workings.Central.HeatUpSeconds;
        double later = outcome.TotalSeconds - workings.Central.TotalSeconds;
        double fatFreed = Math.Min(solutes.FreedFat * drawn.FreedFat, FatCeiling());
        double yield = Measured(workings, drawn.DefatLoss) ?? (workings.Fitter.YieldKilograms(outcome, drawn.Clinging, drawn.StrainLoss, drawn.DefatLoss) + workings.Fitted.LetDownKilograms);
        double liquor = PredictionCase.Liquor(outcome) * made.LetDown(yield);
        double emulsified = Math.Min(drawn.BeatenInFat * liquor, 0.1 * fatFreed);
        double floating = fatFreed - emulsified;
        double cap = floating / FatPrediction.Density.KilogramsPerCubicMeter / made.ContainerSquareMetres;
        double fat = floating * DefatMethods.Share(made.Defat).Value.DecimalFractions;
        if (yield <= 0)
        {
            return new Draw(0, 0, 0, 0, cap, fat, later, default);
        }

        double control = workings.Environment.IsSealed ? 0 : Math.Min(drawn.SimmerKelvins, hottestShift);
        ExtractionFigures figures = new(
            drawn.CollagenActivation,
            drawn.BreakdownActivation,
            drawn.BreakdownPerHour,
            ExtractionRates.Acid(made.Settings.Ph),
            drawn.Collagen,
            drawn.Kitchen,
            drawn.SoftRate,
            drawn.HardRate,
            outcome.HeatUpSeconds / heatUp,
            outcome.FinalCelsius - workings.Central.FinalCelsius + control);
        ExtractionTotals totals = made.Engine.Run(figures);
        double gelatin = totals.Gelatin / 10 / liquor;
        double sugars = solutes.Sugars * drawn.SmallMatter;
        double others = ((solutes.Juices + solutes.Minerals) * drawn.OtherMatter * StockComposition.BrixPerSaltPercent) + sugars;
        double brix = (StockComposition.BrixPerGelatinPercent * gelatin) + (100 * others / liquor);
        double fatLeft = floating - fat + (emulsified * yield / liquor);
        Nutrients nutrients = new(
            (gelatin / 100) + (solutes.Juices * drawn.OtherMatter / liquor),
            fatLeft / yield,
            sugars / liquor,
            solutes.Sodium * drawn.SmallMatter / liquor);
        return new Draw(yield, gelatin, GelStrength.EffectivePercent(gelatin, totals.Bloom), brix, cap, fat, later, nutrients);
    }

    /// <summary>Stock as measured, less what goes with the fat, kg; null before it is measured.</summary>
    private double? Measured(PlanWorkings workings, double defatLoss) =>
        workings.Belief?.PortionedKilograms
        ?? ((workings.Belief?.StrainedKilograms * (made.Plan.Request.Recipe.ChillsAndDefats ? 1 - defatLoss : 1)) + workings.Fitted.LetDownKilograms);

    /// <summary>No more fat comes free than is in the pot.</summary>
    private double FatCeiling() => Math.Max(
        solutes.FreedFat, made.Items.Sum(item => item.RawKilograms * item.Ingredient.Fat.Value.DecimalFractions) - solutes.DrainedFat);

    /// <summary>The script with every solid giving as much liquor as its range allows at one deviation: pieces of one pot err together.</summary>
    private static SimmerScript WithReleased(PlanWorkings workings, double deviations)
    {
        Dictionary<SolidCharge, SolidCharge> other = new(ReferenceEqualityComparer.Instance);
        double lean = deviations / NormalQuantile.Ninety;
        foreach (LoadItem item in workings.Fitted.Load.Items)
        {
            if (item.Charge is { } charge)
            {
                other[charge] = charge with { Release = charge.Release.Leaning(lean) };
            }
        }

        SolidCharge Of(SolidCharge charge) => other.GetValueOrDefault(charge, charge);
        return workings.Script with
        {
            StartSolids = [.. workings.Script.StartSolids.Select(Of)],
            Stages = [.. workings.Script.Stages.Select(stage => stage with
            {
                Actions = [.. stage.Actions.Select(Acted)],
            })],
            // Nothing is looked at in a draw, and each look would be a stop of its own.
            Events = [.. workings.Script.Events.Where(one => one.Kind != PotEventKind.Look).Select(one => one.Action is { } action ? one with { Action = Acted(action) } : one)],
        };

        PotAction Acted(PotAction action) => action.Solids is { } solids ? action with { Solids = [.. solids.Select(Of)] } : action;
    }

    /// <summary>What one draw gave.</summary>
    internal readonly record struct Draw(
        double YieldKilograms,
        double GelatinPercent,
        double EffectivePercent,
        double Brix,
        double FatCapMetres,
        double FatKilograms,
        double LaterSeconds,
        Nutrients Nutrients);

    /// <summary>Nutrients of one draw, as shares of the stock's mass.</summary>
    internal readonly record struct Nutrients(double Protein, double Fat, double Sugars, double Sodium)
    {
        public NutritionFacts In(Mass mass) => new(
            UnitsNet.Energy.FromKilocalories(mass.Grams * ((4 * Protein) + (9 * Fat) + (4 * Sugars))), mass * Protein, mass * Fat, mass * Sugars, mass * Sodium);
    }
}
