using Stockwright.Cooling;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>What a blank field means where no row says so.</summary>
internal static class CoolingDefaults
{
    /// <summary>As many as it takes, within reason.</summary>
    public const int Pans = 12;
    public const int Tubs = 40;

    /// <summary>Water in a sink that does not run.</summary>
    public static Mass SinkWater { get; } = Mass.FromKilograms(20);

    /// <summary>Tap water in an ice bath.</summary>
    public static Mass BathWater(CoolingCase stock) => Mass.FromKilograms(Math.Max(2, Math.Round(0.4 * stock.Volume.Liters, 1)));

    /// <summary>Ice for a bath, in half kilograms.</summary>
    public static Mass BathIce(CoolingCase stock, Temperature until, Mass water)
    {
        Temperature to = until < stock.Start ? Temperature.FromDegreesCelsius(Math.Max(0, until.DegreesCelsius)) : stock.Start;
        return Mass.FromKilograms(Math.Ceiling(IceNeeded.ForBath(stock, stock.Start, to, water).Kilograms * 2) / 2);
    }
}
