using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;

namespace Stockwright.Predicting;

/// <summary>What the load gives to the liquor beside gelatin, in kilograms (equations B.8, B.18).</summary>
/// <param name="Juices">Nitrogenous matter.</param>
/// <param name="Minerals">Minerals, salt included.</param>
/// <param name="Sugars">Sugars.</param>
/// <param name="Sodium">Sodium, part of the minerals.</param>
/// <param name="FreedFat">Fat come free.</param>
/// <param name="DrainedFat">Fat left on the roasting tray.</param>
internal readonly record struct Solutes(double Juices, double Minerals, double Sugars, double Sodium, double FreedFat, double DrainedFat)
{
    /// <summary>Adds up a load over a history.</summary>
    public static Solutes Of(IReadOnlyList<PotItem> items, CutTable cuts, ExtractionEngine engine, double strainedSeconds)
    {
        double juices = 0;
        double minerals = 0;
        double sugars = 0;
        double sodium = 0;
        double freed = 0;
        double drained = 0;
        foreach (PotItem item in items)
        {
            Solutes one = Of(item, cuts, engine, strainedSeconds);
            juices += one.Juices;
            minerals += one.Minerals;
            sugars += one.Sugars;
            sodium += one.Sodium;
            freed += one.FreedFat;
            drained += one.DrainedFat;
        }

        return new Solutes(juices, minerals, sugars, sodium, freed, drained);
    }

    /// <summary>What one ingredient gives over a history.</summary>
    public static Solutes Of(PotItem item, CutTable cuts, ExtractionEngine engine, double strainedSeconds)
    {
        if (cuts.SolublesOf(item.Ingredient).Dissolves)
        {
            SolidGiving whole = SolidGiving.Whole(item.Ingredient, cuts, item.RawKilograms);
            return new Solutes(whole.Juices, whole.Minerals, whole.Sugars, whole.Sodium, whole.Fat, 0);
        }

        SolidGiving gives = SolidGiving.Of(item.Ingredient, cuts, item.RawKilograms, item.Blanched, item.FatDrainedKilograms);
        double hours = item.WeakHours ?? engine.WeakHours(item.JoinsSeconds, strainedSeconds);
        double done = 1 - Math.Exp(-gives.PerHour * hours);
        double fat = 1 - Math.Exp(-gives.FatPerHour * hours);
        return new Solutes(gives.Juices * done, gives.Minerals * done, gives.Sugars * done, gives.Sodium * done, gives.Fat * fat, item.FatDrainedKilograms);
    }
}

/// <summary>One ingredient of the load, in SI units.</summary>
internal sealed record PotItem(Ingredient Ingredient, double RawKilograms, double JoinsSeconds, bool Blanched, double FatDrainedKilograms)
{
    /// <summary>Hours at 98 °C it had in the pot, as the run of the pot kept them; null to work them out from the history.</summary>
    public double? WeakHours { get; init; }

    public static IReadOnlyList<PotItem> Of(BatchPlan plan)
    {
        List<PotItem> items = [];
        Dictionary<SolidCharge, double> hours = new(ReferenceEqualityComparer.Instance);
        foreach (SolidGave gave in plan.Workings.Central.Gave)
        {
            hours[gave.Solid] = gave.Since.Weak;
        }

        for (int i = 0; i < plan.Amounts.Count; i++)
        {
            AmountLine line = plan.Amounts[i];
            items.Add(new PotItem(
                line.Ingredient,
                line.Mass.Kilograms,
                line.JoinsAt.TotalSeconds,
                line.Line.Preparation == Preparation.Blanch,
                plan.Workings.Fitted.Load.Items[i].FatDrainedKilograms)
            {
                WeakHours = plan.Workings.Fitted.Load.Items[i].Charge is { } charge ? hours.GetValueOrDefault(charge) : null,
            });
        }

        if (plan.Wetting is { } wetting)
        {
            items.Add(new PotItem(wetting, plan.Workings.Fitted.WaterKilograms, 0, Blanched: false, 0));
        }

        return items;
    }
}
