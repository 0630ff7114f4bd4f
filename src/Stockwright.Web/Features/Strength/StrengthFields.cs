using System.Collections.Frozen;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Strength;

/// <summary>Names of the fields of the strength page, as they stand in its links.</summary>
internal static class StrengthFields
{
    public const string Way = "do";

    public const string Reduce = "reduce";
    public const string ReduceVolume = "reduce-volume";
    public const string ReduceGelatin = "reduce-gelatin";
    public const string ReduceSalt = "reduce-salt";
    public const string ReduceTo = "reduce-to";
    public const string ReduceTarget = "reduce-target";
    public const string ReducePan = "reduce-pan";
    public const string ReduceHob = "reduce-hob";
    public const string ReduceSetting = "reduce-setting";
    public const string ReduceSimmer = "reduce-simmer";

    public const string Dilute = "dilute";
    public const string DiluteVolume = "dilute-volume";
    public const string DiluteGelatin = "dilute-gelatin";
    public const string DiluteSalt = "dilute-salt";
    public const string DiluteTarget = "dilute-target";

    public const string Glace = "glace";
    public const string GlaceVolume = "glace-volume";
    public const string GlaceGelatin = "glace-gelatin";
    public const string GlaceTarget = "glace-target";

    public const string Blend = "blend";
    public const string BlendOne = "blend-one";
    public const string BlendOther = "blend-other";
    public const string BlendTarget = "blend-target";
    public const string BlendTotal = "blend-total";

    public const string Powder = "powder";
    public const string PowderVolume = "powder-volume";
    public const string PowderNow = "powder-now";
    public const string PowderTarget = "powder-target";
    public const string PowderBloom = "powder-bloom";

    public const string Reading = "reading";
    public const string ReadingBrix = "reading-brix";
    public const string ReadingKindField = "reading-kind";
    public const string ReadingSalt = "reading-salt";
    public const string ReadingWater = "reading-water";
    public const string ReadingScale = "reading-scale";

    /// <summary>Fields typed in a unit that differs between the systems.</summary>
    public static readonly FrozenDictionary<string, Measure> Measured = new Dictionary<string, Measure>(StringComparer.Ordinal)
    {
        [ReduceVolume] = Measure.Stock,
        [ReduceTo] = Measure.Stock,
        [ReduceSimmer] = Measure.Temperature,
        [DiluteVolume] = Measure.Stock,
        [GlaceVolume] = Measure.Portion,
        [BlendTotal] = Measure.Stock,
        [PowderVolume] = Measure.Stock,
    }.ToFrozenDictionary(StringComparer.Ordinal);
}
