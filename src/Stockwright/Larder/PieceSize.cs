using System.Globalization;
using Stockwright.Measures;
using UnitsNet;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Larder;

/// <summary>The size in a piece's name: of "5 cm slice" the 5 cm, read apart from the slice.</summary>
/// <param name="Name">The name without it: <c>slice</c>.</param>
/// <param name="Plural">For more than one: <c>slices</c>.</param>
/// <param name="Metric">In metric: <c>5 cm</c>.</param>
/// <param name="UsCustomary">As a cook reads it in US measures: <c>2 in</c>.</param>
internal sealed record PieceSize(string Name, string Plural, string Metric, string UsCustomary)
{
    /// <summary>A cut is good to half an inch (common practice, no source).</summary>
    private const double InchesStep = 0.5;

    public string In(UnitSystem units) => units == UnitSystem.UsCustomary ? UsCustomary : Metric;

    /// <summary>Takes a name apart; null when it begins with no size.</summary>
    public static PieceSize? Of(Piece piece)
    {
        string[] words = piece.Name.Split(' ', 3);
        if (words.Length < 3 || !double.TryParse(words[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double size) || !(size > 0))
        {
            return null;
        }

        string start = words[0] + " " + words[1] + " ";
        string plural = piece.Plural.StartsWith(start, StringComparison.Ordinal) ? piece.Plural[start.Length..] : piece.Plural;
        string stated = words[0] + "\u00A0" + words[1];
        return words[1] switch
        {
            "cm" => new(words[2], plural, stated, Inches(Length.FromCentimeters(size))),
            "mm" => new(words[2], plural, stated, Inches(Length.FromMillimeters(size))),
            "in" => new(words[2], plural, KitchenFormat.Text(Length.FromInches(size), UnitSystem.Metric), stated),
            "g" => new(words[2], plural, stated, KitchenFormat.Text(Mass.FromGrams(size), UnitSystem.UsCustomary)),
            "oz" => new(words[2], plural, KitchenFormat.Text(Mass.FromOunces(size), UnitSystem.Metric), stated),
            _ => null,
        };
    }

    private static string Inches(Length length) =>
        KitchenFormat.Fraction(Math.Max(InchesStep, Math.Round(length.Inches / InchesStep, MidpointRounding.AwayFromZero) * InchesStep), 2) + "\u00A0in";
}
