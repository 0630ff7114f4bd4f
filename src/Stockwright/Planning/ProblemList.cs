using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>Adds problems to a list where something does not hold.</summary>
internal static class ProblemList
{
    public static void Require(this List<Problem> problems, bool holds, string part, ProblemCode code, params IReadOnlyList<Figure> figures)
    {
        if (!holds)
        {
            problems.Add(new Problem(part, code, figures));
        }
    }

    public static void RequireWithin(this List<Problem> problems, Length value, (Length Least, Length Most) range, string part, ProblemCode code) =>
        problems.Require(IsWithin(value.Meters, range.Least.Meters, range.Most.Meters), part, code, Figure.Of(range.Least), Figure.Of(range.Most));

    public static void RequireWithin(this List<Problem> problems, Mass value, (Mass Least, Mass Most) range, string part, ProblemCode code) =>
        problems.Require(IsWithin(value.Kilograms, range.Least.Kilograms, range.Most.Kilograms), part, code, Figure.Of(range.Least), Figure.Of(range.Most));

    public static void RequireWithin(this List<Problem> problems, Volume value, (Volume Least, Volume Most) range, string part, ProblemCode code) =>
        problems.Require(IsWithin(value.Liters, range.Least.Liters, range.Most.Liters), part, code, Figure.Of(range.Least), Figure.Of(range.Most));

    public static void RequireWithin(this List<Problem> problems, Temperature value, (Temperature Least, Temperature Most) range, string part, ProblemCode code) =>
        problems.Require(IsWithin(value.DegreesCelsius, range.Least.DegreesCelsius, range.Most.DegreesCelsius), part, code, Figure.Of(range.Least), Figure.Of(range.Most));

    public static void RequireWithin(this List<Problem> problems, Power value, (Power Least, Power Most) range, string part, ProblemCode code) =>
        problems.Require(IsWithin((double)value.Watts, (double)range.Least.Watts, (double)range.Most.Watts), part, code, Figure.Of(range.Least), Figure.Of(range.Most));

    public static void RequireWithin(this List<Problem> problems, Ratio value, (Ratio Least, Ratio Most) range, string part, ProblemCode code) =>
        problems.Require(IsWithin(value.DecimalFractions, range.Least.DecimalFractions, range.Most.DecimalFractions), part, code, Figure.Of(range.Least), Figure.Of(range.Most));

    public static void RequireWithin(this List<Problem> problems, TimeSpan value, (TimeSpan Least, TimeSpan Most) range, string part, ProblemCode code) =>
        problems.Require(value >= range.Least && value <= range.Most, part, code, Figure.Of(range.Least), Figure.Of(range.Most));

    public static bool IsWithin(double value, double least, double most) => value >= least && value <= most;
}
