using Stockwright.Evidence;
using Stockwright.Kitchen;

namespace Stockwright.Simmering;

/// <summary>What a pressure cooker loses behind its locked lid (S.4 in docs/equations.md).</summary>
internal static class SealedPot
{
    /// <summary>Density of steam at 100 C, kg/m3 (IAPWS).</summary>
    private const double SteamDensity = 0.598;

    /// <summary>Steam vented on the way up, kg.</summary>
    /// <param name="ventedRooms">Steam let out until the air over the liquid is gone and the valve has closed, in volumes of the room over the liquid.</param>
    /// <param name="pot">The cooker.</param>
    /// <param name="levelMetres">Level of what is in it.</param>
    public static double VentedKilograms(Stated<double> ventedRooms, Pot pot, double levelMetres) =>
        ventedRooms.Value * SteamDensity * Math.Max(0, pot.BrimVolume.CubicMeters - pot.VolumeAtMetres(levelMetres));
}
