using Stockwright.Evidence;
using Stockwright.Files;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>
/// The uncertain figures of solids, surface and losses: one row each with range, grade and source, so that a food scientist can read and question
/// them. A plan carries the figures it was made with; those it is made with unless told otherwise stand in <c>Simmering/Data/assumptions.json</c>.
/// </summary>
public sealed class SimmerAssumptions
{
    private const double HourSeconds = 3600;

    private static readonly Lazy<SimmerAssumptions> Loaded = new(static () => new(Parse(EmbeddedText.Read("Simmering.Data.assumptions.json"))));

    /// <summary>Takes figures by their stable names.</summary>
    /// <param name="figures">All of them.</param>
    /// <exception cref="KeyNotFoundException">One is missing.</exception>
    public SimmerAssumptions(IReadOnlyDictionary<string, Stated<double>> figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        Figures = new Dictionary<string, Stated<double>>(figures, StringComparer.Ordinal);

        // What the inner loops ask for is looked up once.
        SurfaceFilm = Get("surface-film");
        CleanSurface = Get("clean-surface");
        CoveringKilogramsPerSquareMetre = Get("fat-that-covers").Value;
        GentleBoilFlux = Get("gentle-boil").Value / HourSeconds;
        RollingBoilFlux = Get("rolling-boil").Value / HourSeconds;
        BubblingKelvins = Get("bubbles-begin").Value;
        SealedLeak = Get("sealed-leak");
        SlowLoss = Get("slow-loss");
        Clinging = Share("clings-to-bones");
        Skimmed = Share("skimmed");
        StrainLoss = Share("strain-loss");
        DefatLoss = Share("defat-loss");
        CoverDepthMetres = Get("cover-depth").Value;
        KitchenFactor = Get("kitchen-factor");
        CollagenActivation = Get("collagen-activation");
        BreakdownActivation = Get("breakdown-activation");
        BreakdownPerHour = Get("breakdown-per-hour");
        MeatWater = new MeatWater(this);
        GelatinLean = Range("water-with-gelatin");
    }

    /// <summary>The figures that come with the tool.</summary>
    public static SimmerAssumptions Standard => Loaded.Value;

    /// <summary>All figures by their stable names.</summary>
    public IReadOnlyDictionary<string, Stated<double>> Figures { get; }

    /// <summary>Liquor that clings to drained bones and meat, kilograms per kilogram (S.7).</summary>
    public Stated<Ratio> Clinging { get; }

    /// <summary>Share of the liquid lifted off as scum in the first hour (S.8).</summary>
    internal Stated<Ratio> Skimmed { get; }

    /// <summary>Share of the strained liquor left in cloth, strainer, vessels and spoon (S.8).</summary>
    internal Stated<Ratio> StrainLoss { get; }

    /// <summary>Share of the liquor that goes with the fat when it is lifted (S.8).</summary>
    internal Stated<Ratio> DefatLoss { get; }

    /// <summary>What a kitchen gets out of the published collagen before it has measured anything (B.5).</summary>
    public Stated<double> KitchenFactor { get; }

    /// <summary>Activation energy of collagen extraction, J/mol (B.1).</summary>
    internal Stated<double> CollagenActivation { get; }

    /// <summary>Activation energy of the breakdown of gelatin, J/mol (B.2).</summary>
    internal Stated<double> BreakdownActivation { get; }

    /// <summary>Breakdown of gelatin at 98 °C, per hour (B.2).</summary>
    internal Stated<double> BreakdownPerHour { get; }

    /// <summary>Film factor of a surface that fat covers (S.3).</summary>
    internal Stated<double> SurfaceFilm { get; }

    /// <summary>Loss of a surface without fat over that of clean open water.</summary>
    internal Stated<double> CleanSurface { get; }

    /// <summary>Floating fat that leaves about a third of the surface clean.</summary>
    internal double CoveringKilogramsPerSquareMetre { get; }

    /// <summary>Loss of a pot kept at the boil as gently as a cook can, kg/(m2 s). Bubbles break the film, so the film factor does not apply.</summary>
    internal double GentleBoilFlux { get; }

    /// <summary>Loss of a pot at a rolling boil, kg/(m2 s). The hob is the limit: 1.6 kg an hour for each kilowatt that reaches the pot.</summary>
    internal double RollingBoilFlux { get; }

    /// <summary>
    /// Bubbles begin to break the film so far under the boil, K: from there to the boil what they carry off rises smoothly, so that no tiny change of
    /// air pressure decides how much a simmer loses.
    /// </summary>
    internal double BubblingKelvins { get; }

    /// <summary>Steam past valve and gasket of a pressure cooker at pressure, kg/h.</summary>
    internal Stated<double> SealedLeak { get; }

    /// <summary>What a slow cooker loses to the room for each kelvin it is warmer, W/K: crock, shell and lid together.</summary>
    internal Stated<double> SlowLoss { get; }

    /// <summary>Depth of liquid over the solids at the start, m.</summary>
    internal double CoverDepthMetres { get; }

    /// <summary>How much of its water lean meat loses.</summary>
    internal MeatWater MeatWater { get; }

    /// <summary>Water that leaves with gelatin, kg per kg.</summary>
    internal WaterRange GelatinLean { get; }

    /// <summary>A figure by its stable name.</summary>
    /// <exception cref="KeyNotFoundException">No figure has that name.</exception>
    public Stated<double> Get(string key) => Figures.TryGetValue(key, out Stated<double>? figure)
        ? figure
        : throw new KeyNotFoundException($"No assumption is called '{key}'.");

    /// <summary>The same figures but for one.</summary>
    public SimmerAssumptions With(string key, Stated<double> figure) =>
        new(new Dictionary<string, Stated<double>>(Figures, StringComparer.Ordinal) { [key] = figure });

    /// <summary>A figure that is a share.</summary>
    internal Stated<Ratio> Share(string key)
    {
        Stated<double> figure = Get(key);
        return new Stated<Ratio>(
            Ratio.FromDecimalFractions(figure.Value), Ratio.FromDecimalFractions(figure.Low), Ratio.FromDecimalFractions(figure.High), figure.Provenance, figure.Source);
    }

    /// <summary>A figure with its ends.</summary>
    internal WaterRange Range(string key)
    {
        Stated<double> figure = Get(key);
        return new WaterRange(figure.Low, figure.Value, figure.High);
    }

    internal static Dictionary<string, Stated<double>> Parse(string json) => JsonRow.ReadFile(
        json,
        "File of assumptions",
        static file =>
        {
            file.OptionalText("about");
            Dictionary<string, string> sources = file.TextTable("sources");
            Dictionary<string, Stated<double>> figures = new(StringComparer.Ordinal);
            file.Rows("figures", "figure", row =>
            {
                string key = row.Text("key");
                row.Rename($"Figure '{key}'");
                row.Text("means");
                return figures.TryAdd(key, row.Stated("value", sources)) ? key : throw row.Fail("'key' is used twice");
            });
            return figures;
        });
}
