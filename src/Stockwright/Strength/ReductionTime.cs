using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Physics;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Strength;

/// <summary>How long a reduction takes.</summary>
/// <param name="Time">From the moment it is at temperature.</param>
/// <param name="Rate">Water going off, the central figure.</param>
/// <param name="IsAtBoil">True when the hob's power decides; false when the surface does.</param>
/// <param name="Temperature">Temperature of the liquor.</param>
public sealed record ReductionTimeEstimate(Band<TimeSpan> Time, MassFlow Rate, bool IsAtBoil, Temperature Temperature);

/// <summary>Time to boil water off in an open pan (B.32): at the boil the hob's power decides, below it the surface does.</summary>
public static class ReductionTime
{
    /// <summary>Lowest and highest setting of a hob.</summary>
    public static readonly (Ratio Least, Ratio Most) SettingRange = (Ratio.FromPercent(5), Ratio.FromPercent(100));

    /// <summary>Coldest and hottest reduction.</summary>
    public static readonly (Temperature Least, Temperature Most) TemperatureRange = (Temperature.FromDegreesCelsius(60), Temperature.FromDegreesCelsius(110));

    /// <summary>Time to lose a mass of water.</summary>
    /// <param name="lost">Water to go, from <see cref="ReducedStock.Lost"/>.</param>
    /// <param name="volume">Stock in the pan at the start: what the walls are wetted by.</param>
    /// <param name="pan">The pan, without lid.</param>
    /// <param name="hob">The hob.</param>
    /// <param name="site">Air and room.</param>
    /// <param name="setting">How high the hob is turned, 0.05 to 1.</param>
    /// <param name="simmer">Temperature to reduce at; null for the boil.</param>
    public static StrengthAnswer<ReductionTimeEstimate> Estimate(
        Mass lost, Volume volume, Pot pan, Hob hob, KitchenSite site, Ratio setting, Temperature? simmer = null)
    {
        ArgumentNullException.ThrowIfNull(pan);
        ArgumentNullException.ThrowIfNull(hob);
        ArgumentNullException.ThrowIfNull(site);
        if (!(lost > Mass.Zero) || !(volume > Volume.Zero) || lost.Kilograms >= volume.Liters * 1.3)
        {
            return StrengthAnswer.No<ReductionTimeEstimate>("to", "Reducing leaves less than there is, and more than nothing.");
        }

        if (volume > pan.BrimVolume)
        {
            return StrengthAnswer.No<ReductionTimeEstimate>("pan", "That does not fit this pan.");
        }

        if (!(setting.DecimalFractions is >= 0.05 and <= 1))
        {
            return StrengthAnswer.No<ReductionTimeEstimate>("setting", "The hob is turned between 5 and 100 %.");
        }

        PotEnvironment environment = new(pan with { Kind = PotKind.Open }, hob, LidPosition.Off, site, Air.PressurePascals(site));
        double boil = environment.BoilingCelsius;
        double celsius = simmer?.DegreesCelsius ?? boil;
        if (celsius > boil + 0.05)
        {
            return StrengthAnswer.No<ReductionTimeEstimate>("simmer", FormattableString.Invariant($"It boils at {boil:0.0} °C here and gets no hotter."));
        }

        if (celsius < 60)
        {
            return StrengthAnswer.No<ReductionTimeEstimate>("simmer", "Below 60 °C (140 °F) hardly anything goes off, and it is not safe to keep it there: reduce hotter.");
        }

        double level = pan.LevelAtCubicMetres(volume.CubicMeters * 0.75);
        double latent = SaturatedWater.LatentHeatJoulesPerKilogram(celsius + 273.15);
        double walls = Losses(pan, level, celsius, site, environment.AirPascals);
        return celsius >= boil - 0.05
            ? AtBoil(lost, hob, setting, walls, latent, boil)
            : BelowBoil(lost, environment, site, pan.SurfaceAtMetres(level), hob, setting, walls, latent, celsius);
    }

    private static StrengthAnswer<ReductionTimeEstimate> AtBoil(Mass lost, Hob hob, Ratio setting, double walls, double latent, double boil)
    {
        double Rate(Ratio efficiency) => (((double)hob.RatedPower.Watts * setting.DecimalFractions * efficiency.DecimalFractions) - walls) / latent;
        return Rate(hob.Efficiency.Low) > 0
            ? Answer(lost, Rate(hob.Efficiency.Low), Rate(hob.Efficiency.Value), Rate(hob.Efficiency.High), isAtBoil: true, boil)
            : StrengthAnswer.No<ReductionTimeEstimate>("setting", "At that setting the hob may not keep this pan at the boil: turn it up, or use a smaller pan.");
    }

    private static StrengthAnswer<ReductionTimeEstimate> BelowBoil(
        Mass lost, PotEnvironment environment, KitchenSite site, double area, Hob hob, Ratio setting, double walls, double latent, double celsius)
    {
        Stated<double> film = SurfaceFilm.Under(site, null, Area.FromSquareMeters(area));
        double Rate(double factor) => area * Math.Max(SurfaceLoss.StillFlux(environment, celsius, factor), SurfaceLoss.BubblingFlux(environment, celsius, isRolling: false));
        double most = (((double)hob.RatedPower.Watts * setting.DecimalFractions * hob.Efficiency.Low.DecimalFractions) - walls) / latent;
        return most >= Rate(film.Value)
            ? Answer(lost, Rate(film.Low), Rate(film.Value), Rate(film.High), isAtBoil: false, celsius)
            : StrengthAnswer.No<ReductionTimeEstimate>("setting", "At that setting the hob may not keep this pan so hot: turn it up.");
    }

    /// <summary>Heat that goes by wall and surface without steam, W (P.31, P.32).</summary>
    private static double Losses(Pot pan, double level, double celsius, KitchenSite site, double airPascals)
    {
        double diameter = 2 * pan.RadiusAtMetres(level / 2);
        double emissivity = WallProperties.EmissivityFraction(pan.Material);
        double room = site.Room.DegreesCelsius;
        return PotLosses.SideWatts(diameter, level, celsius, room, emissivity, airPascals)
            + PotLosses.TopConvectionRadiationWatts(2 * pan.RadiusAtMetres(level), celsius, room, PotLosses.WaterEmissivity, airPascals);
    }

    private static StrengthAnswer<ReductionTimeEstimate> Answer(Mass lost, double slow, double central, double fast, bool isAtBoil, double celsius) =>
        StrengthAnswer.Of(new ReductionTimeEstimate(
            new Band<TimeSpan>(
                TimeSpan.FromSeconds(lost.Kilograms / fast), TimeSpan.FromSeconds(lost.Kilograms / central), TimeSpan.FromSeconds(lost.Kilograms / slow)),
            MassFlow.FromKilogramsPerSecond(central),
            isAtBoil,
            Temperature.FromDegreesCelsius(celsius)));
}
