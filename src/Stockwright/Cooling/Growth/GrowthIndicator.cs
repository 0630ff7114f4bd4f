namespace Stockwright.Cooling.Growth;

/// <summary>Growth along a curve, log10. An indicator to put batches in order by, never a proof of safety.</summary>
/// <param name="Model">Organism and figures.</param>
/// <param name="Best">Best estimate.</param>
/// <param name="Cautious">With a short lag.</param>
/// <param name="Worst">With no lag, and no credit for reheating.</param>
/// <param name="HeatingCredited">True when a reheat along the curve was credited in the first two.</param>
public sealed record GrowthEstimate(GrowthModel Model, double Best, double Cautious, double Worst, bool HeatingCredited)
{
    /// <summary>What to print beside every figure.</summary>
    public const string Label =
        "Indicator only. Replicates of the same experiment differ by up to one log; a low figure does not make a batch safe, and the legal limit stands beside it.";
}

/// <summary>
/// Growth of a spore-former over a cooling curve by Baranyi and Roberts' model with cardinal temperatures (equations C.40 to
/// C.43 in docs/equations-cooling.md). The model has a closed form once the rate is integrated over the curve.
/// </summary>
public static class GrowthIndicator
{
    /// <summary>Kill of growing cells from which a reheat starts the count anew: six decimal reductions.</summary>
    internal const double CreditLogs = 6;

    private const double KillsFromCelsius = 55;
    private const double FinestKelvins = 0.25;

    /// <summary>Growth over a curve.</summary>
    public static GrowthEstimate Assess(CoolingCurve curve, GrowthModel model)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(model);
        (double whole, double sinceReheat) = Work(curve, model);
        double credited = model.TakesHeatingCredit ? sinceReheat : whole;
        return new GrowthEstimate(
            model,
            Log10Growth(model, credited, model.Lag.Best),
            Log10Growth(model, credited, model.Lag.Cautious),
            Log10Growth(model, whole, model.Lag.Worst),
            credited < whole);
    }

    /// <summary>C.41: log10 gained for an integrated rate and a lag.</summary>
    internal static double Log10Growth(GrowthModel model, double work, double lag)
    {
        if (work <= 0)
        {
            return 0;
        }

        double adjusted = Math.Log(1 + (Math.Exp(-lag) * (Math.Exp(work) - 1)));
        double room = Math.Exp((model.MostLog10 - model.StartLog10) * Math.Log(10));
        return (adjusted - Math.Log(1 + ((Math.Exp(adjusted) - 1) / room))) / Math.Log(10);
    }

    /// <summary>Integral of the rate over the whole curve, and since the last reheat that killed what grew.</summary>
    internal static (double Whole, double SinceReheat) Work(CoolingCurve curve, GrowthModel model)
    {
        double whole = 0;
        double since = 0;
        double killed = 0;
        for (int i = 1; i < curve.Points.Count; i++)
        {
            double hours = (curve.Points[i].At - curve.Points[i - 1].At).TotalHours;
            double from = curve.Points[i - 1].Temperature.DegreesCelsius;
            double to = curve.Points[i].Temperature.DegreesCelsius;
            double work = Segment(model, from, to, hours);
            whole += work;
            since += work;
            killed += Kill(from, to, hours);
            if (work > 0)
            {
                killed = 0;
            }

            if (killed >= CreditLogs)
            {
                since = 0;
            }
        }

        return (whole, since);
    }

    private static double Segment(GrowthModel model, double from, double to, double hours)
    {
        double least = model.NothingAtOrBelow.DegreesCelsius;
        double most = model.Most.DegreesCelsius;
        if (Math.Max(from, to) <= least || Math.Min(from, to) >= most)
        {
            return 0;
        }

        if (from == to)
        {
            return model.RatePerHour(from) * hours;
        }

        // Only the stretch where anything grows, so that the ends of the curve of rates fall on ends of intervals.
        double low = Math.Clamp(Math.Min(from, to), least, most);
        double high = Math.Clamp(Math.Max(from, to), least, most);
        double share = (high - low) / Math.Abs(to - from);
        int pieces = Math.Max(2, 2 * (int)Math.Ceiling((high - low) / FinestKelvins));
        double step = (high - low) / pieces;
        double sum = model.CardinalRatePerHour(low) + model.CardinalRatePerHour(high);
        for (int k = 1; k < pieces; k++)
        {
            sum += (k % 2 == 1 ? 4 : 2) * model.CardinalRatePerHour(low + (k * step));
        }

        return sum / (3 * pieces) * share * hours;
    }

    /// <summary>log10 of growing cells killed on a straight stretch (C.43), nothing below 55 °C.</summary>
    private static double Kill(double from, double to, double hours)
    {
        if (Math.Max(from, to) < KillsFromCelsius)
        {
            return 0;
        }

        const int Pieces = 8;
        double sum = 0;
        for (int k = 0; k < Pieces; k++)
        {
            double celsius = from + ((to - from) * (k + 0.5) / Pieces);
            if (celsius >= KillsFromCelsius)
            {
                sum += hours * 60 / Pieces / HeatInactivation.VegetativePerfringens.DMinutes(celsius);
            }
        }

        return sum;
    }
}
