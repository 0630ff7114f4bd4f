namespace Stockwright.Physics.Conduction;

/// <summary>
/// Cells of a body of revolution: rings outward from the axis, layers upward (equation C.12 in docs/equations-cooling.md).
/// A slab is a grid with one ring, a long cylinder or a sphere a grid with one layer.
/// </summary>
internal sealed class ConductionGrid
{
    private ConductionGrid(int rings, int layers, double ringWidth, double layerHeight, double[] faceAreas, double[] ringAreas)
    {
        Rings = rings;
        Layers = layers;
        RingWidth = ringWidth;
        LayerHeight = layerHeight;
        OuterFaceAreas = faceAreas;
        RingAreas = ringAreas;
    }

    internal int Rings { get; }

    internal int Layers { get; }

    internal int Cells => Rings * Layers;

    /// <summary>Width of a ring, m.</summary>
    internal double RingWidth { get; }

    /// <summary>Height of a layer, m.</summary>
    internal double LayerHeight { get; }

    /// <summary>Area of the outer face of each ring in one layer, m2.</summary>
    internal double[] OuterFaceAreas { get; }

    /// <summary>Area of each ring seen from above, m2.</summary>
    internal double[] RingAreas { get; }

    /// <summary>Volume of all cells, m3.</summary>
    internal double Volume => RingAreas.Sum() * LayerHeight * Layers;

    /// <summary>An upright cylinder.</summary>
    /// <param name="radius">m.</param>
    /// <param name="height">m.</param>
    /// <param name="rings">One or more.</param>
    /// <param name="layers">One or more.</param>
    /// <param name="sideFactor">True side area over that of the cylinder: above one for a rectangular pan of the same floor.</param>
    internal static ConductionGrid Cylinder(double radius, double height, int rings, int layers, double sideFactor = 1)
    {
        double width = radius / rings;
        double layer = height / layers;
        double[] faces = new double[rings];
        double[] areas = new double[rings];
        for (int i = 0; i < rings; i++)
        {
            double inner = i * width;
            double outer = (i + 1) * width;
            faces[i] = 2 * Math.PI * outer * layer * (i == rings - 1 ? sideFactor : 1);
            areas[i] = Math.PI * (outer - inner) * (outer + inner);
        }

        return new ConductionGrid(rings, layers, width, layer, faces, areas);
    }

    /// <summary>One square metre of a slab from its insulated middle (or back) to its face; the cells are the rings.</summary>
    internal static ConductionGrid HalfSlab(double thickness, int cells)
    {
        double[] ones = new double[cells];
        Array.Fill(ones, 1.0);
        double[] widths = new double[cells];
        Array.Fill(widths, thickness / cells);
        return new ConductionGrid(cells, 1, thickness / cells, 1, ones, widths);
    }

    /// <summary>A sphere in shells.</summary>
    internal static ConductionGrid Sphere(double radius, int shells)
    {
        double width = radius / shells;
        double[] faces = new double[shells];
        double[] volumes = new double[shells];
        for (int i = 0; i < shells; i++)
        {
            double inner = i * width;
            double outer = (i + 1) * width;
            faces[i] = 4 * Math.PI * outer * outer;
            volumes[i] = 4.0 / 3 * Math.PI * ((outer * outer * outer) - (inner * inner * inner));
        }

        return new ConductionGrid(shells, 1, width, 1, faces, volumes);
    }
}
