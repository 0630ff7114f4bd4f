using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Kitchen;

/// <summary>Kind of burner or plate; decides the share of its power that reaches the pot.</summary>
public enum HobKind
{
    /// <summary>Gas burner.</summary>
    Gas,

    /// <summary>Electric coil.</summary>
    Coil,

    /// <summary>Glass smooth-top with radiant elements.</summary>
    SmoothTop,

    /// <summary>Sealed solid plate.</summary>
    SolidPlate,

    /// <summary>Induction.</summary>
    Induction,

    /// <summary>The heater of a slow cooker; no ring of a hob.</summary>
    Crock,

    /// <summary>The elements or steam jacket of a kettle; no ring of a hob.</summary>
    Jacket,
}

/// <summary>One burner or plate of a hob.</summary>
public sealed record Hob
{
    /// <summary>Smallest and largest rated power accepted.</summary>
    public static readonly (Power Least, Power Most) PowerRange = (Power.FromWatts(200), Power.FromKilowatts(60));

    /// <summary>Least and most of the power that may reach the pot, as the cook measured it.</summary>
    public static readonly (Ratio Least, Ratio Most) EfficiencyRange = (Ratio.FromDecimalFractions(0.05), Ratio.FromDecimalFractions(1));

    /// <summary>Stable name used in links.</summary>
    public required string Id { get; init; }

    /// <summary>What the cook calls it.</summary>
    public required string Name { get; init; }

    /// <summary>Kind of burner.</summary>
    public required HobKind Kind { get; init; }

    /// <summary>Rated power: fuel or electricity taken in at full setting.</summary>
    public required Power RatedPower { get; init; }

    /// <summary>The cook's own measured efficiency; null to use the default of the kind.</summary>
    public Ratio? OwnEfficiency { get; init; }

    /// <summary>Share of the rated power that reaches pot and water, with its range.</summary>
    public Stated<Ratio> Efficiency => OwnEfficiency is { } own
        ? new Stated<Ratio>(own, own * 0.95, own * 1.05, Provenance.CookStated, "measured in this kitchen")
        : DefaultEfficiency(Kind);

    /// <summary>Efficiency by kind of hob, heating up (S.1 in docs/equations.md).</summary>
    public static Stated<Ratio> DefaultEfficiency(HobKind kind) => kind switch
    {
        HobKind.Gas => State(0.40, 0.28, 0.55, "EPRI, ACEEE Summer Study 2014 (abstract): gas about 40 %; range from single kettle tests"),
        HobKind.Coil => State(0.74, 0.65, 0.82, "EPRI, ACEEE Summer Study 2014 (abstract): resistance about 74 %"),
        HobKind.SmoothTop => State(0.74, 0.65, 0.80, "EPRI, ACEEE Summer Study 2014 (abstract): resistance about 74 %"),
        HobKind.SolidPlate => State(0.65, 0.55, 0.75, "estimate, below the open coil for its heavy plate", Provenance.Estimate),
        HobKind.Induction => State(0.80, 0.72, 0.88, "EPRI, ACEEE Summer Study 2014 (abstract): induction 84 to 90 % at best; lower with large pots"),
        HobKind.Crock => State(0.95, 0.85, 1.00, "estimate: the element lies round the crock, and a little goes straight out through the shell", Provenance.Estimate),
        HobKind.Jacket => State(0.85, 0.75, 0.92, "estimate: elements or steam behind the wall; the boiler and its pipes are not counted", Provenance.Estimate),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind of hob."),
    };

    private static Stated<Ratio> State(double value, double low, double high, string source, Provenance provenance = Provenance.Published) =>
        new(Ratio.FromDecimalFractions(value), Ratio.FromDecimalFractions(low), Ratio.FromDecimalFractions(high), provenance, source);
}
