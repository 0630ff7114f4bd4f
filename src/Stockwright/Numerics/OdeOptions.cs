namespace Stockwright.Numerics;

/// <summary>How <see cref="DormandPrince"/> integrates.</summary>
internal sealed record OdeOptions
{
    /// <summary>1e-6 relative and absolute, at most 100 000 steps.</summary>
    public static OdeOptions Default { get; } = new();

    /// <summary>Local error allowed relative to each component, 1e-14 to 0.1.</summary>
    public double RelativeTolerance { get; init; } = 1e-6;

    /// <summary>Local error allowed on every component on top, in its own unit.</summary>
    public double AbsoluteTolerance { get; init; } = 1e-6;

    /// <summary>Absolute tolerances one by one, overriding <see cref="AbsoluteTolerance"/>; null for the same on all.</summary>
    public double[]? AbsoluteTolerances { get; init; }

    /// <summary>First step to try; null to estimate it (Hairer, Norsett and Wanner, II.4).</summary>
    public double? InitialStep { get; init; }

    /// <summary>Longest step taken.</summary>
    public double MaximumStep { get; init; } = double.PositiveInfinity;

    /// <summary>A constant step without error control, for order tests; null to adapt.</summary>
    public double? FixedStep { get; init; }

    /// <summary>Steps, accepted and rejected, after which the integration is stopped with an error.</summary>
    public int MaximumSteps { get; init; } = 100_000;

    /// <summary>How closely the time of an event is found, in the unit of time.</summary>
    public double EventTolerance { get; init; } = 1e-7;

    /// <summary>True to keep every step, so that <see cref="OdeSolution.StateAt(double)"/> works; false saves memory in loops.</summary>
    public bool KeepDenseOutput { get; init; } = true;

    internal void Validate(int dimension)
    {
        Check(RelativeTolerance is >= 1e-14 and <= 0.1, "The relative tolerance lies between 1e-14 and 0.1.", nameof(RelativeTolerance));
        Check(AbsoluteTolerance >= 0, "The absolute tolerance must not be negative.", nameof(AbsoluteTolerance));
        Check(AbsoluteTolerances is null || (AbsoluteTolerances.Length == dimension && Array.TrueForAll(AbsoluteTolerances, static a => a >= 0)), "Give one absolute tolerance, not negative, for each unknown.", nameof(AbsoluteTolerances));
        Check(InitialStep is null or (> 0 and < double.PositiveInfinity), "The first step must be above zero.", nameof(InitialStep));
        Check(FixedStep is null or (> 0 and < double.PositiveInfinity), "The fixed step must be above zero.", nameof(FixedStep));
        Check(MaximumStep > 0, "The longest step must be above zero.", nameof(MaximumStep));
        Check(MaximumSteps > 0, "At least one step must be allowed.", nameof(MaximumSteps));
        Check(EventTolerance > 0, "The event tolerance must be above zero.", nameof(EventTolerance));
    }

    private static void Check(bool holds, string message, string parameter)
    {
        if (!holds)
        {
            throw new ArgumentException(message, parameter);
        }
    }
}
