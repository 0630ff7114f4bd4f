namespace Stockwright.Cooling;

/// <summary>
/// What the central figures are multiplied by at an edge of the band (equation C.15 in docs/equations-cooling.md). The stated
/// uncertainties are about one standard deviation on time: 20 % in air, 50 % in a bath, 30 % for a machine; eight in ten
/// lie within 1.28 of them.
/// </summary>
/// <param name="Air">On films in air.</param>
/// <param name="Bath">On films in a bath, inside and out.</param>
/// <param name="Machine">On the strength of a cold store's machine.</param>
/// <param name="Wand">On the conductance of a wand.</param>
/// <param name="Film">Share of clean water's evaporation.</param>
/// <param name="SettingCelsius">Setting temperature, or null for a stock that stays thin.</param>
internal readonly record struct CoolingFactors(double Air, double Bath, double Machine, double Wand, double Film, double? SettingCelsius)
{
    private const double EightInTen = 1.2816;

    internal static CoolingFactors Central(CoolingCase stock) => new(1, 1, 1, 1, stock.Film.Value, stock.Setting?.Value.DegreesCelsius);

    internal static CoolingFactors Fast(CoolingCase stock) => new(
        Spread(0.2), Spread(0.5), Spread(0.3), Spread(0.3), stock.Film.High, stock.Setting?.Low.DegreesCelsius);

    internal static CoolingFactors Slow(CoolingCase stock) => new(
        1 / Spread(0.2), 1 / Spread(0.5), 1 / Spread(0.3), 1 / Spread(0.3), stock.Film.Low, stock.Setting?.High.DegreesCelsius);

    private static double Spread(double sigma) => Math.Exp(EightInTen * Math.Log(1 + sigma));
}
