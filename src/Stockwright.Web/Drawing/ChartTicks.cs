namespace Stockwright.Web.Drawing;

/// <summary>Round steps for the axes of a chart.</summary>
internal static class ChartTicks
{
    private static readonly double[] s_hourSteps = [0.25, 0.5, 1, 2, 3, 4, 6, 12, 24];

    /// <summary>Marks from zero to the end of a time axis, in hours.</summary>
    public static IReadOnlyList<double> Hours(double end) => Among(0, end, s_hourSteps, 8);

    /// <summary>Marks at the first step that gives no more than the wanted number.</summary>
    public static IReadOnlyList<double> Among(double low, double high, double[] steps, int most)
    {
        double step = Array.Find(steps, candidate => (high - low) / candidate <= most);
        return Steps(low, high, step > 0 ? step : (high - low) / most);
    }

    private static List<double> Steps(double low, double high, double step)
    {
        List<double> ticks = [];
        if (!(step > 0) || !double.IsFinite(high - low))
        {
            return ticks;
        }

        for (double tick = Math.Ceiling((low / step) - 1e-9); tick * step <= high + (step * 1e-9); tick++)
        {
            ticks.Add(tick * step);
        }

        return ticks;
    }
}
