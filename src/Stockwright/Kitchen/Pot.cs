using UnitsNet;

namespace Stockwright.Kitchen;

/// <summary>
/// A pot, straight or tapered, as the inside of a circular frustum.
/// Volumes and levels follow from the two inner diameters and the inner height (equation K.1 in docs/equations.md).
/// </summary>
public sealed record Pot
{
    /// <summary>Smallest and largest inner diameter accepted.</summary>
    public static readonly (Length Least, Length Most) DiameterRange = (Length.FromCentimeters(8), Length.FromCentimeters(120));

    /// <summary>Smallest and largest inner height accepted; a pot taller than this does not stand in a kitchen.</summary>
    public static readonly (Length Least, Length Most) HeightRange = (Length.FromCentimeters(4), Length.FromCentimeters(120));

    /// <summary>Smallest and largest brim volume a pot is told by; with its diameter it gives the height.</summary>
    public static readonly (Volume Least, Volume Most) BrimVolumeRange = (Volume.FromLiters(0.5), Volume.FromLiters(1400));

    /// <summary>Lightest and heaviest empty pot accepted.</summary>
    public static readonly (Mass Least, Mass Most) EmptyMassRange = (Mass.FromGrams(50), Mass.FromKilograms(300));

    /// <summary>Lowest and highest gauge pressure of a pressure cooker accepted: 0.5 bar to 15 psi, which is 1.03 bar.</summary>
    public static readonly (Pressure Least, Pressure Most) GaugePressureRange = (Pressure.FromBars(0.5), Pressure.FromPoundsForcePerSquareInch(15));

    /// <summary>Gauge pressure of a usual pressure cooker at its high setting (common practice, no source).</summary>
    public static readonly Pressure UsualGaugePressure = Pressure.FromBars(1);

    /// <summary>Stable name used in links.</summary>
    public required string Id { get; init; }

    /// <summary>What the cook calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Inner diameter at the base.</summary>
    public required Length BaseDiameter { get; init; }

    /// <summary>Inner diameter at the brim; equal to the base for a straight pot.</summary>
    public required Length BrimDiameter { get; init; }

    /// <summary>Inner height from base to brim.</summary>
    public required Length InnerHeight { get; init; }

    /// <summary>Wall material.</summary>
    public WallMaterial Material { get; init; } = WallMaterial.StainlessSteel;

    /// <summary>Mass of the empty pot without its lid.</summary>
    public required Mass EmptyMass { get; init; }

    /// <summary>What kind of vessel it is.</summary>
    public PotKind Kind { get; init; } = PotKind.Open;

    /// <summary>Pressure a pressure cooker holds over that of the air, within <see cref="GaugePressureRange"/>; null for the usual one, and for every other vessel.</summary>
    public Pressure? GaugePressure { get; init; }

    /// <summary>
    /// Rated power of the vessel's own heater, within <see cref="HeaterPowerRange"/>: a slow cooker's on high, or what a kettle takes in.
    /// Null for a vessel that stands on a hob.
    /// </summary>
    public Power? HeaterPower { get; init; }

    /// <summary>True for a vessel that heats itself and takes no hob.</summary>
    public bool HasOwnHeater => Kind is PotKind.SlowCooker or PotKind.Kettle;

    /// <summary>True when base and brim differ.</summary>
    public bool IsTapered => Math.Abs(BaseDiameter.Meters - BrimDiameter.Meters) > 1e-6;

    /// <summary>Volume to the brim.</summary>
    public Volume BrimVolume => VolumeAt(InnerHeight);

    /// <summary>Smallest and largest rated power accepted of a heater of its own (estimates: from small household crocks to 300 L kettles).</summary>
    /// <param name="kind">A slow cooker or a kettle.</param>
    /// <exception cref="ArgumentOutOfRangeException">The vessel has no heater of its own.</exception>
    public static (Power Least, Power Most) HeaterPowerRange(PotKind kind) => kind switch
    {
        PotKind.SlowCooker => (Power.FromWatts(100), Power.FromWatts(400)),
        PotKind.Kettle => (Power.FromKilowatts(2), Power.FromKilowatts(150)),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This vessel has no heater of its own."),
    };

    /// <summary>A straight-sided pot from its inner diameter and height.</summary>
    public static Pot Straight(string id, string name, Length innerDiameter, Length innerHeight, Mass? emptyMass = null, WallMaterial material = WallMaterial.StainlessSteel) =>
        new()
        {
            Id = id,
            Name = name,
            BaseDiameter = innerDiameter,
            BrimDiameter = innerDiameter,
            InnerHeight = innerHeight,
            Material = material,
            EmptyMass = emptyMass ?? EstimateEmptyMass(innerDiameter, innerDiameter, innerHeight, material),
        };

    /// <summary>A straight-sided pot from the brim volume and inner diameter, as pots are sold.</summary>
    internal static Pot FromBrimVolume(string id, string name, Volume brimVolume, Length innerDiameter, Mass? emptyMass = null, WallMaterial material = WallMaterial.StainlessSteel)
    {
        double radiusMetres = innerDiameter.Meters / 2;
        return Straight(id, name, innerDiameter, Length.FromMeters(brimVolume.CubicMeters / (Math.PI * radiusMetres * radiusMetres)), emptyMass, material);
    }

    /// <summary>
    /// Mass of an empty pot of ordinary gauge, when the cook has not weighed it (estimate, about +-40 %):
    /// wall 1.0 mm and base 5 mm of steel, 3 mm and 5 mm of aluminium, 2 mm and 2.5 mm of copper, 2 mm and 3 mm of enamelled iron,
    /// 10 mm of stoneware at 2300 kg/m3.
    /// </summary>
    public static Mass EstimateEmptyMass(Length baseDiameter, Length brimDiameter, Length innerHeight, WallMaterial material)
    {
        (double wallMetres, double baseMetres, double density) = material switch
        {
            WallMaterial.Aluminium => (0.003, 0.005, 2700.0),
            WallMaterial.Copper => (0.002, 0.0025, 8960.0),
            WallMaterial.EnamelledIron => (0.002, 0.003, 7800.0),
            WallMaterial.Stoneware => (0.010, 0.010, 2300.0),
            _ => (0.001, 0.005, 7900.0),
        };
        double baseRadius = baseDiameter.Meters / 2;
        double brimRadius = brimDiameter.Meters / 2;
        double height = innerHeight.Meters;
        double slant = Math.Sqrt((height * height) + ((brimRadius - baseRadius) * (brimRadius - baseRadius)));
        double wallArea = Math.PI * (baseRadius + brimRadius) * slant;
        double baseArea = Math.PI * baseRadius * baseRadius;
        return Mass.FromKilograms(density * ((wallArea * wallMetres) + (baseArea * baseMetres)));
    }

    /// <summary>Volume below a level.</summary>
    /// <param name="level">Height above the inside of the base, from zero to the inner height.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level lies below the base or above the brim.</exception>
    internal Volume VolumeAt(Length level)
    {
        double levelMetres = level.Meters;
        if (!(levelMetres >= 0) || levelMetres > InnerHeight.Meters * (1 + 1e-12))
        {
            throw new ArgumentOutOfRangeException(nameof(level), level, "A level lies between the base and the brim.");
        }

        return Volume.FromCubicMeters(VolumeAtMetres(levelMetres));
    }

    /// <summary>Level at which the pot holds a volume.</summary>
    /// <param name="volume">From zero to the brim volume.</param>
    /// <exception cref="ArgumentOutOfRangeException">The volume is negative or above the brim volume.</exception>
    internal Length LevelAt(Volume volume)
    {
        double cubicMetres = volume.CubicMeters;
        if (!(cubicMetres >= 0) || cubicMetres > BrimVolume.CubicMeters * (1 + 1e-12))
        {
            throw new ArgumentOutOfRangeException(nameof(volume), volume, "A pot holds between nothing and its brim volume.");
        }

        return Length.FromMeters(LevelAtCubicMetres(cubicMetres));
    }

    /// <summary>Inner diameter at a level.</summary>
    public Length DiameterAt(Length level) => Length.FromMeters(2 * RadiusAtMetres(level.Meters));

    internal double RadiusAtMetres(double levelMetres) =>
        (BaseDiameter.Meters + ((BrimDiameter.Meters - BaseDiameter.Meters) * levelMetres / InnerHeight.Meters)) / 2;

    internal double SurfaceAtMetres(double levelMetres)
    {
        double radius = RadiusAtMetres(levelMetres);
        return Math.PI * radius * radius;
    }

    /// <summary>Unchecked; a level above the brim reads the cone continued upward, so that an overflow can be measured.</summary>
    internal double VolumeAtMetres(double levelMetres)
    {
        double baseRadius = BaseDiameter.Meters / 2;
        double radius = RadiusAtMetres(levelMetres);
        return Math.PI * levelMetres / 3 * ((baseRadius * baseRadius) + (baseRadius * radius) + (radius * radius));
    }

    /// <summary>Unchecked inverse of <see cref="VolumeAtMetres"/>; exact for both shapes.</summary>
    internal double LevelAtCubicMetres(double cubicMetres)
    {
        double baseRadius = BaseDiameter.Meters / 2;
        double slope = ((BrimDiameter.Meters / 2) - baseRadius) / InnerHeight.Meters;
        if (Math.Abs(slope) < 1e-9)
        {
            return cubicMetres / (Math.PI * baseRadius * baseRadius);
        }

        // The frustum is a difference of cones, so the radius at a level follows from a cube root.
        double cube = (baseRadius * baseRadius * baseRadius) + (3 * slope * cubicMetres / Math.PI);
        return (Math.Cbrt(cube) - baseRadius) / slope;
    }
}
