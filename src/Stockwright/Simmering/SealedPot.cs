using Stockwright.Evidence;
using Stockwright.Kitchen;

namespace Stockwright.Simmering;

/// <summary>What a pressure cooker loses behind its locked lid (S.4 in docs/equations.md).</summary>
internal static class SealedPot
{
    /// <summary>Density of steam at 100 C, kg/m3 (IAPWS).</summary>
    private const double SteamDensity = 0.598;

    /// <summary>Steam past valve and gasket at pressure, kg/h.</summary>
    public static Stated<double> Leak { get; } = SimmerAssumptions.Get("sealed-leak");

    /// <summary>Steam let out until the air over the liquid is gone and the valve has closed, in volumes of the room over the liquid.</summary>
    public static Stated<double> VentedRooms { get; } = SimmerAssumptions.Get("vented-rooms");

    /// <summary>Least liquid over the base of a cooker, kg.</summary>
    public static Stated<double> LeastLiquid { get; } = SimmerAssumptions.Get("sealed-least");

    /// <summary>Steam vented on the way up, kg.</summary>
    /// <param name="pot">The cooker.</param>
    /// <param name="levelMetres">Level of what is in it.</param>
    public static double VentedKilograms(Pot pot, double levelMetres) =>
        VentedRooms.Value * SteamDensity * Math.Max(0, pot.BrimVolume.CubicMeters - pot.VolumeAtMetres(levelMetres));
}
