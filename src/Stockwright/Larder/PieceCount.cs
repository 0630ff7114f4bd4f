using System.Globalization;
using UnitsNet;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Larder;

/// <summary>A number of pieces, as a cook says it: three medium onions.</summary>
/// <param name="Count">How many; above zero.</param>
/// <param name="Piece">Which piece of the ingredient.</param>
public sealed record PieceCount(double Count, Piece Piece)
{
    /// <summary>A count further than this from the true mass is not worth saying.</summary>
    private const double WorstRounding = 0.25;

    /// <summary>Above this many a larger piece is looked for: "three heads" rather than "forty cloves".</summary>
    private const double MostCounted = 20;

    /// <summary>Mass of the pieces, trimmed or as bought just as <see cref="Piece.IsTrimmed"/> says.</summary>
    public Mass Mass => Piece.Mass.Value * Count;

    /// <summary>Mass ready for the pot, after peeling and trimming.</summary>
    internal Mass TrimmedMass(Ingredient ingredient) => Piece.IsTrimmed ? Mass : ingredient.Trimmed(Mass);

    /// <summary>
    /// The count a cook would give for a mass: halves below four, whole up to twenty, tens above.
    /// Null when the ingredient is not counted in pieces, or no piece comes within a quarter of the mass.
    /// </summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="trimmed">Mass ready for the pot.</param>
    public static PieceCount? Describe(Ingredient ingredient, Mass trimmed)
    {
        double grams = trimmed.Grams;
        if (!(grams > 0))
        {
            return null;
        }

        List<PieceCount> near = [];
        foreach (Piece piece in ingredient.Pieces)
        {
            double gramsEach = new PieceCount(1, piece).TrimmedMass(ingredient).Grams;
            double count = Round(grams / gramsEach);
            if (count > 0 && Math.Abs((count * gramsEach) - grams) <= WorstRounding * grams)
            {
                near.Add(new PieceCount(count, piece));
            }
        }

        // The usual piece stands first in the larder; only a long count gives way to another piece.
        return near.Find(candidate => candidate.Count <= MostCounted) ?? near.FirstOrDefault();
    }

    /// <summary>The count in words, sizes in metric, for instance <c>2½ medium onions</c> or <c>8 slices of 5 cm</c>.</summary>
    public override string ToString() => Text(UnitSystem.Metric);

    /// <summary>The count in words: <c>2½ medium onions</c>; a size in the name is told behind it, <c>8 slices of 5 cm</c> or <c>8 slices of 2 in</c>.</summary>
    /// <param name="units">The measures the cook reads in.</param>
    public string Text(UnitSystem units)
    {
        double whole = Math.Floor(Count);
        double part = Count - whole;
        string number = part switch
        {
            0 => whole.ToString("0", CultureInfo.InvariantCulture),
            0.5 when whole == 0 => "½",
            0.5 => whole.ToString("0", CultureInfo.InvariantCulture) + "½",
            _ => Count.ToString("0.##", CultureInfo.InvariantCulture),
        };
        return PieceSize.Of(Piece) is { } size
            ? $"{number} {(Count <= 1 ? size.Name : size.Plural)} of {size.In(units)}"
            : $"{number} {(Count <= 1 ? Piece.Name : Piece.Plural)}";
    }

    private static double Round(double count) => count switch
    {
        < 3.75 => Math.Round(count * 2, MidpointRounding.AwayFromZero) / 2,
        < 20.5 => Math.Round(count, MidpointRounding.AwayFromZero),
        _ => Math.Round(count / 10, MidpointRounding.AwayFromZero) * 10,
    };
}
