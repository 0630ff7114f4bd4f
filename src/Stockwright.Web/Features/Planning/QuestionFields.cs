using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Planning;

/// <summary>The fields of what is asked of the stock beside the plan, each told once, fold by fold in the order of the page.</summary>
internal static class QuestionFields
{
    private static readonly PredictionSettings Usual = new();

    /// <summary>What moves the body and is not in the plan.</summary>
    public static readonly IReadOnlyList<ShownField<PlanView>> Body =
    [
        Asked(
            NumberRow.Span("fridge-hours", "Time in the fridge", Measure.Hours, PredictionSettings.FridgeTimeRange) with
            {
                Told = "Hours in the fridge",
                Blank = Usual.FridgeTime,
                Description = "Hours in the fridge before the body is judged; 16 when left out.",
            },
            asked => asked.FridgeTime, (asked, time) => asked with { FridgeTime = time }),
        Asked(
            NumberRow.Temperature("fridge", "Fridge", PredictionSettings.FridgeRange) with { Blank = Usual.Fridge, Description = "Fridge; degrees Celsius or Fahrenheit. 4 C when left out." },
            asked => asked.Fridge, (asked, temperature) => asked with { Fridge = temperature }),
        Asked(
            NumberRow.Length("container", "Container, inner width", PredictionSettings.ContainerRange) with
            {
                Told = "Width of the container",
                Placeholder = "that of the pot",
                Description = "Inner diameter of the container the stock is chilled in; cm or in. The pot's when left out.",
            },
            asked => asked.Container, (asked, width) => asked with { Container = width }),
        Asked(
            NumberRow.Volume("portion", "Portion", Measure.Portion, PredictionSettings.PortionRange) with
            {
                Told = "Size of a portion",
                Blank = Usual.PortionSize,
                Hint = "For the nutrition.",
                Description = "Size of a portion for the nutrition; mL or fl oz. 240 mL when left out.",
            },
            asked => asked.Portion, (asked, size) => asked with { Portion = size }),
        Asked(
            new WordsRow<DefatMethod>("defat", "The fat is",
            [
                new("ladle", DefatMethod.Ladle, "ladled off hot"), new("jug", DefatMethod.Jug, "poured off in a separating jug"), new("chill", DefatMethod.Chill, "chilled and lifted off"),
            ])
            {
                Told = "Taking off the fat",
                Class = "wide",
                None = "taken off as the recipe says",
                Description = "How the fat is taken off: ladle, jug or chill. As the recipe says when left out.",
            },
            asked => asked.Defat, (asked, way) => asked with { Defat = way }),
        Asked(
            NumberRow.Length("piece-size", "Pieces of bone", PlanRequest.PieceSizeRange) with
            {
                Told = "Size of the pieces",
                Placeholder = "usual for the cut",
                Hint = "Smaller pieces give up their gelatin sooner.",
                Description = "Size of the pieces of bone; cm or in. Usual for each cut when left out.",
            },
            asked => asked.PieceSize, (asked, size) => asked with { PieceSize = size }),
        Asked(
            NumberRow.Number("ph", "Acidity", Extraction.PhRange) with
            {
                Unit = "pH",
                Blank = Usual.Ph,
                Hint = "About 5 with a good splash of wine or vinegar.",
                Description = "Acidity of the liquor, pH 3.5 to 9; 6.5 when left out.",
            },
            asked => asked.Ph, (asked, acidity) => asked with { Ph = acidity }),
        Asked(
            NumberRow.Span("cool-minutes", "From heat off to 60 °C (140 °F)", Measure.Minutes, PredictionSettings.CoolingRange) with
            {
                Told = "Time to cool to 60 °C (140 °F)",
                Blank = Usual.CoolingTo60,
                Description = "Minutes from heat off to 60 C, strained; 30 when left out.",
            },
            asked => asked.Cooling, (asked, time) => asked with { Cooling = time }),
        Asked(
            NumberRow.Number("kitchen-factor", "Kitchen factor", PlanQuestions.KitchenFactorRange) with
            {
                Blank = PredictionSettings.UsualKitchenFactor.Value,
                Hint = "Gelatin you measured, over what the published figures give. Leave blank until you have measured.",
                Description = "This kitchen's gelatin over the published figures, 0.35 to 1.3; 0.85 when left out.",
            },
            asked => asked.KitchenFactor, (asked, factor) => asked with { KitchenFactor = factor }),
    ];

    /// <summary>What it should set to.</summary>
    public static readonly IReadOnlyList<ShownField<PlanView>> Target =
    [
        Asked(
            new WordsRow<BodyClass>("set-target", "It should be", BodyText.Bodies)
            {
                Told = "Body",
                IsList = true,
                None = "choose…",
                Description = "How it should set: trembling, soft-jelly, firm-jelly, very-firm, demi-glace or glace; answered as prediction.set.",
            },
            asked => asked.Wanted, (asked, body) => asked with { Wanted = body }) with
            {
                // Below that it does not set.
                Options = (_, options) => [.. options.Where(option => option.Value is not ("watery" or "syrupy"))],
            },
    ];

    /// <summary>Powder gelatin at hand.</summary>
    public static readonly IReadOnlyList<ShownField<PlanView>> Powder =
    [
        Asked(
            NumberRow.Plain("powder-price", "Powder gelatin, price", Measure.Price, AvailableCut.PriceRange) with { Told = "Price of the powder", Description = "Its price per kg or lb." },
            asked => asked.PowderPrice, (asked, price) => asked with { PowderPrice = price }),
        Asked(
            NumberRow.Mass("powder-bloom", "Its Bloom", Measure.Grams, AvailablePowder.BloomRange) with
            {
                Told = "Bloom of the powder",
                InputMode = "numeric",
                Blank = PlanQuestions.None.BloomUsed,
                Hint = "On the packet, 50 to 300; the higher, the less you need.",
                Description = "Bloom of powder gelatin at hand, 50 to 300; 225 when left out.",
            },
            asked => asked.PowderBloom, (asked, bloom) => asked with { PowderBloom = bloom }),
    ];

    public static readonly IReadOnlyList<FieldRow> All = [.. Body.Concat(Target).Concat(Powder).Select(shown => shown.Row)];

    public static readonly IReadOnlyList<FieldBinding<PlanQuestions>> OfQuestions = [.. Body.Concat(Target).Concat(Powder).Select(shown => shown.Binding).OfType<FieldBinding<PlanQuestions>>()];

    private static ShownField<PlanView> Asked<T>(FieldRow<T> row, Func<PlanQuestions, T?> get, Func<PlanQuestions, T, PlanQuestions> with)
        where T : struct => new(row, row.Of(get, with));
}
