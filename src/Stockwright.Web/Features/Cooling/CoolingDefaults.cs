using Stockwright.Cooling;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>What a blank field means.</summary>
internal static class CoolingDefaults
{
    public const double Litres = 10;
    public const double StartCelsius = 95;
    public const double PotDiameterMetres = 0.28;
    public const double PotHeightMetres = 0.26;

    /// <summary>The half-size pan of EN 631-1, 65 mm deep, by its inside.</summary>
    public const double PanLengthMetres = 0.305;
    public const double PanWidthMetres = 0.245;
    public const double PanDepthMetres = 0.065;
    public const double TubLitres = 1;
    public const string JarId = "500ml";

    /// <summary>Water in a sink that does not run.</summary>
    public const double SinkKilograms = 20;

    /// <summary>As many as it takes, within reason.</summary>
    public const int Pans = 12;
    public const int Tubs = 40;

    /// <summary>Glass takes care: only where the cook says there is some.</summary>
    public const int Jars = 0;

    /// <summary>Tap water in an ice bath.</summary>
    public static Mass BathWater(CoolingCase stock) => Mass.FromKilograms(Math.Max(2, Math.Round(0.4 * stock.Volume.Liters, 1)));

    /// <summary>Ice for a bath, in half kilograms.</summary>
    public static Mass BathIce(CoolingCase stock, Temperature until, Mass water)
    {
        Temperature to = until < stock.Start ? Temperature.FromDegreesCelsius(Math.Max(0, until.DegreesCelsius)) : stock.Start;
        return Mass.FromKilograms(Math.Ceiling(IceNeeded.ForBath(stock, stock.Start, to, water).Kilograms * 2) / 2);
    }
}
