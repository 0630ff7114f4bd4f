using System.Globalization;
using UnitsNet;

namespace Stockwright.Physics;

/// <summary>Range checks of the public doors; the inner methods with SI doubles are unchecked.</summary>
internal static class PhysicsRange
{
    /// <summary>0 C; the IAPWS equations start at the triple point, 0.01 K above, and run on smoothly to here.</summary>
    internal const double FreezingKelvins = 273.15;

    /// <summary>Critical temperature of water.</summary>
    internal const double CriticalKelvins = 647.096;

    /// <summary>Kelvins of a temperature, or an error in the cook's words; NaN is refused too.</summary>
    internal static double Kelvins(Temperature temperature, double leastKelvins, double mostKelvins, string what, string parameter)
    {
        double kelvins = temperature.Kelvins;
        if (!(kelvins >= leastKelvins - 1e-9) || kelvins > mostKelvins + 1e-9)
        {
            throw new ArgumentOutOfRangeException(
                parameter,
                temperature,
                string.Create(CultureInfo.InvariantCulture, $"{what} must lie between {leastKelvins - 273.15:0.###} and {mostKelvins - 273.15:0.###} °C."));
        }

        return kelvins;
    }

    /// <summary>A plain number within limits, or an error in the cook's words; NaN is refused too.</summary>
    internal static double Within(double value, double least, double most, string unit, string what, string parameter)
    {
        if (!(value >= least) || value > most)
        {
            throw new ArgumentOutOfRangeException(
                parameter,
                value,
                string.Create(CultureInfo.InvariantCulture, $"{what} must lie between {least:0.######} and {most:0.######} {unit}."));
        }

        return value;
    }
}
