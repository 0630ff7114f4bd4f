using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>How much of its water lean meat loses in the end, and how fast (S.6 in docs/equations.md).</summary>
internal static class MeatWater
{
    private static readonly (double Celsius, double Share)[] Curve =
    [
        (40, 0),
        (50, SimmerAssumptions.Get("meat-loss-50").Value),
        (65, SimmerAssumptions.Get("meat-loss-65").Value),
        (80, SimmerAssumptions.Get("meat-loss-80").Value),
        (95, Hot.Value),
    ];

    /// <summary>Share lost in the end at 95 °C and above.</summary>
    public static Stated<double> Hot => SimmerAssumptions.Get("meat-loss-95");

    /// <summary>Share of its water meat loses in the end at a temperature; straight between the rows of the data file.</summary>
    public static double LostInTheEnd(double celsius)
    {
        for (int i = 1; i < Curve.Length; i++)
        {
            (double above, double most) = Curve[i];
            if (celsius < above)
            {
                (double below, double least) = Curve[i - 1];
                return least + ((most - least) * Math.Max(0, (celsius - below) / (above - below)));
            }
        }

        return Curve[^1].Share;
    }

    /// <summary>Share of what is still to come that leaves in an hour at 98 °C: whole joints are slower than pieces, and nothing is quicker than half the usual piece.</summary>
    public static double PerHour(Length piece, Length usual) => SimmerAssumptions.Get("meat-loss-per-hour").Value
        * Math.Pow(Math.Min(2, usual / piece), SimmerAssumptions.Get("joint-slowing").Value);
}
