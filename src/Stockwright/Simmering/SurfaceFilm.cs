using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Physics;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>
/// The film factor: how much less a simmering stock pot loses than clean open water at the same temperature (equation S.3 in docs/equations.md).
/// The surface is clean until fat has risen, and loses like clean water; covered by fat it loses a fraction of that. The factor is that of the
/// covered surface; how much is covered follows from the fat that floats. The default is set so that the school ratio closes for chicken, veal
/// and beef at once; a kitchen replaces it by weighing one pot.
/// </summary>
public static class SurfaceFilm
{
    /// <summary>Smallest and largest film factor accepted as a kitchen's own figure.</summary>
    public static readonly (double Least, double Most) Range = KitchenSite.OwnFilmRange;

    /// <summary>Least and most water a weighed pot may have lost.</summary>
    public static readonly (Mass Least, Mass Most) WeighedLossRange = (Mass.FromGrams(10), Mass.FromKilograms(100));

    /// <summary>Shortest and longest time between the two weighings of a pot.</summary>
    public static readonly (TimeSpan Least, TimeSpan Most) WeighedTimeRange = (TimeSpan.FromMinutes(15), TimeSpan.FromHours(72));

    /// <summary>Coolest and hottest a pot that is weighed may be held; at the boil it loses by the power of the hob.</summary>
    public static readonly (Temperature Least, Temperature Most) WeighedTemperatureRange = (Temperature.FromDegreesCelsius(50), Temperature.FromDegreesCelsius(99));

    /// <summary>The factor of a surface on which so much fat floats, with its range: the one law of simmering, reducing and cooling (S.3).</summary>
    /// <param name="site">The kitchen; its own weighed figure takes the place of the default.</param>
    /// <param name="fat">Fat that floats, zero or more; null for what is left on strained, defatted stock.</param>
    /// <param name="surface">The free surface, above zero.</param>
    /// <param name="assumptions">The figures; null for the standard ones.</param>
    public static Stated<double> Under(KitchenSite site, Mass? fat, Area surface, SimmerAssumptions? assumptions = null)
    {
        SimmerAssumptions figures = assumptions ?? SimmerAssumptions.Standard;
        double share = CleanShare(fat is { } floating ? floating.Kilograms / surface.SquareMeters : figures.Get("fat-left-on-defatted").Value, figures);
        Stated<double> covered = For(site, figures);
        Stated<double> clean = figures.CleanSurface;
        double q = CleanOverCovered(site, figures);
        double low = Math.Pow(covered.Low, 1 - share) * Math.Pow(q * covered.Value * clean.Low / clean.Value, share);
        double high = Math.Pow(covered.High, 1 - share) * Math.Pow(Math.Min(Range.Most, q * covered.Value * clean.High / clean.Value), share);
        return new Stated<double>(Factor(covered.Value, q, share), low, high, Provenance.Estimate, "the surface of a pot (S.3) with the fat that floats on it");
    }

    /// <summary>Share of the surface that no fat covers yet (S.3): it falls with the fat that floats.</summary>
    /// <param name="fatKilogramsPerSquareMetre">Floating fat over the surface.</param>
    /// <param name="assumptions">The figures.</param>
    internal static double CleanShare(double fatKilogramsPerSquareMetre, SimmerAssumptions assumptions) =>
        Math.Exp(-Math.Max(0, fatKilogramsPerSquareMetre) / assumptions.CoveringKilogramsPerSquareMetre);

    /// <summary>
    /// How many times as much the clean surface loses in a kitchen as the covered one (S.3). What makes its covered pots lose more than usual, dry
    /// air and draughts, does so where the surface is clean; but no clean surface loses more than <see cref="Range"/> allows.
    /// </summary>
    internal static double CleanOverCovered(KitchenSite site, SimmerAssumptions? assumptions = null) =>
        Math.Max(1, Math.Min(1 / (assumptions ?? SimmerAssumptions.Standard).SurfaceFilm.Value, Range.Most / For(site, assumptions).Value));

    /// <summary>Loss over that of clean open water with so much of the surface clean: between the two it goes with the logarithm (S.3).</summary>
    /// <param name="covered">The factor of the covered surface.</param>
    /// <param name="cleanOverCovered">How many times that the clean surface has.</param>
    /// <param name="cleanShare">Share of the surface that is clean, 0 to 1.</param>
    internal static double Factor(double covered, double cleanOverCovered, double cleanShare) => covered * Math.Pow(cleanOverCovered, cleanShare);

    /// <summary>The factor for a kitchen: its own weighed figure with 15 % either way, or the default.</summary>
    public static Stated<double> For(KitchenSite site, SimmerAssumptions? assumptions = null) => site.OwnFilmFactor is { } own
        ? new Stated<double>(own, own / 1.15, own * 1.15, Provenance.CookStated, "weighed in this kitchen")
        : (assumptions ?? SimmerAssumptions.Standard).SurfaceFilm;

    /// <summary>The film factor from a weighed pot: measured loss over what clean water would lose.</summary>
    /// <param name="lost">Mass lost over the time, the pot held at the temperature throughout.</param>
    /// <param name="time">How long, above zero.</param>
    /// <param name="diameter">Inner diameter at the surface, above zero.</param>
    /// <param name="temperature">Temperature of the stock, below the boil.</param>
    /// <param name="lid">How the lid sat.</param>
    /// <param name="site">The room.</param>
    /// <returns>The film factor; infinite when more was lost than such a lid lets past.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A mass, time or diameter is not above zero, or the stock was no warmer than the room.</exception>
    public static double FromWeighedPot(Mass lost, TimeSpan time, Length diameter, Temperature temperature, LidPosition lid, KitchenSite site)
    {
        Require(lost > Mass.Zero, nameof(lost), "The pot must have lost something.");
        Require(time > TimeSpan.Zero, nameof(time), "The time must be above zero.");
        Require(diameter > Length.Zero, nameof(diameter), "The diameter must be above zero.");
        Require(temperature.DegreesCelsius > site.Room.DegreesCelsius + 20, nameof(temperature), "The stock must be well above the room's temperature.");
        double pascals = Air.PressurePascals(site);
        double flux = Evaporation.CleanWaterKilogramsPerSquareMetreSecond(
            temperature.Kelvins, site.Room.Kelvins, site.Humidity.DecimalFractions, pascals);
        double area = Math.PI / 4 * diameter.Meters * diameter.Meters;
        return LidEscape.FilmUnder(LidEscape.CentralFraction(lid), lost.Kilograms / (flux * area * time.TotalSeconds));
    }

    private static void Require(bool holds, string parameter, string message)
    {
        if (!holds)
        {
            throw new ArgumentOutOfRangeException(parameter, message);
        }
    }
}
