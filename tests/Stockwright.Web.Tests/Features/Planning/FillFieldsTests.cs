using Microsoft.AspNetCore.WebUtilities;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Planning;

/// <summary>How full, and how many pots and hobs: each word to its line and back, and the counts a kitchen has of itself.</summary>
public sealed class FillFieldsTests
{
    private static readonly Pot Tall = Pot.Straight("tall", "Tall pot", Length.FromCentimeters(30), Length.FromCentimeters(40));

    // A pot 40 cm high.
    [Theory]
    [InlineData("fill=three-quarters", 30)]
    [InlineData("fill=two-thirds", 26.6667)]
    [InlineData("fill=half", 20)]
    [InlineData("fill=depth&fill-length=22", 22)]
    [InlineData("fill=rim&fill-length=8", 32)]
    public void A_word_is_a_line_and_comes_back_as_itself(string typed, double centimetres)
    {
        PlanRequest request = Reads("pot=own&pot-diameter=30&pot-height=40&" + typed);
        Assert.Equal(centimetres, request.FillTo!.LevelIn(request.Pot).Centimeters, 1e-3);
        Assert.Contains(typed, PlanQuery.ToQuery(request, TestBook.London.Kitchen, UnitSystem.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void As_high_as_is_safe_needs_no_word_and_a_share_without_one_is_a_depth()
    {
        Assert.Null(Reads("pot=own&pot-diameter=30&pot-height=40&fill=safe").FillTo);
        Assert.Equal((FillWay.Safe, null), FillFields.Write(null, Tall));
        Assert.Equal((FillWay.Depth, (Length?)Length.FromCentimeters(24)), FillFields.Write(new FillMark.ShareOfHeight(Ratio.FromPercent(60)), Tall));
        Assert.Equal((FillWay.Half, null), FillFields.Write(new FillMark.ShareOfHeight(Ratio.FromPercent(50)), Tall));
        Assert.Equal((FillWay.Rim, (Length?)Length.FromCentimeters(7)), FillFields.Write(new FillMark.BelowRim(Length.FromCentimeters(7)), Tall));
    }

    // Two pots of one size are one kind though their names differ; another height, kind or size is not. One is the least, also of a pot the kitchen has not.
    [Fact]
    public void Pots_of_a_size_are_counted()
    {
        KitchenSetup kitchen = TestBook.London.Kitchen with
        {
            Pots = [Tall, Tall with { Id = "b", Name = "The other" }, Tall with { Id = "c", Kind = PotKind.PressureCooker }, Tall with { Id = "d", InnerHeight = Length.FromCentimeters(41) }, Wide()],
        };
        Assert.Equal(2, FillFields.PotsLike(kitchen, Tall));
        Assert.Equal(1, FillFields.PotsLike(kitchen, Wide()));
        Assert.Equal(1, FillFields.PotsLike(kitchen, Pot.Straight("e", "New", Length.FromCentimeters(20), Length.FromCentimeters(20))));
        static Pot Wide() => Pot.Straight("w", "Wide", Length.FromCentimeters(33.54), Length.FromCentimeters(32));
    }

    // Hobs of its kind as strong or stronger: a weaker one does not heat as planned.
    [Fact]
    public void Hobs_as_strong_are_counted()
    {
        Hob Ring(HobKind kind, double kilowatts) => new() { Id = "h", Name = "Hob", Kind = kind, RatedPower = Power.FromKilowatts(kilowatts) };
        KitchenSetup kitchen = TestBook.London.Kitchen with { Hobs = [Ring(HobKind.Gas, 2), Ring(HobKind.Gas, 3), Ring(HobKind.Gas, 4), Ring(HobKind.Induction, 5)] };
        Assert.Equal(3, FillFields.HobsLike(kitchen, Ring(HobKind.Gas, 2)));
        Assert.Equal(2, FillFields.HobsLike(kitchen, Ring(HobKind.Gas, 3)));
        Assert.Equal(1, FillFields.HobsLike(kitchen, Ring(HobKind.Gas, 4)));
        Assert.Equal(1, FillFields.HobsLike(kitchen, Ring(HobKind.Coil, 1)));
    }

    [Fact]
    public void Half_a_pot_is_no_count()
    {
        Assert.Equal("pots", Assert.Single(Parse("pots=1.5").Problems).Field);
        Assert.Equal((2, 3), (Reads("pots=2&hobs=3").PotCount, Reads("pots=2&hobs=3").HobCount));
    }

    // Three potfuls in two pots are two rounds, with one in the last; four are two rounds of two.
    [Theory]
    [InlineData(3, 1, "3 rounds, one after the other")]
    [InlineData(3, 3, "3 pots side by side")]
    [InlineData(3, 2, "2 rounds, 2 pots side by side and 1 in the last")]
    [InlineData(4, 2, "2 rounds of 2 pots side by side")]
    [InlineData(8, 3, "3 rounds, 3 pots side by side and 2 in the last")]
    public void Rounds_and_pots_are_said(int potfuls, int atOnce, string words)
    {
        BatchPlan plan = FakePlan.For(Reads(""));
        Assert.Equal(words, WishText.Rounds(plan.Fit with { Potfuls = potfuls, AtOnce = atOnce }), StringComparer.Ordinal);
        Assert.Equal($"It takes {potfuls} potfuls: {words}", WishText.Head(plan with { Fit = plan.Fit with { Potfuls = potfuls, AtOnce = atOnce } }), StringComparer.Ordinal);
    }

    // 4 L of which 0.5 L is stirred in is 3.5 L strong.
    [Fact]
    public void What_it_is_let_down_with_is_said()
    {
        BatchPlan plan = FakePlan.For(Reads(""));
        BatchPlan letDown = plan with
        {
            Yield = new(Volume.FromLiters(3.8), Volume.FromLiters(4), Volume.FromLiters(4.2)),
            Fit = plan.Fit with { Verdict = FitVerdict.FitsStronger, Potfuls = 1, LetDown = Volume.FromLiters(0.5) },
        };
        Assert.StartsWith("3.5 L strong, let down with 500 mL of water; ", WishText.More(letDown, UnitSystem.Metric).Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Equal("One batch with less water, let down after straining", WishText.Head(letDown), StringComparer.Ordinal);
        Assert.Equal("One batch with less water: a stronger stock", WishText.Head(letDown with { Fit = letDown.Fit with { LetDown = Volume.Zero } }), StringComparer.Ordinal);
        Assert.Equal("Stronger, and less of it", WishText.Name(new WishWay(SplitWay.Stronger, plan)), StringComparer.Ordinal);
        Assert.Equal("Stronger, and let down with water", WishText.Name(new WishWay(SplitWay.LetDown, letDown)), StringComparer.Ordinal);
        Assert.Equal("2 pots side by side", WishText.Name(new WishWay(SplitWay.SideBySide, plan with { Fit = plan.Fit with { Potfuls = 2, AtOnce = 2 } })), StringComparer.Ordinal);
    }

    private static PlanRequest Reads(string query) => Assert.IsType<PlanRequest>(Parse(query).Request);

    private static PlanQueryResult Parse(string query) => PlanQuery.Parse(TypedForm.From(QueryHelpers.ParseQuery(query)), TestBook.London, UnitSystem.Metric, TestBook.Now);
}
