using System.Reflection;
using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Requests that read like what a cook says.</summary>
internal static class PlanRequests
{
    /// <summary>A Tuesday morning in winter; no clock is read.</summary>
    internal static readonly DateTimeOffset Morning = new(2026, 1, 13, 8, 0, 0, TimeSpan.Zero);

    internal static readonly TimeZoneInfo London = TimeZoneInfo.FindSystemTimeZoneById("Europe/London");

    /// <summary>28 cm straight pot of 20 L on a 3.5 kW induction hob by the sea, lid as the recipe has it, a US gallon, from eight in the morning.</summary>
    internal static PlanRequest For(string recipeId)
    {
        StockRecipe recipe = StandardRecipes.Book.Recipes.First(one => string.Equals(one.Id, recipeId, StringComparison.Ordinal));
        return new PlanRequest
        {
            Recipe = recipe,
            Larder = StandardLarder.Table,
            Pot = Straight(28, 32.5),
            Hob = Hob(HobKind.Induction, 3.5),
            Lid = recipe.Lid,
            Site = new KitchenSite(),
            Oven = new Oven("oven", "Oven", HasFan: true, Levels: 2, Length.FromCentimeters(60), Length.FromCentimeters(40)),
            Trays = [new Tray("tray", "GN 1/1", Length.FromMillimeters(530), Length.FromMillimeters(325), 3)],
            Goal = new PlanGoal.MakeVolume(Volume.FromUsGallons(1)),
            Schedule = new PlanSchedule { StartAt = Morning },
            TopUp = PlanRequest.UsualTopUp(recipe),
        };
    }

    internal static PlanRequest Making(this PlanRequest request, double litres) =>
        request with { Goal = new PlanGoal.MakeVolume(Volume.FromLiters(litres)) };

    internal static PlanRequest Using(this PlanRequest request, params (string IngredientId, double Kilograms)[] bones) =>
        request with { Goal = new PlanGoal.UseBones([.. bones.Select(one => new BonesAtHand(one.IngredientId, Mass.FromKilograms(one.Kilograms)))]) };

    internal static PlanRequest In(this PlanRequest request, Pot pot) => request with { Pot = pot };

    internal static PlanRequest On(this PlanRequest request, Hob hob) => request with { Hob = hob };

    internal static PlanRequest Uncovered(this PlanRequest request) => request with { Lid = LidPosition.Off };

    internal static PlanRequest SimmeringFor(this PlanRequest request, double hours) => request with { SimmerTime = TimeSpan.FromHours(hours) };

    internal static PlanRequest At(this PlanRequest request, Temperature simmer) => request with { SimmerTemperature = simmer };

    internal static PlanRequest AtAltitude(this PlanRequest request, double metres) =>
        request with { Site = request.Site with { Altitude = Length.FromMeters(metres) } };

    internal static PlanRequest WithFilm(this PlanRequest request, double factor) =>
        request with { Site = request.Site with { OwnFilmFactor = factor } };

    internal static PlanRequest Clinging(this PlanRequest request, double fraction) =>
        request with { Site = request.Site with { OwnClinging = Ratio.FromDecimalFractions(fraction) } };

    internal static PlanRequest Starting(this PlanRequest request, DateTimeOffset start, NightPlan night = NightPlan.GetUp, TimeZoneInfo? zone = null) =>
        request with { Schedule = new PlanSchedule { StartAt = start, Night = night, Zone = zone ?? TimeZoneInfo.Utc } };

    internal static PlanRequest ReadyBy(this PlanRequest request, DateTimeOffset ready, NightPlan night = NightPlan.GetUp, TimeZoneInfo? zone = null) =>
        request with { Schedule = new PlanSchedule { ReadyBy = ready, Night = night, Zone = zone ?? TimeZoneInfo.Utc } };

    internal static Pot Straight(double diameterCentimetres, double heightCentimetres) =>
        Pot.Straight("pot", "Pot", Length.FromCentimeters(diameterCentimetres), Length.FromCentimeters(heightCentimetres));

    internal static Pot Tapered(double baseCentimetres, double brimCentimetres, double heightCentimetres) =>
        Straight(baseCentimetres, heightCentimetres) with { BrimDiameter = Length.FromCentimeters(brimCentimetres) };

    internal static Pot PressureCooker(double diameterCentimetres, double heightCentimetres) =>
        Straight(diameterCentimetres, heightCentimetres) with { Kind = PotKind.PressureCooker };

    /// <summary>A stoneware crock of 10 mm, on 250 W unless another power is given.</summary>
    internal static Pot SlowCooker(double diameterCentimetres, double heightCentimetres, double? watts = 250) =>
        Pot.Straight("crock", "Crock", Length.FromCentimeters(diameterCentimetres), Length.FromCentimeters(heightCentimetres), material: WallMaterial.Stoneware) with
        {
            Kind = PotKind.SlowCooker,
            HeaterPower = watts is { } power ? Power.FromWatts(power) : null,
        };

    internal static Pot Kettle(double diameterCentimetres, double heightCentimetres, double? kilowatts = 12) =>
        Straight(diameterCentimetres, heightCentimetres) with
        {
            Kind = PotKind.Kettle,
            HeaterPower = kilowatts is { } power ? Power.FromKilowatts(power) : null,
        };

    internal static Hob Hob(HobKind kind, double kilowatts) =>
        new() { Id = "hob", Name = "Hob", Kind = kind, RatedPower = Power.FromKilowatts(kilowatts) };

    /// <summary>The plan, which must exist.</summary>
    internal static BatchPlan Plan(this PlanRequest request)
    {
        PlanResult result = BatchPlanner.Plan(request);
        Assert.Empty(result.Problems);
        Assert.All(result.Plan!.Notices, notice =>
        {
            Assert.Equal(FiguresOf(typeof(NoticeCode), notice.Code), notice.Figures.Select(figure => figure.Kind));
            Assert.All(notice.All().Where(figure => figure is { Kind: FigureKind.Phrase, Word.Length: > 0 }), phrase =>
                Assert.Equal(FiguresOf(typeof(NoticePhrase), phrase.Word), phrase.Parts!.Select(figure => figure.Kind == FigureKind.List ? FigureKind.Phrase : figure.Kind)));
        });
        return result.Plan!;
    }

    /// <summary>The one problem that keeps a plan from being made.</summary>
    internal static Problem Problem(this PlanRequest request)
    {
        PlanResult result = BatchPlanner.Plan(request);
        Assert.Null(result.Plan);
        Problem problem = Assert.Single(result.Problems);
        Assert.Equal(FiguresOf(problem.Code), problem.Figures.Select(figure => figure.Kind));
        return problem;
    }

    /// <summary>What a code says its sentence needs.</summary>
    internal static IEnumerable<FigureKind> FiguresOf(ProblemCode code) => FiguresOf(typeof(ProblemCode), code.ToString());

    /// <summary>Every figure of a notice, those of its phrases too.</summary>
    internal static IEnumerable<Figure> All(this PlanNotice notice) => notice.Figures.SelectMany(All);

    /// <summary>True when a notice has a phrase or a name.</summary>
    internal static bool Says(this PlanNotice notice, string word) => notice.All().Any(figure => string.Equals(figure.Word, word, StringComparison.Ordinal));

    /// <summary>The sizes of one kind in a notice, in order.</summary>
    internal static double[] Sizes(this PlanNotice notice, FigureKind kind) => [.. notice.All().Where(figure => figure.Kind == kind).Select(figure => figure.Value)];

    internal static PlanNotice Notice(this BatchPlan plan, string code) => plan.Notices.Single(notice => string.Equals(notice.Code, code, StringComparison.Ordinal));

    private static IEnumerable<Figure> All(Figure figure) => [figure, .. (figure.Parts ?? []).SelectMany(All)];

    private static IEnumerable<FigureKind> FiguresOf(Type names, string name) => names.GetFields()
        .Single(field => field.IsLiteral && string.Equals(names.IsEnum ? field.Name : (string?)field.GetRawConstantValue(), name, StringComparison.Ordinal))
        .GetCustomAttribute<FiguresAttribute>()?.Kinds ?? [];

    internal static bool HasNotice(this BatchPlan plan, string code) =>
        plan.Notices.Any(notice => string.Equals(notice.Code, code, StringComparison.Ordinal));
}
