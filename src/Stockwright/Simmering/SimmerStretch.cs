using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>
/// How much longer the same collagen takes at a lower temperature (equation S.9 in docs/equations.md): the ratio of Arrhenius rates with an activation
/// energy of 109 kJ/mol (90 to 120), worked out from chicken bones at 100 and 120 C (J Cookery Sci Japan 1998, abstract).
/// </summary>
internal static class SimmerStretch
{
    private const double GasConstant = 8.314462618;

    /// <summary>Time at <paramref name="reached"/> for the extraction of a unit time at <paramref name="asked"/>.</summary>
    public static Band<double> Between(Temperature asked, Temperature reached)
    {
        double Stretch(double activation) => RelativeRate(asked.Kelvins, activation) / RelativeRate(reached.Kelvins, activation);
        return new Band<double>(Stretch(90_000), Stretch(109_000), Stretch(120_000));
    }

    private static double RelativeRate(double kelvins, double activationJoulesPerMole) =>
        Math.Exp(-activationJoulesPerMole / GasConstant * ((1 / kelvins) - (1 / 371.15)));
}
