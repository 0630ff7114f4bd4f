using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>More or less of a cut in the pot.</summary>
/// <param name="IngredientId">Stable name of the ingredient.</param>
/// <param name="Mass">Raw mass added; below zero to take out.</param>
public sealed record CutChange(string IngredientId, Mass Mass);

/// <summary>A plan made ready for the equations: the cuts, the history, the liquor.</summary>
internal sealed class PredictionCase
{
    /// <summary>No plan is for less; only a batch that went wrong has less left.</summary>
    private const double LeastKilograms = 0.01;

    private readonly TimeSpan strainedAt;

    private PredictionCase(BatchPlan plan, PredictionSettings settings, IReadOnlyList<PotItem> items, TemperatureHistory history, TimeSpan strainedAt)
    {
        Plan = plan;
        Settings = settings;
        Items = items;
        this.strainedAt = strainedAt;
        Cuts = [.. items.Where(item => HasCollagen(item.Ingredient)).Select(Cut)];
        Engine = new ExtractionEngine(Cuts, history, plan.HeatUp.Time.Central.TotalSeconds, items.Select(item => item.JoinsSeconds), plan.Request.Assumptions);
    }

    public BatchPlan Plan { get; }

    public PredictionSettings Settings { get; }

    /// <summary>How the cuts give up what they hold, as the plan has it.</summary>
    public CutTable CutTable => Plan.Request.Cuts;

    /// <summary>The figures the plan was made with.</summary>
    public SimmerAssumptions Assumptions => Plan.Request.Assumptions;

    public IReadOnlyList<PotItem> Items { get; }

    public IReadOnlyList<CutInPot> Cuts { get; }

    public ExtractionEngine Engine { get; }

    public ExtractionFigures Central => ExtractionFigures.Central(Settings.Ph, Settings.KitchenFactor.Value, Plan.Request.Assumptions);

    /// <summary>All liquor in the pot when the heat goes off, and what ran over, kg: what the gelatin is dissolved in.</summary>
    public double LiquorKilograms => Liquor(Plan.Workings.Central) * LetDown(YieldKilograms);

    /// <summary>Strained, defatted stock, kg; at least a spoonful.</summary>
    public double YieldKilograms => Math.Max(LeastKilograms, Plan.Yield.Central.CubicMeters * SimmerForecaster.ColdDensity);

    /// <summary>All liquor of a run, kg; what ran over took its share of everything dissolved with it. A pot that boiled dry holds a spoonful of glaze.</summary>
    /// <summary>How many times its volume the strained stock becomes by the water it is let down with.</summary>
    public double LetDown(double yieldKilograms)
    {
        double water = Plan.Workings.Fitted.LetDownKilograms;
        return water > 0 && yieldKilograms > water ? yieldKilograms / (yieldKilograms - water) : 1;
    }

    public static double Liquor(SimmerOutcome outcome) => Math.Max(LeastKilograms, outcome.LiquidLeftKilograms + outcome.SpiltKilograms);

    public DefatMethod Defat => Settings.Defat ?? (Plan.Request.Recipe.ChillsAndDefats ? DefatMethod.Chill : DefatMethod.Ladle);

    public double ContainerSquareMetres
    {
        get
        {
            double diameter = ContainerDiameter.Meters;
            return Math.PI / 4 * diameter * diameter;
        }
    }

    public Length ContainerDiameter => Settings.ContainerDiameter ?? Length.FromMeters(2 * Plan.Request.Pot.RadiusAtMetres(Plan.Request.Pot.InnerHeight.Meters / 2));

    public Solutes Solutes => Solutes.Of(Items, CutTable, Engine, strainedAt.TotalSeconds);

    /// <summary>What one item gives beside gelatin.</summary>
    public Solutes SolutesOf(PotItem item) => Solutes.Of(item, CutTable, Engine, strainedAt.TotalSeconds);

    /// <summary>True when it is one of <see cref="Cuts"/>.</summary>
    public bool IsCut(PotItem item) => HasCollagen(item.Ingredient);

    public static PredictionCase Of(BatchPlan plan, PredictionSettings settings, IReadOnlyList<CutChange>? changes = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        settings.Demand();
        return new PredictionCase(plan, settings, Changed(plan, changes ?? []), PlanHistory.Of(plan, settings.CoolingTo60), plan.Simmer.Length);
    }

    /// <summary>The same load over another history.</summary>
    public PredictionCase Over(TemperatureHistory history, TimeSpan strained) => new(Plan, Settings, [.. Items.Select(static item => item with { WeakHours = null })], history, strained);

    /// <summary>Spread of a figure over the cuts, low and high over the central value, weighted by collagen.</summary>
    public (double Low, double High) Spread(Func<CutInPot, Ingredient, (double Low, double Value, double High)> figure)
    {
        double low = 0;
        double value = 0;
        double high = 0;
        foreach (CutInPot cut in Cuts)
        {
            (double Low, double Value, double High) stated = figure(cut, Plan.Request.Larder.Get(cut.Id));
            if (stated.Value > 0)
            {
                double weight = cut.Mass.Kilograms * cut.Collagen.DecimalFractions;
                low += weight * stated.Low / stated.Value;
                value += weight;
                high += weight * stated.High / stated.Value;
            }
        }

        return value > 0 ? (low / value, high / value) : (1, 1);
    }

    public Stated<Ratio> CollagenOf(Ingredient ingredient) => CutTable.CollagenOf(ingredient);

    private bool HasCollagen(Ingredient ingredient) =>
        CutTable.ClassOf(ingredient) is not null && CollagenOf(ingredient).Value > Ratio.Zero;

    private CutInPot Cut(PotItem item) => new(
        item.Ingredient.Id,
        CutTable.ClassOf(item.Ingredient)!,
        Mass.FromKilograms(item.RawKilograms),
        CollagenOf(item.Ingredient).Value,
        TimeSpan.FromSeconds(item.JoinsSeconds),
        strainedAt,
        Settings.PieceOf(item.Ingredient.Id));

    private static List<PotItem> Changed(BatchPlan plan, IReadOnlyList<CutChange> changes)
    {
        List<PotItem> items = [.. PotItem.Of(plan)];
        foreach (CutChange change in changes)
        {
            double kilograms = change.Mass.Kilograms;
            for (int i = 0; i < items.Count && kilograms < 0; i++)
            {
                if (string.Equals(items[i].Ingredient.Id, change.IngredientId, StringComparison.Ordinal))
                {
                    double taken = Math.Min(-kilograms, items[i].RawKilograms);
                    items[i] = items[i] with
                    {
                        RawKilograms = items[i].RawKilograms - taken,
                        FatDrainedKilograms = items[i].RawKilograms > 0 ? items[i].FatDrainedKilograms * (1 - (taken / items[i].RawKilograms)) : 0,
                    };
                    kilograms += taken;
                }
            }

            if (kilograms < -1e-9)
            {
                throw new ArgumentException($"There is not that much {change.IngredientId} in the pot to take out.", nameof(changes));
            }

            if (kilograms > 0)
            {
                items.Add(new PotItem(plan.Request.Larder.Get(change.IngredientId), kilograms, 0, Blanched: false, 0));
            }
        }

        return items;
    }
}
