using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Tests.Physics;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>Roasting and blanching.</summary>
public sealed class PreparationStepTests
{
    // Estimate: heavy bones 12 to 18 kg/m2, so 2.0 to 3.1 kg on a GN 1/1 of 0.172 m2.
    [Fact]
    public void A_gastronorm_tray_takes_two_to_three_kilos_of_bones_in_one_layer()
    {
        TrayLoad load = BonesOnly(PlanRequests.For("brown-beef").Using(("beef-knuckle", 2.5))).Plan().Roast!.Loads[0];
        double kilograms = 0.17225 * load.Mass.Kilograms / load.AreaNeeded.SquareMeters;
        Assert.InRange(kilograms, 2.0, 3.1);
        Close.Relative(2.0, 0.17225 * load.Loading.Low.KilogramsPerSquareMeter, 0.05);
        Close.Relative(3.1, 0.17225 * load.Loading.High.KilogramsPerSquareMeter, 0.05);
    }

    // 15 kg/m2 on 0.17225 m2 is 2.58 kg a tray; two shelves take two trays at once.
    [Theory]
    [InlineData(2.5, 1, 1)]
    [InlineData(5.1, 2, 1)]
    [InlineData(5.3, 3, 2)]
    [InlineData(10.3, 4, 2)]
    [InlineData(10.5, 5, 3)]
    public void Trays_and_rounds_are_counted(double kilograms, int trays, int rounds)
    {
        RoastPlan roast = BonesOnly(PlanRequests.For("brown-beef").In(PlanRequests.Straight(60, 60)).On(PlanRequests.Hob(HobKind.Gas, 20)).Using(("beef-knuckle", kilograms))).Plan().Roast!;
        Assert.Equal(trays, roast.TraysToFill);
        Assert.Equal(2, roast.TraysAtOnce);
        Assert.Equal(rounds, roast.OvenRounds);
        Assert.Equal(TimeSpan.FromMinutes(15) + (rounds * (roast.Setting.Time + TimeSpan.FromMinutes(10))), roast.TotalTime);
    }

    // Common practice: an oven at 230 C is called 450 F; with a fan it is set 20 C lower.
    [Fact]
    public void An_oven_at_230_is_called_450()
    {
        PlanRequest request = PlanRequests.For("brown-beef");
        request = request with { Recipe = request.Recipe with { Roast = request.Recipe.Roast! with { OvenTemperature = Temperature.FromDegreesCelsius(230) } } };
        RoastPlan roast = request.Plan().Roast!;
        Assert.Equal(450, roast.Oven.FahrenheitName);
        Assert.Equal("8", roast.Oven.GasMark);
        Close.To(210, roast.Oven.Fan.DegreesCelsius, 1e-9);
        Assert.True(roast.HasFan);
    }

    [Fact]
    public void Bones_are_turned_halfway_and_paste_goes_on_last()
    {
        BatchPlan plan = PlanRequests.For("brown-beef").Plan();
        Assert.Equal(plan.Roast!.Setting.Time / 2, plan.Roast.TurnAt);
        PlanStep Step(string title) => plan.Timeline.Steps.First(step => step.Title.StartsWith(title, StringComparison.Ordinal));
        PlanStep roast = Step("Roast until well brown");
        Assert.Equal(roast.At + plan.Roast.TurnAt, Step("Turn the bones").At);
        Assert.Equal(roast.End - TimeSpan.FromMinutes(25), Step("Vegetables join").At);
        Assert.Equal(roast.End - TimeSpan.FromMinutes(10), Step("Spread the paste").At);
    }

    // Larder (estimate): beef knuckle loses 15 to 22 % of its weight in the oven.
    [Fact]
    public void The_oven_takes_what_the_table_says_and_the_pot_gets_the_rest()
    {
        BatchPlan plan = BonesOnly(PlanRequests.For("brown-beef").Using(("beef-knuckle", 4))).Plan();
        AmountLine bones = Assert.Single(plan.Amounts);
        Close.Relative(0.15, plan.Roast!.MassLoss.Low.Kilograms / 4, 0.01);
        Close.Relative(0.22, plan.Roast.MassLoss.High.Kilograms / 4, 0.01);
        Close.Relative(4, bones.MassInPot.Kilograms + plan.Roast.MassLoss.Central.Kilograms, 1e-9);
        Assert.True(plan.Roast.FatDrained.Central < plan.Roast.MassLoss.Central);
    }

    [Fact]
    public void A_kitchen_without_oven_or_trays_is_planned_with_a_usual_tray()
    {
        RoastPlan roast = (PlanRequests.For("brown-chicken") with { Oven = null, Trays = [] }).Plan().Roast!;
        Assert.Equal("GN 1/1 tray", roast.TrayName);
        Assert.False(roast.HasFan);
    }

    // Common practice, no source: cold water, to the boil, 2 to 5 minutes there; 1 to 3 % of soluble matter poured away (estimate).
    [Fact]
    public void A_blanch_covers_the_bones_and_brings_them_to_the_boil()
    {
        BatchPlan plan = PlanRequests.For("white-veal").Plan();
        BlanchPlan blanch = plan.Blanch!;
        double bones = plan.Amounts.Where(amount => amount.Line.Role == LineRole.Bones).Sum(amount => amount.Mass.Kilograms);
        Assert.InRange(blanch.Setting.Time.TotalMinutes, 2, 5);
        Close.Relative(0.01 * bones, blanch.MassLoss.Low.Kilograms, 1e-9);
        Close.Relative(0.03 * bones, blanch.MassLoss.High.Kilograms, 1e-9);
        Assert.InRange(blanch.Water.Liters, 0.7 * bones, 2 * bones);

        // At least the plain balance for the water alone, 15 to 99.97 C with 2.8 kW.
        Assert.True(blanch.TimeToBoil.TotalSeconds > blanch.Water.Liters * 4187 * 85 / 2800);
    }

    [Fact]
    public void A_pressure_cooker_blanches_at_the_boil_like_any_pot()
    {
        PlanRequest open = PlanRequests.For("white-veal");
        PlanRequest pressure = open with { Pot = open.Pot with { Kind = PotKind.PressureCooker }, Lid = LidPosition.On };
        Close.Relative(open.Plan().Blanch!.TimeToBoil.TotalMinutes, pressure.Plan().Blanch!.TimeToBoil.TotalMinutes, 0.05);
    }

    [Fact]
    public void White_stock_is_not_roasted_and_brown_not_blanched()
    {
        Assert.Null(PlanRequests.For("white-veal").Plan().Roast);
        Assert.Null(PlanRequests.For("brown-veal").Plan().Blanch);
    }

    [Fact]
    public void Of_leek_whose_white_alone_goes_in_more_than_twice_as_much_is_bought()
    {
        // USDA SR28 11246: 56 % of the leek is refuse then; 1 / 0.44 = 2.27.
        AmountLine leek = PlanRequests.For("fish-fumet").Plan().Amounts.Single(line => string.Equals(line.Ingredient.Id, "leek", StringComparison.Ordinal));
        Close.Relative(2.27, leek.AsBought / leek.Mass, 0.005);
    }

    private static PlanRequest BonesOnly(PlanRequest request) =>
        request with { LeftOut = request.Recipe.Lines.Where(line => line.Role != LineRole.Bones).Select(line => line.IngredientId).ToHashSet(StringComparer.Ordinal) };
}
