using Stockwright.Kitchen;
using Stockwright.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>How full each vessel may stand, worked out by hand (F.1; common practice, no source).</summary>
public sealed class VesselFillTests
{
    /// <summary>26 x 18 cm straight: two thirds of the height is 12 cm.</summary>
    [Fact]
    public void A_pressure_cooker_is_filled_to_two_thirds() =>
        Check(PlanRequests.PressureCooker(26, 18), 12, FillLimit.TwoThirds);

    /// <summary>24 x 16 cm straight: three quarters of the height is 12 cm.</summary>
    [Fact]
    public void A_slow_cooker_is_filled_to_three_quarters() =>
        Check(PlanRequests.SlowCooker(24, 16), 12, FillLimit.ThreeQuarters);

    /// <summary>40 cm high: four fifths is 32 cm, 10 cm under the rim is 30 cm. 60 cm high: 48 and 50 cm.</summary>
    [Theory]
    [InlineData(60, 40, 30, FillLimit.TenCentimetresFreeboard)]
    [InlineData(40, 60, 48, FillLimit.EightyPercentOfBrim)]
    public void A_kettle_keeps_ten_centimetres_and_a_fifth(double across, double high, double level, FillLimit limit) =>
        Check(PlanRequests.Kettle(across, high), level, limit);

    /// <summary>Filled to the limit, the plan of each vessel stands under it, and the report names the rule.</summary>
    [Fact]
    public void The_plan_stands_under_the_limit_of_its_vessel()
    {
        PlanRequest open = PlanRequests.For("white-chicken") with { Goal = new PlanGoal.FillPot() };
        BatchPlan slow = (open with { Lid = LidPosition.On }).In(PlanRequests.SlowCooker(24, 16)).SimmeringFor(6).Plan();
        Assert.Equal(FillLimit.ThreeQuarters, slow.Fit.Limit);
        Assert.InRange(slow.Fit.PeakLevel.Centimeters, 11.8, 12.0);
        BatchPlan kettle = open.In(PlanRequests.Kettle(60, 40)).Plan();
        Assert.Equal(FillLimit.TenCentimetresFreeboard, kettle.Fit.Limit);
        Assert.InRange(kettle.Fit.PeakLevel.Centimeters, 29.6, 30.0);
    }

    private static void Check(Pot pot, double centimetres, FillLimit limit)
    {
        (Length level, FillLimit rule) = PotFitter.SafeMaximum(pot);
        Assert.Equal(centimetres, level.Centimeters, 1e-6);
        Assert.Equal(limit, rule);
    }
}
