using Stockwright.Kitchen;
using Stockwright.Simmering;
using Stockwright.Tests.Physics;
using Stockwright.Tests.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Simmering;

/// <summary>
/// S.3 against a table of water losses worked apart from the code, clean water, film factor one.
/// It comes from the same flux (P.23) and a fuller balance of the headspace than P.24. It shows that the equation is implemented,
/// and says nothing about stock; the film factor is for that.
/// </summary>
public sealed class EvaporationRowTests
{
    [Theory]
    [InlineData(24, 70, 0.24)]
    [InlineData(24, 85, 0.50)]
    [InlineData(24, 95, 0.79)]
    [InlineData(28, 80, 0.53)]
    [InlineData(28, 90, 0.86)]
    [InlineData(28, 95, 1.08)]
    [InlineData(28, 99, 1.29)]
    [InlineData(36, 70, 0.53)]
    [InlineData(36, 90, 1.42)]
    [InlineData(36, 95, 1.78)]
    public void Lid_off(double diameter, double celsius, double kilogramsPerHour) =>
        Close.To(kilogramsPerHour, PotRuns.LossKilogramsPerHour(diameter, celsius, LidPosition.Off, 1), 0.006 + (0.005 * kilogramsPerHour));

    // The one-line lid fit differs from the fuller balance by up to 0.046 in the open fraction, more on small pots: 15 % and the rounding.
    [Theory]
    [InlineData(24, 85, 0.10, 0.21)]
    [InlineData(24, 95, 0.10, 0.35)]
    [InlineData(28, 85, 0.10, 0.30)]
    [InlineData(28, 90, 0.10, 0.39)]
    [InlineData(28, 95, 0.10, 0.49)]
    [InlineData(28, 95, 0.05, 0.32)]
    [InlineData(36, 85, 0.10, 0.53)]
    [InlineData(36, 95, 0.10, 0.86)]
    [InlineData(36, 95, 0.05, 0.56)]
    public void Lid_ajar(double diameter, double celsius, double open, double kilogramsPerHour) =>
        Close.To(kilogramsPerHour, PotRuns.LossKilogramsPerHour(diameter, celsius, LidPosition.Ajar(Ratio.FromDecimalFractions(open)), 1), 0.005 + (0.15 * kilogramsPerHour));

    // A seated lid's gap is a guess, good to a factor of two: half as much again and the rounding.
    [Theory]
    [InlineData(24, 95, 0.04)]
    [InlineData(28, 95, 0.04)]
    [InlineData(28, 99, 0.06)]
    [InlineData(36, 95, 0.06)]
    public void Lid_on(double diameter, double celsius, double kilogramsPerHour) =>
        Close.To(kilogramsPerHour, PotRuns.LossKilogramsPerHour(diameter, celsius, LidPosition.On, 1), 0.005 + (0.5 * kilogramsPerHour));

    // The same row through a whole run: what is weighed after an hour is what the rate says, and it left as steam.
    [Fact]
    public void An_hour_at_95_loses_an_hour_of_the_rate()
    {
        PotEnvironment environment = PotRuns.Kitchen(PlanRequests.Straight(28, 32.5));
        SimmerOutcome heated = SimmerRun.Execute(environment, PotRuns.Water(10, 95), 1, 1, 0.8, sampled: false);
        SimmerOutcome hour = SimmerRun.Execute(environment, PotRuns.Water(10, 95, hours: 1), 1, 1, 0.8, sampled: false);
        double seconds = hour.TotalSeconds - heated.TotalSeconds;
        Close.Relative(1.08, (hour.SteamKilograms - heated.SteamKilograms) * 3600 / seconds, 0.01);
        Close.Relative(10, hour.LiquidLeftKilograms + hour.SteamKilograms, 1e-9);
    }

    // P.23, P.31 and P.32 added up apart from the code: a 28 cm pot of 10 L at 95 C, lid off, needs 0.7 to 0.9 kW net with clean water (717 W at a factor of 0.8).
    [Fact]
    public void Holding_95_takes_the_power_of_the_balance()
    {
        PotEnvironment environment = PotRuns.Kitchen(Pot.FromBrimVolume("pot", "Pot", Volume.FromLiters(10 / 0.75), Length.FromCentimeters(28)));
        SimmerOutcome held = SimmerRun.Execute(environment, PotRuns.Water(10, 95, hours: 0.5), 0.8, 1, 0.8, sampled: false);
        Close.Relative(717, held.HoldWatts, 0.1);
    }
}
