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
/// <param name="WallShare">What runs down the wall is colder than the rest by this share of the difference between the rest and the wall.</param>
internal readonly record struct CoolingFactors(double Air, double Bath, double Machine, double Wand, double Film, double? SettingCelsius, double WallShare)
{
    /// <summary>Of a turbulent layer with Eckert and Jackson's profiles (equation C.20): 0.0366/0.1463.</summary>
    internal const double TurbulentWallShare = 0.25;

    /// <summary>Of a laminar layer with Squire's profiles (equation C.20): 12/30.</summary>
    internal const double LaminarWallShare = 0.4;

    private const double EightInTen = 1.2816;

    /// <summary>Pots and tubs lie between the two.</summary>
    private const double MiddleWallShare = 0.32;

    internal static CoolingFactors Central(CoolingCase stock) => new(1, 1, 1, 1, stock.Film.Value, stock.Setting?.Value.DegreesCelsius, MiddleWallShare);

    internal static CoolingFactors Fast(CoolingCase stock) => new(
        Spread(0.2), Spread(0.5), Spread(0.3), Spread(0.3), stock.Film.High, stock.Setting?.Low.DegreesCelsius, TurbulentWallShare);

    internal static CoolingFactors Slow(CoolingCase stock) => new(
        1 / Spread(0.2), 1 / Spread(0.5), 1 / Spread(0.3), 1 / Spread(0.3), stock.Film.Low, stock.Setting?.High.DegreesCelsius, LaminarWallShare);

    private static double Spread(double sigma) => Math.Exp(EightInTen * Math.Log(1 + sigma));
}
