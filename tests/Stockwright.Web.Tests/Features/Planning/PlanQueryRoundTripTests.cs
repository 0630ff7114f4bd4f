using CsCheck;
using Microsoft.AspNetCore.WebUtilities;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Recipes;
using Stockwright.Simmering;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Planning;

/// <summary>Every plan is a link: what is written reads back to the same request, in either system of measures.</summary>
public class PlanQueryRoundTripTests
{
    private static readonly PlanningInputs Book = TestBook.London;

    private static readonly Gen<UnitSystem> Systems = Gen.Enum<UnitSystem>();

    private static readonly Gen<Pot> Pots = Gen.OneOf(
        Gen.Int[0, 1].Select(index => Book.Kitchen.Pots[index]),
        Gen.Select(Gen.Double[0.2, 0.3], Gen.Double[0.10, 0.16], Gen.Double[101, 399]).Select((diameter, height, watts) =>
            Pot.Straight("own", "your own pot", Length.FromMeters(diameter), Length.FromMeters(height), material: WallMaterial.Stoneware) with { Kind = PotKind.SlowCooker, HeaterPower = Power.FromWatts(watts) }),
        Gen.Select(Gen.Double[0.4, 0.6], Gen.Double[0.3, 0.9], Gen.Double[2100, 149_000]).Select((diameter, height, watts) =>
            Pot.Straight("own", "your own pot", Length.FromMeters(diameter), Length.FromMeters(height)) with { Kind = PotKind.Kettle, HeaterPower = Power.FromWatts(watts) }),
        Gen.Select(Gen.Double[0.2, 0.3], Gen.Double[0.51, 1.03].Nullable()).Select((diameter, bar) =>
            Pot.Straight("own", "your own pot", Length.FromMeters(diameter), Length.FromCentimeters(20)) with { Kind = PotKind.PressureCooker, GaugePressure = bar is { } gauge ? Pressure.FromBars(gauge) : null }),
        Gen.Select(Gen.Double[0.09, 1.19], Gen.Double[0.09, 1.19], Gen.Double[0.05, 1.19], Gen.Enum<WallMaterial>(), Gen.OneOfConst(PotKind.Open, PotKind.PressureCooker), Gen.Double[0.2, 200].Nullable())
            .Select((diameter, brim, height, material, kind, mass) => new Pot
            {
                Id = "own",
                Name = "your own pot",
                BaseDiameter = Length.FromMeters(diameter),
                BrimDiameter = Length.FromMeters(brim),
                InnerHeight = Length.FromMeters(height),
                Material = material,
                Kind = kind,
                EmptyMass = mass is { } kilograms
                    ? Mass.FromKilograms(kilograms)
                    : Pot.EstimateEmptyMass(Length.FromMeters(diameter), Length.FromMeters(brim), Length.FromMeters(height), material),
            }));

    private static readonly Gen<Hob> Hobs = Gen.OneOf(
        Gen.Int[0, 1].Select(index => Book.Kitchen.Hobs[index]),
        Gen.Select(Gen.OneOfConst(HobKind.Gas, HobKind.Coil, HobKind.SmoothTop, HobKind.SolidPlate, HobKind.Induction), Gen.Double[0.21, 59], Gen.Double[0.06, 0.99].Nullable()).Select((kind, kilowatts, share) => new Hob
        {
            Id = "own",
            Name = "your own hob",
            Kind = kind,
            RatedPower = Power.FromKilowatts(kilowatts),
            OwnEfficiency = share is { } own ? Ratio.FromDecimalFractions(own) : null,
        }));

    private static readonly Gen<LidPosition> Lids = Gen.OneOf(
        Gen.Const(LidPosition.Off), Gen.Const(LidPosition.On), Gen.Double[0.011, 0.59].Select(open => LidPosition.Ajar(Ratio.FromDecimalFractions(open))));

    private static readonly Gen<PlanGoal> Goals = Gen.OneOf(
        Gen.Const<PlanGoal>(new PlanGoal.FillPot()),
        Gen.Double[0.2, 1900].Select(litres => (PlanGoal)new PlanGoal.MakeVolume(Volume.FromLiters(litres))),
        Gen.Select(Gen.Int[1, 300], Gen.Double[21, 4900]).Select((count, size) => (PlanGoal)new PlanGoal.MakeVolume(Volume.FromMilliliters(count * size), Volume.FromMilliliters(size))),
        Gen.Double[0.02, 900].Array[1, 6].Select(masses => (PlanGoal)new PlanGoal.UseBones(
            [.. masses.Select((mass, index) => new BonesAtHand(Book.Larder.Ingredients[index].Id, Mass.FromKilograms(mass)))])));

    // Whole minutes between March 2027 and 2032, away from the hour that comes twice when the clocks go back.
    private static readonly Gen<PlanSchedule> Schedules =
        Gen.Select(Gen.Int[0, 2_600_000], Gen.Bool, Gen.Int[0, 1439], Gen.Int[1, 1439], Gen.Enum<NightPlan>()).Select((minute, ready, wakes, awake, night) =>
        {
            DateTimeOffset moment = new DateTimeOffset(2027, 3, 1, 0, 0, 0, TimeSpan.Zero).AddMinutes(minute);
            DateTime local = TimeZoneInfo.ConvertTime(moment, Book.Zone).DateTime;
            moment = Book.Zone.IsAmbiguousTime(local) ? moment.AddHours(5) : moment;
            return new PlanSchedule
            {
                StartAt = ready ? null : moment,
                ReadyBy = ready ? moment : null,
                Zone = Book.Zone,
                WakesAt = TimeOnly.MinValue.AddMinutes(wakes),
                SleepsAt = TimeOnly.MinValue.AddMinutes((wakes + awake) % 1440),
                Night = night,
            };
        });

    private static readonly Gen<KitchenSite> Sites =
        Gen.Select(Gen.Double[-390, 4900].Nullable(), Gen.Double[501, 1099].Nullable(), Gen.Double[1, 49], Gen.Double[1, 39], Gen.Double[0.03, 1.4].Nullable(), Gen.Double[0.011, 0.49].Nullable())
            .Select((altitude, pressure, room, tap, film, clings) => Book.Kitchen.Site with
            {
                Altitude = altitude is { } metres ? Length.FromMeters(metres) : Book.Kitchen.Site.Altitude,
                MeasuredPressure = pressure is { } hectopascals ? Pressure.FromHectopascals(hectopascals) : null,
                Room = Temperature.FromDegreesCelsius(room),
                TapWater = Temperature.FromDegreesCelsius(tap),
                OwnFilmFactor = film,
                OwnClinging = clings is { } part ? Ratio.FromDecimalFractions(part) : null,
            });

    private static readonly FillMark?[] Marks =
    [
        null, new FillMark.ShareOfHeight(Ratio.FromDecimalFractions(0.75)), new FillMark.ShareOfHeight(Ratio.FromDecimalFractions(2.0 / 3)), new FillMark.ShareOfHeight(Ratio.FromDecimalFractions(0.61)),
        new FillMark.Depth(Length.FromCentimeters(11)), new FillMark.BelowRim(Length.FromInches(3)),
    ];

    private static readonly SplitWay?[] SplitWays = [null, .. Enum.GetValues<SplitWay>()];

    private static readonly Gen<PlanRequest> Requests =
        Gen.Select(Gen.Int[0, Book.Recipes.Recipes.Count - 1], Pots, Hobs, Lids, Goals, Schedules, Sites,
            Gen.Select(Gen.Double[41, 124].Nullable(), Gen.Int[1, 4319].Nullable(), Gen.Int[20, 360], Gen.Enum<TopUpRule>(), Gen.Bool, Gen.Bool, Gen.Enum<MirepoixTime>().Nullable(), Gen.Select(Gen.Bool, Gen.Bool, Gen.Enum<SlowCookerSetting>())))
            .Select((recipeIndex, pot, hob, lid, goal, schedule, site, rest) =>
            {
                StockRecipe recipe = Book.Recipes.Recipes[recipeIndex];
                return new PlanRequest
                {
                    Recipe = recipe,
                    Larder = Book.Larder,
                    Pot = pot,
                    Hob = hob,
                    Lid = lid,
                    Site = site,
                    Goal = goal,
                    Schedule = schedule,
                    SimmerTemperature = rest.Item1 is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null,
                    SimmerTime = rest.Item2 is { } minutes ? TimeSpan.FromMinutes(minutes) : null,
                    CheckInterval = TimeSpan.FromMinutes(rest.Item3),
                    TopUp = rest.Item4,
                    Mirepoix = rest.Item7,
                    HeatsUpCovered = rest.Item8.Item1,
                    SimmersInOven = rest.Item8.Item2,
                    Setting = pot.Kind == PotKind.SlowCooker ? rest.Item8.Item3 : SlowCookerSetting.High,
                    FillTo = Marks[rest.Item3 % Marks.Length],
                    Way = SplitWays[rest.Item3 % SplitWays.Length],
                    PotCount = 1 + (rest.Item3 % 4),
                    HobCount = 1 + (rest.Item3 % 3),
                    LeftOut = rest.Item5 ? recipe.Lines.Where(line => PlanQuery.CanLeaveOut(recipe, line)).Select(line => line.IngredientId).ToHashSet(StringComparer.Ordinal) : [],
                    WithOptional = rest.Item6 ? recipe.Lines.Where(line => line.IsOptional).Select(line => line.IngredientId).ToHashSet(StringComparer.Ordinal) : [],
                };
            });

    [Fact]
    public void A_written_plan_reads_back_the_same() => Gen.Select(Requests, Systems, Systems).Sample((request, units, reader) =>
    {
        string query = PlanQuery.ToQuery(request, Book.Kitchen, units);
        PlanQueryResult result = PlanQuery.Parse(Form(query), Book, reader, TestBook.Now);
        Assert.True(result.Problems.Count == 0, query + " " + string.Join(' ', result.Problems));
        Assert.Empty(result.Ignored);
        AssertSame(request, result.Request!, 1e-7);
    }, iter: 1000);

    [Fact]
    public void The_units_switch_keeps_the_plan() => Gen.Select(Requests, Systems).Sample((request, units) =>
    {
        UnitSystem other = units == UnitSystem.Metric ? UnitSystem.UsCustomary : UnitSystem.Metric;
        TypedForm typed = Form(PlanQuery.ToQuery(request, Book.Kitchen, units));
        TypedForm switched = PlanQuery.InUnits(typed, units, other);
        PlanQueryResult result = PlanQuery.Parse(switched, Book, units, TestBook.Now);
        Assert.True(result.Problems.Count == 0, switched.ToQuery() + " " + string.Join(' ', result.Problems));
        Assert.Equal(other, result.Units);
        AssertSame(request, result.Request!, 3e-4);
    }, iter: 1000);

    [Theory]
    [InlineData("litres", "9.5")]
    [InlineData("simmer", "93")]
    [InlineData("simmer", "88.5")]
    [InlineData("altitude", "1609")]
    [InlineData("pot-diameter", "28")]
    [InlineData("pot-gauge", "0.7")]
    [InlineData("bones-0-kg", "2.35")]
    [InlineData("litres", "abc")]
    public void There_and_back_a_cook_finds_what_was_typed(string field, string typed)
    {
        TypedForm form = new([KeyValuePair.Create("units", "metric"), KeyValuePair.Create(field, typed), KeyValuePair.Create("mystery", "1")]);
        TypedForm back = PlanQuery.InUnits(PlanQuery.InUnits(form, UnitSystem.Metric, UnitSystem.UsCustomary), UnitSystem.Metric, UnitSystem.Metric);
        Assert.Equal(typed, back[field]);
        Assert.Equal("1", back["mystery"]);
    }

    [Fact]
    public void What_is_usual_is_left_out()
    {
        PlanRequest request = PlanQuery.Parse(TypedForm.Empty, Book, UnitSystem.Metric, TestBook.Now).Request!;
        Assert.Equal("units=metric&recipe=brown-chicken&pot=pot-10&date=2026-11-26&time=08%3A00", PlanQuery.ToQuery(request, Book.Kitchen, UnitSystem.Metric));
    }

    [Fact]
    public void Questions_beside_a_plan_read_back_the_same() => Gen.Select(Questions, Systems, Systems).Sample((questions, units, reader) =>
    {
        string query = PlanQuery.ToQuery(Usual, Book.Kitchen, units, questions);
        PlanQueryResult result = PlanQuery.Parse(Form(query), Book, reader, TestBook.Now);
        Assert.True(result.Problems.Count == 0, query + " " + string.Join(' ', result.Problems));
        Assert.Empty(result.Ignored);
        AssertSame(questions, result.Questions, 1e-7);
    }, iter: 1000);

    [Fact]
    public void The_units_switch_keeps_the_questions() => Gen.Select(Questions, Systems).Sample((questions, units) =>
    {
        UnitSystem other = units == UnitSystem.Metric ? UnitSystem.UsCustomary : UnitSystem.Metric;
        TypedForm switched = PlanQuery.InUnits(Form(PlanQuery.ToQuery(Usual, Book.Kitchen, units, questions)), units, other);
        PlanQueryResult result = PlanQuery.Parse(switched, Book, units, TestBook.Now);
        Assert.True(result.Problems.Count == 0, switched.ToQuery() + " " + string.Join(' ', result.Problems));
        AssertSame(questions, result.Questions, 3e-4);
    }, iter: 1000);

    [Fact]
    public void A_price_by_the_kilogram_is_the_same_price_by_the_pound()
    {
        // One pound is 0.453 592 37 kg exactly (NIST SP 811, appendix B).
        TypedForm form = PlanQuery.InUnits(Form("units=metric&set-0-cut=chicken-feet&set-0-price=10&set-0-kg=1"), UnitSystem.Metric, UnitSystem.UsCustomary);
        Assert.Equal("4.536", form["set-0-price"]);
        Assert.Equal("2.2046", form["set-0-lb"]);
    }

    private static PlanRequest Usual => PlanQuery.Parse(TypedForm.Empty, Book, UnitSystem.Metric, TestBook.Now).Request!;

    private static Gen<PlanQuestions> Questions
    {
        get
        {
            Gen<Mass> masses = Gen.Double[0.01, 1900].Select(kilograms => Mass.FromKilograms(kilograms));
            Gen<string> cuts = Gen.Int[0, Book.Larder.Ingredients.Count - 1].Select(index => Book.Larder.Ingredients[index].Id);
            return Gen.Select(
                Gen.Select(Gen.Double[0.36, 1.29].Nullable(), Gen.Double[3.6, 8.9].Nullable(), Gen.Double[0.6, 29].Nullable(), Gen.Double[6, 99].Nullable()),
                Gen.Select(Gen.Int[0, 719 * 60].Nullable(), Gen.Double[0.1, 11.9].Nullable(), Gen.Double[11, 1990].Nullable(), Gen.Enum<DefatMethod>().Nullable(), Gen.Int[0, 719].Nullable()),
                Gen.Select(cuts, masses, Gen.Bool).Array[0, 4],
                Gen.Enum<BodyClass>().Nullable(),
                Gen.Select(cuts, Gen.Double[0.01, 900].Nullable(), masses.Nullable()).Array[0, 4],
                Gen.Select(Gen.Double[51, 299].Nullable(), Gen.Double[0.1, 900].Nullable()))
                .Select((fine, cold, more, wanted, set, powder) => new PlanQuestions
                {
                    KitchenFactor = fine.Item1,
                    Ph = fine.Item2,
                    PieceSize = fine.Item3 is { } piece ? Length.FromCentimeters(piece) : null,
                    Container = fine.Item4 is { } width ? Length.FromCentimeters(width) : null,
                    FridgeTime = cold.Item1 is { } minutes ? TimeSpan.FromMinutes(minutes) : null,
                    Fridge = cold.Item2 is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null,
                    Portion = cold.Item3 is { } millilitres ? Volume.FromMilliliters(millilitres) : null,
                    Defat = cold.Item4,
                    Cooling = cold.Item5 is { } cooling ? TimeSpan.FromMinutes(cooling) : null,
                    More = [.. more.Select(row => new CutChange(row.Item1, row.Item3 ? row.Item2 : -row.Item2))],
                    Wanted = wanted,
                    Cuts = [.. set.Select(row => new AvailableCut(row.Item1, row.Item2, row.Item3))],
                    PowderBloom = powder.Item1 is { } bloom ? Mass.FromGrams(bloom) : null,
                    PowderPrice = powder.Item2,
                });
        }
    }

    private static void AssertSame(PlanQuestions expected, PlanQuestions actual, double tolerance)
    {
        void Close(double? one, double? other, string what) =>
            Assert.True(one.HasValue == other.HasValue && Math.Abs((one ?? 0) - (other ?? 0)) <= (tolerance * Math.Abs(one ?? 0)) + 1e-7, $"{what}: {one} and {other}");

        Close(expected.KitchenFactor, actual.KitchenFactor, "factor");
        Close(expected.Ph, actual.Ph, "ph");
        Close(expected.PieceSize?.Centimeters, actual.PieceSize?.Centimeters, "piece");
        Close(expected.Container?.Centimeters, actual.Container?.Centimeters, "container");
        Close(expected.FridgeTime?.TotalHours, actual.FridgeTime?.TotalHours, "hours");
        Close(expected.Fridge?.Kelvins, actual.Fridge?.Kelvins, "fridge");
        Close(expected.Portion?.Milliliters, actual.Portion?.Milliliters, "portion");
        Assert.Equal(expected.Defat, actual.Defat);
        Close(expected.Cooling?.TotalMinutes, actual.Cooling?.TotalMinutes, "cooling");
        Assert.Equal(expected.More.Select(row => row.IngredientId), actual.More.Select(row => row.IngredientId), StringComparer.Ordinal);
        Assert.All(expected.More.Zip(actual.More), pair => Close(pair.First.Mass.Kilograms, pair.Second.Mass.Kilograms, "more"));
        Assert.Equal(expected.Wanted, actual.Wanted);
        Assert.Equal(expected.Cuts.Select(row => row.IngredientId), actual.Cuts.Select(row => row.IngredientId), StringComparer.Ordinal);
        Assert.All(expected.Cuts.Zip(actual.Cuts), pair =>
        {
            Close(pair.First.PricePerKilogram, pair.Second.PricePerKilogram, "price");
            Close(pair.First.AtHand?.Kilograms, pair.Second.AtHand?.Kilograms, "at hand");
        });
        Close(expected.PowderBloom?.Grams, actual.PowderBloom?.Grams, "bloom");
        Close(expected.PowderPrice, actual.PowderPrice, "powder");
    }

    private static TypedForm Form(string query) => TypedForm.From(QueryHelpers.ParseQuery(query));

    private static void AssertSame(PlanRequest expected, PlanRequest actual, double tolerance)
    {
        void Close(double one, double other, string what) =>
            Assert.True(Math.Abs(one - other) <= tolerance * Math.Max(Math.Abs(one), Math.Abs(other)) + 1e-9, $"{what}: {one} and {other}");

        Assert.Equal(expected.Recipe.Id, actual.Recipe.Id);
        Assert.Equal(expected.Pot.Id, actual.Pot.Id);
        Close(expected.Pot.BaseDiameter.Meters, actual.Pot.BaseDiameter.Meters, "diameter");
        Close(expected.Pot.BrimDiameter.Meters, actual.Pot.BrimDiameter.Meters, "brim");
        Close(expected.Pot.InnerHeight.Meters, actual.Pot.InnerHeight.Meters, "height");
        Close(expected.Pot.EmptyMass.Kilograms, actual.Pot.EmptyMass.Kilograms, "mass");
        Assert.Equal((expected.Pot.Material, expected.Pot.Kind), (actual.Pot.Material, actual.Pot.Kind));
        Close(expected.Pot.GaugePressure?.Pascals ?? -1, actual.Pot.GaugePressure?.Pascals ?? -1, "gauge");
        Close((double)(expected.Pot.HeaterPower?.Watts ?? -1), (double)(actual.Pot.HeaterPower?.Watts ?? -1), "heater");
        Assert.Equal((expected.Setting, expected.SimmersInOven), (actual.Setting, actual.SimmersInOven));
        Assert.Equal((expected.Hob.Id, expected.Hob.Kind), (actual.Hob.Id, actual.Hob.Kind));
        Close((double)expected.Hob.RatedPower.Watts, (double)actual.Hob.RatedPower.Watts, "power");
        Close(expected.Hob.OwnEfficiency?.DecimalFractions ?? -1, actual.Hob.OwnEfficiency?.DecimalFractions ?? -1, "efficiency");
        Assert.Equal(expected.Lid.Kind, actual.Lid.Kind);
        Close(expected.Lid.OpenFraction.DecimalFractions, actual.Lid.OpenFraction.DecimalFractions, "gap");
        Close(expected.Site.Altitude.Meters, actual.Site.Altitude.Meters, "altitude");
        Close(expected.Site.MeasuredPressure?.Pascals ?? -1, actual.Site.MeasuredPressure?.Pascals ?? -1, "pressure");
        Close(expected.Site.Room.Kelvins, actual.Site.Room.Kelvins, "room");
        Close(expected.Site.TapWater.Kelvins, actual.Site.TapWater.Kelvins, "tap");
        Close(expected.Site.OwnFilmFactor ?? -1, actual.Site.OwnFilmFactor ?? -1, "film");
        Close(expected.Site.OwnClinging?.DecimalFractions ?? -1, actual.Site.OwnClinging?.DecimalFractions ?? -1, "clings");
        Close(expected.SimmerTemperature?.Kelvins ?? -1, actual.SimmerTemperature?.Kelvins ?? -1, "simmer");
        Close(expected.SimmerTime?.TotalSeconds ?? -1, actual.SimmerTime?.TotalSeconds ?? -1, "hours");
        Assert.Equal(expected.CheckInterval, actual.CheckInterval);
        Assert.Equal(expected.TopUp, actual.TopUp);
        Assert.Equal(expected.Mirepoix, actual.Mirepoix);
        Assert.Equal(expected.HeatsUpCovered, actual.HeatsUpCovered);
        Assert.Equal((expected.Way, expected.PotCount, expected.HobCount), (actual.Way, actual.PotCount, actual.HobCount));
        Close(expected.FillTo is { } mark ? 1 + mark.LevelIn(expected.Pot).Meters : -1, actual.FillTo is { } read ? 1 + read.LevelIn(actual.Pot).Meters : -1, "fill");
        Assert.Equal(expected.Schedule, actual.Schedule);
        Assert.Equal(expected.LeftOut.Order(StringComparer.Ordinal), actual.LeftOut.Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Equal(expected.WithOptional.Order(StringComparer.Ordinal), actual.WithOptional.Order(StringComparer.Ordinal), StringComparer.Ordinal);
        AssertSameGoal(expected.Goal, actual.Goal, Close);
    }

    private static void AssertSameGoal(PlanGoal expected, PlanGoal actual, Action<double, double, string> close)
    {
        Assert.Equal(expected.GetType(), actual.GetType());
        if (expected is PlanGoal.MakeVolume wanted && actual is PlanGoal.MakeVolume got)
        {
            close(wanted.Yield.Liters, got.Yield.Liters, "litres");
            close(wanted.PortionSize?.Milliliters ?? -1, got.PortionSize?.Milliliters ?? -1, "portion");
        }

        if (expected is PlanGoal.UseBones bones && actual is PlanGoal.UseBones read)
        {
            Assert.Equal(bones.Bones.Select(row => row.IngredientId), read.Bones.Select(row => row.IngredientId), StringComparer.Ordinal);
            Assert.All(bones.Bones.Zip(read.Bones), pair => close(pair.First.Mass.Kilograms, pair.Second.Mass.Kilograms, "bones"));
        }
    }
}
