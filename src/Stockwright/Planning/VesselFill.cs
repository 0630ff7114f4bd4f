using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>How full a vessel that is no ordinary pot may stand (F.1 in docs/equations.md; common practice, no source).</summary>
internal static class VesselFill
{
    /// <summary>A slow cooker less full than this share of its brim volume heats unevenly and dries at the edge.</summary>
    public const double LeastSlowShare = 0.5;

    internal static readonly Length KettleFreeboard = Length.FromCentimeters(10);

    /// <summary>Safe maximum level and the rule behind it; null for an ordinary pot, which has a rule of its own.</summary>
    public static (Length Level, FillLimit Limit)? Maximum(Pot pot) => pot.Kind switch
    {
        PotKind.PressureCooker => (pot.LevelAt(pot.BrimVolume * (2.0 / 3)), FillLimit.TwoThirds),
        PotKind.SlowCooker => (pot.LevelAt(pot.BrimVolume * 0.75), FillLimit.ThreeQuarters),
        PotKind.Kettle => Kettle(pot),
        _ => null,
    };

    private static (Length Level, FillLimit Limit) Kettle(Pot pot)
    {
        Length eighty = pot.LevelAt(pot.BrimVolume * 0.8);
        Length freeboard = pot.InnerHeight - KettleFreeboard;
        return freeboard < eighty ? (freeboard, FillLimit.TenCentimetresFreeboard) : (eighty, FillLimit.EightyPercentOfBrim);
    }
}
