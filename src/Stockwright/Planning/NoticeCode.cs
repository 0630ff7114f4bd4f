using static Stockwright.Evidence.FigureKind;

namespace Stockwright.Planning;

/// <summary>Stable names of what a plan or a running batch tells; figures follow the semicolon of each. Its sentence is a text of the page, found by this name.</summary>
public static class NoticeCode
{
    /// <summary>It takes several potfuls; how many, how, the most at once, and pots it would fit.</summary>
    [Evidence.Figures(Number, Phrase, Volume, Phrase)]
    public const string DoesNotFit = "does-not-fit";

    /// <summary>It fits with less water; how strong stock is let down.</summary>
    [Evidence.Figures(Phrase)]
    public const string LessWater = "less-water";

    /// <summary>The liquid may fall before it is topped up; how far below the rim.</summary>
    [Evidence.Figures(Length)]
    public const string FallsFirst = "falls-first";

    /// <summary>Much boils away; how much, and a lid.</summary>
    [Evidence.Figures(Volume, Phrase)]
    public const string BoilsAway = "boils-away";

    /// <summary>The solids stand out at the start; how far.</summary>
    [Evidence.Figures(Length)]
    public const string StandOut = "stand-out";

    /// <summary>The liquid stands low in a wide pot.</summary>
    public const string PotTooWide = "pot-too-wide";

    /// <summary>A vessel's heater is too weak; for what, and where it settles.</summary>
    [Evidence.Figures(Name, Temperature)]
    public const string HeaterTooWeak = "heater-too-weak";

    /// <summary>A hob is too weak; for what, and where it settles.</summary>
    [Evidence.Figures(Name, Temperature)]
    public const string HobTooWeak = "hob-too-weak";

    /// <summary>Covering takes more water than the yield; what to expect, and what to cut.</summary>
    [Evidence.Figures(Volume, Name)]
    public const string Covered = "covered";

    /// <summary>Another yield than asked; what to expect.</summary>
    [Evidence.Figures(Volume)]
    public const string YieldDiffers = "yield-differs";

    /// <summary>The solids are uncovered before the end.</summary>
    public const string Uncovered = "uncovered";

    /// <summary>The pot nearly runs dry between checks.</summary>
    public const string RunsDry = "runs-dry";

    /// <summary>The level rises over the safe maximum; by how much.</summary>
    [Evidence.Figures(Length)]
    public const string OverSafeMaximum = "over-safe-maximum";

    /// <summary>A hard boil is not put away for the night.</summary>
    public const string AttendedNight = "attended-night";

    /// <summary>Sweating fat is not taken in.</summary>
    public const string FatNotTaken = "fat-not-taken";

    /// <summary>What the recipe says is not counted.</summary>
    [Evidence.Figures(Name)]
    public const string NotCovered = "not-covered";

    /// <summary>A note of the larder; ingredient and note.</summary>
    [Evidence.Figures(Name, Name)]
    public const string IngredientNote = "ingredient-note";

    /// <summary>The simmer asked for cannot be reached; what is done, and the time it takes.</summary>
    [Evidence.Figures(Phrase, Phrase)]
    public const string SimmerOutOfReach = "simmer-out-of-reach";

    /// <summary>A pressure cooker is used as an open pot; why.</summary>
    [Evidence.Figures(Phrase)]
    public const string CookerOpen = "cooker-open";

    /// <summary>The lid is locked.</summary>
    public const string LockedLid = "locked-lid";

    /// <summary>What the cooker holds; pressure, temperature, the recipe's.</summary>
    [Evidence.Figures(Gauge, Temperature, Temperature)]
    public const string PressureHeat = "pressure-heat";

    /// <summary>The open pot's time; from what, and the time at pressure.</summary>
    [Evidence.Figures(Time, Name, Time)]
    public const string PressureTime = "pressure-time";

    /// <summary>A pressure cooker is not put away for the night.</summary>
    public const string PressureNight = "pressure-night";

    /// <summary>The start has passed; start and ready.</summary>
    [Evidence.Figures(Phrase, Moment)]
    public const string StartPassed = "start-passed";

    /// <summary>A deadline that cannot be met; the deadline, the night, the start, ready, and what is sooner.</summary>
    [Evidence.Figures(Moment, Phrase, Phrase, Moment, Phrase)]
    public const string TooLate = "too-late";

    /// <summary>A slow heat-up; how long, and to what.</summary>
    [Evidence.Figures(Time, Name)]
    public const string SlowHeatUp = "slow-heat-up";

    /// <summary>A time outside the recipe's; what it does, shortest, longest, what that means.</summary>
    [Evidence.Figures(Name, Time, Time, Phrase)]
    public const string HoursOutsideRecipe = "hours-outside-recipe";

    /// <summary>Work falls in the night; how much.</summary>
    [Evidence.Figures(Phrase)]
    public const string NightWork = "night-work";

    /// <summary>The night is kept free; how.</summary>
    [Evidence.Figures(Phrase)]
    public const string NightKept = "night-kept";

    /// <summary>The vessel heats itself; which.</summary>
    [Evidence.Figures(Phrase)]
    public const string OwnHeater = "own-heater";

    /// <summary>A locked cooker may come near dry; steam, and with a leaking valve.</summary>
    [Evidence.Figures(Volume, Volume)]
    public const string SealedNearsDry = "sealed-nears-dry";

    /// <summary>A slow cooker's time; to get hot, on which setting, counted from then.</summary>
    [Evidence.Figures(Time, Phrase, Time)]
    public const string SlowTime = "slow-time";

    /// <summary>A crock less than half full.</summary>
    public const string SlowHalfFull = "slow-half-full";

    /// <summary>A slow cooker is not put away for the night.</summary>
    public const string SlowNight = "slow-night";

    /// <summary>Long below hot holding; that line, how long, the cold line, what helps.</summary>
    [Evidence.Figures(Temperature, Time, Temperature, Phrase)]
    public const string SlowWarmUp = "slow-warm-up";

    /// <summary>A kettle goes into no oven at night.</summary>
    public const string KettleNight = "kettle-night";

    /// <summary>A pot for the oven; height, width, the oven's heat.</summary>
    [Evidence.Figures(Length, Length, Temperature, Temperature)]
    public const string OvenSize = "oven-size";

    /// <summary>What goes in late takes the pot out of the oven.</summary>
    public const string OvenLate = "oven-late";

    /// <summary>The pot is in the oven through the night.</summary>
    public const string OvenNight = "oven-night";

    /// <summary>Nothing gives gelatin.</summary>
    public const string NoCollagen = "no-collagen";

    /// <summary>The gelatin sets only below a fridge; below what.</summary>
    [Evidence.Figures(Temperature)]
    public const string SetsTooCold = "sets-too-cold";

    /// <summary>A cut without figures; which.</summary>
    [Evidence.Figures(Name)]
    public const string UnknownCut = "unknown-cut";

    /// <summary>When the heat went on is worked out.</summary>
    public const string HeatOnInferred = "heat-on-inferred";

    /// <summary>A reading is not followed; which, and why.</summary>
    [Evidence.Figures(Phrase)]
    public const string OddReading = "odd-reading";

    /// <summary>The pot loses more or less than planned; how many times.</summary>
    [Evidence.Figures(Number)]
    public const string LosesOtherwise = "loses-otherwise";

    /// <summary>The pot boils dry.</summary>
    public const string RanDry = "ran-dry";

    /// <summary>Water entered before the heat; how much.</summary>
    [Evidence.Figures(Volume)]
    public const string WaterBeforeHeat = "water-before-heat";

    /// <summary>It boiled over, nobody knows how much.</summary>
    public const string BoiledOverUnknown = "boiled-over-unknown";

    /// <summary>A hob nothing is known of; its name.</summary>
    [Evidence.Figures(Name)]
    public const string UnknownHob = "unknown-hob";

    /// <summary>A temperature that cannot be; which.</summary>
    [Evidence.Figures(Temperature)]
    public const string OddTemperature = "odd-temperature";

    /// <summary>Many temperatures that cannot be; how many.</summary>
    [Evidence.Figures(Number)]
    public const string OddTemperatures = "odd-temperatures";

    /// <summary>Readings that jump; how closely they are followed.</summary>
    [Evidence.Figures(Difference)]
    public const string ReadingsJump = "readings-jump";
}
