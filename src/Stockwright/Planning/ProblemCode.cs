using static Stockwright.Evidence.FigureKind;

namespace Stockwright.Planning;

/// <summary>What is wrong with a request. Figures follow the semicolon of each; its sentence is a text of the page, found by this name.</summary>
public enum ProblemCode
{
    /// <summary>A pot too narrow or too wide; least and most.</summary>
    [Evidence.Figures(Length, Length)]
    PotAcross,

    /// <summary>A pot too low or too high; least and most.</summary>
    [Evidence.Figures(Length, Length)]
    PotHigh,

    /// <summary>A pot too light or too heavy; least and most.</summary>
    [Evidence.Figures(Mass, Mass)]
    PotWeight,

    /// <summary>A hob too weak or too strong; least and most.</summary>
    [Evidence.Figures(Power, Power)]
    HobPower,

    /// <summary>A vessel's own heater chosen as the hob.</summary>
    HobIsVessel,

    /// <summary>A hob's own efficiency out of range; least and most.</summary>
    [Evidence.Figures(Share, Share)]
    HobEfficiency,

    /// <summary>A lid too little or too far open; least and most.</summary>
    [Evidence.Figures(Share, Share)]
    LidOpening,

    /// <summary>An oven out of range; most shelves, shortest and longest.</summary>
    [Evidence.Figures(Number, Length, Length)]
    OvenSize,

    /// <summary>A tray out of range; its name, shortest and longest.</summary>
    [Evidence.Figures(Name, Length, Length)]
    TraySize,

    /// <summary>A kitchen too low or too high; how far below the sea and above it.</summary>
    [Evidence.Figures(Length, Length)]
    Altitude,

    /// <summary>Air pressure out of range; least and most.</summary>
    [Evidence.Figures(Pressure, Pressure)]
    AirPressure,

    /// <summary>A room too cold or too warm; least and most.</summary>
    [Evidence.Figures(Temperature, Temperature)]
    Room,

    /// <summary>Humidity out of range; least and most.</summary>
    [Evidence.Figures(Share, Share)]
    Humidity,

    /// <summary>Cold water too cold or too warm; least and most.</summary>
    [Evidence.Figures(Temperature, Temperature)]
    TapWater,

    /// <summary>A kitchen's own film factor out of range; least and most.</summary>
    [Evidence.Figures(Number, Number)]
    FilmFactor,

    /// <summary>A kitchen's own clinging figure out of range; least and most.</summary>
    [Evidence.Figures(Share, Share)]
    Clinging,

    /// <summary>Pieces too small or too large; least and most.</summary>
    [Evidence.Figures(Length, Length)]
    PieceSize,

    /// <summary>A recipe with an error; its field and the error.</summary>
    [Evidence.Figures(Name, Name)]
    RecipeIncomplete,

    /// <summary>Every main ingredient is left out.</summary>
    NothingToDraw,

    /// <summary>Bones to be used in a recipe that takes none.</summary>
    TakesNoBones,

    /// <summary>A locked lid over a hard boil.</summary>
    BoilsInTheOpen,

    /// <summary>A lid on what is to boil down.</summary>
    LidOnBoilsNotDown,

    /// <summary>A time for what ends by how much is left.</summary>
    BoiledDownByAmount,

    /// <summary>Too little or too much stock; least and most.</summary>
    [Evidence.Figures(Volume, Volume)]
    YieldRange,

    /// <summary>No bones given.</summary>
    BonesMissing,

    /// <summary>A cut the larder does not have; its name.</summary>
    [Evidence.Figures(Name)]
    BonesUnknown,

    /// <summary>Bones too light or too heavy; least and most.</summary>
    [Evidence.Figures(Mass, Mass)]
    BonesWeight,

    /// <summary>A simmer too cool or too hot; least and most.</summary>
    [Evidence.Figures(Temperature, Temperature)]
    SimmerRange,

    /// <summary>A simmer too short or too long; least and most.</summary>
    [Evidence.Figures(Time, Time)]
    SimmerTime,

    /// <summary>Checks too often or too seldom; least and most.</summary>
    [Evidence.Figures(Time, Time)]
    CheckInterval,

    /// <summary>Both a start and a time to be ready by, or neither.</summary>
    StartOrReady,

    /// <summary>A date out of range; first and last year.</summary>
    [Evidence.Figures(Number, Number)]
    Year,

    /// <summary>Waking and bedtime are the same.</summary>
    NeverAsleep,

    /// <summary>A line above the rim; least room under it.</summary>
    [Evidence.Figures(Length)]
    FilledOverRim,

    /// <summary>A line over the safe maximum; least room under the rim.</summary>
    [Evidence.Figures(Length)]
    FilledTooHigh,

    /// <summary>A line too low; the least.</summary>
    [Evidence.Figures(Length)]
    FilledTooLow,

    /// <summary>No pot.</summary>
    NoPot,

    /// <summary>More pots than one cook minds; the most.</summary>
    [Evidence.Figures(Number)]
    TooManyPots,

    /// <summary>No free hob.</summary>
    NoHob,

    /// <summary>More hobs than one cook minds; the most.</summary>
    [Evidence.Figures(Number)]
    TooManyHobs,

    /// <summary>Side by side with one pot or one hob.</summary>
    SideBySideTakesTwo,

    /// <summary>A slow cooker on warm; what it holds.</summary>
    [Evidence.Figures(Temperature)]
    SlowOnWarm,

    /// <summary>A slow cooker without its lid.</summary>
    SlowLidOff,

    /// <summary>A simmer asked of a slow cooker.</summary>
    SlowTemperature,

    /// <summary>A recipe a slow cooker cannot make.</summary>
    SlowTakesOneSimmer,

    /// <summary>A simmer too short for a slow cooker; the shortest.</summary>
    [Evidence.Figures(Time)]
    SlowTooShort,

    /// <summary>Another vessel in the oven.</summary>
    OvenTakesOpenPots,

    /// <summary>No oven to simmer in.</summary>
    NoOven,

    /// <summary>A pot wider than the shelf; pot, shelf length and width.</summary>
    [Evidence.Figures(Length, Length, Length)]
    PotTooWideForOven,

    /// <summary>A recipe that cannot be made in the oven.</summary>
    OvenTakesOneSimmer,

    /// <summary>A simmer too short for the oven.</summary>
    OvenTooShort,

    /// <summary>A pressure given for a kettle.</summary>
    KettleHoldsNoPressure,

    /// <summary>A pressure given for another vessel.</summary>
    HoldsNoPressure,

    /// <summary>A pressure out of range; least and most.</summary>
    [Evidence.Figures(Gauge, Gauge)]
    GaugeRange,

    /// <summary>A heater given for an ordinary pot.</summary>
    NoOwnHeater,

    /// <summary>A slow cooker's power missing or out of range; least and most.</summary>
    [Evidence.Figures(Power, Power)]
    SlowPower,

    /// <summary>A kettle's power missing or out of range; least and most.</summary>
    [Evidence.Figures(Power, Power)]
    KettlePower,

    /// <summary>A crock too small or too large; least and most.</summary>
    [Evidence.Figures(Volume, Volume)]
    SlowSize,

    /// <summary>A kettle too small or too large; least and most.</summary>
    [Evidence.Figures(Volume, Volume)]
    KettleSize,

    /// <summary>A kettle too shallow; the room it needs under the rim.</summary>
    [Evidence.Figures(Length)]
    KettleShallow,

    /// <summary>A simmer below the boil under a locked lid; coolest, hottest, asked.</summary>
    [Evidence.Figures(Temperature, Temperature, Temperature)]
    TooCoolToLock,

    /// <summary>A pot too small for anything.</summary>
    NothingFits,

    /// <summary>More potfuls than are planned; how many, what one makes, and from how much of what.</summary>
    [Evidence.Figures(Number, Volume, Mass, Name)]
    TooManyPotfuls,

    /// <summary>A locked cooker that would run dry.</summary>
    LockedRunsDry,

    /// <summary>A pot left alone that would run dry.</summary>
    LeftAloneRunsDry,

    /// <summary>A pot that would boil dry.</summary>
    RunsDry,
}
