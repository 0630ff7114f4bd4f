using Stockwright.Physics.Conduction;

namespace Stockwright.Cooling;

/// <summary>Heat that left one vessel in a step, J.</summary>
internal readonly record struct HeatGiven(double Side, double Bottom, double Top, double Steam, double Wand);

/// <summary>
/// The stock in one of its vessels: even while it is stirred (C.9), in layers while it moves by itself (C.20 to C.22),
/// conducting once it sets or nears freezing (C.11 to C.14). The wall goes with the stock. Equations in docs/equations-cooling.md.
/// </summary>
internal sealed class StockBody
{
    /// <summary>How far above the setting temperature conduction takes over, K: four widths, where 98 % of the convection is left.</summary>
    internal const double HandOverKelvins = 4 * GellingStock.WidthKelvins;

    private const int PotRings = 10;
    private const int PotLayers = 12;
    private const int PanLayers = 16;
    private const double LeastNusselt = 10;
    private const double MostNusselt = 100;

    private readonly double specificHeat;
    private readonly double conductivity;
    private readonly LiquidColumn column;
    private ConductionField<GellingStock>? conducting;
    private GellingStock material;

    internal StockBody(
        CoolingVessel vessel, double kilograms, double celsius, double specificHeat, double conductivity, double density, int? layers = null)
    {
        Vessel = vessel;
        Kilograms = kilograms;
        this.specificHeat = specificHeat;
        this.conductivity = conductivity;
        DepthMetres = kilograms / density / vessel.FloorSquareMetres;
        column = new LiquidColumn(layers ?? (IsShallow ? PanLayers : PotLayers), celsius);
    }

    internal CoolingVessel Vessel { get; }

    /// <summary>Stock in this vessel, kg.</summary>
    internal double Kilograms { get; private set; }

    internal double DepthMetres { get; }

    internal bool Conducts => conducting is not null;

    internal double WarmestCelsius => conducting?.WarmestCelsius() ?? column.TopCelsius;

    internal double MeanCelsius => conducting?.MeanCelsius() ?? column.MeanCelsius;

    /// <summary>What drives the film inside the wall: the middle of what moves.</summary>
    internal double BulkCelsius => conducting?.WarmestCelsius() ?? column.MeanCelsius;

    internal double ColdestCelsius => conducting?.ColdestCelsius() ?? column.Celsius[0];

    internal double SideCelsius => conducting?.SideCelsius() ?? column.MeanCelsius;

    internal double SurfaceCelsius => conducting?.LayerCelsius(conducting.Grid.Layers - 1) ?? column.TopCelsius;

    /// <summary>Share of the water that is ice.</summary>
    internal double FrozenShare => conducting is null || material.IsLinear ? 0 : conducting.Mean(material.Frozen);

    /// <summary>Largest change of any part in the last step, K.</summary>
    internal double LastChange { get; private set; }

    /// <summary>Heat capacity of stock and vessel, J/K.</summary>
    internal double HeatCapacity => (Kilograms * specificHeat) + Vessel.WallHeatCapacityJoulesPerKelvin;

    /// <summary>Heat of stock and vessel above 0 C, J.</summary>
    internal double HeldJoules => conducting?.HeldJoules() ?? (HeatCapacity * column.MeanCelsius);

    private double Radius => Math.Sqrt(Vessel.FloorSquareMetres / Math.PI);

    private bool IsShallow => Vessel.Floor is not null && DepthMetres < Radius;

    /// <summary>Lets conduction take over, once, when the stock is near setting.</summary>
    /// <param name="settingCelsius">Where it sets.</param>
    /// <param name="insideFilm">Film on its wall now, W/m2K.</param>
    /// <param name="waterToFreeze">Share of water where it may freeze; null where nothing around it is that cold.</param>
    internal void MaySet(double settingCelsius, double insideFilm, double? waterToFreeze = null)
    {
        if (conducting is not null || column.MeanCelsius >= settingCelsius + HandOverKelvins)
        {
            return;
        }

        double radius = Radius;
        double volume = Vessel.FloorSquareMetres * DepthMetres;
        double nusselt = Math.Clamp(insideFilm * (IsShallow ? DepthMetres : radius) / conductivity, LeastNusselt, MostNusselt);
        material = new GellingStock(HeatCapacity / volume, conductivity, nusselt, settingCelsius, waterToFreeze is { } water ? Freezing(water, volume) : null);
        double sideFactor = Vessel.PerimeterMetres / (2 * Math.PI * radius);
        ConductionGrid grid = ConductionGrid.Cylinder(radius, DepthMetres, IsShallow ? 1 : PotRings, column.Celsius.Length, sideFactor);
        conducting = new ConductionField<GellingStock>(grid, material, column.Celsius) { FilmShare = material.Liquid };
    }

    /// <summary>Carries the vessel on by one step.</summary>
    /// <param name="seconds">Length.</param>
    /// <param name="faces">Films and surroundings.</param>
    /// <param name="latentHeat">Of the steam leaving, J/kg.</param>
    /// <param name="wandWatts">Heat taken by wands.</param>
    internal HeatGiven Step(double seconds, Faces faces, double latentHeat, double wandWatts) => conducting is not null
        ? StepField(seconds, faces, latentHeat, wandWatts)
        : faces.WallShare > 0
            ? StepColumn(seconds, faces, latentHeat, wandWatts)
            : StepEven(seconds, faces, latentHeat, wandWatts);

    /// <summary>The vessel's wall goes with the stock when it freezes too; it has no latent heat.</summary>
    private FreezingStock Freezing(double water, double volume)
    {
        double density = Kilograms / volume;
        double wall = Vessel.WallHeatCapacityJoulesPerKelvin / Kilograms;
        return new FreezingStock(
            FreezingStock.StockFreezingCelsius, water, density, specificHeat + wall, FreezingStock.FrozenHeat + wall, conductivity, FreezingStock.FrozenConductivity);
    }

    private HeatGiven StepColumn(double seconds, Faces faces, double latentHeat, double wandWatts)
    {
        double floor = Vessel.FloorSquareMetres;
        double sideArea = Vessel.PerimeterMetres * DepthMetres;
        double steam = Math.Min(faces.SteamKilogramsPerSquareMetreSecond * floor * seconds, Kilograms / 2);
        double[] before = [.. column.Celsius];
        ColumnLoad load = new(
            (Conductance(faces.Side, sideArea), faces.Side.Celsius),
            (Conductance(faces.Bottom, floor), faces.Bottom.Celsius),
            (Conductance(faces.Top, floor), faces.Top.Celsius),
            steam * latentHeat / seconds,
            wandWatts,
            faces.InsideFilm * sideArea / faces.WallShare);
        (double side, double bottom, double top) = column.Step(seconds, HeatCapacity, load);
        LastChange = 0;
        for (int j = 0; j < before.Length; j++)
        {
            LastChange = Math.Max(LastChange, Math.Abs(column.Celsius[j] - before[j]));
        }

        Kilograms -= steam;
        return new HeatGiven(side, bottom, top, (steam * latentHeat) + (steam * specificHeat * column.MeanCelsius), wandWatts * seconds);
    }

    private HeatGiven StepEven(double seconds, Faces faces, double latentHeat, double wandWatts)
    {
        double floor = Vessel.FloorSquareMetres;
        double side = Conductance(faces.Side, Vessel.PerimeterMetres * DepthMetres);
        double bottom = Conductance(faces.Bottom, floor);
        double top = Conductance(faces.Top, floor);
        double sum = side + bottom + top;
        double even = column.MeanCelsius;
        double steam = Math.Min(faces.SteamKilogramsPerSquareMetreSecond * floor * seconds, Kilograms / 2);
        double sink = (steam * latentHeat / seconds) + wandWatts;
        double target = ((side * faces.Side.Celsius) + (bottom * faces.Bottom.Celsius) + (top * faces.Top.Celsius) - sink) / sum;

        // Exact for constant films: the mean over the step gives each face its share.
        double exponent = sum * seconds / HeatCapacity;
        double mean = target + ((even - target) * (exponent < 1e-6 ? 1 - (exponent / 2) : (1 - Math.Exp(-exponent)) / exponent));
        HeatGiven given = new(
            side * (mean - faces.Side.Celsius) * seconds,
            bottom * (mean - faces.Bottom.Celsius) * seconds,
            top * (mean - faces.Top.Celsius) * seconds,
            steam * latentHeat,
            wandWatts * seconds);
        double after = even - ((given.Side + given.Bottom + given.Top + given.Steam + given.Wand) / HeatCapacity);
        LastChange = Math.Abs(after - even);
        column.Even(after);
        Kilograms -= steam;
        return given with { Steam = given.Steam + (steam * specificHeat * after) };
    }

    private HeatGiven StepField(double seconds, Faces faces, double latentHeat, double wandWatts)
    {
        (double side, double bottom, double top) = conducting!.HeatOutJoules;
        conducting.Side = faces.Side;
        conducting.Bottom = faces.Bottom;
        conducting.Top = faces.Top;
        conducting.TopSinkWattsPerSquareMetre = faces.SteamKilogramsPerSquareMetreSecond * latentHeat;
        conducting.SinkWattsPerCubicMetre = wandWatts / conducting.Grid.Volume;
        double sinksBefore = conducting.SinkJoules;
        conducting.Step(seconds);
        LastChange = conducting.LargestChangeKelvins;
        double wand = wandWatts * seconds;
        return new HeatGiven(
            conducting.HeatOutJoules.Side - side,
            conducting.HeatOutJoules.Bottom - bottom,
            conducting.HeatOutJoules.Top - top,
            conducting.SinkJoules - sinksBefore - wand,
            wand);
    }

    private static double Conductance(ConductionBoundary face, double area) => face.WattsPerSquareMetreKelvin <= 0
        ? 0
        : area / ((1 / face.WattsPerSquareMetreKelvin) + face.FilmResistance);
}
