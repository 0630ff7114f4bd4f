using UnitsNet;

namespace Stockwright.Kitchen;

/// <summary>How the lid sits.</summary>
public enum LidKind
{
    /// <summary>No lid.</summary>
    Off,

    /// <summary>Lid tilted or slid back, leaving part of the mouth open.</summary>
    Ajar,

    /// <summary>Lid seated.</summary>
    On,
}

/// <summary>Lid off, ajar by a fraction of the mouth, or on.</summary>
/// <param name="Kind">How the lid sits.</param>
/// <param name="OpenFraction">Open part of the mouth area; one when off, zero when on, between 0.01 and 0.6 when ajar.</param>
public readonly record struct LidPosition(LidKind Kind, Ratio OpenFraction)
{
    /// <summary>Least and most of the mouth that a lid ajar leaves open.</summary>
    public static readonly (Ratio Least, Ratio Most) OpenRange = (Ratio.FromDecimalFractions(0.01), Ratio.FromDecimalFractions(0.6));

    /// <summary>No lid.</summary>
    public static LidPosition Off { get; } = new(LidKind.Off, Ratio.FromDecimalFractions(1));

    /// <summary>Lid seated.</summary>
    public static LidPosition On { get; } = new(LidKind.On, Ratio.Zero);

    /// <summary>Lid ajar.</summary>
    /// <param name="openFraction">Open part of the mouth area, 0.01 to 0.6.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fraction lies outside that range.</exception>
    public static LidPosition Ajar(Ratio openFraction)
    {
        if (!(openFraction.DecimalFractions >= OpenRange.Least.DecimalFractions && openFraction.DecimalFractions <= OpenRange.Most.DecimalFractions))
        {
            throw new ArgumentOutOfRangeException(nameof(openFraction), openFraction, "A lid ajar leaves 1 to 60 % of the mouth open.");
        }

        return new LidPosition(LidKind.Ajar, openFraction);
    }
}
