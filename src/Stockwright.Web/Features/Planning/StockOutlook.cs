using Stockwright.Evidence;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Planning;

/// <summary>What the stock of a plan will be like, how sure that is, and the answers to what else was asked.</summary>
/// <param name="Central">The central figures, for one round.</param>
/// <param name="Sure">The same over many draws of what is uncertain: chances and bands.</param>
public sealed record StockOutlook(BatchPrediction Central, PredictionSample Sure)
{
    /// <summary>Body with the cuts to try; null when none are named or the pot does not hold what is taken out.</summary>
    public BodyPrediction? WithMore { get; init; }

    /// <summary>How to make it set; null when that is not asked.</summary>
    public SetAdvice? Set { get; init; }

    /// <summary>Sentences for the side of a field.</summary>
    public IReadOnlyList<InputProblem> Remarks { get; init; } = [];

    /// <summary>True when there is any gelatin to speak of.</summary>
    public bool HasGelatin => Central.Extraction.Gelatin > Mass.Zero;

    /// <summary>The most likely class and its chance.</summary>
    public BodyChance Likely => Sure.Body.MaxBy(entry => entry.Chance.DecimalFractions);

    /// <summary>Works the stock of a plan out; null when the pot boils dry, so that there is no stock.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="questions">What is asked beside it.</param>
    /// <param name="units">Measures of the reader, for the names of fields and for sentences.</param>
    /// <param name="cancellationToken">Ends it between two draws.</param>
    public static StockOutlook? Of(BatchPlan plan, PlanQuestions questions, UnitSystem units, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(questions);
        if (!(plan.Yield.Central > Volume.Zero))
        {
            return null;
        }

        PredictionSettings settings = questions.Settings(plan.Request);
        List<InputProblem> remarks = [];
        BodyPrediction? withMore = questions.More.Count > 0 && CanTakeOut(plan, questions.More, units, remarks)
            ? WhatIf.WithCuts(plan, questions.More, settings)
            : null;
        SetAdvice? set = questions.Wanted is { } wanted ? MakeItSet.Cheapest(plan, wanted, questions.Cuts, questions.Powder, settings) : null;
        remarks.AddRange((set?.Problems ?? []).Where(problem => FieldOf(problem) is not null).Select(problem => new InputProblem(FieldOf(problem)!, problem.Message)));
        return new StockOutlook(Predictor.Predict(plan, settings), PredictionSampler.Sample(plan, settings, cancellationToken: cancellationToken))
        {
            WithMore = withMore,
            Set = set,
            Remarks = remarks,
        };
    }

    /// <summary>Problems of the advice that belong to no field: out of reach, no room, nothing to choose from.</summary>
    internal IEnumerable<InputProblem> SetProblems => (Set?.Problems ?? []).Where(problem => FieldOf(problem) is null).Select(InputProblem.From);

    /// <summary>Fat each way would take off: the chosen way's range, in the ratio of the ways' shares.</summary>
    internal Band<Mass> RecoveredBy(DefatMethod method)
    {
        double ratio = DefatMethods.Share(method).Value / DefatMethods.Share(Central.Fat.Method).Value;
        return new(Sure.FatRecovered.Low * ratio, Central.Fat.RecoveredBy(method), Sure.FatRecovered.High * ratio);
    }

    /// <summary>The name the advice gives a row's price, turned into the form's.</summary>
    private static string? FieldOf(WordedProblem problem) => problem.Field switch
    {
        "powder-price" => problem.Field,
        _ when problem.Field.StartsWith("cuts-", StringComparison.Ordinal) => RowFields.Set + problem.Field["cuts".Length..],
        _ => null,
    };

    private static bool CanTakeOut(BatchPlan plan, IReadOnlyList<CutChange> changes, UnitSystem units, List<InputProblem> remarks)
    {
        bool can = true;
        Dictionary<string, double> left = plan.Amounts.GroupBy(line => line.Ingredient.Id, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Sum(line => line.Mass.Kilograms), StringComparer.Ordinal);
        for (int row = 0; row < changes.Count; row++)
        {
            CutChange change = changes[row];
            double there = left.GetValueOrDefault(change.IngredientId);
            left[change.IngredientId] = there + change.Mass.Kilograms;
            if (there + change.Mass.Kilograms < 0)
            {
                remarks.Add(new InputProblem(
                    RowFields.MassName(RowFields.More, row, units),
                    there > 0
                        ? $"There is only {KitchenFormat.Text(Mass.FromKilograms(there), units)} of it in the pot to take out."
                        : "There is none of it in the pot to take out."));
                can = false;
            }
        }

        return can;
    }
}
