using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Cooling.Growth;

/// <summary>How much work a cell does before it starts to divide, in units of growth (rate times lag).</summary>
/// <param name="Best">Best estimate.</param>
/// <param name="Cautious">Shorter lag.</param>
/// <param name="Worst">No lag: cells already growing.</param>
public readonly record struct LagWork(double Best, double Cautious, double Worst);

/// <summary>How an organism grows with temperature (equations C.40 and C.41 in docs/equations-cooling.md).</summary>
public sealed record GrowthModel
{
    /// <summary>Stable name.</summary>
    public required string Id { get; init; }

    /// <summary>Name of the organism.</summary>
    public required string Organism { get; init; }

    /// <summary>No growth at or below.</summary>
    public required Temperature Least { get; init; }

    /// <summary>Fastest growth.</summary>
    public required Temperature Optimum { get; init; }

    /// <summary>No growth at or above.</summary>
    public required Temperature Most { get; init; }

    /// <summary>Rate at the optimum, natural logarithms per hour.</summary>
    public required double OptimumRatePerHour { get; init; }

    /// <summary>Lag.</summary>
    public required LagWork Lag { get; init; }

    /// <summary>At or below this nothing is counted, whatever the curve of rates says.</summary>
    public required Temperature NothingAtOrBelow { get; init; }

    /// <summary>log10 of cells per millilitre at the start.</summary>
    public required double StartLog10 { get; init; }

    /// <summary>log10 of cells per millilitre at most.</summary>
    public required double MostLog10 { get; init; }

    /// <summary>True when reheating may be credited: it leaves no toxin behind in the food.</summary>
    public required bool TakesHeatingCredit { get; init; }

    /// <summary>Grade of the rates.</summary>
    public required Provenance Provenance { get; init; }

    /// <summary>Where rates and lag come from.</summary>
    public required string Source { get; init; }

    /// <summary>Clostridium perfringens in cooked poultry.</summary>
    public static GrowthModel ClostridiumPerfringens { get; } = new()
    {
        Id = "perfringens",
        Organism = "Clostridium perfringens",
        Least = Temperature.FromDegreesCelsius(8.8),
        Optimum = Temperature.FromDegreesCelsius(46.4),
        Most = Temperature.FromDegreesCelsius(51.5),
        OptimumRatePerHour = 6.06,
        Lag = new LagWork(7, 3, 0),
        NothingAtOrBelow = Temperature.FromDegreesCelsius(12),
        StartLog10 = 2,
        MostLog10 = 9,
        TakesHeatingCredit = true,
        Provenance = Provenance.Published,
        Source = "cardinal temperatures and rate: roasted chicken, one-step analysis of growth during cooling, Food Control (abstract); lag set here so that "
            + "pea soup cooling from 50 to 15 °C in 3 h gains one log, as observed (De Jong et al. 2004, J Food Prot 67:352, abstract); no growth of spores at 12 °C "
            + "in three weeks (Juneja, abstracts 2001 and 2003)",
    };

    /// <summary>Bacillus cereus, set here against observed growth in rice with meat.</summary>
    public static GrowthModel BacillusCereus { get; } = new()
    {
        Id = "cereus",
        Organism = "Bacillus cereus",
        Least = Temperature.FromDegreesCelsius(6),
        Optimum = Temperature.FromDegreesCelsius(40),
        Most = Temperature.FromDegreesCelsius(49),
        OptimumRatePerHour = 2.35,
        Lag = new LagWork(4.25, 2, 0),
        NothingAtOrBelow = Temperature.FromDegreesCelsius(6),
        StartLog10 = 2,
        MostLog10 = 8,
        TakesHeatingCredit = false,
        Provenance = Provenance.Estimate,
        Source = "set here against the mean growth of four rice dishes cooled from 54.5 to 7.2 °C (J Food Prot 2018 81:430, abstract); not a published model",
    };

    /// <summary>C.40, without the floor of <see cref="NothingAtOrBelow"/>; natural logarithms per hour.</summary>
    internal double CardinalRatePerHour(double celsius)
    {
        double least = Least.DegreesCelsius;
        double optimum = Optimum.DegreesCelsius;
        double most = Most.DegreesCelsius;
        if (celsius <= least || celsius >= most)
        {
            return 0;
        }

        double span = optimum - least;
        double numerator = (celsius - most) * (celsius - least) * (celsius - least);
        double denominator = span * ((span * (celsius - optimum)) - ((optimum - most) * (optimum + least - (2 * celsius))));
        return OptimumRatePerHour * numerator / denominator;
    }

    /// <summary>Rate as counted along a curve.</summary>
    internal double RatePerHour(double celsius) => celsius <= NothingAtOrBelow.DegreesCelsius ? 0 : CardinalRatePerHour(celsius);
}
