namespace Stockwright.Numerics;

/// <summary>A function of one number; a struct implementing it is inlined by the generic root finder.</summary>
internal interface IScalarFunction
{
    /// <summary>Value at a point.</summary>
    double Evaluate(double x);
}
