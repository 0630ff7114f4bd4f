namespace Stockwright.Physics.Conduction;

/// <summary>
/// Unsteady conduction in rings and layers by finite volumes in enthalpy form (equations C.12 to C.14 in
/// docs/equations-cooling.md). Each step sweeps the rings and the layers in turn, the order alternating, each sweep a
/// tridiagonal solve per line with the two-stage stiffly accurate SDIRK method of order two (Alexander 1977
/// [from memory]). What leaves one cell enters the next, so heat is kept to rounding.
/// </summary>
/// <typeparam name="TMaterial">Enthalpy and conductivity.</typeparam>
internal sealed class ConductionField<TMaterial>
    where TMaterial : struct, IConductionMaterial
{
    /// <summary>1 - 1/sqrt(2).</summary>
    private const double Gamma = 0.29289321881345254;

    private readonly ConductionGrid grid;
    private readonly TMaterial material;
    private readonly double[] enthalpy;
    private readonly double[] celsius;
    private readonly LineSolver<TMaterial> line;
    private bool layersFirst;

    /// <summary>A field at one temperature.</summary>
    internal ConductionField(ConductionGrid grid, TMaterial material, double startCelsius)
    {
        this.grid = grid;
        this.material = material;
        enthalpy = new double[grid.Cells];
        celsius = new double[grid.Cells];
        Array.Fill(enthalpy, material.JoulesPerCubicMetre(startCelsius));
        Array.Fill(celsius, startCelsius);
        line = new LineSolver<TMaterial>(Math.Max(grid.Rings, grid.Layers), material, Gamma);
    }

    /// <summary>A field even in each layer.</summary>
    /// <param name="grid">Cells.</param>
    /// <param name="material">What they are made of.</param>
    /// <param name="layersCelsius">From the bottom up, one for each layer.</param>
    internal ConductionField(ConductionGrid grid, TMaterial material, ReadOnlySpan<double> layersCelsius)
        : this(grid, material, layersCelsius[0])
    {
        for (int j = 0; j < grid.Layers; j++)
        {
            enthalpy.AsSpan(j * grid.Rings, grid.Rings).Fill(material.JoulesPerCubicMetre(layersCelsius[j]));
            celsius.AsSpan(j * grid.Rings, grid.Rings).Fill(layersCelsius[j]);
        }
    }

    /// <summary>The face of the outermost ring.</summary>
    internal ConductionBoundary Side { get; set; }

    /// <summary>The lowest layer's lower face.</summary>
    internal ConductionBoundary Bottom { get; set; }

    /// <summary>The uppermost layer's upper face.</summary>
    internal ConductionBoundary Top { get; set; }

    /// <summary>Heat taken straight out of the uppermost layer, W/m2 (evaporation).</summary>
    internal double TopSinkWattsPerSquareMetre { get; set; }

    /// <summary>Heat taken out of the whole body evenly, W/m3.</summary>
    internal double SinkWattsPerCubicMetre { get; set; }

    /// <summary>Share of the film resistance a cell at a temperature bears; one when null.</summary>
    internal Func<double, double>? FilmShare { get; set; }

    /// <summary>Heat that has left through side, bottom and top (without the sinks), J.</summary>
    internal (double Side, double Bottom, double Top) HeatOutJoules { get; private set; }

    /// <summary>Heat taken by the sinks, J.</summary>
    internal double SinkJoules { get; private set; }

    /// <summary>Largest change of any cell in the last step, K.</summary>
    internal double LargestChangeKelvins { get; private set; }

    internal ConductionGrid Grid => grid;

    /// <summary>Temperature of a cell, ring from the axis and layer from the bottom.</summary>
    internal double CelsiusAt(int ring, int layer) => celsius[(layer * grid.Rings) + ring];

    /// <summary>Heat held, J, on the material's scale.</summary>
    internal double HeldJoules()
    {
        double sum = 0;
        for (int j = 0; j < grid.Layers; j++)
        {
            for (int i = 0; i < grid.Rings; i++)
            {
                sum += enthalpy[(j * grid.Rings) + i] * grid.RingAreas[i] * grid.LayerHeight;
            }
        }

        return sum;
    }

    /// <summary>Mean temperature by volume.</summary>
    internal double MeanCelsius()
    {
        double sum = 0;
        double volume = 0;
        for (int j = 0; j < grid.Layers; j++)
        {
            for (int i = 0; i < grid.Rings; i++)
            {
                sum += celsius[(j * grid.Rings) + i] * grid.RingAreas[i];
                volume += grid.RingAreas[i];
            }
        }

        return sum / volume;
    }

    internal double WarmestCelsius() => celsius.Max();

    internal double ColdestCelsius() => celsius.Min();

    /// <summary>Mean by volume of something that follows from the temperature.</summary>
    internal double Mean(Func<double, double> ofCelsius)
    {
        double sum = 0;
        double volume = 0;
        for (int j = 0; j < grid.Layers; j++)
        {
            for (int i = 0; i < grid.Rings; i++)
            {
                sum += ofCelsius(celsius[(j * grid.Rings) + i]) * grid.RingAreas[i];
                volume += grid.RingAreas[i];
            }
        }

        return sum / volume;
    }

    /// <summary>Mean temperature of the outermost ring.</summary>
    internal double SideCelsius()
    {
        double sum = 0;
        for (int j = 0; j < grid.Layers; j++)
        {
            sum += celsius[(j * grid.Rings) + grid.Rings - 1];
        }

        return sum / grid.Layers;
    }

    /// <summary>Mean temperature of a layer by area.</summary>
    internal double LayerCelsius(int layer)
    {
        double sum = 0;
        double area = 0;
        for (int i = 0; i < grid.Rings; i++)
        {
            sum += celsius[(layer * grid.Rings) + i] * grid.RingAreas[i];
            area += grid.RingAreas[i];
        }

        return sum / area;
    }

    /// <summary>Carries the field on by one step.</summary>
    /// <param name="seconds">Length, above zero.</param>
    internal void Step(double seconds)
    {
        double[] before = line.Before(celsius);
        DrainSinks(seconds);
        if (layersFirst)
        {
            SweepLayers(seconds);
            SweepRings(seconds);
        }
        else
        {
            SweepRings(seconds);
            SweepLayers(seconds);
        }

        layersFirst = !layersFirst;
        double largest = 0;
        for (int k = 0; k < celsius.Length; k++)
        {
            largest = Math.Max(largest, Math.Abs(celsius[k] - before[k]));
        }

        LargestChangeKelvins = largest;
    }

    private void DrainSinks(double seconds)
    {
        if (TopSinkWattsPerSquareMetre == 0 && SinkWattsPerCubicMetre == 0)
        {
            return;
        }

        for (int j = 0; j < grid.Layers; j++)
        {
            double perVolume = SinkWattsPerCubicMetre + (j == grid.Layers - 1 ? TopSinkWattsPerSquareMetre / grid.LayerHeight : 0);
            if (perVolume == 0)
            {
                continue;
            }

            for (int i = 0; i < grid.Rings; i++)
            {
                int k = (j * grid.Rings) + i;
                enthalpy[k] -= perVolume * seconds;
                celsius[k] = material.Celsius(enthalpy[k]);
                SinkJoules += perVolume * seconds * grid.RingAreas[i] * grid.LayerHeight;
            }
        }
    }

    private void SweepRings(double seconds)
    {
        double left = 0;
        for (int j = 0; j < grid.Layers; j++)
        {
            int start = j * grid.Rings;
            line.Begin(grid.Rings);
            for (int i = 0; i < grid.Rings; i++)
            {
                double half = grid.RingWidth / 2 / material.ConductivityWattsPerMetreKelvin(celsius[start + i]);
                line.SetCell(i, enthalpy[start + i], celsius[start + i], grid.RingAreas[i] * grid.LayerHeight, half, grid.OuterFaceAreas[i]);
            }

            line.SetEnds(default, 0, Side, grid.OuterFaceAreas[grid.Rings - 1], FilmShare);
            line.Solve(seconds);
            left += line.LastEndJoules;
            for (int i = 0; i < grid.Rings; i++)
            {
                enthalpy[start + i] = line.Enthalpy(i);
                celsius[start + i] = line.Celsius(i);
            }
        }

        HeatOutJoules = HeatOutJoules with { Side = HeatOutJoules.Side + left };
    }

    private void SweepLayers(double seconds)
    {
        if (grid.Layers == 1 && Bottom.WattsPerSquareMetreKelvin <= 0 && Top.WattsPerSquareMetreKelvin <= 0)
        {
            return;
        }

        double bottom = 0;
        double top = 0;
        for (int i = 0; i < grid.Rings; i++)
        {
            line.Begin(grid.Layers);
            for (int j = 0; j < grid.Layers; j++)
            {
                int k = (j * grid.Rings) + i;
                double half = grid.LayerHeight / 2 / material.ConductivityWattsPerMetreKelvin(celsius[k]);
                line.SetCell(j, enthalpy[k], celsius[k], grid.RingAreas[i] * grid.LayerHeight, half, grid.RingAreas[i]);
            }

            line.SetEnds(Bottom, grid.RingAreas[i], Top, grid.RingAreas[i], FilmShare);
            line.Solve(seconds);
            bottom += line.FirstEndJoules;
            top += line.LastEndJoules;
            for (int j = 0; j < grid.Layers; j++)
            {
                int k = (j * grid.Rings) + i;
                enthalpy[k] = line.Enthalpy(j);
                celsius[k] = line.Celsius(j);
            }
        }

        HeatOutJoules = (HeatOutJoules.Side, HeatOutJoules.Bottom + bottom, HeatOutJoules.Top + top);
    }
}
