using Stockwright.Physics;

namespace Stockwright.Cooling;

/// <summary>What a column of liquid meets during a step, W/K and C.</summary>
/// <param name="Side">All along its wall.</param>
/// <param name="Bottom">Under its lowest layer.</param>
/// <param name="Top">Over its uppermost layer.</param>
/// <param name="TopWatts">Taken from the uppermost layer besides (steam).</param>
/// <param name="EvenWatts">Taken from all layers alike (wands).</param>
/// <param name="Circulation">Heat capacity of the liquid that runs down the wall, W/K.</param>
internal readonly record struct ColumnLoad(
    (double Conductance, double Celsius) Side, (double Conductance, double Celsius) Bottom, (double Conductance, double Celsius) Top,
    double TopWatts, double EvenWatts, double Circulation);

/// <summary>
/// Still liquid in layers of one height (equations C.20 to C.22 in docs/equations-cooling.md): what the wall cools runs down it
/// to the bottom and lifts the rest; a layer that is lighter than the one above it mixes with it at once. Each step is solved by the
/// two-stage method of C.14.
/// </summary>
internal sealed class LiquidColumn
{
    private const double Gamma = 0.29289321881345254;

    private readonly double[] celsius;
    private readonly double[] start;
    private readonly double[] stage;
    private readonly double[] rate;
    private readonly double[] slope;
    private readonly int[] blockSize;
    private readonly double[] blockCelsius;

    internal LiquidColumn(int layers, double startCelsius)
    {
        celsius = new double[layers];
        start = new double[layers];
        stage = new double[layers];
        rate = new double[layers];
        slope = new double[layers];
        blockSize = new int[layers];
        blockCelsius = new double[layers];
        Array.Fill(celsius, startCelsius);
    }

    /// <summary>Temperatures from the bottom up.</summary>
    internal ReadOnlySpan<double> Celsius => celsius;

    internal double TopCelsius => celsius[^1];

    internal double MeanCelsius => celsius.Sum() / celsius.Length;

    /// <summary>Stirs it, to a temperature.</summary>
    internal void Even(double to) => Array.Fill(celsius, to);

    /// <summary>Carries the column on by one step.</summary>
    /// <param name="seconds">Length, above zero.</param>
    /// <param name="heatCapacity">Of the whole column, J/K.</param>
    /// <param name="load">What it meets.</param>
    /// <returns>Heat that left by side, bottom and top, J, without what was taken besides.</returns>
    internal (double Side, double Bottom, double Top) Step(double seconds, double heatCapacity, ColumnLoad load)
    {
        int layers = celsius.Length;
        double capacity = heatCapacity / layers;
        double step = Gamma * seconds;
        celsius.CopyTo(start, 0);
        Solve(step, capacity, load);
        (double side, double bottom, double top) = Rates(capacity, load);
        double weight = (1 - Gamma) * seconds;
        (double Side, double Bottom, double Top) given = (weight * side, weight * bottom, weight * top);
        for (int j = 0; j < layers; j++)
        {
            start[j] += weight * rate[j];
        }

        Solve(step, capacity, load);
        (side, bottom, top) = Rates(capacity, load);
        for (int j = 0; j < layers; j++)
        {
            celsius[j] = start[j] + (step * rate[j]);
        }

        Overturn();
        return (given.Side + (step * side), given.Bottom + (step * bottom), given.Top + (step * top));
    }

    /// <summary>Rates of change at the stage, K/s, and the heat flows there, W.</summary>
    private (double Side, double Bottom, double Top) Rates(double capacity, ColumnLoad load)
    {
        int last = celsius.Length - 1;
        double side = 0;
        double even = load.EvenWatts / celsius.Length;
        for (int j = 0; j <= last; j++)
        {
            side += load.Side.Conductance / celsius.Length * (stage[j] - load.Side.Celsius);
            rate[j] = ((load.Circulation * (stage[j == 0 ? last : j - 1] - stage[j])) - even) / capacity;
        }

        double bottom = load.Bottom.Conductance * (stage[0] - load.Bottom.Celsius);
        double top = load.Top.Conductance * (stage[last] - load.Top.Celsius);
        rate[0] -= (side + bottom) / capacity;
        rate[last] -= (top + load.TopWatts) / capacity;
        return (side, bottom, top);
    }

    /// <summary>Solves stage = start + step times rate: each layer hangs on the one below, so all on the lowest, and that on the sum.</summary>
    private void Solve(double step, double capacity, ColumnLoad load)
    {
        int last = celsius.Length - 1;
        double part = step / capacity;
        double up = part * load.Circulation;
        double even = part * load.EvenWatts / celsius.Length;
        double side = part * load.Side.Conductance / celsius.Length;

        // stage[j] = stage[j] + slope[j] times that of the lowest layer.
        stage[0] = 0;
        slope[0] = 1;
        double sum = 0;
        double slopes = 1;
        for (int j = 1; j <= last; j++)
        {
            double diagonal = 1 + up + (j == last ? part * load.Top.Conductance : 0);
            double right = start[j] - even + (j == last ? part * ((load.Top.Conductance * load.Top.Celsius) - load.TopWatts) : 0);
            stage[j] = (right + (up * stage[j - 1])) / diagonal;
            slope[j] = up * slope[j - 1] / diagonal;
            sum += stage[j];
            slopes += slope[j];
        }

        double known = start[0] - even + (up * stage[last]) - (side * (sum - (celsius.Length * load.Side.Celsius)))
            + (part * load.Bottom.Conductance * load.Bottom.Celsius);
        double lowest = known / (1 + (up * (1 - slope[last])) + (side * slopes) + (part * load.Bottom.Conductance));
        for (int j = 0; j <= last; j++)
        {
            stage[j] += slope[j] * lowest;
        }
    }

    /// <summary>Mixes neighbours until none stands under a denser one.</summary>
    private void Overturn()
    {
        int blocks = 0;
        for (int j = 0; j < celsius.Length; j++)
        {
            blockCelsius[blocks] = celsius[j];
            blockSize[blocks++] = 1;
            while (blocks > 1 && Density(blockCelsius[blocks - 2]) < Density(blockCelsius[blocks - 1]))
            {
                int both = blockSize[blocks - 2] + blockSize[blocks - 1];
                blockCelsius[blocks - 2] = ((blockSize[blocks - 2] * blockCelsius[blocks - 2]) + (blockSize[blocks - 1] * blockCelsius[blocks - 1])) / both;
                blockSize[blocks - 2] = both;
                blocks--;
            }
        }

        int layer = 0;
        for (int b = 0; b < blocks; b++)
        {
            Array.Fill(celsius, blockCelsius[b], layer, blockSize[b]);
            layer += blockSize[b];
        }
    }

    private static double Density(double celsius) => LiquidWaterFit.DensityKilogramsPerCubicMetre(celsius);
}
