using Stockwright.Numerics;

namespace Stockwright.Cooling;

/// <summary>Heat that left one vessel in a step, J.</summary>
internal readonly record struct HeatGiven(double Side, double Bottom, double Top, double Steam, double Wand);

/// <summary>
/// The stock in one of its vessels: even while it moves (C.9), conducting once it sets (C.11 to C.14). The wall goes with
/// the stock. Equations in docs/equations-cooling.md.
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
    private double even;
    private ConductionField<GellingStock>? conducting;
    private GellingStock material;

    internal StockBody(CoolingVessel vessel, double kilograms, double celsius, double specificHeat, double conductivity, double density)
    {
        Vessel = vessel;
        Kilograms = kilograms;
        even = celsius;
        this.specificHeat = specificHeat;
        this.conductivity = conductivity;
        DepthMetres = kilograms / density / vessel.FloorSquareMetres;
    }

    internal CoolingVessel Vessel { get; }

    /// <summary>Stock in this vessel, kg.</summary>
    internal double Kilograms { get; private set; }

    internal double DepthMetres { get; }

    internal bool Conducts => conducting is not null;

    internal double WarmestCelsius => conducting?.WarmestCelsius() ?? even;

    internal double MeanCelsius => conducting?.MeanCelsius() ?? even;

    internal double ColdestCelsius => conducting is null ? even : conducting.Celsius.ToArray().Min();

    internal double SideCelsius => conducting?.SideCelsius() ?? even;

    internal double SurfaceCelsius => conducting?.LayerCelsius(conducting.Grid.Layers - 1) ?? even;

    /// <summary>Largest change of any part in the last step, K.</summary>
    internal double LastChange { get; private set; }

    /// <summary>Heat capacity of stock and vessel, J/K.</summary>
    internal double HeatCapacity => (Kilograms * specificHeat) + Vessel.WallHeatCapacityJoulesPerKelvin;

    /// <summary>Heat of stock and vessel above 0 C, J.</summary>
    internal double HeldJoules => conducting?.HeldJoules() ?? (HeatCapacity * even);

    /// <summary>Lets conduction take over, once, when the stock is near setting.</summary>
    internal void MaySet(double settingCelsius, double insideFilm)
    {
        if (conducting is not null || even >= settingCelsius + HandOverKelvins)
        {
            return;
        }

        double floor = Vessel.FloorSquareMetres;
        double radius = Math.Sqrt(floor / Math.PI);
        bool isPan = Vessel.Floor is not null && DepthMetres < radius;
        double nusselt = Math.Clamp(insideFilm * (isPan ? DepthMetres : radius) / conductivity, LeastNusselt, MostNusselt);
        material = new GellingStock(HeatCapacity / (floor * DepthMetres), conductivity, nusselt, settingCelsius);
        double sideFactor = Vessel.PerimeterMetres / (2 * Math.PI * radius);
        ConductionGrid grid = isPan
            ? ConductionGrid.Cylinder(radius, DepthMetres, 1, PanLayers, sideFactor)
            : ConductionGrid.Cylinder(radius, DepthMetres, PotRings, PotLayers, sideFactor);
        conducting = new ConductionField<GellingStock>(grid, material, even) { FilmShare = material.Liquid };
    }

    /// <summary>Carries the vessel on by one step.</summary>
    /// <param name="seconds">Length.</param>
    /// <param name="faces">Films and surroundings.</param>
    /// <param name="latentHeat">Of the steam leaving, J/kg.</param>
    /// <param name="wandWatts">Heat taken by wands.</param>
    internal HeatGiven Step(double seconds, Faces faces, double latentHeat, double wandWatts) => conducting is null
        ? StepEven(seconds, faces, latentHeat, wandWatts)
        : StepField(seconds, faces, latentHeat, wandWatts);

    private HeatGiven StepEven(double seconds, Faces faces, double latentHeat, double wandWatts)
    {
        double floor = Vessel.FloorSquareMetres;
        double side = Conductance(faces.Side, Vessel.PerimeterMetres * DepthMetres);
        double bottom = Conductance(faces.Bottom, floor);
        double top = Conductance(faces.Top, floor);
        double sum = side + bottom + top;
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
        even = after;
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
