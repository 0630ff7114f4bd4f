namespace Stockwright.Cooling;

/// <summary>What the central figures of a course are multiplied by, one for each input of its band (equation C.15 in docs/equations-cooling.md).</summary>
internal readonly record struct CoolingFactors()
{
    /// <summary>Of a turbulent layer with Eckert and Jackson's profiles (equation C.20): 0.0366/0.1463.</summary>
    internal const double TurbulentWallShare = 0.25;

    /// <summary>Of a laminar layer with Squire's profiles (equation C.20): 12/30.</summary>
    internal const double LaminarWallShare = 0.4;

    /// <summary>Pots and tubs lie between the two.</summary>
    internal const double MiddleWallShare = 0.32;

    /// <summary>On convection in air, still or moved.</summary>
    internal double Convection { get; init; } = 1;

    /// <summary>On the emissivity of walls and lids.</summary>
    internal double Emissivity { get; init; } = 1;

    /// <summary>On what vessels side by side keep of their films.</summary>
    internal double Crowding { get; init; } = 1;

    /// <summary>On what passes through the floor.</summary>
    internal double Floor { get; init; } = 1;

    /// <summary>On the evaporation of the surface.</summary>
    internal double Film { get; init; } = 1;

    /// <summary>On what a lid lets past.</summary>
    internal double Escape { get; init; } = 1;

    /// <summary>On the film under a lid.</summary>
    internal double UnderLid { get; init; } = 1;

    /// <summary>On the film of the stock in a bath.</summary>
    internal double Inside { get; init; } = 1;

    /// <summary>On the film of a bath that stands still.</summary>
    internal double StillBath { get; init; } = 1;

    /// <summary>On the film of loose ice on a wall that stirring rocks.</summary>
    internal double RockedIce { get; init; } = 1;

    /// <summary>On the film of a bath that moves.</summary>
    internal double MovingBath { get; init; } = 1;

    /// <summary>On the share of the time what is stirred every few minutes moves.</summary>
    internal double StirShare { get; init; } = 1;

    /// <summary>On the strength of a cold store's machine.</summary>
    internal double Machine { get; init; } = 1;

    /// <summary>On what leaks into a cold store.</summary>
    internal double Leak { get; init; } = 1;

    /// <summary>On the conductance of a wand.</summary>
    internal double Wand { get; init; } = 1;

    /// <summary>On every face against what it holds: sizes as typed, the pot taken as a cylinder, its filling and specific heat.</summary>
    internal double Size { get; init; } = 1;

    /// <summary>Setting temperature, or null for a stock that stays thin.</summary>
    internal double? SettingCelsius { get; init; }

    /// <summary>What runs down the wall is colder than the rest by this share of the difference between the rest and the wall.</summary>
    internal double WallShare { get; init; } = MiddleWallShare;

    internal static CoolingFactors Central(CoolingCase stock) => new() { SettingCelsius = stock.Setting?.Value.DegreesCelsius };
}
