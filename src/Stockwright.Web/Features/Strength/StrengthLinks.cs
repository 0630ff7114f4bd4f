using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Strength;

/// <summary>Links to the strength page.</summary>
internal static class StrengthLinks
{
    public const string Page = "/strength";

    private const double Neat = 5e-3;

    /// <summary>Reducing a stock of a strength, to a volume if one is given.</summary>
    public static string Reduce(Volume volume, Ratio gelatin, UnitSystem units, Volume? to = null)
    {
        TypedForm form = TypedForm.Empty
            .With(ReaderUnits.QueryKey, ReaderUnits.Word(units))
            .With(StrengthFields.Way, StrengthFields.Reduce)
            .With(StrengthFields.ReduceVolume.Name, StrengthFields.ReduceVolume.Text(volume, units, Neat))
            .With(StrengthFields.ReduceTo.Name, StrengthFields.ReduceTo.Text(to ?? volume / 2, units, Neat))
            .With(StrengthFields.ReduceGelatin.Name, StrengthFields.ReduceGelatin.Text(gelatin, units, Neat));
        return $"{Page}?{form.ToQuery()}";
    }
}
