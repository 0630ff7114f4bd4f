using System.Text.Json.Nodes;
using CsCheck;
using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;
using Stockwright.Storage.Demo;
using Stockwright.Storage.Tests.Contract;
using UnitsNet;
using Xunit;

namespace Stockwright.Storage.Tests.Plans;

/// <summary>Plans to be kept: every part of request and plan comes back, whatever is asked and whatever the program's own figures become.</summary>
public sealed class StoredPlanTests
{
    private static readonly DateTimeOffset Start = new(2026, 3, 1, 10, 0, 0, TimeSpan.Zero);

    /// <summary>Documents of version 1, as the first program that wrote them did: a potful, bones at hand with nights to choose, pressure, and no plan.</summary>
    public static TheoryData<string> Golden => ["potful", "bones-by-night", "pressure", "request"];

    public static TheoryData<string> Recipes => [.. StandardRecipes.Book.Recipes.Select(recipe => recipe.Id)];

    [Theory]
    [MemberData(nameof(Recipes))]
    public void Every_standing_recipes_plan_comes_back_as_it_was(string recipe)
    {
        BatchPlan plan = Planned(Request(recipe));
        StoredPlan kept = StoredPlan.Of(plan, "Hall");
        StoredPlan opened = StoredPlan.Parse(kept.ToJson());
        Same.As(kept, opened);
        Assert.Equal(kept.ToJson(), opened.ToJson());
    }

    /// <summary>The text is the format: a renamed member, another unit or another order of a list would show here before it meets a cook's data.</summary>
    [Theory]
    [MemberData(nameof(Golden))]
    public void A_document_of_version_1_opens_and_is_written_again_letter_for_letter(string name)
    {
        string text = GoldenText(name);
        StoredPlan opened = StoredPlan.Parse(text);
        Assert.Equal(text, opened.ToJson());
    }

    /// <summary>Numbers read in the file by hand, so that reader and writer cannot err together.</summary>
    [Fact]
    public void A_golden_document_gives_the_numbers_that_stand_in_it()
    {
        JsonNode text = JsonNode.Parse(GoldenText("potful"))!;
        BatchPlan plan = StoredPlan.Parse(GoldenText("potful")).Plan!;
        Assert.Equal(text["plan"]!["yield"]!.AsArray().Select(number => number!.GetValue<double>()), [plan.Yield.Low.CubicMeters, plan.Yield.Central.CubicMeters, plan.Yield.High.CubicMeters]);
        Assert.Equal(text["request"]!["pot"]!["innerHeight"]!.GetValue<double>(), plan.Request.Pot.InnerHeight.Meters);
        Assert.Equal(text["request"]!["site"]!["tapWater"]!.GetValue<double>(), plan.Request.Site.TapWater.Kelvins);
        Assert.Equal(text["plan"]!["simmer"]!["checks"]!.AsArray().Select(check => check!["topUp"]![1]!.GetValue<double>()), plan.Simmer.Checks.Select(check => check.TopUp.Central.CubicMeters));
        Assert.Equal(text["plan"]!["timeline"]!["ready"]!.GetValue<DateTimeOffset>(), plan.Timeline.Ready);
        Assert.Equal(text["request"]!["assumptions"]!["figures"]!["surface-film"]![0]!.GetValue<double>(), plan.Request.Assumptions.Get("surface-film").Value);
    }

    /// <summary>
    /// Who changes a figure of the program changes no batch: here the batch has the other one. The plan stands as kept; what is expected while
    /// nothing is entered is what was planned, so the pot was run with the batch's own figures.
    /// </summary>
    [Theory]
    [InlineData("surface-film", 0.35)]
    [InlineData("clings-to-bones", 0.2)]
    [InlineData("strain-loss", 0.06)]
    [InlineData("meat-loss-95", 0.3)]
    [InlineData("slow-loss", 1.2)]
    public void A_batch_runs_on_with_the_figures_it_was_planned_with(string figure, double value)
    {
        PlanRequest usual = Request("brown-chicken");
        PlanRequest request = usual with { Assumptions = usual.Assumptions.With(figure, usual.Assumptions.Get(figure) with { Value = value }) };
        BatchPlan plan = Planned(request);
        BatchPlan opened = StoredPlan.Parse(StoredPlan.Of(plan, "Hall").ToJson()).Plan!;
        Same.As(plan.Yield, opened.Yield);
        Same.As(plan.Simmer, opened.Simmer);

        BatchPlan before = Course(plan).Expected;
        BatchPlan after = Course(opened).Expected;
        Close(before.Yield.Central.Liters, after.Yield.Central.Liters);
        Close(before.Simmer.Evaporated.Central.Liters, after.Simmer.Evaporated.Central.Liters);
        Close(before.Simmer.ToppedUp.Central.Liters, after.Simmer.ToppedUp.Central.Liters);
        Close(plan.Simmer.Evaporated.Central.Liters, after.Simmer.Evaporated.Central.Liters);

        // The test would see nothing if the figure moved nothing.
        Assert.Equal(figure is not "slow-loss", !string.Equals(StoredPlan.Of(Planned(usual), "").ToJson(), StoredPlan.Of(plan with { Request = usual }, "").ToJson(), StringComparison.Ordinal));

        static void Close(double expected, double actual) => Assert.Equal(expected, actual, 1e-6 * Math.Max(1, Math.Abs(expected)));
    }

    /// <summary>The golden batch, under another film than its own: plan and course are those of the file.</summary>
    [Fact]
    public void A_golden_batch_stays_the_same_when_the_film_of_the_program_is_another()
    {
        string text = GoldenText("potful");
        BatchPlan golden = StoredPlan.Parse(text).Plan!;
        double own = golden.Request.Assumptions.Get("surface-film").Value;
        PlanRequest other = golden.Request with
        {
            Assumptions = golden.Request.Assumptions.With("surface-film", golden.Request.Assumptions.Get("surface-film") with { Value = 2 * own }),
        };
        Assert.NotEqual(golden.Simmer.Evaporated.Central.Liters, Planned(other).Simmer.Evaporated.Central.Liters, 1e-2);
        Assert.Equal(text, StoredPlan.Parse(text).ToJson());

        // As it was in the program that wrote it, to what a later compiler may do to the last digits of a run.
        Assert.Equal(golden.Simmer.Evaporated.Central.Liters, Course(golden).Expected.Simmer.Evaporated.Central.Liters, 1e-6);

        // A file with another film runs otherwise: the figure is taken from the file.
        string altered = text.Replace("\"surface-film\":[" + own.ToString(System.Globalization.CultureInfo.InvariantCulture), "\"surface-film\":[" + (2 * own).ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.NotEqual(text, altered, StringComparer.Ordinal);
        Assert.NotEqual(golden.Simmer.Evaporated.Central.Liters, Course(StoredPlan.Parse(altered).Plan!).Expected.Simmer.Evaporated.Central.Liters, 1e-2);
    }

    [Fact]
    public void Whatever_is_asked_comes_back_and_plans_the_same() =>
        Requests.Sample(
            request =>
            {
                StoredPlan first = StoredPlan.Of(request, "Hall");
                StoredPlan again = StoredPlan.Parse(first.ToJson());
                Same.As(first, again);
                Assert.Equal(first.ToJson(), again.ToJson());
                if (BatchPlanner.Plan(again.Request).Plan is { } plan)
                {
                    string kept = StoredPlan.Of(plan, "Hall").ToJson();
                    Assert.Equal(kept, StoredPlan.Parse(kept).ToJson());
                    Assert.Equal(kept, StoredPlan.Of(BatchPlanner.Plan(StoredPlan.Parse(first.ToJson()).Request).Plan!, "Hall").ToJson());
                }
            },
            iter: 40,
            threads: 1,
            seed: "0N0XIzNsQ0O2");

    /// <summary>One for the program: a figure added to the data file, or a member to a record, without a step from the version before stops here.</summary>
    [Fact]
    public void A_damaged_newer_or_strange_document_is_refused_in_plain_words()
    {
        string text = GoldenText("request");
        Assert.All(
            new[] { "", "{", "null", "[]", "{}", """{"version":1}""", text.Replace("\"version\":1", "\"version\":2", StringComparison.Ordinal), text.Replace("\"pot\":{", "\"pat\":{", StringComparison.Ordinal), text.Replace("brownChicken", "greenChicken", StringComparison.Ordinal) },
            damaged => Assert.Throws<StoredDocumentException>(() => StoredPlan.Parse(damaged)));
        Assert.Contains("version 2", Assert.Throws<StoredDocumentException>(() => StoredPlan.Parse(text.Replace("\"version\":1", "\"version\":2", StringComparison.Ordinal))).Message, StringComparison.Ordinal);
    }

    private static readonly Gen<PlanRequest> Requests =
        from recipe in Gen.OneOfConst([.. StandardRecipes.Book.Recipes])
        from pot in Kitchens.Pot
        from hob in Kitchens.Hob
        from details in Kitchens.Details
        from lid in Gen.OneOf(Gen.Const(LidPosition.Off), Gen.Const(LidPosition.On), Gen.Double[0.01, 0.6].Select(open => LidPosition.Ajar(Ratio.FromDecimalFractions(open))))
        from goal in Gen.OneOf(
            Gen.Const<PlanGoal>(new PlanGoal.FillPot()),
            Gen.Double[0.5, 40].Select(litres => (PlanGoal)new PlanGoal.MakeVolume(Volume.FromLiters(litres), litres > 20 ? Volume.FromMilliliters(250) : null)),
            Gen.Double[0.3, 20].Select(mass => (PlanGoal)new PlanGoal.UseBones([new BonesAtHand("oxtail", Mass.FromPounds(mass))])))
        from fill in Gen.OneOf(
            Gen.Const((FillMark?)null),
            Gen.Double[0.2, 0.9].Select(share => (FillMark?)new FillMark.ShareOfHeight(Ratio.FromDecimalFractions(share))),
            Gen.Double[2, 40].Select(depth => (FillMark?)new FillMark.Depth(Length.FromInches(depth))),
            Gen.Double[3, 20].Select(distance => (FillMark?)new FillMark.BelowRim(Length.FromCentimeters(distance))))
        from night in Gen.Enum<NightPlan>()
        from ready in Gen.Bool
        from minutes in Gen.Int[0, 3000]
        from celsius in Gen.Double[82, 99]
        from hours in Gen.Double[0.5, 30]
        from switches in Gen.Int[0, 63]
        from factor in Gen.Double[0.7, 1.4]
        from figure in Gen.OneOfConst("surface-film", "cover-depth", "clings-to-vegetables", "kitchen-factor")
        select new PlanRequest
        {
            Recipe = recipe,
            Larder = StandardLarder.Table,
            Pot = pot with { Id = "pot" },
            OtherPots = (switches & 1) != 0 ? [DemoKitchen.Pots[1]] : [],
            Hob = hob with { Id = "hob" },
            Lid = lid,
            Site = details.Site,
            Oven = (switches & 2) != 0 ? DemoKitchen.Oven : null,
            Trays = DemoKitchen.Trays,
            Goal = goal,
            FillTo = fill,
            Way = (switches & 4) != 0 ? SplitWay.OneAfterAnother : null,
            PotCount = 1 + (switches % 3),
            HobCount = 1 + (switches % 2),
            HeatsUpCovered = (switches & 8) != 0,
            Mirepoix = (switches & 16) != 0 ? MirepoixTime.LastHour : null,
            PieceSize = (switches & 32) != 0 ? Length.FromCentimeters(4) : null,
            SimmerTemperature = (switches & 9) == 9 ? Temperature.FromDegreesCelsius(celsius) : null,
            SimmerTime = (switches & 6) == 6 ? TimeSpan.FromHours(hours) : null,
            TopUp = (TopUpRule)(switches % 3),
            LeftOut = (switches & 1) != 0 ? new HashSet<string>(StringComparer.Ordinal) { "bay-leaf", "parsley" } : new HashSet<string>(StringComparer.Ordinal),
            Schedule = new PlanSchedule
            {
                Zone = TimeZoneInfo.FindSystemTimeZoneById(details.TimeZoneId),
                StartAt = ready ? null : Start.AddMinutes(minutes),
                ReadyBy = ready ? Start.AddMinutes(minutes) : null,
                Night = night,
                SleepsAt = new TimeOnly(23, 15),
            },
            Assumptions = SimmerAssumptions.Standard.With(figure, Scaled(SimmerAssumptions.Standard.Get(figure), factor)),
        };

    private static Stated<double> Scaled(Stated<double> figure, double factor) =>
        figure with { Value = figure.Value * factor, Low = figure.Low * factor, High = figure.High * factor };

    private static BatchPlan Planned(PlanRequest request) => BatchPlanner.Plan(request) is { Plan: { } plan } answer
        ? plan
        : throw new Xunit.Sdk.XunitException(string.Join(' ', BatchPlanner.Plan(request).Problems.Select(problem => problem.Code)));

    private static BatchCourse Course(BatchPlan plan) => BatchReplanner.Replan(
        new Batch { Id = Guid.Empty, Name = "B", Planned = plan, Limit = StandardLimits.Default, StartedAt = plan.Timeline.Start }, BatchLog.Empty, plan.Timeline.Start);

    private static string GoldenText(string name)
    {
        using Stream stream = typeof(StoredPlanTests).Assembly.GetManifestResourceStream($"plan-1-{name}.json") ?? throw new InvalidOperationException($"There is no golden plan '{name}'.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }

    private static PlanRequest Request(string id)
    {
        Assert.True(StandardRecipes.Book.TryFind(id, out StockRecipe? recipe));
        return new()
        {
            Recipe = recipe,
            Larder = StandardLarder.Table,
            Pot = DemoKitchen.Pots[0],
            OtherPots = [DemoKitchen.Pots[1]],
            Hob = DemoKitchen.Hobs[0],
            Lid = recipe.Lid,
            Site = DemoKitchen.Details.Site,
            Oven = DemoKitchen.Oven,
            Trays = DemoKitchen.Trays,
            Goal = new PlanGoal.MakeVolume(Volume.FromLiters(3)),
            Schedule = new PlanSchedule { StartAt = Start, Night = NightPlan.GetUp },
            TopUp = PlanRequest.UsualTopUp(recipe),
        };
    }
}
