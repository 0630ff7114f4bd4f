using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;

namespace Stockwright.Tests.Predicting;

/// <summary>One row of the account of what everything is made of.</summary>
/// <param name="Key">Stable machine name.</param>
/// <param name="Matter">What it is made of.</param>
internal sealed record MatterRow(string Key, Matter Matter);

/// <summary>
/// Where water, fat, protein and ash go (B.33 in docs/equations-body.md): what was weighed in against what leaves as steam, stays on the tray, in the solids and
/// in the liquor. The pot says how much each solid gave; the prediction says how much of that is gelatin, juices, minerals, sugars and fat; the rest is water.
/// </summary>
/// <param name="In">Ingredients as weighed, water, top-ups.</param>
/// <param name="Out">Tray, blanching water, steam, scum, free fat, liquor, and each spent solid.</param>
internal sealed record MatterAccount(IReadOnlyList<MatterRow> In, IReadOnlyList<MatterRow> Out)
{
    public Matter TotalIn => Sum(In);

    public Matter TotalOut => Sum(Out);

    /// <summary>Rows of the drained solids.</summary>
    public IEnumerable<MatterRow> Solids => Out.Where(row => row.Key.StartsWith("solid-", StringComparison.Ordinal));

    /// <summary>All liquor: in the pot at the end, and what ran over.</summary>
    public Matter Liquor => Out.First(row => row.Key is "liquor").Matter;

    /// <summary>Draws the account of a plan's central run.</summary>
    public static MatterAccount Of(PredictionCase made)
    {
        PlanWorkings workings = made.Plan.Workings;
        SimmerOutcome run = workings.Central;
        Dictionary<SolidCharge, SolidGave> gave = new(ReferenceEqualityComparer.Instance);
        foreach (SolidGave one in run.Gave)
        {
            gave[one.Solid] = one;
        }

        Matter[] dissolved = Dissolved(made, out double[] fat);
        bool wetted = made.Plan.Wetting is not null;
        Matter poured = wetted
            ? Matter.Of(made.Plan.Wetting!, workings.Fitted.WaterKilograms)
            : Matter.OfWater(workings.Fitted.WaterKilograms);
        List<MatterRow> put = [new("start-liquid", poured), new("top-ups", Matter.OfWater(run.ToppedUpKilograms))];
        Matter liquor = poured + Matter.OfWater(run.ToppedUpKilograms);
        Matter away = default;
        Matter free = default;
        List<MatterRow> solids = [];
        for (int i = 0; i < workings.Fitted.Load.Items.Count; i++)
        {
            LoadItem item = workings.Fitted.Load.Items[i];
            put.Add(new("in-" + item.Ingredient.Id, item.Raw));
            away += item.RoastedAway + item.BlanchedAway;
            if (item.Charge is not { } charge)
            {
                liquor += item.InPot;
                continue;
            }

            // A solid that never went in, because the heat was off before, gave nothing.
            SolidGave did = gave.GetValueOrDefault(charge, new SolidGave(charge, default, 0, 0, 0, 0));
            Matter out1 = dissolved[i] + Matter.OfWater(did.Given - did.SoakedUp + did.FreedFat - fat[i] - dissolved[i].Kilograms);
            Matter freed = new(0, 0, fat[i], 0, 0);
            liquor += out1;
            free += freed;
            solids.Add(new("solid-" + item.Ingredient.Id, item.InPot - out1 - freed));
        }

        Matter gone = Matter.OfWater(run.SteamKilograms + run.SkimmedKilograms + run.LiftedWithSolidsKilograms);
        List<MatterRow> taken =
        [
            new("tray-and-blanch", away),
            new("steam", Matter.OfWater(run.SteamKilograms)),
            new("skimmed", Matter.OfWater(run.SkimmedKilograms)),
            new("lifted", Matter.OfWater(run.LiftedWithSolidsKilograms)),
            new("free-fat", free),
            new("liquor", liquor - gone),
            .. solids,
        ];
        return new MatterAccount(put, taken);
    }

    /// <summary>What the prediction says each item gave beside water, kg; in the order of the load.</summary>
    private static Matter[] Dissolved(PredictionCase made, out double[] fat)
    {
        ExtractionTotals[] totals = new ExtractionTotals[made.Cuts.Count];
        made.Engine.Run(made.Central, totals);
        Matter[] dissolved = new Matter[made.Items.Count];
        fat = new double[made.Items.Count];
        int cut = 0;
        for (int i = 0; i < made.Items.Count; i++)
        {
            PotItem item = made.Items[i];
            Solutes gives = made.SolutesOf(item);
            double gelatin = made.IsCut(item) ? totals[cut++].Gelatin / 1000 : 0;
            dissolved[i] = new Matter(0, gelatin + gives.Juices, 0, gives.Minerals, gives.Sugars);
            fat[i] = gives.FreedFat;
        }

        return dissolved;
    }

    private static Matter Sum(IEnumerable<MatterRow> rows) => rows.Aggregate(default(Matter), (sum, row) => sum + row.Matter);
}
