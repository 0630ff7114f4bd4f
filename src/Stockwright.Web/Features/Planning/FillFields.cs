using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Planning;

/// <summary>Reads and writes how full the pot is to be, and how many pots and hobs there are.</summary>
internal static class FillFields
{
    private static readonly (FillWay Way, double Share)[] Shares = [(FillWay.ThreeQuarters, 0.75), (FillWay.TwoThirds, 2.0 / 3), (FillWay.Half, 0.5)];

    /// <summary>How full; null for as high as is safe, or when something has to be put right.</summary>
    public static FillMark? Read(FieldReader reader)
    {
        FillWay way = PlanFields.Fill.ReadOrUsual(reader) ?? FillWay.Safe;
        Length? length = PlanFields.FillLength.Read(reader, way is FillWay.Depth or FillWay.Rim ? "Say how deep, or how far below the rim." : null);
        return way switch
        {
            FillWay.Depth when length is { } depth => new FillMark.Depth(depth),
            FillWay.Rim when length is { } distance => new FillMark.BelowRim(distance),
            FillWay.ThreeQuarters or FillWay.TwoThirds or FillWay.Half => new FillMark.ShareOfHeight(Ratio.FromDecimalFractions(Shares.First(one => one.Way == way).Share)),
            _ => null,
        };
    }

    /// <summary>The word and the length that say a mark; a share no word stands for is said as a depth.</summary>
    public static (FillWay Way, Length? Length) Write(FillMark? mark, Pot pot) => mark switch
    {
        null => (FillWay.Safe, null),
        FillMark.Depth depth => (FillWay.Depth, depth.Level),
        FillMark.BelowRim rim => (FillWay.Rim, rim.Distance),
        FillMark.ShareOfHeight share when Shares.FirstOrDefault(one => Math.Abs(one.Share - share.Share.DecimalFractions) < 1e-9) is { Share: > 0 } word => (word.Way, null),
        _ => (FillWay.Depth, mark.LevelIn(pot)),
    };

    /// <summary>Pots of a size the kitchen has: those that hold and measure the same to a hundredth.</summary>
    public static int PotsLike(KitchenSetup kitchen, Pot pot) => Math.Max(1, kitchen.Pots.Count(other => other.Kind == pot.Kind
        && Alike(other.BrimVolume.Liters, pot.BrimVolume.Liters) && Alike(other.InnerHeight.Meters, pot.InnerHeight.Meters)));

    /// <summary>Hobs like one the kitchen has: as strong or stronger.</summary>
    public static int HobsLike(KitchenSetup kitchen, Hob hob) => Math.Max(1, kitchen.Hobs.Count(other => other.Kind == hob.Kind && (double)other.RatedPower.Watts >= 0.99 * (double)hob.RatedPower.Watts));

    private static bool Alike(double one, double other) => Math.Abs(one - other) <= 0.01 * other;
}
