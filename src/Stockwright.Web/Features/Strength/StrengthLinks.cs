using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Strength;

/// <summary>Links to the strength page.</summary>
internal static class StrengthLinks
{
    public const string Page = "/strength";

    private const double NeatTolerance = 5e-3;

    /// <summary>Reducing a stock of a strength, to a volume if one is given.</summary>
    public static string Reduce(Volume volume, Ratio gelatin, UnitSystem units, Volume? to = null)
    {
        string Litres(Volume amount) => KitchenNumber.Write(Measure.Stock.In(units).FromSi(amount.CubicMeters), NeatTolerance);
        TypedForm form = new(
        [
            KeyValuePair.Create(ReaderUnits.QueryKey, ReaderUnits.Word(units)),
            KeyValuePair.Create(StrengthFields.Way, StrengthFields.Reduce),
            KeyValuePair.Create(StrengthFields.ReduceVolume, Litres(volume)),
            KeyValuePair.Create(StrengthFields.ReduceTo, Litres(to ?? volume / 2)),
            KeyValuePair.Create(StrengthFields.ReduceGelatin, KitchenNumber.Write(gelatin.Percent, NeatTolerance)),
        ]);
        return $"{Page}?{form.ToQuery()}";
    }

    /// <summary>The same page in other measures; what cannot be read stays as typed.</summary>
    public static TypedForm InUnits(TypedForm form, UnitSystem standing, UnitSystem to) =>
        FormUnits.Turn(form, field => StrengthFields.Measured.GetValueOrDefault(field), standing, to);
}
