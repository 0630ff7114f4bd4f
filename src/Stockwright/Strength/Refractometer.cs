using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Strength;

/// <summary>What was put on the prism.</summary>
public enum ReadingKind
{
    /// <summary>Beef, veal or pork bones.</summary>
    MeatBones,

    /// <summary>Chicken or other birds, with vegetables.</summary>
    Poultry,

    /// <summary>Fish.</summary>
    Fish,

    /// <summary>Vegetables or mushrooms only.</summary>
    Vegetable,

    /// <summary>Powder gelatin in water.</summary>
    PureGelatin,
}

/// <summary>What a reading says.</summary>
/// <param name="Gelatin">Gelatin by mass, with its range.</param>
/// <param name="Solids">All that is dissolved, by mass, with its range.</param>
/// <param name="CorrectedBrix">The reading of the undiluted stock less the salt.</param>
/// <param name="DiluteFirst">True when the stock is so strong that it should be diluted hot, one part to two of water, and read again.</param>
public sealed record RefractometerEstimate(Stated<Ratio> Gelatin, Stated<Ratio> Solids, double CorrectedBrix, bool DiluteFirst);

/// <summary>
/// Gelatin from a refractometer reading (B.16, B.31), at 20 °C or with temperature compensation, defatted, before salt. A sugar scale reads
/// 1.30 degrees a per cent of gelatin; the shares by kind of stock are estimates.
/// </summary>
public static class Refractometer
{
    /// <summary>Lowest and highest reading.</summary>
    public static readonly (double Least, double Most) BrixRange = (0, 95);

    /// <summary>Lowest and highest end of a scale.</summary>
    public static readonly (double Least, double Most) ScaleRange = (1, 95);

    /// <summary>Fewest and most parts of water stirred in.</summary>
    public static readonly (double Least, double Most) WaterRange = (0, 20);

    /// <summary>Degrees one per cent of salt adds (NaCl 0.00175 over sucrose 0.00144 [from memory]).</summary>
    internal const double BrixPerSaltPercent = 1.2;

    /// <summary>Top of the usual kitchen scale, °Brix.</summary>
    public const double UsualScale = 32;

    private const double StrongBrix = 12;

    /// <summary>Reads gelatin off a reading.</summary>
    /// <param name="brix">The reading, °Brix.</param>
    /// <param name="kind">What was read.</param>
    /// <param name="salt">Salt added, by mass of the stock.</param>
    /// <param name="partsWater">Parts of water to one of stock, by mass, if it was diluted to read it.</param>
    /// <param name="scale">Top of the scale.</param>
    public static StrengthAnswer<RefractometerEstimate> Estimate(double brix, ReadingKind kind, Ratio salt = default, double partsWater = 0, double scale = UsualScale)
    {
        if (!(brix >= 0))
        {
            return StrengthAnswer.No<RefractometerEstimate>("brix", "A reading is not below zero: zero the refractometer with water.");
        }

        if (brix > scale)
        {
            return StrengthAnswer.No<RefractometerEstimate>("brix", FormattableString.Invariant(
                $"That is above the scale, which ends at {scale:0.#}: stir one part of hot stock into two of hot water, let it come to 20 °C and read that."));
        }

        if (!(salt.Percent is >= 0 and <= 20) || !(partsWater is >= 0 and <= 20))
        {
            return StrengthAnswer.No<RefractometerEstimate>("salt", "Salt lies between 0 and 20 %, and water to read it between 0 and 20 parts.");
        }

        double whole = brix * (1 + partsWater);
        double corrected = whole - (BrixPerSaltPercent * salt.Percent);
        if (corrected < 0)
        {
            return StrengthAnswer.No<RefractometerEstimate>("salt", "That much salt alone would read higher: check the salt or the reading.");
        }

        return StrengthAnswer.Of(new RefractometerEstimate(
            Times(GelatinPerBrix(kind), corrected),
            Times(new Stated<double>(0.80, 0.75, 0.88, Provenance.Estimate, "Estimate: dissolved matter for a degree of a sugar scale"), corrected),
            corrected,
            partsWater == 0 && corrected > StrongBrix));
    }

    /// <summary>Per cent of gelatin for a degree, by kind of stock.</summary>
    private static Stated<double> GelatinPerBrix(ReadingKind kind) => kind switch
    {
        ReadingKind.MeatBones => State(0.5, 0.4, 0.65),
        ReadingKind.Poultry => State(0.4, 0.3, 0.5),
        ReadingKind.Fish => State(0.375, 0.3, 0.45),
        ReadingKind.Vegetable => new(0, 0, 0, Provenance.Computed, "no gelatin in plants"),
        ReadingKind.PureGelatin => new(0.77, 0.76, 0.80, Provenance.FromMemory, "dn/dc of gelatin 0.187 (0.18 to 0.19) mL/g over sucrose's 0.00144 a per cent"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind of stock."),
    };

    private static Stated<double> State(double value, double low, double high) =>
        new(value, low, high, Provenance.Estimate, "Estimate: share of what a stock of this kind dissolves that is gelatin");

    private static Stated<Ratio> Times(Stated<double> share, double brix) => new(
        Ratio.FromPercent(share.Value * brix), Ratio.FromPercent(share.Low * brix), Ratio.FromPercent(share.High * brix), share.Provenance, share.Source);
}
