using UnitsNet;

namespace Stockwright.Planning;

/// <summary>A stretch of the simmer's clock the cook sleeps through, and what is done instead of checks.</summary>
/// <param name="FromSeconds">Start on the simmer's clock.</param>
/// <param name="Seconds">Length; time at temperature for a hold, standing cold for a stop.</param>
/// <param name="Night">What is done.</param>
public sealed record NightWindow(double FromSeconds, double Seconds, NightPlan Night);

/// <summary>What the planner settled one potful at.</summary>
/// <param name="Load">Strained stock the load is for, at the recipe's strength.</param>
/// <param name="Water">Water to the line.</param>
/// <param name="Line">The fill line, above the inside of the base.</param>
/// <param name="HeldLine">The level top-ups bring it back to.</param>
/// <param name="LetDown">Water stirred in after straining.</param>
/// <param name="CoverDecides">True when covering the solids set the water.</param>
/// <param name="Nights">Nights the pot is put away in.</param>
public sealed record PotSize(Volume Load, Mass Water, Length Line, Length HeldLine, Mass LetDown, bool CoverDecides, IReadOnlyList<NightWindow> Nights)
{
    internal static PotSize Of(FittedLoad fitted, IReadOnlyList<NightWindow> nights) => new(
        Volume.FromCubicMeters(fitted.Litres / 1000),
        Mass.FromKilograms(fitted.WaterKilograms),
        Length.FromMeters(fitted.LineMetres),
        Length.FromMeters(fitted.HeldMetres),
        Mass.FromKilograms(fitted.LetDownKilograms),
        fitted.CoverDecides,
        nights);
}
