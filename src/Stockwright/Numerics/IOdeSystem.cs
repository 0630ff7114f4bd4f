namespace Stockwright.Numerics;

/// <summary>
/// A system of ordinary differential equations dy/dt = f(t, y). Make it a struct, or a sealed class, so that
/// <see cref="DormandPrince"/> compiles a loop of its own for it.
/// </summary>
internal interface IOdeSystem
{
    /// <summary>Number of unknowns.</summary>
    int Dimension { get; }

    /// <summary>The right-hand side. It must not keep the spans and must fill every derivative.</summary>
    /// <param name="t">Independent variable, usually seconds.</param>
    /// <param name="y">State; may lie slightly off the solution, since stages probe.</param>
    /// <param name="dydt">Derivatives, to be written.</param>
    void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt);
}
