using Stockwright.Evidence;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>Writes the water ledger and the yield with its band (F.5 and F.6 in docs/equations.md).</summary>
internal sealed class LedgerWriter(PlanRequest request, PotFitter fitter, FittedLoad fitted, SimmerRuns runs)
{
    private readonly SimmerOutcome central = runs.Central;
    private readonly Stated<Ratio> clinging = fitter.Clinging;

    /// <summary>
    /// Yield of strained, defatted stock. Each uncertain figure is moved alone to its ends and the shifts add in quadrature:
    /// they are independent, and eight times in ten the truth is expected inside.
    /// </summary>
    public Band<Volume> Yield()
    {
        Stated<Ratio> retained = clinging;
        Stated<Ratio> strain = request.Assumptions.StrainLoss;
        Stated<Ratio> defat = request.Assumptions.DefatLoss;
        double yield = Kept(central);
        double Of(double r, double s, double d) => fitter.YieldKilograms(central, r, s, d) + fitted.LetDownKilograms;
        double r0 = retained.Value.DecimalFractions;
        double s0 = strain.Value.DecimalFractions;
        double d0 = defat.Value.DecimalFractions;
        double[] low =
        [
            Kept(runs.LosesMore),
            Of(retained.High.DecimalFractions, s0, d0),
            Of(r0, strain.High.DecimalFractions, d0),
            Of(r0, s0, defat.High.DecimalFractions),
            yield - ReleaseShift(low: true),
            yield * (1 - BoiledDown(share => 1 - (share.Low / share.Value))),
        ];
        double[] high =
        [
            Kept(runs.LosesLess),
            Of(retained.Low.DecimalFractions, s0, d0),
            Of(r0, strain.Low.DecimalFractions, d0),
            Of(r0, s0, defat.Low.DecimalFractions),
            yield + ReleaseShift(low: false),
            yield * (1 + BoiledDown(share => (share.High / share.Value) - 1)),
        ];
        return new Band<Volume>(
            SimmerForecaster.Cold(Math.Max(0, yield - Quadrature(low, yield))),
            SimmerForecaster.Cold(yield),
            SimmerForecaster.Cold(yield + Quadrature(high, yield)));
    }

    /// <summary>What is poured or stirred in, by name: "Red wine, tomato paste".</summary>
    private string OtherLiquids()
    {
        string names = ScriptWriter.Names(fitted.Load.Items.Where(item => item.LiquidKilograms > 0));
        return names.Length == 0 ? "" : char.ToUpperInvariant(names[0]) + names[1..];
    }

    public WaterLedger Write(Band<Volume> yield)
    {
        double otherLiquids = fitted.Load.Items.Sum(item => item.LiquidKilograms);
        double retained = fitter.RetainedKilograms(central, clinging.Value.DecimalFractions);
        double drained = Math.Max(0, central.LiquidLeftKilograms - retained);
        double strainLoss = drained * request.Assumptions.StrainLoss.Value.DecimalFractions;
        double defatLoss = request.Recipe.ChillsAndDefats ? (drained - strainLoss) * request.Assumptions.DefatLoss.Value.DecimalFractions : 0;
        double held = Math.Min(retained, central.LiquidLeftKilograms) + central.LiftedWithSolidsKilograms;
        double heldLow = fitter.RetainedKilograms(central, clinging.Low.DecimalFractions) + central.LiftedWithSolidsKilograms;
        double heldHigh = fitter.RetainedKilograms(central, clinging.High.DecimalFractions) + central.LiftedWithSolidsKilograms;
        List<LedgerEntry> put =
        [
            request.Recipe.Wetting is null
                ? new("water-to-line", "Water to the line", Exact(fitted.WaterKilograms), "cold water poured over the solids")
                : new("stock-to-line", "Stock to the line", Exact(fitted.WaterKilograms), "ready stock instead of water"),
            new("top-ups", "Top-ups", Spread(run => run.ToppedUpKilograms), "water added at the checks"),
        ];
        AddIfAny(put, new("other-liquids", OtherLiquids(), Exact(otherLiquids), "what the recipe pours or stirs in"));
        AddIfAny(put, new("drawn-from-solids", "Drawn from the solids", Given(), "juice of bones, meat and vegetables, and what dissolves with it; computed from their make-up"));
        AddIfAny(put, new("let-down", "Let down with", Exact(fitted.LetDownKilograms), "water stirred into the strained stock"));
        List<LedgerEntry> taken =
        [
            new("evaporated", "Evaporated", Spread(run => run.SteamKilograms), "from heat on to heat off"),
            new("skimmed", "Skimmed off", Around(central.SkimmedKilograms, 0.5, 2), "lifted with the scum; estimate"),
        ];
        AddIfAny(taken, new("boiled-over", "Boiled over", Exact(central.SpiltKilograms), "over the rim, as entered"));
        AddIfAny(taken, new("soaked-up", "Soaked up", SoakedUp(), "dried things swell; estimate"));
        taken.Add(new("held-by-solids", "Left in the spent solids", new(SimmerForecaster.Cold(heldLow), SimmerForecaster.Cold(held), SimmerForecaster.Cold(heldHigh)), request.Site.OwnClinging is null ? "liquor that clings to drained bones and vegetables; estimate" : "liquor that clings to drained bones and vegetables; by your weighed colander"));
        taken.Add(new("straining", "Lost in straining", Share(strainLoss, request.Assumptions.StrainLoss), "cloth, vessels and tasting; estimate"));
        AddIfAny(taken, new("defatting", "Lost in defatting", Share(defatLoss, request.Assumptions.DefatLoss), "goes with the fat; estimate"));
        taken.Add(new("yield", "Strained stock", yield, "what you keep"));
        return new WaterLedger(put, taken);
    }

    /// <summary>
    /// Shift of the yield when water leaves the solids as readily as its range allows. Ingredients of one pot err together (same cook, same cut
    /// size), so their shifts add straight; lighter solids hold that much less liquor back.
    /// </summary>
    private double ReleaseShift(bool low)
    {
        double released = DrawnAt(low ? -1 : 1) - DrawnAt(0);
        return Math.Abs(released) * (1 + clinging.Value.DecimalFractions);
    }

    /// <summary>Liquor from all solids, less what they soaked up, when their water leaves as readily as that, kg.</summary>
    private double DrawnAt(double lean) => central.Gave.Sum(gave => gave.Solid.Release.Leaning(lean).Liquor(gave.Since, gave.Hottest));

    private Band<Volume> Given() => Leaning(central.ReleasedKilograms, static (release, gave) => release.Given(gave.Since, gave.Hottest));

    private Band<Volume> SoakedUp() => Leaning(central.SoakedUpKilograms, static (release, gave) => -release.Taken(gave.Since));

    private Band<Volume> Leaning(double kilograms, Func<SolidRelease, SolidGave, double> part)
    {
        double one = central.Gave.Sum(gave => part(gave.Solid.Release.Leaning(-1), gave));
        double other = central.Gave.Sum(gave => part(gave.Solid.Release.Leaning(1), gave));
        return new Band<Volume>(
            SimmerForecaster.Cold(Math.Min(kilograms, Math.Min(one, other))), SimmerForecaster.Cold(kilograms), SimmerForecaster.Cold(Math.Max(kilograms, Math.Max(one, other))));
    }

    /// <summary>By eye nobody stops boiling down at just the share asked for.</summary>
    private double BoiledDown(Func<Stated<Ratio>, double> shift) =>
        request.Recipe.Stages.Sum(stage => stage.ReducesTo is { } share ? shift(share) : 0);

    private static void AddIfAny(List<LedgerEntry> entries, LedgerEntry entry)
    {
        if (entry.Volume.Central.CubicMeters > 0)
        {
            entries.Add(entry);
        }
    }

    private static double Quadrature(IEnumerable<double> values, double centre) =>
        Math.Sqrt(values.Sum(value => (value - centre) * (value - centre)));

    private static Band<Volume> Exact(double kilograms) => Around(kilograms, 1, 1);

    /// <summary>Stock of a run, with what lets it down, kg.</summary>
    private double Kept(SimmerOutcome outcome) => fitter.YieldKilograms(outcome) + fitted.LetDownKilograms;

    private static Band<Volume> Around(double kilograms, double low, double high) =>
        new(SimmerForecaster.Cold(kilograms * low), SimmerForecaster.Cold(kilograms), SimmerForecaster.Cold(kilograms * high));

    private static Band<Volume> Share(double kilograms, Stated<Ratio> share) =>
        Around(kilograms, share.Low / share.Value, share.High / share.Value);

    private Band<Volume> Spread(Func<SimmerOutcome, double> value)
    {
        double a = value(runs.LosesLess);
        double b = value(runs.LosesMore);
        double c = value(central);
        return new Band<Volume>(
            SimmerForecaster.Cold(Math.Min(Math.Min(a, b), c)), SimmerForecaster.Cold(c), SimmerForecaster.Cold(Math.Max(Math.Max(a, b), c)));
    }
}
