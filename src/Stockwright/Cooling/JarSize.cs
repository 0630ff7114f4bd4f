using Stockwright.Evidence;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>
/// A usual size of glass jar. Volumes are what the size is called by; diameter, glass and wall are common practice, no source:
/// jars of one size differ by a tenth or more.
/// </summary>
/// <param name="Id">Stable name used in links.</param>
/// <param name="Name">What the trade calls it.</param>
/// <param name="Capacity">To the brim.</param>
/// <param name="InnerDiameter">Inside, taken as straight.</param>
/// <param name="Glass">Mass of the empty jar.</param>
/// <param name="Wall">Thickness of the glass.</param>
/// <param name="FilledAs">The size of the headspace table it is filled as.</param>
public sealed record JarSize(string Id, string Name, Volume Capacity, Length InnerDiameter, Mass Glass, Length Wall, ContainerSize FilledAs)
{
    /// <summary>How sudden a change plain soda-lime glass stands, from memory; borosilicate stands several times that.</summary>
    public static TemperatureDelta ShockLimit { get; } = TemperatureDelta.FromKelvins(40);

    /// <summary>Grade of the measures.</summary>
    internal static Provenance Grade => Provenance.CommonPractice;

    /// <summary>The usual sizes, small to large; the pints and the quart are US measure.</summary>
    public static IReadOnlyList<JarSize> All { get; } =
    [
        Of("half-pint", "½ pint", Volume.FromUsPints(0.5), 61, 160, ContainerSize.HalfPint),
        Of("250ml", "250 mL", Volume.FromMilliliters(250), 62, 170, ContainerSize.HalfPint),
        Of("pint", "1 pint", Volume.FromUsPints(1), 74, 280, ContainerSize.Pint),
        Of("500ml", "500 mL", Volume.FromMilliliters(500), 76, 280, ContainerSize.Pint),
        Of("quart", "1 quart", Volume.FromUsQuarts(1), 90, 430, ContainerSize.Quart),
        Of("1l", "1 L", Volume.FromLiters(1), 92, 450, ContainerSize.Quart),
    ];

    /// <summary>Inner height of a straight jar of this volume and width.</summary>
    public Length Height => Length.FromMeters(Capacity.CubicMeters / (Math.PI / 4 * InnerDiameter.Meters * InnerDiameter.Meters));

    /// <summary>Share of the jar that is filled: to the headspace for freezing of a wide-mouthed jar, frozen or not.</summary>
    public Ratio FillLimit => Ratio.FromDecimalFractions(1 - (Headspace.ForFreezing(FilledAs, narrowTop: false).Height / Height));

    /// <summary>The size of that stable name, or null.</summary>
    public static JarSize? Find(string id) => All.FirstOrDefault(size => string.Equals(size.Id, id, StringComparison.Ordinal));

    private static JarSize Of(string id, string name, Volume capacity, double millimetres, double grams, ContainerSize filledAs) =>
        new(id, name, capacity, Length.FromMillimeters(millimetres), Mass.FromGrams(grams), Length.FromMillimeters(3.5), filledAs);
}
