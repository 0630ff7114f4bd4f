using UnitsNet;

namespace Stockwright.Planning;

/// <summary>The verdict on fit.</summary>
public enum FitVerdict
{
    /// <summary>Fits in one round.</summary>
    Fits,

    /// <summary>Fits in one round with less water than the recipe's strength takes: a stronger stock.</summary>
    FitsStronger,

    /// <summary>Does not fit at once; the plan is for one of several equal potfuls.</summary>
    NeedsRounds,
}

/// <summary>Which rule sets the safe maximum.</summary>
public enum FillLimit
{
    /// <summary>At least a fifth of the height below the rim.</summary>
    FifthOfHeight,

    /// <summary>At least 5 cm below the rim.</summary>
    FiveCentimetresFreeboard,

    /// <summary>At most two thirds, for a pressure cooker.</summary>
    TwoThirds,

    /// <summary>At most 80 % of the brim volume, for a kettle.</summary>
    EightyPercentOfBrim,

    /// <summary>At most three quarters, for a slow cooker.</summary>
    ThreeQuarters,

    /// <summary>At least 10 cm below the rim, for a kettle.</summary>
    TenCentimetresFreeboard,

    /// <summary>As the cook asked, under the safe maximum.</summary>
    AsAsked,
}

/// <summary>How the batch stands in the pot.</summary>
public sealed record FitReport
{
    /// <summary>Fits or needs rounds.</summary>
    public required FitVerdict Verdict { get; init; }

    /// <summary>Potfuls of this size the wish takes; one when it fits.</summary>
    public required int Potfuls { get; init; }

    /// <summary>Pots on the heat side by side; one when there is one pot or one hob.</summary>
    public int AtOnce { get; init; } = 1;

    /// <summary>Rounds one after the other: the last may have fewer pots.</summary>
    public int Rounds => RoundsOf(Potfuls, AtOnce);

    /// <summary>Pots on the heat in a round, counted from zero.</summary>
    public int PotsInRound(int round) => PotsIn(round, Potfuls, AtOnce);

    internal static int RoundsOf(int potfuls, int atOnce) => (potfuls + atOnce - 1) / atOnce;

    internal static int PotsIn(int round, int potfuls, int atOnce) => Math.Min(atOnce, potfuls - (round * atOnce));

    /// <summary>Water stirred into the strained stock of one potful to bring it to what was asked; zero when none.</summary>
    public Volume LetDown { get; init; } = Volume.Zero;

    /// <summary>Most strained stock this pot makes in one round of this recipe.</summary>
    public required Volume LargestYield { get; init; }

    /// <summary>Names of the kitchen's other pots that would hold it in one round.</summary>
    public required IReadOnlyList<string> PotsThatFit { get; init; }

    /// <summary>Volume the solids take up below the line, at the start.</summary>
    public required Volume SolidsDisplacement { get; init; }

    /// <summary>Height of the heap of solids in the pot, at the start.</summary>
    public required Length SolidsHeight { get; init; }

    /// <summary>Water to the fill line, at tap temperature.</summary>
    public required Volume WaterToLine { get; init; }

    /// <summary>The fill line, as height above the inside of the base, before the heat goes on.</summary>
    public required Length FillLine { get; init; }

    /// <summary>The fill line, measured down from the rim.</summary>
    public required Length FillLineFromRim { get; init; }

    /// <summary>The level top-ups bring it back to: the fill line, or lower where covering the solids takes more water than the yield needs.</summary>
    public required Length HeldLine { get; init; }

    /// <summary>Highest the level gets, hot and with everything in.</summary>
    public required Length PeakLevel { get; init; }

    /// <summary>Room left under the rim at the peak.</summary>
    public required Length Freeboard { get; init; }

    /// <summary>Safe maximum level.</summary>
    public required Length SafeMaximum { get; init; }

    /// <summary>Which rule sets it.</summary>
    public required FillLimit Limit { get; init; }

    /// <summary>Liquid standing over the heap of solids at the start; negative when they stand out of it.</summary>
    public required Length CoverDepth { get; init; }

    /// <summary>True when the solids lie under the liquid at the start.</summary>
    public bool IsCovered => CoverDepth >= Length.Zero;

    /// <summary>True when covering the solids, rather than the wanted yield, decided the water.</summary>
    public required bool CoverDecidesWater { get; init; }
}
