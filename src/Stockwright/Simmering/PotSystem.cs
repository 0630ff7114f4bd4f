using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Numerics;
using Stockwright.Physics;

namespace Stockwright.Simmering;

/// <summary>How the cook drives the heat.</summary>
internal enum HeatMode
{
    /// <summary>Full power until the set temperature.</summary>
    Full,

    /// <summary>Just what holds the temperature, as far as the hob can.</summary>
    Hold,

    /// <summary>Just what makes it climb at a steady rate.</summary>
    Climb,

    /// <summary>No heat.</summary>
    Off,
}

/// <summary>
/// The pot as a system of differential equations (S.1, S.3, S.4 and the pace of S.6 in docs/equations.md).
/// Enthalpy and mass are the states, so that what a Runge-Kutta step does to them sums up exactly in the balance.
/// </summary>
internal sealed class PotSystem(PotEnvironment environment, double filmFactor, double lidFactor, double efficiency) : IOdeSystem
{
    /// <summary>Enthalpy of pot and contents above 0 C, J.</summary>
    public const int Enthalpy = 0;

    /// <summary>Mass of the contents, kg.</summary>
    public const int Contents = 1;

    /// <summary>Mass gone as steam, kg.</summary>
    public const int Steam = 2;

    /// <summary>Heat put in, J.</summary>
    public const int HeatIn = 3;

    /// <summary>Heat lost by wall and surface, J.</summary>
    public const int WallLoss = 4;

    /// <summary>Enthalpy gone with the steam, J.</summary>
    public const int SteamLoss = 5;

    /// <summary>Hours at 98 C for what heat hurries little, h (S.6).</summary>
    public const int WeakHours = 6;

    /// <summary>Heat put in by the hob alone, J.</summary>
    public const int HobHeat = 7;

    /// <summary>Hours at 98 C for the drawing of gelatin, h (S.6).</summary>
    public const int CollagenHours = 8;

    public const int StateCount = 9;

    /// <summary>Liquid over which the steam of a pot that runs dry dies away, kg.</summary>
    private const double LastLiquid = 0.03;

    /// <summary>
    /// Specific heat of liquid water between 15 and 95 C, J/(kg K): the mean slope of the IAPWS enthalpy,
    /// (398.087 - 62.980) kJ/kg over 80 K.
    /// </summary>
    public const double LiquidSpecificHeat = 4188.8;

    /// <summary>Steam a sealed pressure cooker lets go, kg/s.</summary>
    private readonly double sealedLeak = environment.Assumptions.SealedLeak.Value / 3600;

    /// <summary>Activation energy of the drawing of gelatin over the gas constant, K (B.1).</summary>
    private readonly double collagenKelvins = environment.Assumptions.CollagenActivation.Value / ExtractionRates.GasConstant;

    public int Dimension => StateCount;

    public HeatMode Mode { get; set; }

    /// <summary>With <see cref="HeatMode.Climb"/>: K/s.</summary>
    public double ClimbRate { get; set; }

    /// <summary>Part of the vapour that leaves past the lid.</summary>
    public double Escape { get; set; } = 1;

    /// <summary>True in the oven: heat is not the hob's, and as much as is needed is there.</summary>
    public bool InOven { get; set; }

    /// <summary>True while the lid of a pressure cooker is locked: only a little steam leaves.</summary>
    public bool IsLocked { get; set; } = environment.IsSealed;

    /// <summary>Heat capacity of pot and solids, J/K.</summary>
    public double DryHeatCapacity { get; set; }

    /// <summary>Mass of the solids when they went in, kg.</summary>
    public double SolidsLoaded { get; set; }

    /// <summary>Mass of the contents at which no free liquid is left to boil away, kg, when what the pot holds was last looked at.</summary>
    public double DryContents { get; set; }

    /// <summary>The same at a later progress of the exchange: solids go on giving, so it falls. Asked only when the pot is nearly dry.</summary>
    public Func<Exchange, double>? DryContentsAt { get; set; }

    /// <summary>Free surface, m2.</summary>
    public double Surface { get; set; }

    /// <summary>Loss over that of clean open water once fat covers it.</summary>
    public double FilmFactor { get; } = filmFactor;

    /// <summary>Loss over that of clean open water when the pot was last looked at (S.3).</summary>
    public double Film { get; set; } = filmFactor;

    /// <summary>Fat that floats, by the progress of the exchange, kg; null for a surface that is given as it is.</summary>
    public Func<Exchange, double>? FloatingFat { get; set; }

    /// <summary>Loss over that of clean open water in a state (S.3).</summary>
    public double FilmAt(ReadOnlySpan<double> y) =>
        FloatingFat is null ? FilmFactor : SurfaceFilm.Factor(FilmFactor, environment.CleanOverCovered, SurfaceFilm.CleanShare(FloatingFat(ExchangeOf(y)) / Surface, environment.Assumptions));

    public double LidFactor => lidFactor;

    /// <summary>True while the cook keeps it at a rolling boil.</summary>
    public bool IsRolling { get; set; }

    /// <summary>Rated power of the hob it stands on, W.</summary>
    public double HobWatts { get; set; } = environment.HobWatts;

    public double FullHeat => HobWatts * efficiency;

    public double HeatCapacity(double contents) => DryHeatCapacity + ((contents - SolidsLoaded) * LiquidSpecificHeat);

    public double Celsius(ReadOnlySpan<double> y) => y[Enthalpy] / HeatCapacity(y[Contents]);

    /// <summary>How far the exchange has come in a state.</summary>
    public static Exchange ExchangeOf(ReadOnlySpan<double> y) => new(y[WeakHours], y[CollagenHours]);

    public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        double capacity = HeatCapacity(y[Contents]);
        double celsius = y[Enthalpy] / capacity;
        double walls = environment.LossWatts(celsius);
        double latent = LiquidWaterFit.LatentHeatJoulesPerKilogram(celsius);
        double wetness = Wetness(y);
        double vapour = wetness > 0 ? wetness * VapourRate(celsius, FilmAt(y)) : 0;
        double available = InOven ? double.MaxValue : FullHeat;
        double heat = Mode switch
        {
            HeatMode.Full => FullHeat,
            HeatMode.Hold => Math.Clamp(walls + (vapour * latent), 0, available),
            HeatMode.Climb => Math.Clamp(walls + (vapour * latent) + (capacity * ClimbRate), 0, available),
            _ => 0,
        };

        double steamEnthalpy = (LiquidSpecificHeat * celsius) + latent;
        dydt[Enthalpy] = heat - walls - (vapour * steamEnthalpy);
        dydt[Contents] = -vapour;
        dydt[Steam] = vapour;
        dydt[HeatIn] = heat;
        dydt[WallLoss] = walls;
        dydt[SteamLoss] = vapour * steamEnthalpy;
        double arrhenius = -collagenKelvins * ((1 / (celsius + 273.15)) - (1 / ExtractionRates.ReferenceKelvins));
        dydt[WeakHours] = Math.Exp(ExtractionRates.WeakShare * arrhenius) / 3600;
        dydt[CollagenHours] = Math.Exp(arrhenius) / 3600;
        dydt[HobHeat] = InOven ? 0 : heat;
    }

    /// <summary>One with liquid in the pot; it falls to nothing over the last of it, so that a dry pot boils away just what its solids still give.</summary>
    private double Wetness(ReadOnlySpan<double> y)
    {
        double liquid = y[Contents] - DryContents;
        if (liquid < LastLiquid && DryContentsAt is not null)
        {
            liquid = y[Contents] - DryContentsAt(ExchangeOf(y));
        }

        return Math.Clamp(liquid / LastLiquid, 0, 1);
    }

    /// <summary>Steam leaving the pot, kg/s (S.3 below the boil, S.4 at it).</summary>
    public double VapourRate(double celsius) => VapourRate(celsius, Film);

    private double VapourRate(double celsius, double film)
    {
        if (IsLocked)
        {
            // The valve closes bit by bit; a jump would leave the integrator's last step before an event unchecked.
            return sealedLeak * lidFactor * Math.Clamp((celsius - 80) / 15, 0, 1);
        }

        // The spread of a locked lid is that of its valve; while it is open the surface's own is as far as it goes.
        Stated<double> surfaceFilm = environment.Assumptions.SurfaceFilm;
        double factor = environment.IsSealed ? Math.Clamp(lidFactor, surfaceFilm.Low / surfaceFilm.Value, surfaceFilm.High / surfaceFilm.Value) : lidFactor;
        double still = Surface * factor * SurfaceLoss.StillFlux(environment, celsius, LidEscape.Past(Escape, film));
        if (Mode == HeatMode.Full)
        {
            return still;
        }

        // At the boil bubbles break the film and the burner decides; a cook keeps it as asked, and the hob is the limit.
        double asked = Surface * Escape * factor * SurfaceLoss.BubblingFlux(environment, celsius, IsRolling);
        double limit = Math.Max(0, FullHeat - environment.LossWatts(celsius)) / LiquidWaterFit.LatentHeatJoulesPerKilogram(celsius);
        return Math.Max(still, Math.Min(asked, limit));
    }

    /// <summary>Heat that holds a temperature, W.</summary>
    public double HoldWatts(double celsius) =>
        environment.LossWatts(celsius) + (HeldVapourRate(celsius) * LiquidWaterFit.LatentHeatJoulesPerKilogram(celsius));

    /// <summary>Steam leaving the pot while it is held at a temperature, kg/s.</summary>
    public double HeldVapourRate(double celsius)
    {
        HeatMode before = Mode;
        Mode = HeatMode.Hold;
        double rate = VapourRate(celsius);
        Mode = before;
        return rate;
    }
}
