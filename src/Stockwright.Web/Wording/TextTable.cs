using System.Globalization;
using System.Resources;
using Stockwright.Evidence;
using Stockwright.Planning;

namespace Stockwright.Web.Wording;

/// <summary>The texts of <c>Texts.resx</c>, found by name, their figures in the reader's measures.</summary>
internal static class TextTable
{
    private static readonly ResourceManager Texts = new("Stockwright.Web.Wording.Texts", typeof(TextTable).Assembly);

    private static readonly FigureFormat Metric = new(UnitSystem.Metric);
    private static readonly FigureFormat Us = new(UnitSystem.UsCustomary);

    /// <summary>What is wrong with a request.</summary>
    public static string Of(Problem problem, UnitSystem units) => Text($"Problem.{problem.Code}", problem.Figures, units);

    /// <summary>What a plan or a running batch tells; as it was stored where an earlier version stored its sentence.</summary>
    public static string Of(PlanNotice notice, UnitSystem units) => notice.Words ?? Text($"Notice.{notice.Code}", notice.Figures, units);

    /// <summary>A text by its name.</summary>
    /// <exception cref="ArgumentException">There is no such text.</exception>
    public static string Text(string name, IReadOnlyList<Figure> figures, UnitSystem units)
    {
        string text = Texts.GetString(name, CultureInfo.CurrentUICulture) ?? throw new ArgumentException($"There is no text called '{name}'.", nameof(name));
        return figures.Count == 0 ? text : string.Format(units == UnitSystem.UsCustomary ? Us : Metric, text, [.. figures]);
    }
}
