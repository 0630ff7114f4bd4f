using Stockwright.Evidence;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Physics;

/// <summary>
/// Share of the open-pot evaporation that gets past the lid (equation P.24 in docs/equations-physics.md).
/// A fit to our own headspace balance; no measurement of an ajar lid was found, hence the wide bands.
/// </summary>
internal static class LidEscape
{
    /// <summary>Share of a seated lid: a ring gap of about half a millimetre.</summary>
    internal const double SeatedFraction = 0.04;

    private const double HalfOpening = 0.135;

    /// <summary>Share that escapes, with its band: half to one and a half times when ajar, half to twice when seated, exactly one when off.</summary>
    /// <param name="lid">How the lid sits.</param>
    /// <exception cref="ArgumentOutOfRangeException">The kind of lid is unknown, or the opening of an ajar lid lies outside 1 to 60 %.</exception>
    public static Stated<Ratio> Fraction(LidPosition lid)
    {
        double central = CentralFraction(lid);
        return lid.Kind switch
        {
            LidKind.Off => State(1, 1, 1, Provenance.Computed, "no lid: the open pot is the reference"),
            LidKind.On => State(central, central / 2, central * 2, Provenance.Estimate, "headspace balance of a ring gap of half a millimetre; the gap is a guess"),

            // No lid lets out more than the open pot, so the upper end stops at one.
            _ => State(central, central / 2, Math.Min(1, central * 1.5), Provenance.Estimate, "fit to our own headspace balance (P.24); not measured"),
        };
    }

    /// <summary>
    /// Loss past a lid over that of clean open water (P.24): the film on the stock and the gap of the lid hold the vapour back one after the other, so
    /// their resistances add. A film matters little under a lid that lets hardly anything past.
    /// </summary>
    /// <param name="escape">Share of clean water's loss that gets past the lid, above zero, at most one.</param>
    /// <param name="film">Loss of the open surface over that of clean water, zero or more.</param>
    internal static double Past(double escape, double film) => film > 0 ? 1 / ((1 / film) + ((1 - escape) / escape)) : 0;

    /// <summary>The film under which so much got past a lid, the inverse of <see cref="Past"/>; infinite when that is all the lid lets through.</summary>
    /// <param name="escape">Share of clean water's loss that gets past the lid.</param>
    /// <param name="past">Loss over that of clean open water.</param>
    internal static double FilmUnder(double escape, double past)
    {
        double rest = (1 / past) - ((1 - escape) / escape);
        return rest > 0 ? 1 / rest : double.PositiveInfinity;
    }

    /// <summary>P.24.</summary>
    internal static double CentralFraction(LidPosition lid)
    {
        switch (lid.Kind)
        {
            case LidKind.Off:
                return 1;
            case LidKind.On:
                return SeatedFraction;
            case LidKind.Ajar:
                // A default-built position may carry any opening, so it is checked again here.
                return OpeningFraction(PhysicsRange.Within(
                    lid.OpenFraction.DecimalFractions, 0.01, 0.6, "of the mouth", "The opening of a lid ajar", nameof(lid)));
            default:
                throw new ArgumentOutOfRangeException(nameof(lid), lid.Kind, "Unknown lid position.");
        }
    }

    /// <summary>P.24 for an opening of 0.01 to 0.6; at its smallest still above a seated lid.</summary>
    internal static double OpeningFraction(double openFraction) =>
        openFraction / (openFraction + HalfOpening);

    private static Stated<Ratio> State(double value, double low, double high, Provenance provenance, string source) =>
        new(Ratio.FromDecimalFractions(value), Ratio.FromDecimalFractions(low), Ratio.FromDecimalFractions(high), provenance, source);
}
