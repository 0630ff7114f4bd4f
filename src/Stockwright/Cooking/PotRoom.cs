using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>Room in a pot between two levels.</summary>
public static class PotRoom
{
    /// <summary>Volume between two levels; null when there is no room to fill.</summary>
    /// <param name="pot">The pot.</param>
    /// <param name="to">Upper level, down from the rim.</param>
    /// <param name="from">Lower level, down from the rim.</param>
    public static Volume? Between(Pot pot, Length to, Length from)
    {
        ArgumentNullException.ThrowIfNull(pot);
        Length low = pot.InnerHeight - from;
        Length high = pot.InnerHeight - to;
        bool isRoom = low >= Length.Zero && high <= pot.InnerHeight && high - low > Length.FromMillimeters(2);
        return isRoom ? pot.VolumeAt(high) - pot.VolumeAt(low) : null;
    }
}
