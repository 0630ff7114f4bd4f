using Stockwright.Kitchen;
using Stockwright.Measures;
using UnitsNet;

namespace Stockwright.Web.Drawing;

/// <summary>
/// A lid slid back over a mouth of the same size leaves a crescent open. With the centres d apart and both radii R the
/// circles overlap by 2 R² acos(d/2R) − (d/2) √(4R² − d²) (plane geometry of two equal circles); the rest of the mouth is open.
/// </summary>
public static class LidGeometry
{
    /// <summary>Share of the mouth left open.</summary>
    /// <param name="offset">Distance of the centres over the radius, 0 (seated) to 2 (clear of the mouth).</param>
    /// <exception cref="ArgumentOutOfRangeException">The offset lies outside that range.</exception>
    public static double OpenFraction(double offset)
    {
        if (!(offset is >= 0 and <= 2))
        {
            throw new ArgumentOutOfRangeException(nameof(offset), offset, "The lid lies between seated and clear of the mouth.");
        }

        double overlap = (2 * Math.Acos(offset / 2)) - (offset / 2 * Math.Sqrt(4 - (offset * offset)));
        return 1 - (overlap / Math.PI);
    }

    /// <summary>Distance of the centres over the radius that leaves a share of the mouth open.</summary>
    /// <param name="openFraction">Open share of the mouth, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share lies outside that range.</exception>
    public static double Offset(double openFraction)
    {
        if (!(openFraction is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(openFraction), openFraction, "An open share lies between 0 and 1.");
        }

        // The open share grows steadily with the offset, so halving always closes in on the one answer.
        double low = 0;
        double high = 2;
        for (int i = 0; i < 50; i++)
        {
            double middle = (low + high) / 2;
            if (OpenFraction(middle) < openFraction)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return openFraction == 0 ? 0 : openFraction == 1 ? 2 : (low + high) / 2;
    }

    /// <summary>Widest gap of the crescent, which is how far to slide the lid back on this mouth.</summary>
    public static Length Gap(LidPosition lid, Length mouthDiameter) => mouthDiameter * Offset(lid.OpenFraction.DecimalFractions) / 2;

    /// <summary>The lid in words: "Lid off", "Lid on", "Lid ajar, 10 % of the mouth open".</summary>
    public static string Describe(LidPosition lid) => lid.Kind switch
    {
        LidKind.Off => "Lid off",
        LidKind.On => "Lid on",
        _ => $"Lid ajar, {KitchenFormat.Text(lid.OpenFraction)} of the mouth open",
    };

    /// <summary>The lid in words for a given mouth: "Lid ajar, gap 26 mm".</summary>
    public static string Describe(LidPosition lid, Length mouthDiameter, UnitSystem system) => lid.Kind == LidKind.Ajar
        ? $"Lid ajar, gap {KitchenFormat.Text(Gap(lid, mouthDiameter), system)}"
        : Describe(lid);
}
