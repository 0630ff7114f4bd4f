using Stockwright.Physics;

namespace Stockwright.Simmering;

/// <summary>
/// The pot at this moment: the integrator's state, the solids, and the balance of mass and enthalpy.
/// Everything the cook puts in or takes out goes through here, so that the balance closes.
/// </summary>
internal sealed class PotState
{
    /// <summary>A pot this empty counts as dry, kg.</summary>
    private const double LeastLiquidKilograms = 1e-3;

    /// <summary>Liquid so near to that counts as gone, kg.</summary>
    private const double NearlyDryKilograms = 5e-3;

    private readonly PotEnvironment environment;
    private readonly double[] y = new double[PotSystem.StateCount];

    public PotState(PotEnvironment environment, PotSystem system, SimmerScript script)
    {
        this.environment = environment;
        System = system;
        system.DryContentsAt = DryContents;
        Solids = new PotContents(environment.Pot);
        Solids.Add(script.StartSolids, default);
        system.FloatingFat = script.FilmGrows ? Solids.FloatingFat : null;
        y[PotSystem.Contents] = Solids.SolidsLoaded + script.StartWaterKilograms;
        Sync();
        y[PotSystem.Enthalpy] = system.HeatCapacity(y[PotSystem.Contents]) * script.StartCelsius;
        Outcome.MassIn = y[PotSystem.Contents];
        Outcome.EnergyIn = y[PotSystem.Enthalpy];
        Outcome.StartMetres = Level();
        Outcome.StartHeapMetres = Solids.HeapHeight(default);
        Outcome.PeakMetres = Outcome.StartMetres;
    }

    public PotSystem System { get; }

    public PotContents Solids { get; }

    public SimmerOutcome Outcome { get; } = new();

    public ReadOnlySpan<double> Vector => y;

    public Exchange Progress => PotSystem.ExchangeOf(y);

    public double Celsius => System.Celsius(y);

    public double Liquid() => Solids.Liquid(y[PotSystem.Contents], Progress);

    public double Level() => Solids.Level(Liquid(), Celsius, Progress);

    public void Take(ReadOnlySpan<double> integrated)
    {
        integrated.CopyTo(y);
        System.Film = System.FilmAt(y);
        Solids.Hottest = Math.Max(Solids.Hottest, Celsius);
        Outcome.RanDry |= y[PotSystem.Contents] <= DryContents(Progress) + NearlyDryKilograms;
    }

    /// <summary>Tells the equations what is in the pot now.</summary>
    public void Sync()
    {
        System.DryHeatCapacity = environment.PotHeatCapacity + Solids.SolidsHeatCapacity;
        System.SolidsLoaded = Solids.SolidsLoaded;
        System.DryContents = DryContents(Progress);
        System.Surface = environment.Pot.SurfaceAtMetres(environment.Pot.IsTapered
            ? environment.Pot.LevelAtCubicMetres(((y[PotSystem.Contents] - Solids.SolidsLoaded) / 1000) + Solids.Volumes(Progress).Solid)
            : 0);
        System.Film = System.FilmAt(y);
    }

    /// <summary>Notes the highest level, and the lowest once it simmers.</summary>
    public void Track() => Track(y);

    /// <summary>The same for a state on the way.</summary>
    public void Track(ReadOnlySpan<double> state)
    {
        Exchange progress = PotSystem.ExchangeOf(state);
        double level = Solids.Level(Solids.Liquid(state[PotSystem.Contents], progress), System.Celsius(state), progress);
        Outcome.PeakMetres = Math.Max(Outcome.PeakMetres, level);
        if (Outcome.HeatUpSeconds > 0)
        {
            Outcome.LowestMetres = Math.Min(Outcome.LowestMetres, level);
        }
    }

    /// <summary>True when full heat carries the pot past a temperature with a little to spare.</summary>
    public bool CanReach(double celsius)
    {
        Sync();
        double need = environment.LossWatts(celsius) + (System.VapourRate(celsius) * LiquidWaterFit.LatentHeatJoulesPerKilogram(celsius));
        return System.FullHeat > 1.03 * need;
    }

    public void Pour(double kilograms, double celsius)
    {
        double enthalpy = kilograms * PotSystem.LiquidSpecificHeat * celsius;
        y[PotSystem.Contents] += kilograms;
        y[PotSystem.Enthalpy] += enthalpy;
        Outcome.ToppedUpKilograms += kilograms;
        Outcome.MassIn += kilograms;
        Outcome.EnergyIn += enthalpy;
    }

    public void Skim(double kilograms)
    {
        double enthalpy = kilograms * PotSystem.LiquidSpecificHeat * Celsius;
        y[PotSystem.Contents] -= kilograms;
        y[PotSystem.Enthalpy] -= enthalpy;
        Outcome.SkimmedKilograms += kilograms;
        Outcome.MassOut += kilograms;
        Outcome.EnergyOut += enthalpy;
    }

    /// <summary>Liquid lost over the rim, at most what is there.</summary>
    public void Lose(double kilograms)
    {
        double lost = Math.Clamp(kilograms, 0, Math.Max(0, Liquid() - LeastLiquidKilograms));
        double enthalpy = lost * PotSystem.LiquidSpecificHeat * Celsius;
        y[PotSystem.Contents] -= lost;
        y[PotSystem.Enthalpy] -= enthalpy;
        Outcome.SpiltKilograms += lost;
        Outcome.MassOut += lost;
        Outcome.EnergyOut += enthalpy;
    }

    /// <summary>Steam let out at once, kg; the heat of it goes with it.</summary>
    public void Vent(double kilograms)
    {
        double lost = Math.Clamp(kilograms, 0, Math.Max(0, Liquid() - LeastLiquidKilograms));
        double enthalpy = lost * ((PotSystem.LiquidSpecificHeat * Celsius) + LiquidWaterFit.LatentHeatJoulesPerKilogram(Celsius));
        y[PotSystem.Contents] -= lost;
        y[PotSystem.Steam] += lost;
        y[PotSystem.SteamLoss] += enthalpy;
        y[PotSystem.Enthalpy] -= enthalpy;
    }

    public void Add(IReadOnlyList<SolidCharge> joining, double celsius)
    {
        double loaded = Solids.SolidsLoaded;
        double capacity = Solids.SolidsHeatCapacity;
        Solids.Add(joining, Progress);
        double mass = Solids.SolidsLoaded - loaded;
        double enthalpy = (Solids.SolidsHeatCapacity - capacity) * celsius;
        y[PotSystem.Contents] += mass;
        y[PotSystem.Enthalpy] += enthalpy;
        Outcome.MassIn += mass;
        Outcome.EnergyIn += enthalpy;
        Sync();
    }

    /// <summary>All solids out, with the liquor that clings to them (S.7).</summary>
    public void LiftOut()
    {
        double clinging = Math.Min(Liquid(), CountSolids());
        double remaining = Liquid() - clinging;
        double celsius = Celsius;
        double enthalpyBefore = y[PotSystem.Enthalpy];
        Outcome.LiftedWithSolidsKilograms += clinging;
        double before = y[PotSystem.Contents];
        Solids.Clear(Progress);
        y[PotSystem.Contents] = remaining + Solids.Afloat;
        Outcome.MassOut += before - y[PotSystem.Contents];
        Sync();
        y[PotSystem.Enthalpy] = System.HeatCapacity(y[PotSystem.Contents]) * celsius;
        Outcome.EnergyOut += enthalpyBefore - y[PotSystem.Enthalpy];
    }

    /// <summary>Brings the pot to a temperature outside the simulation; the heat is entered as gone, or as come back.</summary>
    public void CoolTo(double celsius)
    {
        double enthalpyBefore = y[PotSystem.Enthalpy];
        y[PotSystem.Enthalpy] = System.HeatCapacity(y[PotSystem.Contents]) * celsius;
        Outcome.EnergyOut += enthalpyBefore - y[PotSystem.Enthalpy];
    }

    /// <summary>Heat off: draws the balance.</summary>
    public void Close(double seconds, double setCelsius)
    {
        Sync();
        Outcome.ClingingKilograms = CountSolids();
        System.Mode = HeatMode.Hold;
        Outcome.TotalSeconds = seconds;
        Outcome.LiquidLeftKilograms = Liquid();
        Outcome.FloatingFatKilograms = Solids.FloatingFat(Progress);
        Outcome.SteamKilograms = y[PotSystem.Steam];
        Outcome.HobHeatJoules = y[PotSystem.HobHeat];
        Outcome.HoldWatts = System.HoldWatts(setCelsius);
        Outcome.SteadySteamKilogramsPerSecond = System.VapourRate(setCelsius);
        Outcome.MassOut += y[PotSystem.Steam];
        Outcome.MassLeft = y[PotSystem.Contents];
        Outcome.EnergyIn += y[PotSystem.HeatIn];
        Outcome.EnergyOut += y[PotSystem.WallLoss] + y[PotSystem.SteamLoss];
        Outcome.EnergyLeft = y[PotSystem.Enthalpy];
        Outcome.LowestMetres = Math.Min(Outcome.LowestMetres, Outcome.PeakMetres);
    }

    private double DryContents(Exchange progress) => Solids.SolidsLoaded + Solids.Afloat - Solids.LeastReleased(progress) + LeastLiquidKilograms;

    /// <summary>Enters what the solids gave, soaked up and set free, before they leave the pot; returns what clings to them once drained, kg.</summary>
    private double CountSolids()
    {
        double clinging = 0;
        foreach (SolidGave gave in Solids.Gave(Progress))
        {
            Outcome.Gave.Add(gave);
            Outcome.ReleasedKilograms += gave.Given;
            Outcome.SoakedUpKilograms += gave.SoakedUp;
            Outcome.SpentSolidsKilograms += gave.SpentKilograms;
            clinging += gave.SpentKilograms * gave.Solid.Release.Clings;
        }

        return clinging;
    }
}
