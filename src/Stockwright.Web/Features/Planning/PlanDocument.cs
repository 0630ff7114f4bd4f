using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>A whole plan. Every number is in the SI unit its name ends in; instants are ISO 8601.</summary>
/// <param name="Link">Address of the same plan as a page.</param>
/// <param name="Ignored">Sentences on what of the request was left aside.</param>
/// <param name="Recipe">Stable name of the recipe.</param>
/// <param name="RecipeName">Plain name of the recipe.</param>
/// <param name="Pot">The pot planned for.</param>
/// <param name="LidKind">How the lid sits during the simmer.</param>
/// <param name="LidOpenFraction">Open part of the mouth; one without lid.</param>
/// <param name="SlowSetting">Setting of a slow cooker; null for every other vessel.</param>
/// <param name="SimmersInOven">True when it simmers in the oven.</param>
/// <param name="YieldCubicMetres">Strained, defatted stock of one potful, measured cold.</param>
/// <param name="TotalCubicMetres">Stock of all potfuls.</param>
/// <param name="Fit">How it stands in the pot.</param>
/// <param name="Ways">What can be done where the wish does not fit at once, this plan's way first; empty where it fits.</param>
/// <param name="Amounts">What goes in, for one potful.</param>
/// <param name="Roast">Roasting, or null.</param>
/// <param name="Blanch">Blanching, or null.</param>
/// <param name="HeatUp">Getting to the first simmer.</param>
/// <param name="Simmer">The pot over time.</param>
/// <param name="Ledger">Every litre in and out.</param>
/// <param name="Boiling">Boiling here.</param>
/// <param name="Timeline">Every step.</param>
/// <param name="Notices">What to know first.</param>
/// <param name="Assumptions">Numbers the plan leans on.</param>
/// <param name="Prediction">Body, fat, nutrition and allergens, with chances; null when the pot boils dry.</param>
public sealed record PlanDocument(
    string Link,
    IReadOnlyList<string> Ignored,
    string Recipe,
    string RecipeName,
    PotDocument Pot,
    LidKind LidKind,
    double LidOpenFraction,
    SlowCookerSetting? SlowSetting,
    bool SimmersInOven,
    BandDocument YieldCubicMetres,
    BandDocument TotalCubicMetres,
    FitDocument Fit,
    IReadOnlyList<WayDocument> Ways,
    IReadOnlyList<AmountDocument> Amounts,
    RoastDocument? Roast,
    BlanchDocument? Blanch,
    HeatUpDocument HeatUp,
    SimmerDocument Simmer,
    LedgerDocument Ledger,
    BoilingDocument Boiling,
    TimelineDocument Timeline,
    IReadOnlyList<NoticeDocument> Notices,
    IReadOnlyList<AssumptionDocument> Assumptions,
    PredictionDocument? Prediction);

/// <summary>One way to meet a wish that does not fit at once.</summary>
public sealed record WayDocument(SplitWay Way, string Link, double TotalCubicMetres, int Potfuls, int PotsAtOnce, double LetDownCubicMetres, string Body, DateTimeOffset Start, DateTimeOffset Ready, double HandsOnSeconds);

/// <summary>A pot.</summary>
public sealed record PotDocument(
    string Id, string Name, double BaseDiameterMetres, double BrimDiameterMetres, double InnerHeightMetres, double BrimVolumeCubicMetres, double EmptyMassKilograms, WallMaterial Material, PotKind Kind,
    double? GaugePressurePascals, double? HeaterWatts);

/// <summary>How the batch stands in the pot.</summary>
public sealed record FitDocument(
    FitVerdict Verdict,
    int Potfuls,
    int PotsAtOnce,
    int Rounds,
    double LetDownCubicMetres,
    double LargestYieldCubicMetres,
    IReadOnlyList<string> PotsThatFit,
    double SolidsDisplacementCubicMetres,
    double SolidsHeightMetres,
    double WaterToLineCubicMetres,
    double FillLineMetres,
    double FillLineFromRimMetres,
    double HeldLineMetres,
    double PeakLevelMetres,
    double FreeboardMetres,
    double SafeMaximumMetres,
    FillLimit Limit,
    double CoverDepthMetres,
    bool IsCovered,
    bool CoverDecidesWater);

/// <summary>One ingredient.</summary>
public sealed record AmountDocument(
    string Ingredient,
    string Name,
    LineRole Role,
    Preparation Preparation,
    double MassKilograms,
    double AsBoughtMassKilograms,
    double InPotMassKilograms,
    string? Pieces,
    double JoinsAtSeconds,
    string Joins,
    IReadOnlyList<string> Allergens);

/// <summary>Roasting.</summary>
public sealed record RoastDocument(
    double OvenTemperatureKelvins,
    double OvenFanTemperatureKelvins,
    string GasMark,
    int FahrenheitName,
    bool HasFan,
    double TimeSeconds,
    double TurnAtSeconds,
    double TotalTimeSeconds,
    double? VegetablesJoinBeforeEndSeconds,
    double? PasteJoinsBeforeEndSeconds,
    string TrayName,
    int TraysToFill,
    int TraysAtOnce,
    int OvenRounds,
    IReadOnlyList<TrayLoadDocument> Loads,
    BandDocument MassLossKilograms,
    BandDocument FatDrainedKilograms,
    string Source);

/// <summary>What lies on the trays.</summary>
public sealed record TrayLoadDocument(string What, double MassKilograms, double AreaSquareMetres, BandDocument LoadingKilogramsPerSquareMetre);

/// <summary>Blanching.</summary>
public sealed record BlanchDocument(double TimeSeconds, double WaterCubicMetres, double TimeToBoilSeconds, BandDocument MassLossKilograms, string Source);

/// <summary>Getting to the first simmer.</summary>
public sealed record HeatUpDocument(BandDocument TimeSeconds, bool IsReached, double FinalTemperatureKelvins);
