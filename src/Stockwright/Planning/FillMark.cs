using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>How full a cook wants the pot: said in one of three ways.</summary>
public abstract record FillMark
{
    /// <summary>Least and most depth, or distance below the rim, a cook can say.</summary>
    public static readonly (Length Least, Length Most) LengthRange = (Length.FromMillimeters(5), Pot.HeightRange.Most);

    private FillMark()
    {
    }

    /// <summary>The level this means in a pot, above the inside of the base; it may lie above the rim.</summary>
    public abstract Length LevelIn(Pot pot);

    /// <summary>So much of the way up, as "three quarters".</summary>
    /// <param name="Share">Share of the inner height, above zero, at most one.</param>
    public sealed record ShareOfHeight(Ratio Share) : FillMark
    {
        /// <inheritdoc/>
        public override Length LevelIn(Pot pot)
        {
            ArgumentNullException.ThrowIfNull(pot);
            return pot.InnerHeight * Share.DecimalFractions;
        }
    }

    /// <summary>So deep.</summary>
    /// <param name="Level">Height of the liquid above the inside of the base.</param>
    public sealed record Depth(Length Level) : FillMark
    {
        /// <inheritdoc/>
        public override Length LevelIn(Pot pot) => Level;
    }

    /// <summary>So far under the rim.</summary>
    /// <param name="Distance">From the rim down to the liquid.</param>
    public sealed record BelowRim(Length Distance) : FillMark
    {
        /// <inheritdoc/>
        public override Length LevelIn(Pot pot)
        {
            ArgumentNullException.ThrowIfNull(pot);
            return pot.InnerHeight - Distance;
        }
    }
}
