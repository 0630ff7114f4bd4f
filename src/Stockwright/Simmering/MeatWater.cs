using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>How much of its water lean meat loses in the end, and how fast (S.6 in docs/equations.md).</summary>
internal sealed class MeatWater
{
    private readonly (double Celsius, double Share)[] curve;
    private readonly double perHour;
    private readonly double jointSlowing;

    public MeatWater(SimmerAssumptions assumptions)
    {
        Stated<double> hot = assumptions.Get("meat-loss-95");
        curve =
        [
            (40, 0),
            (50, assumptions.Get("meat-loss-50").Value),
            (65, assumptions.Get("meat-loss-65").Value),
            (80, assumptions.Get("meat-loss-80").Value),
            (95, hot.Value),
        ];
        perHour = assumptions.Get("meat-loss-per-hour").Value;
        jointSlowing = assumptions.Get("joint-slowing").Value;
        Lean = new WaterRange(hot.Low / hot.Value, 1, hot.High / hot.Value);
    }

    /// <summary>The loss against its likeliest: one, and the ends of eight in ten.</summary>
    public WaterRange Lean { get; }

    /// <summary>Share of its water meat loses in the end at a temperature; straight between the rows of the data file, level above 95 °C.</summary>
    public double LostInTheEnd(double celsius)
    {
        for (int i = 1; i < curve.Length; i++)
        {
            (double above, double most) = curve[i];
            if (celsius < above)
            {
                (double below, double least) = curve[i - 1];
                return least + ((most - least) * Math.Max(0, (celsius - below) / (above - below)));
            }
        }

        return curve[^1].Share;
    }

    /// <summary>Share of what is still to come that leaves in an hour at 98 °C: whole joints are slower than pieces, and nothing is quicker than half the usual piece.</summary>
    public double PerHour(Length piece, Length usual) => perHour * Math.Pow(Math.Min(2, usual / piece), jointSlowing);
}
