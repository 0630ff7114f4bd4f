using UnitsNet;

namespace Stockwright.Cooling.Growth;

/// <summary>How fast heat kills: one decimal reduction in D minutes at a reference, ten times faster z kelvins higher (equation C.43).</summary>
/// <param name="Organism">What is killed.</param>
/// <param name="DecimalReduction">Time for one log10 at the reference.</param>
/// <param name="Reference">Reference temperature.</param>
/// <param name="ZKelvins">Kelvins for ten times the speed, above zero.</param>
/// <param name="Source">Where it was read.</param>
public sealed record HeatInactivation(string Organism, TimeSpan DecimalReduction, Temperature Reference, double ZKelvins, string Source)
{
    /// <summary>Vegetative C. perfringens in beef.</summary>
    internal static HeatInactivation VegetativePerfringens { get; } = new(
        "Clostridium perfringens, vegetative", TimeSpan.FromMinutes(5.3), Temperature.FromDegreesCelsius(60), 7, "Juneja and Marmer 1998 [from memory]");

    /// <summary>Why a long boil does not make stock sterile.</summary>
    public const string WhyBoilingDoesNotSterilise =
        "Boiling does not sterilise. Three hours at 100 °C kill 999 in 1000 of a middling C. perfringens spore but only 96 or 97 in 100 of a tough one, and a simmer at 90 °C far fewer; "
        + "what is left has been woken by the heat, and nothing else is left to compete with it while the stock cools slowly.";

    /// <summary>Why boiling again does not put slow cooling right.</summary>
    public const string WhyReboilingDoesNotUndo =
        "Boiling again does not undo slow cooling. It kills growing cells, but not spores, and the toxins of B. cereus and of staphylococci stand the boil.";

    internal double DMinutes(double celsius) =>
        DecimalReduction.TotalMinutes * Math.Pow(10, (Reference.DegreesCelsius - celsius) / ZKelvins);
}
