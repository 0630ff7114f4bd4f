using Stockwright.Kitchen;
using Stockwright.Physics;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>What stock cools in: a pot, a pan, a tub or a jar.</summary>
public sealed record CoolingVessel
{
    /// <summary>Shortest and longest side of a pan.</summary>
    public static readonly (Length Least, Length Most) PanSideRange = (Length.FromCentimeters(5), Length.FromCentimeters(100));

    /// <summary>Shallowest and deepest pan.</summary>
    public static readonly (Length Least, Length Most) PanDepthRange = (Length.FromCentimeters(1), Length.FromCentimeters(40));

    /// <summary>Smallest and largest tub.</summary>
    public static readonly (Volume Least, Volume Most) TubRange = (Volume.FromLiters(0.05), Volume.FromLiters(30));

    private const double SteelConductivity = 15;
    private const double SteelDensity = 7900;
    private const double PlasticConductivity = 0.3;
    private const double GlassConductivity = 1;

    /// <summary>What the cook calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Inner diameter of a round vessel; null for a rectangular one.</summary>
    public Length? Diameter { get; init; }

    /// <summary>Inner length and width of a rectangular vessel; null for a round one.</summary>
    public (Length Length, Length Width)? Floor { get; init; }

    /// <summary>Volume to the brim.</summary>
    public required Volume Capacity { get; init; }

    /// <summary>Wall thickness over conductivity, m2 K/W.</summary>
    public required double WallResistanceSquareMetreKelvinsPerWatt { get; init; }

    /// <summary>Mass of the empty vessel.</summary>
    public required Mass EmptyMass { get; init; }

    /// <summary>Specific heat of its wall.</summary>
    public required SpecificEntropy WallSpecificHeat { get; init; }

    /// <summary>Emissivity of its outside.</summary>
    public required Ratio Emissivity { get; init; }

    /// <summary>Heat capacity of its lid, zero or more: a plate over the mouth, rim and knob a tenth more (estimate).</summary>
    public Entropy LidHeatCapacity { get; init; } = Entropy.Zero;

    /// <summary>What kind of thing it is.</summary>
    public VesselKind Kind { get; init; } = VesselKind.Pot;

    /// <summary>How full it may be: room is left in a jar for the stock to rise as it freezes.</summary>
    public Ratio FillLimit { get; init; } = Ratio.FromDecimalFractions(1);

    /// <summary>Most stock it may hold.</summary>
    public Volume Usable => Capacity * FillLimit.DecimalFractions;

    /// <summary>Area of the floor.</summary>
    public Area FloorArea => Area.FromSquareMeters(FloorSquareMetres);

    internal double FloorSquareMetres => Floor is { } floor
        ? floor.Length.Meters * floor.Width.Meters
        : Math.PI / 4 * Diameter!.Value.Meters * Diameter.Value.Meters;

    internal double PerimeterMetres => Floor is { } floor
        ? 2 * (floor.Length.Meters + floor.Width.Meters)
        : Math.PI * Diameter!.Value.Meters;

    internal double WallHeatCapacityJoulesPerKelvin => EmptyMass.Kilograms * WallSpecificHeat.JoulesPerKilogramKelvin;

    /// <summary>A pot filled to a volume: taken as a cylinder of the same volume and depth.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The pot does not hold the volume.</exception>
    public static CoolingVessel FromPot(Pot pot, Volume filledTo)
    {
        ArgumentNullException.ThrowIfNull(pot);
        double depth = pot.LevelAt(filledTo).Meters;
        (double thickness, double conductivity, double wallDensity) = pot.Material switch
        {
            WallMaterial.Aluminium => (0.003, 200.0, 2700),
            WallMaterial.Copper => (0.002, 390.0, 8960),
            WallMaterial.EnamelledIron => (0.002, 40.0, 7850),
            WallMaterial.Stoneware => (0.010, 1.5, 2300), // conductivity of stoneware from memory, 1 to 2 W/(m K)
            _ => (0.001, SteelConductivity, SteelDensity),
        };
        double specificHeat = WallProperties.SpecificHeat(pot.Material).Value.JoulesPerKilogramKelvin;
        double brim = pot.BrimDiameter.Meters;
        return new CoolingVessel
        {
            Name = pot.Name,
            Diameter = Length.FromMeters(2 * Math.Sqrt(filledTo.CubicMeters / (Math.PI * depth))),
            Capacity = pot.BrimVolume,
            WallResistanceSquareMetreKelvinsPerWatt = thickness / conductivity,
            EmptyMass = pot.EmptyMass,
            WallSpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(specificHeat),
            Emissivity = WallProperties.Emissivity(pot.Material).Value,
            LidHeatCapacity = Lid(Math.PI / 4 * brim * brim, thickness * wallDensity, specificHeat),
        };
    }

    /// <summary>A rectangular steel pan by its inside measures.</summary>
    /// <param name="length">5 to 100 cm.</param>
    /// <param name="width">5 to 100 cm.</param>
    /// <param name="depth">1 to 40 cm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure lies outside its range.</exception>
    public static CoolingVessel Pan(Length length, Length width, Length depth)
    {
        double l = PhysicsRange.Within(length.Centimeters, PanSideRange.Least.Centimeters, PanSideRange.Most.Centimeters, "cm", "The length of a pan", nameof(length)) / 100;
        double w = PhysicsRange.Within(width.Centimeters, PanSideRange.Least.Centimeters, PanSideRange.Most.Centimeters, "cm", "The width of a pan", nameof(width)) / 100;
        double d = PhysicsRange.Within(depth.Centimeters, PanDepthRange.Least.Centimeters, PanDepthRange.Most.Centimeters, "cm", "The depth of a pan", nameof(depth)) / 100;
        double steel = ((l * w) + (2 * (l + w) * d)) * 0.0007 * SteelDensity;
        return Make("steel pan", null, (length, width), l * w * d, 0.0007 / SteelConductivity, steel, 500, 0.3) with
        {
            Kind = VesselKind.Pan,
            LidHeatCapacity = Lid(l * w, 0.0007 * SteelDensity, 500),
        };
    }

    /// <summary>A round plastic tub as wide as it is high.</summary>
    /// <param name="capacity">0.05 to 30 L.</param>
    /// <exception cref="ArgumentOutOfRangeException">The volume lies outside that range.</exception>
    public static CoolingVessel Tub(Volume capacity)
    {
        double cubicMetres = Litres(capacity, TubRange.Least.Liters, TubRange.Most.Liters, "a tub", nameof(capacity)) / 1000;
        double diameter = Math.Cbrt(4 * cubicMetres / Math.PI);
        double plastic = 1.5 * Math.PI * diameter * diameter * 0.001 * 920;
        return Make("plastic tub", diameter, null, cubicMetres, 0.001 / PlasticConductivity, plastic, 1900, 0.92) with
        {
            Kind = VesselKind.Tub,
            LidHeatCapacity = Lid(Math.PI / 4 * diameter * diameter, 0.92, 1900),
        };
    }

    /// <summary>A straight round glass jar with a thin steel lid, filled as its size says: what freezes grows by a tenth.</summary>
    public static CoolingVessel Jar(JarSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        double diameter = size.InnerDiameter.Meters;
        double resistance = size.Wall.Meters / GlassConductivity;
        return Make("glass jar", diameter, null, size.Capacity.CubicMeters, resistance, size.Glass.Kilograms, 840, 0.92) with
        {
            Kind = VesselKind.Jar,
            FillLimit = size.FillLimit,
            LidHeatCapacity = Lid(Math.PI / 4 * diameter * diameter, 0.00025 * SteelDensity, 500),
        };
    }

    private static Entropy Lid(double squareMetres, double kilogramsPerSquareMetre, double specificHeat) =>
        Entropy.FromJoulesPerKelvin(1.1 * squareMetres * kilogramsPerSquareMetre * specificHeat);

    private static double Litres(Volume capacity, double least, double most, string what, string parameter) =>
        PhysicsRange.Within(capacity.Liters, least, most, "L", $"The volume of {what}", parameter);

    private static CoolingVessel Make(
        string name, double? diameter, (Length Length, Length Width)? floor, double cubicMetres, double resistance, double kilograms, double specificHeat, double emissivity) => new()
        {
            Name = name,
            Diameter = diameter is { } metres ? Length.FromMeters(metres) : null,
            Floor = floor,
            Capacity = Volume.FromCubicMeters(cubicMetres),
            WallResistanceSquareMetreKelvinsPerWatt = resistance,
            EmptyMass = Mass.FromKilograms(kilograms),
            WallSpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(specificHeat),
            Emissivity = Ratio.FromDecimalFractions(emissivity),
        };
}
