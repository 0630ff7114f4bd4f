using Stockwright.Kitchen;

namespace Stockwright.Storage.Kitchen;

/// <summary>Tells a weighed pot from an estimated one.</summary>
public static class PotMass
{
    /// <summary>True when the pot's mass is the estimate for its size and material, so that nobody has weighed it.</summary>
    public static bool HasEstimatedMass(this Pot pot)
    {
        ArgumentNullException.ThrowIfNull(pot);
        double estimate = Pot.EstimateEmptyMass(pot.BaseDiameter, pot.BrimDiameter, pot.InnerHeight, pot.Material).Kilograms;

        // Relative 1e-9: no scale gives that many figures by chance.
        return Math.Abs(pot.EmptyMass.Kilograms - estimate) <= 1e-9 * estimate;
    }
}
