using Stockwright.Predicting;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>
/// What the stock of one round will be like. Bands are the 10, 50 and 90 per cent points of the draws; single figures are the
/// central ones. Fractions are by mass.
/// </summary>
/// <param name="Draws">How many times everything uncertain was drawn.</param>
/// <param name="MostLikely">The most likely body class after a night in the fridge.</param>
/// <param name="Chances">Chance of every class; they add up to one.</param>
/// <param name="BoilsDryFraction">Share of the draws in which the pot boils dry.</param>
/// <param name="YieldCubicMetres">Strained, defatted stock, measured cold.</param>
/// <param name="Ready">When all is done.</param>
/// <param name="GelatinFraction">Gelatin in the stock.</param>
/// <param name="EffectiveFraction">Fresh gelatin of 225 g Bloom that would stand the same.</param>
/// <param name="BrixDegrees">Refractometer reading at 293.15 K, defatted, before salt.</param>
/// <param name="Body">How it stands, by the central figures.</param>
/// <param name="Fat">Where the fat goes.</param>
/// <param name="Nutrition">Energy and nutrients, before any salt at the table.</param>
/// <param name="Allergens">What each place asks to be declared. Never a promise that anything is absent.</param>
/// <param name="AllergenRemarks">What no list asks for and an eater with an allergy must know.</param>
/// <param name="WithMore">Body with the cuts to try, or null.</param>
/// <param name="Set">How to make it set, or null when that is not asked.</param>
/// <param name="Notices">What to know with it.</param>
/// <param name="Assumptions">Numbers it leans on.</param>
public sealed record PredictionDocument(
    int Draws,
    BodyClass MostLikely,
    IReadOnlyList<ChanceDocument> Chances,
    double BoilsDryFraction,
    BandDocument YieldCubicMetres,
    MomentsDocument Ready,
    BandDocument GelatinFraction,
    BandDocument EffectiveFraction,
    BandDocument BrixDegrees,
    BodyDocument Body,
    FatDocument Fat,
    NutritionDocument Nutrition,
    IReadOnlyList<AllergenDocument> Allergens,
    IReadOnlyList<AllergenRemarkDocument> AllergenRemarks,
    TrialDocument? WithMore,
    SetDocument? Set,
    IReadOnlyList<NoticeDocument> Notices,
    IReadOnlyList<AssumptionDocument> Assumptions);

/// <summary>A body class with its chance and its words.</summary>
public sealed record ChanceDocument(BodyClass Class, string Name, string Cold, string Warm, double LeastEffectiveFraction, double ChanceFraction);

/// <summary>Body with more or less of some cuts.</summary>
public sealed record TrialDocument(BodyClass Class, double GelatinFraction, double EffectiveFraction);

/// <summary>The cheapest way to a class, or how far the best falls short. Prices are in the money they were given in.</summary>
public sealed record SetDocument(
    BodyClass Wanted,
    bool IsReached,
    IReadOnlyList<AdditionDocument> Additions,
    double Cost,
    double NowFraction,
    double ThenFraction,
    double NeededFraction,
    double? OrReduceToCubicMetres,
    double TooMuchForPotCubicMetres,
    IReadOnlyList<string> Remarks);

/// <summary>One thing to add; gelatin-powder stands for powder gelatin.</summary>
public sealed record AdditionDocument(string Ingredient, double MassKilograms, double Cost);

/// <summary>A moment with its likely range.</summary>
public sealed record MomentsDocument(DateTimeOffset Low, DateTimeOffset Central, DateTimeOffset High);

/// <summary>How the stock stands, by the central figures.</summary>
public sealed record BodyDocument(
    BodyClass Class,
    BodyClass ClassAtFridgeTime,
    double FridgeTimeSeconds,
    double FirmnessFraction,
    double GelatinFraction,
    double EffectiveFraction,
    double BloomKilograms,
    double IntactnessFraction,
    double? SetsBelowKelvins,
    double? MeltsAboveKelvins,
    bool SetsInFridge,
    double DensityKilogramsPerCubicMetre,
    IReadOnlyList<CutYieldDocument> Cuts);

/// <summary>Gelatin drawn from one cut, into all the liquor.</summary>
public sealed record CutYieldDocument(string Ingredient, double CollagenKilograms, double GelatinKilograms);

/// <summary>Where the fat goes.</summary>
public sealed record FatDocument(
    DefatMethod Method,
    double DrainedInRoastKilograms,
    double FreedKilograms,
    double LeftKilograms,
    BandDocument RecoveredKilograms,
    double RecoveredCubicMetres,
    double ByLadleKilograms,
    double ByJugKilograms,
    double ByChillingKilograms,
    BandDocument CapThicknessMetres,
    double ContainerDiameterMetres);

/// <summary>Energy and nutrients per 100 mL and per portion, with the likely range per 100 mL.</summary>
public sealed record NutritionDocument(FactsDocument PerHundredMillilitres, FactBandsDocument LikelyPerHundredMillilitres, double PortionCubicMetres, FactsDocument PerPortion);

/// <summary>10, 50 and 90 % points of energy and nutrients.</summary>
public sealed record FactBandsDocument(
    BandDocument EnergyJoules, BandDocument ProteinKilograms, BandDocument FatKilograms, BandDocument CarbohydrateKilograms, BandDocument SodiumKilograms);

/// <summary>Energy and nutrients of an amount.</summary>
public sealed record FactsDocument(
    double EnergyJoules, double ProteinKilograms, double FatKilograms, double CarbohydrateKilograms, double SodiumKilograms, double SaltEquivalentKilograms);

/// <summary>What one place asks to be declared.</summary>
public sealed record AllergenDocument(Jurisdiction Place, string PlaceName, IReadOnlyList<AllergenFlagDocument> Declare, IReadOnlyList<string> Remarks, string Statement);

/// <summary>What to know beside the lists, with its source.</summary>
public sealed record AllergenRemarkDocument(string Id, IReadOnlyList<string> Ingredients, string Text, string Source, string Grade);

/// <summary>One allergen to declare.</summary>
public sealed record AllergenFlagDocument(string Allergen, string Name, IReadOnlyList<string> Ingredients, string Clause, string? Note);
