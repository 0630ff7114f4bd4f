using static Stockwright.Evidence.FigureKind;

namespace Stockwright.Planning;

/// <summary>Names of parts of a sentence that are there or not, or one of several; each is a text of the page.</summary>
public static class NoticePhrase
{
    /// <summary>in {0} rounds, one after the other</summary>
    [Evidence.Figures(Number)]
    public const string InRounds = "InRounds";

    /// <summary>in {0} pots side by side</summary>
    [Evidence.Figures(Number)]
    public const string SideBySide = "SideBySide";

    /// <summary>in {0} rounds, up to {1} pots side by side</summary>
    [Evidence.Figures(Number, Number)]
    public const string InRoundsSideBySide = "InRoundsSideBySide";

    /// <summary>It would fit in one go in: {0}.</summary>
    [Evidence.Figures(Name)]
    public const string FitsInOneGo = "FitsInOneGo";

    /// <summary>All of it fits in one batch with a little less water: {0} of …</summary>
    [Evidence.Figures(Volume, Volume)]
    public const string LetDownAfterStraining = "LetDownAfterStraining";

    /// <summary>All of it fits in one batch with a little less water: {0} of …</summary>
    [Evidence.Figures(Volume)]
    public const string LetDownInUse = "LetDownInUse";

    /// <summary>A lid ajar saves most of it.</summary>
    public const string LidSaves = "LidSaves";

    /// <summary>The recipe simmers at {0}; here water boils at {1}, so it is kept a …</summary>
    [Evidence.Figures(Temperature, Temperature, Temperature)]
    public const string KeptUnderTheBoil = "KeptUnderTheBoil";

    /// <summary>{0} cannot be reached: here the pot holds between {1} and {2}.</summary>
    [Evidence.Figures(Temperature, Temperature, Temperature)]
    public const string OutOfReachLocked = "OutOfReachLocked";

    /// <summary>{0} cannot be reached: here the pot boils at {1}.</summary>
    [Evidence.Figures(Temperature, Temperature)]
    public const string OutOfReachOpen = "OutOfReachOpen";

    /// <summary>The plan runs {0} instead of {1} to draw as much from {2}.</summary>
    [Evidence.Figures(Time, Time, Name)]
    public const string RunsLonger = "RunsLonger";

    /// <summary>For the same from {0} it would take {1:0.0} times as long.</summary>
    [Evidence.Figures(Name, Number)]
    public const string WouldTakeLonger = "WouldTakeLonger";

    /// <summary>This recipe lifts things out below the boil, so the cooker is used …</summary>
    public const string LidLaidOn = "LidLaidOn";

    /// <summary>With its lid off or ajar the cooker is an open pot. To cook under …</summary>
    public const string LidNotOn = "LidNotOn";

    /// <summary>now</summary>
    public const string Now = "Now";

    /// <summary>{0}</summary>
    [Evidence.Figures(Moment)]
    public const string At = "At";

    /// <summary>{0}, to keep your night free,</summary>
    [Evidence.Figures(Moment)]
    public const string StartKeepsNight = "StartKeepsNight";

    /// <summary>without work in the night</summary>
    public const string NoNightWork = "NoNightWork";

    /// <summary>Sooner: {0}.</summary>
    [Evidence.Figures(Phrase)]
    public const string Sooner = "Sooner";

    /// <summary>Ask for less, or simmer for less, to have it sooner.</summary>
    public const string AskForLess = "AskForLess";

    /// <summary>with more pots and hobs at once {0}</summary>
    [Evidence.Figures(Moment)]
    public const string SoonerTogether = "SoonerTogether";

    /// <summary>getting up in the night {0}</summary>
    [Evidence.Figures(Moment)]
    public const string SoonerGettingUp = "SoonerGettingUp";

    /// <summary>heating up with the lid on {0}</summary>
    [Evidence.Figures(Moment)]
    public const string SoonerCovered = "SoonerCovered";

    /// <summary>Shorter gives less of what the recipe is made for.</summary>
    public const string ShorterGivesLess = "ShorterGivesLess";

    /// <summary>Longer dulls the taste and gives little more.</summary>
    public const string LongerDulls = "LongerDulls";

    /// <summary>Overnight it goes into the low oven with its lid on, so that your …</summary>
    public const string OvernightInOven = "OvernightInOven";

    /// <summary>At bedtime it is strained and cooled, and goes on in the morning, …</summary>
    public const string OvernightCold = "OvernightCold";

    /// <summary>One step falls in the night.</summary>
    public const string OneNightStep = "OneNightStep";

    /// <summary>{0} steps fall in the night.</summary>
    [Evidence.Figures(Number)]
    public const string NightSteps = "NightSteps";

    /// <summary>A slow cooker</summary>
    public const string SlowCooker = "SlowCooker";

    /// <summary>A kettle</summary>
    public const string Kettle = "Kettle";

    /// <summary>low</summary>
    public const string SettingLow = "SettingLow";

    /// <summary>high</summary>
    public const string SettingHigh = "SettingHigh";

    /// <summary>Bring it to the simmer in a pot on the hob first, start with hot …</summary>
    public const string WarmUpFirst = "WarmUpFirst";

    /// <summary>Bring it to the simmer in a pot on the hob first, start with hot …</summary>
    public const string WarmUpFirstOrHigh = "WarmUpFirstOrHigh";

    /// <summary>Put the lid on, make less, or take more heat.</summary>
    public const string WarmUpFaster = "WarmUpFaster";

    /// <summary>The level read at {0:clock}, {1} below the rim, fits no believable …</summary>
    [Evidence.Figures(Moment, Length)]
    public const string OddLevel = "OddLevel";

    /// <summary>That it ran low at {0:clock} fits neither the readings nor the …</summary>
    [Evidence.Figures(Moment)]
    public const string OddCover = "OddCover";

    /// <summary>A first simmer at {0:clock} fits neither this hob nor when the heat …</summary>
    [Evidence.Figures(Moment)]
    public const string OddSimmer = "OddSimmer";

    /// <summary>The temperature read at {0:clock} does not fit this heat-up, so it …</summary>
    [Evidence.Figures(Moment)]
    public const string OddTemperature = "OddTemperature";

    /// <summary>The strained stock is not what the readings left in the pot: check …</summary>
    public const string OddStrained = "OddStrained";
}
