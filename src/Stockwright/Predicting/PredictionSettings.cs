using Stockwright.Evidence;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Predicting;

/// <summary>What a prediction needs beside the plan. All have defaults.</summary>
public sealed record PredictionSettings
{
    /// <summary>Narrowest and widest container, by its inner diameter.</summary>
    public static readonly (Length Least, Length Most) ContainerRange = (Length.FromCentimeters(5), Length.FromCentimeters(100));

    /// <summary>Shortest and longest time in the fridge.</summary>
    public static readonly (TimeSpan Least, TimeSpan Most) FridgeTimeRange = (TimeSpan.Zero, TimeSpan.FromDays(30));

    /// <summary>Coldest and warmest fridge.</summary>
    public static readonly (Temperature Least, Temperature Most) FridgeRange = (Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(12));

    /// <summary>Smallest and largest portion.</summary>
    public static readonly (Volume Least, Volume Most) PortionRange = (Volume.FromMilliliters(10), Volume.FromMilliliters(2000));

    /// <summary>Shortest and longest time to cool to 60 °C.</summary>
    public static readonly (TimeSpan Least, TimeSpan Most) CoolingRange = (TimeSpan.Zero, TimeSpan.FromHours(12));

    /// <summary>Kitchen factor before this kitchen has measured anything.</summary>
    public static Stated<double> UsualKitchenFactor => SimmerAssumptions.Standard.KitchenFactor;

    /// <summary>Times the collagen the cuts give up in this kitchen, 0.3 to 1.5; one for the published figures.</summary>
    public Stated<double> KitchenFactor { get; init; } = UsualKitchenFactor;

    /// <summary>Acidity of the liquor, pH 3.5 to 9; about 5 with a good splash of wine or vinegar.</summary>
    public double Ph { get; init; } = 6.5;

    /// <summary>Size of all pieces, 0.5 to 30 cm; null for the usual size of each cut.</summary>
    public Length? PieceSize { get; init; }

    /// <summary>Size of the pieces of single ingredients, by name; goes before <see cref="PieceSize"/>.</summary>
    public IReadOnlyDictionary<string, Length> PieceSizes { get; init; } = new Dictionary<string, Length>(StringComparer.Ordinal);

    /// <summary>Inner diameter of the container the stock is chilled in, 5 to 100 cm; null for the pot's.</summary>
    public Length? ContainerDiameter { get; init; }

    /// <summary>Time in the fridge before the body is judged, up to 30 days.</summary>
    public TimeSpan FridgeTime { get; init; } = TimeSpan.FromHours(16);

    /// <summary>Temperature of the fridge, 0 to 12 °C.</summary>
    public Temperature Fridge { get; init; } = Temperature.FromDegreesCelsius(4);

    /// <summary>Size of a portion, 10 mL to 2 L.</summary>
    public Volume PortionSize { get; init; } = Volume.FromMilliliters(240);

    /// <summary>How the fat is taken off; null for chilling when the recipe chills, else ladling.</summary>
    public DefatMethod? Defat { get; init; }

    /// <summary>Time from heat off to 60 °C, strained, up to 12 h: the gelatin goes on wearing down.</summary>
    public TimeSpan CoolingTo60 { get; init; } = TimeSpan.FromMinutes(30);

    /// <summary>What is wrong with these settings, in the cook's words; empty when all is well.</summary>
    public IReadOnlyList<WordedProblem> Check()
    {
        List<WordedProblem> problems = [];
        Stated<double> factor = KitchenFactor;
        (double least, double most) = Extraction.KitchenFactorRange;
        Require(problems, factor.Low >= least && factor.Low <= factor.Value && factor.Value <= factor.High && factor.High <= most, "kitchen-factor", "The kitchen's factor must lie between 0.3 and 1.5, its range included.");
        Require(problems, Ph >= Extraction.PhRange.Least && Ph <= Extraction.PhRange.Most, "ph", "The pH of a stock lies between 3.5 and 9.");
        Require(problems, IsPiece(PieceSize) && PieceSizes.Values.All(size => IsPiece(size)), "piece-size", "Pieces are between half a centimetre and 30 cm.");
        Require(problems, ContainerDiameter is not { } diameter || (diameter >= ContainerRange.Least && diameter <= ContainerRange.Most), "container-diameter", "The container must be 5 to 100 cm across.");
        Require(problems, FridgeTime >= FridgeTimeRange.Least && FridgeTime <= FridgeTimeRange.Most, "fridge-hours", "The time in the fridge must be between 0 and 720 hours.");
        Require(problems, Fridge.DegreesCelsius >= FridgeRange.Least.DegreesCelsius && Fridge.DegreesCelsius <= FridgeRange.Most.DegreesCelsius, "fridge", "A fridge stands between 0 and 12 °C.");
        Require(problems, PortionSize.Milliliters >= PortionRange.Least.Milliliters && PortionSize.Milliliters <= PortionRange.Most.Milliliters, "portion-size", "A portion is between 10 mL and 2 L.");
        Require(problems, CoolingTo60 >= CoolingRange.Least && CoolingTo60 <= CoolingRange.Most, "cooling", "The time to cool to 60 °C must be between 0 and 12 hours.");
        Require(problems, Defat is not { } way || Enum.IsDefined(way), "defat", "Choose ladle, jug or chill.");
        return problems;
    }

    internal Length? PieceOf(string ingredientId) => PieceSizes.TryGetValue(ingredientId, out Length own) ? own : PieceSize;

    internal void Demand()
    {
        if (Check() is [{ } first, ..])
        {
            throw new ArgumentException(first.Message, first.Field);
        }
    }

    private static bool IsPiece(Length? size) => size is not { } length || (length.Centimeters >= PlanRequest.PieceSizeRange.Least.Centimeters && length.Centimeters <= PlanRequest.PieceSizeRange.Most.Centimeters);

    private static void Require(List<WordedProblem> problems, bool holds, string field, string message)
    {
        if (!holds)
        {
            problems.Add(new WordedProblem(field, message));
        }
    }
}
