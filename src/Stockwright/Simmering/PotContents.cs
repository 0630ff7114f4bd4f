using Stockwright.Kitchen;
using Stockwright.Physics;

namespace Stockwright.Simmering;

/// <summary>What lies in the pot at a moment: the solids, when each went in, and where the liquid stands over them.</summary>
internal sealed class PotContents(Pot pot)
{
    /// <summary>Density of the fat that floats, hot, kg/m3 (from memory: 0.865 kg/L at 95 C).</summary>
    private const double FatDensity = 870;

    private readonly List<(SolidCharge Solid, Exchange Joined)> solids = [];

    public double SolidsLoaded { get; private set; }

    public double SolidsHeatCapacity { get; private set; }

    /// <summary>Fat that floats from solids lifted out before, kg.</summary>
    public double Afloat { get; private set; }

    /// <summary>Hottest the pot has been, C; it says how much of its water the meat loses in the end.</summary>
    public double Hottest { get; set; }

    public void Add(IReadOnlyList<SolidCharge> joining, Exchange progress)
    {
        foreach (SolidCharge solid in joining)
        {
            solids.Add((solid, progress));
            SolidsLoaded += solid.MassKilograms;
            SolidsHeatCapacity += solid.HeatCapacityJoulesPerKelvin;
        }
    }

    /// <summary>All solids out; their fat stays.</summary>
    public void Clear(Exchange progress)
    {
        Afloat = FloatingFat(progress);
        solids.Clear();
        SolidsLoaded = 0;
        SolidsHeatCapacity = 0;
    }

    /// <summary>Liquor the solids have handed over, kg; negative when they have swollen.</summary>
    public double Released(Exchange progress)
    {
        double sum = 0;
        foreach ((SolidCharge solid, Exchange joined) in solids)
        {
            sum += solid.Release.Liquor(progress - joined, Hottest);
        }

        return sum;
    }

    /// <summary>The least they will have handed over from now on, kg: what gives has given so much, what swells may still swell.</summary>
    public double LeastReleased(Exchange progress)
    {
        double sum = 0;
        foreach ((SolidCharge solid, Exchange joined) in solids)
        {
            sum += solid.Release.Given(progress - joined, Hottest) + Math.Min(0, solid.Release.OtherWater.Value);
        }

        return sum;
    }

    /// <summary>What each solid has given, soaked up and set free.</summary>
    public IEnumerable<SolidGave> Gave(Exchange progress)
    {
        foreach ((SolidCharge solid, Exchange joined) in solids)
        {
            Exchange since = progress - joined;
            yield return new SolidGave(solid, since, Hottest, solid.Release.Given(since, Hottest), -solid.Release.Taken(since), solid.Release.FreedFat(since));
        }
    }

    /// <summary>Free liquid, kg; the fat on it not counted.</summary>
    public double Liquid(double contentsKilograms, Exchange progress) => contentsKilograms - SolidsLoaded - Afloat + Released(progress);

    /// <summary>Fat that floats on it, kg.</summary>
    public double FloatingFat(Exchange progress)
    {
        double sum = Afloat;
        foreach ((SolidCharge solid, Exchange joined) in solids)
        {
            sum += solid.Release.FreedFat(progress - joined);
        }

        return sum;
    }

    /// <summary>Volume displaced and volume as heaped, m3.</summary>
    public (double Solid, double Packed) Volumes(Exchange progress)
    {
        double solid = 0;
        double packed = 0;
        foreach ((SolidCharge charge, Exchange joined) in solids)
        {
            Exchange since = progress - joined;
            double change = (charge.Release.Liquor(since, Hottest) / 1000) + (charge.Release.FreedFat(since) / FatDensity);
            double now = Math.Max(charge.VolumeCubicMetres - change, 0.2 * charge.VolumeCubicMetres);
            solid += now;
            packed += Math.Max(charge.PackVolumeCubicMetres * now / charge.VolumeCubicMetres, now);
        }

        return (solid, packed);
    }

    /// <summary>Level of the liquid, m; over the solids when they are covered, between them when not (S.2).</summary>
    public double Level(double liquidKilograms, double celsius, Exchange progress)
    {
        // Over the last spoonful the free liquid may pass nothing by a rounding; a level does not.
        double liquid = (Math.Max(0, liquidKilograms) / LiquidWaterFit.DensityKilogramsPerCubicMetre(Math.Clamp(celsius, 0, 100))) + (FloatingFat(progress) / FatDensity);
        (double solid, double packed) = Volumes(progress);
        return pot.LevelAtCubicMetres(Occupied(liquid, solid, packed));
    }

    /// <summary>Height of the heap, m.</summary>
    public double HeapHeight(Exchange progress) => pot.LevelAtCubicMetres(Volumes(progress).Packed);

    /// <summary>Liquid that brings the level to a height, kg; the inverse of <see cref="Level"/>.</summary>
    public double LiquidForLevel(double levelMetres, double celsius, Exchange progress)
    {
        double below = pot.VolumeAtMetres(levelMetres);
        (double solid, double packed) = Volumes(progress);
        double liquid = below >= packed ? below - solid : below * (1 - (solid / packed));
        return (liquid - (FloatingFat(progress) / FatDensity)) * LiquidWaterFit.DensityKilogramsPerCubicMetre(Math.Clamp(celsius, 0, 100));
    }

    private static double Occupied(double liquid, double solid, double packed)
    {
        double gaps = packed - solid;
        return liquid >= gaps || gaps <= 0 ? liquid + solid : liquid * packed / gaps;
    }
}

/// <summary>What one solid has done to the liquor, kg.</summary>
/// <param name="Solid">The solid.</param>
/// <param name="Since">Progress of the exchange since it went in.</param>
/// <param name="Hottest">Hottest it has been, C.</param>
/// <param name="Given">Liquor given.</param>
/// <param name="SoakedUp">Liquor soaked up.</param>
/// <param name="FreedFat">Fat come free.</param>
internal readonly record struct SolidGave(SolidCharge Solid, Exchange Since, double Hottest, double Given, double SoakedUp, double FreedFat)
{
    /// <summary>Drained, without what clings.</summary>
    public double SpentKilograms => Solid.MassKilograms - Given + SoakedUp - FreedFat;
}
