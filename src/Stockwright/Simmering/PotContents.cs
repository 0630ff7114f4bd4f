using Stockwright.Kitchen;
using Stockwright.Physics;

namespace Stockwright.Simmering;

/// <summary>What lies in the pot at a moment: the solids, when each went in, and where the liquid stands over them.</summary>
internal sealed class PotContents(Pot pot)
{
    private readonly List<(SolidCharge Solid, double JoinedAtProgress)> solids = [];

    public double SolidsLoaded { get; private set; }

    public double SolidsHeatCapacity { get; private set; }

    public void Add(IReadOnlyList<SolidCharge> joining, double progress)
    {
        foreach (SolidCharge solid in joining)
        {
            solids.Add((solid, progress));
            SolidsLoaded += solid.MassKilograms;
            SolidsHeatCapacity += solid.HeatCapacityJoulesPerKelvin;
        }
    }

    public void Clear()
    {
        solids.Clear();
        SolidsLoaded = 0;
        SolidsHeatCapacity = 0;
    }

    /// <summary>Liquor the solids have handed over, kg; negative when they have swollen.</summary>
    public double Released(double progress)
    {
        double sum = 0;
        foreach ((SolidCharge solid, double joined) in solids)
        {
            sum += solid.ReleasedKilograms * solid.ExchangeDone(progress - joined);
        }

        return sum;
    }

    /// <summary>The least they will have handed over from now on, kg: what gives has given so much, what swells may still swell.</summary>
    public double LeastReleased(double progress)
    {
        double sum = 0;
        foreach ((SolidCharge solid, double joined) in solids)
        {
            sum += Math.Min(solid.ReleasedKilograms, solid.ReleasedKilograms * solid.ExchangeDone(progress - joined));
        }

        return sum;
    }

    /// <summary>Liquor given by the solids that give, and soaked up by those that swell, kg, both positive.</summary>
    public (double Given, double SoakedUp) Exchanged(double progress)
    {
        double given = 0;
        double soaked = 0;
        foreach ((SolidCharge solid, double joined) in solids)
        {
            double change = solid.ReleasedKilograms * solid.ExchangeDone(progress - joined);
            given += Math.Max(0, change);
            soaked += Math.Max(0, -change);
        }

        return (given, soaked);
    }

    /// <summary>Free liquid, kg.</summary>
    public double Liquid(double contentsKilograms, double progress) => contentsKilograms - SolidsLoaded + Released(progress);

    /// <summary>Mass of the solids without the liquor between them, kg.</summary>
    public double SolidsNow(double progress) => SolidsLoaded - Released(progress);

    /// <summary>Volume displaced and volume as heaped, m3.</summary>
    public (double Solid, double Packed) Volumes(double progress)
    {
        double solid = 0;
        double packed = 0;
        foreach ((SolidCharge charge, double joined) in solids)
        {
            double change = charge.ReleasedKilograms * charge.ExchangeDone(progress - joined) / 1000;
            double now = Math.Max(charge.VolumeCubicMetres - change, 0.2 * charge.VolumeCubicMetres);
            solid += now;
            packed += Math.Max(charge.PackVolumeCubicMetres * now / charge.VolumeCubicMetres, now);
        }

        return (solid, packed);
    }

    /// <summary>Level of the liquid, m; over the solids when they are covered, between them when not (S.2).</summary>
    public double Level(double liquidKilograms, double celsius, double progress)
    {
        double liquid = liquidKilograms / LiquidWaterFit.DensityKilogramsPerCubicMetre(Math.Clamp(celsius, 0, 100));
        (double solid, double packed) = Volumes(progress);
        return pot.LevelAtCubicMetres(Occupied(liquid, solid, packed));
    }

    /// <summary>Height of the heap, m.</summary>
    public double HeapHeight(double progress) => pot.LevelAtCubicMetres(Volumes(progress).Packed);

    /// <summary>Liquid that brings the level to a height, kg; the inverse of <see cref="Level"/>.</summary>
    public double LiquidForLevel(double levelMetres, double celsius, double progress)
    {
        double below = pot.VolumeAtMetres(levelMetres);
        (double solid, double packed) = Volumes(progress);
        double liquid = below >= packed ? below - solid : below * (1 - (solid / packed));
        return liquid * LiquidWaterFit.DensityKilogramsPerCubicMetre(Math.Clamp(celsius, 0, 100));
    }

    private static double Occupied(double liquid, double solid, double packed)
    {
        double gaps = packed - solid;
        return liquid >= gaps || gaps <= 0 ? liquid + solid : liquid * packed / gaps;
    }
}
