using Stockwright.Numerics;

namespace Stockwright.Physics.Conduction;

/// <summary>
/// One line of cells in a conduction field: two implicit stages, each a tridiagonal solve by Thomas' elimination,
/// repeated by Newton's method where enthalpy bends (equations C.13 and C.14 in docs/equations-cooling.md).
/// </summary>
/// <typeparam name="TMaterial">Enthalpy and conductivity.</typeparam>
internal sealed class LineSolver<TMaterial>
    where TMaterial : struct, IConductionMaterial
{
    /// <summary>Newton's method settles in two or three passes even where a cell freezes through.</summary>
    private const int MostPasses = 50;

    /// <summary>J/m3: some hundred-thousandths of a kelvin.</summary>
    private const double LeastChange = 100;

    private readonly TMaterial material;
    private readonly double gamma;
    private readonly double[] start;
    private readonly double[] enthalpy;
    private readonly double[] celsius;
    private readonly double[] volume;
    private readonly double[] halfResistance;
    private readonly double[] outerArea;
    private readonly double[] conductance;
    private readonly double[] flux;
    private readonly double[] slope;
    private readonly double[] upper;
    private readonly double[] right;
    private double[] before = [];
    private int count;
    private double firstConductance;
    private double firstCelsius;
    private double lastConductance;
    private double lastCelsius;
    private double firstOut;
    private double lastOut;

    internal LineSolver(int most, TMaterial material, double gamma)
    {
        this.material = material;
        this.gamma = gamma;
        start = new double[most];
        enthalpy = new double[most];
        celsius = new double[most];
        volume = new double[most];
        halfResistance = new double[most];
        outerArea = new double[most];
        conductance = new double[most];
        flux = new double[most];
        slope = new double[most];
        upper = new double[most];
        right = new double[most];
    }

    /// <summary>Heat that left through the first cell's outer end in the last solve, J.</summary>
    internal double FirstEndJoules { get; private set; }

    /// <summary>Heat that left through the last cell's outer end in the last solve, J.</summary>
    internal double LastEndJoules { get; private set; }

    internal double Enthalpy(int cell) => enthalpy[cell];

    internal double Celsius(int cell) => celsius[cell];

    /// <summary>A copy to compare with after the step, in a buffer kept for it.</summary>
    internal double[] Before(double[] values)
    {
        if (before.Length != values.Length)
        {
            before = new double[values.Length];
        }

        values.CopyTo(before, 0);
        return before;
    }

    internal void Begin(int cells) => count = cells;

    internal void SetCell(int cell, double joulesPerCubicMetre, double cellCelsius, double cubicMetres, double halfCellResistance, double outerSquareMetres)
    {
        start[cell] = joulesPerCubicMetre;
        enthalpy[cell] = joulesPerCubicMetre;
        celsius[cell] = cellCelsius;
        volume[cell] = cubicMetres;
        halfResistance[cell] = halfCellResistance;
        outerArea[cell] = outerSquareMetres;
    }

    internal void SetEnds(ConductionBoundary first, double firstArea, ConductionBoundary last, double lastArea, Func<double, double>? filmShare)
    {
        for (int k = 0; k < count - 1; k++)
        {
            conductance[k] = outerArea[k] / (halfResistance[k] + halfResistance[k + 1]);
        }

        firstConductance = End(first, firstArea, 0, filmShare);
        firstCelsius = first.Celsius;
        lastConductance = End(last, lastArea, count - 1, filmShare);
        lastCelsius = last.Celsius;
    }

    internal void Solve(double seconds)
    {
        double stage = gamma * seconds;
        Stage(stage);
        double firstStageFirst = firstOut;
        double firstStageLast = lastOut;
        double weight = (1 - gamma) * seconds;
        for (int k = 0; k < count; k++)
        {
            start[k] += weight * flux[k] / volume[k];
        }

        Stage(stage);
        FirstEndJoules = (weight * firstStageFirst) + (stage * firstOut);
        LastEndJoules = (weight * firstStageLast) + (stage * lastOut);
        for (int k = 0; k < count; k++)
        {
            // From the flows themselves and not from the elimination, so that what leaves a cell is what its neighbour gets.
            enthalpy[k] = start[k] + (stage * flux[k] / volume[k]);
        }

        SettleTemperatures();
    }

    private void SettleTemperatures()
    {
        for (int k = 0; k < count; k++)
        {
            celsius[k] = material.Celsius(enthalpy[k]);
        }
    }

    private double End(ConductionBoundary boundary, double area, int cell, Func<double, double>? filmShare)
    {
        if (boundary.WattsPerSquareMetreKelvin <= 0)
        {
            return 0;
        }

        double film = boundary.FilmResistance == 0 ? 0 : boundary.FilmResistance * (filmShare?.Invoke(celsius[cell]) ?? 1);
        return area / ((1 / boundary.WattsPerSquareMetreKelvin) + film + halfResistance[cell]);
    }

    /// <summary>Solves V (H - start) = stage times the flow at H; leaves H, T and the flows at the solution.</summary>
    private void Stage(double stage)
    {
        Flows();
        for (int pass = 0; pass < MostPasses; pass++)
        {
            double largest = NewtonPass(stage);
            SettleTemperatures();
            Flows();
            if (material.IsLinear || largest < LeastChange)
            {
                return;
            }
        }

        throw new NumericalFailureException("The heat in a line of cells did not settle; the step was too long for the material.");
    }

    private double NewtonPass(double stage)
    {
        for (int k = 0; k < count; k++)
        {
            slope[k] = material.KelvinsPerJoulePerCubicMetre(enthalpy[k]);
        }

        double lower = 0;
        for (int k = 0; k < count; k++)
        {
            double coupled = (k > 0 ? conductance[k - 1] : firstConductance) + (k < count - 1 ? conductance[k] : lastConductance);
            double diagonal = volume[k] + (stage * coupled * slope[k]);
            double residual = (volume[k] * (start[k] - enthalpy[k])) + (stage * flux[k]);
            if (k > 0)
            {
                lower = -stage * conductance[k - 1] * slope[k - 1];
                diagonal -= lower * upper[k - 1];
                residual -= lower * right[k - 1];
            }

            upper[k] = k < count - 1 ? -stage * conductance[k] * slope[k + 1] / diagonal : 0;
            right[k] = residual / diagonal;
        }

        double change = 0;
        double largest = 0;
        for (int k = count - 1; k >= 0; k--)
        {
            change = right[k] - (k < count - 1 ? upper[k] * change : 0);
            enthalpy[k] += change;
            largest = Math.Max(largest, Math.Abs(change));
        }

        return largest;
    }

    private void Flows()
    {
        firstOut = firstConductance * (celsius[0] - firstCelsius);
        double inFromBefore = -firstOut;
        for (int k = 0; k < count - 1; k++)
        {
            double onward = conductance[k] * (celsius[k] - celsius[k + 1]);
            flux[k] = inFromBefore - onward;
            inFromBefore = onward;
        }

        lastOut = lastConductance * (celsius[count - 1] - lastCelsius);
        flux[count - 1] = inFromBefore - lastOut;
    }
}
