using CsCheck;
using Stockwright.Cooling;
using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Physics;
using Stockwright.Simmering;
using Stockwright.Strength;
using Stockwright.Tests.Physics;
using Stockwright.Tests.Planning;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Simmering;

public sealed class SurfaceFilmTests
{
    private static readonly KitchenSite Site = new();

    [Fact]
    public void A_weighed_pot_gives_back_the_factor_it_was_run_with() =>
        Gen.Select(Gen.Double[0.05, 1.2], Gen.Double[18, 50], Gen.Double[70, 96], Gen.Double[0.05, 0.6], Gen.Bool).Sample((film, diameter, celsius, open, covered) =>
        {
            LidPosition lid = covered ? LidPosition.Ajar(Ratio.FromDecimalFractions(open)) : LidPosition.Off;
            PotEnvironment environment = PotRuns.Kitchen(PlanRequests.Straight(diameter, 40), 20, lid);
            SimmerOutcome start = SimmerRun.Execute(environment, PotRuns.Water(15, celsius), film, 1, 0.8, sampled: false);
            SimmerOutcome end = SimmerRun.Execute(environment, PotRuns.Water(15, celsius, hours: 3), film, 1, 0.8, sampled: false);
            double found = SurfaceFilm.FromWeighedPot(
                Mass.FromKilograms(end.SteamKilograms - start.SteamKilograms),
                TimeSpan.FromSeconds(end.TotalSeconds - start.TotalSeconds),
                Length.FromCentimeters(diameter),
                Temperature.FromDegreesCelsius(celsius),
                lid,
                Site);

            // The table of fluxes is good to 0.1 %, and a held pot stands up to 0.02 K under its mark.
            Close.Relative(film, found, 0.003);
        });

    // 28 cm (0.0616 m2) at 4 kg/(m2 h) for 7 h is 1.72 kg; clean water at 93 C loses 16.0 (P.23), so that kitchen's factor is a quarter.
    [Fact]
    public void Four_kilograms_a_square_metre_and_hour_are_a_quarter_of_clean_water()
    {
        double lost = PlanRequests.Straight(28, 20).SurfaceAtMetres(0) * 4 * 7;
        Close.Relative(1.72, lost, 0.01);
        double film = SurfaceFilm.FromWeighedPot(
            Mass.FromKilograms(lost), TimeSpan.FromHours(7), Length.FromCentimeters(28), Temperature.FromDegreesCelsius(93), LidPosition.Off, Site);
        Close.Relative(4 / 16.0, film, 0.01);
    }

    // Common practice, no source: a bare simmer in the open loses 3 to 6 kg/(m2 h) net of topping up. With clean water at 16 that is 0.19 to 0.38 of it;
    // the default lies there, and its band spans most of it.
    [Fact]
    public void The_default_lies_in_the_trades_figure()
    {
        Stated<double> film = SimmerAssumptions.Standard.SurfaceFilm;
        Assert.True(film.Low < film.Value && film.Value < film.High);
        Assert.InRange(film.Value, 3 / 16.0, 6 / 16.0);
        Assert.True(film.High > 6 / 16.0);
    }

    // One surface for all (S.3): the same stock in the same pot, with the fat that floats on it, loses alike whether it simmers, is reduced or cools.
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.2)]
    [InlineData(1.0)]
    public void A_simmer_a_reduction_and_a_cooling_lose_alike(double fatKilogramsPerSquareMetre)
    {
        const double Celsius = 90;
        Pot pot = PlanRequests.Straight(28, 22);
        PotEnvironment environment = PotRuns.Kitchen(pot, 20);
        double square = pot.SurfaceAtMetres(0);
        Mass fat = Mass.FromKilograms(fatKilogramsPerSquareMetre * square);

        PotSystem simmering = new(environment, SimmerAssumptions.Standard.SurfaceFilm.Value, 1, 1) { Surface = square, FloatingFat = _ => fat.Kilograms, Mode = HeatMode.Hold };
        simmering.Film = simmering.FilmAt([0, 0, 0, 0, 0, 0, 0, 0, 0]);
        double simmer = simmering.VapourRate(Celsius) / square;

        CoolingCase stock = new() { Volume = Volume.FromLiters(8), Start = Temperature.FromDegreesCelsius(Celsius), Vessel = CoolingVessel.FromPot(pot, Volume.FromLiters(8)), FloatingFat = fat };
        FaceFilms films = new(new CoolingStep { Place = new CoolingPlace.Bench() }, null, stock.Vessel, 1, 0.13, stock, environment.AirPascals, CoolingFactors.Central(stock));
        double cooling = films.At(Celsius, Celsius, Celsius, Site.Room.DegreesCelsius, 10).SteamKilogramsPerSquareMetreSecond;
        Close.Relative(simmer, cooling, 0.01);
        if (fatKilogramsPerSquareMetre == 0.2)
        {
            // What is left on defatted stock is what a reduction is calculated with.
            ReductionTimeEstimate reduced = ReductionTime.Estimate(
                Mass.FromKilograms(1), Volume.FromLiters(8), pot, PlanRequests.Hob(HobKind.Induction, 20), Site, Ratio.FromPercent(100), Temperature.FromDegreesCelsius(Celsius)).Value!;
            Close.Relative(simmer, reduced.Rate.KilogramsPerSecond / square, 0.01);
        }
    }

    // P.24, resistances one after the other, by hand: a film of 0.2 under a lid that lets 0.04 of clean water's loss past: 1/(1/0.2 + 0.96/0.04) = 1/29.
    [Fact]
    public void Film_and_lid_hold_back_one_after_the_other()
    {
        Close.Relative(1.0 / 29, LidEscape.Past(0.04, 0.2), 1e-12);
        Close.Relative(0.04, LidEscape.Past(0.04, 1), 1e-12);
        Close.Relative(0.2, LidEscape.Past(1, 0.2), 1e-12);
        Close.Relative(0.2, LidEscape.FilmUnder(0.04, 1.0 / 29), 1e-9);
        Assert.True(double.IsPositiveInfinity(LidEscape.FilmUnder(0.04, 0.05)));
    }

    // By hand: seated, 1/(1/0.38 + 24) over 1/29 is 1.089 and 1/(1/0.13 + 24) over it 0.915; the lid's half and double give 1/(5 + 49) and 1/(5 + 11.5)
    // over 1/29: 0.537 and 1.758. In quadrature of logarithms 0.532 and 1.776: under a lid the gap decides, not the film.
    [Fact]
    public void Under_a_lid_the_gap_decides_the_band()
    {
        PotEnvironment environment = PotRuns.Kitchen(PlanRequests.Straight(28, 22), 3.5, LidPosition.On);
        (double less, double more) = LossSpread.Both(environment, LidPosition.On, Site);
        Close.Relative(0.532, less, 0.005);
        Close.Relative(1.776, more, 0.005);
    }

    [Fact]
    public void A_kitchens_own_factor_replaces_the_default_and_narrows_the_band()
    {
        Stated<double> own = SurfaceFilm.For(Site with { OwnFilmFactor = 0.3 });
        Assert.Equal(0.3, own.Value);
        Assert.Equal(Provenance.CookStated, own.Provenance);
        Assert.True(own.High / own.Low < SimmerAssumptions.Standard.SurfaceFilm.High / SimmerAssumptions.Standard.SurfaceFilm.Low);
    }

    // 15 % either way (S.3): 0.3 / 1.15 and 0.3 x 1.15.
    [Fact]
    public void A_kitchens_own_factor_is_good_to_15_percent()
    {
        Stated<double> own = SurfaceFilm.For(Site with { OwnFilmFactor = 0.3 });
        Close.Relative(0.2609, own.Low, 0.001);
        Close.Relative(0.345, own.High, 0.001);
    }

    // S.3 by hand. Fat of 1.2 kg/m2 leaves 1/e of the surface clean, 0.6 kg/m2 0.6065, none all of it. Covered 0.2 (0.13 to 0.38), clean 1 (0.65 to 1.5), so at
    // 1.2: 0.2 x 5^0.368 = 0.3616, 0.13^0.632 x 0.65^0.368 = 0.2350 and 0.38^0.632 x 1.5^0.368 = 0.6298. At 0.6: 0.2 x 5^0.6065 = 0.5308.
    [Theory]
    [InlineData(1.2, 0.2350, 0.3616, 0.6298)]
    [InlineData(0.6, 0.3451, 0.5308, 0.8740)]
    [InlineData(0, 0.65, 1, 1.5)]
    public void Film_and_clean_surface_go_together_by_their_logarithms(double fat, double low, double central, double high)
    {
        Stated<double> film = SurfaceFilm.Under(Site, Mass.FromKilograms(fat), Area.FromSquareMeters(1));
        Close.Relative(central, film.Value, 0.001);
        Close.Relative(low, film.Low, 0.001);
        Close.Relative(high, film.High, 0.001);
    }

    // A kitchen whose covered pots lose 0.8 of clean water has a clean surface of no more than 1.6, the most there is, at the upper end too; one at 1.5 hardly more than its covered one.
    [Fact]
    public void No_clean_surface_loses_more_than_the_most()
    {
        Stated<double> dry = SurfaceFilm.Under(Site with { OwnFilmFactor = 0.8 }, Mass.Zero, Area.FromSquareMeters(1));
        Close.Relative(1.6, dry.Value, 1e-9);
        Close.Relative(1.6, dry.High, 1e-9);
        Close.Relative(1, SurfaceFilm.CleanOverCovered(Site with { OwnFilmFactor = 1.6 }), 1e-9);
        Close.Relative(1, SurfaceFilm.CleanOverCovered(Site with { OwnFilmFactor = 2 }), 1e-9);
        Close.Relative(5, SurfaceFilm.CleanOverCovered(Site with { OwnFilmFactor = 0.1 }), 1e-9);
    }

    // S.4 by hand: from 2 K under the boil to 0.05 K under it what the bubbles carry off rises as n2 (3 - 2n): a quarter of the way 0.15625, half way 0.5, of 8 kg/(m2 h) gentle and 30 rolling.
    [Theory]
    [InlineData(2.1, 0)]
    [InlineData(1.5125, 0.15625)]
    [InlineData(1.025, 0.5)]
    [InlineData(0.05, 1)]
    [InlineData(0, 1)]
    public void Bubbles_carry_off_more_towards_the_boil(double under, double share)
    {
        PotEnvironment environment = PotRuns.Kitchen(PlanRequests.Straight(28, 22), 3.5);
        double celsius = environment.BoilingCelsius - under;
        Close.To(8 * share, SurfaceLoss.BubblingFlux(environment, celsius, isRolling: false) * 3600, 0.001);
        Close.To(30 * share, SurfaceLoss.BubblingFlux(environment, celsius, isRolling: true) * 3600, 0.003);
    }

    // Ajar by a tenth 0.1 / 0.235 of the open pot gets past, half to one and a half times of that: alone and with the film, by hand in logarithms.
    [Fact]
    public void A_lid_ajar_has_its_own_band()
    {
        LidPosition ajar = LidPosition.Ajar(Ratio.FromPercent(10));
        PotEnvironment environment = PotRuns.Kitchen(PlanRequests.Straight(28, 22), 3.5, ajar);
        (double low, double high) = LossSpread.Lid(environment, ajar);
        Close.Relative(0.5, low, 1e-9);
        Close.Relative(1.5, high, 1e-9);

        // Past 0.2 of film: 1/(5 + 1.35) = 0.1575; half the gap 1/(5 + 3.7) over it 0.7299, one and a half 1/(5 + 0.5667) 1.1407; films of 0.13 and 0.38 0.7023 and 1.5948.
        (double less, double more) = LossSpread.Both(environment, ajar, Site);
        Close.Relative(Math.Exp(-Math.Sqrt(Math.Pow(Math.Log(0.7299), 2) + Math.Pow(Math.Log(0.7023), 2))), less, 0.001);
        Close.Relative(Math.Exp(Math.Sqrt(Math.Pow(Math.Log(1.1407), 2) + Math.Pow(Math.Log(1.5948), 2))), more, 0.001);
    }

    [Fact]
    public void Nonsense_from_the_scales_is_refused()
    {
        void Refused(double kilograms, double hours, double centimetres, double celsius) => Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceFilm.FromWeighedPot(
            Mass.FromKilograms(kilograms), TimeSpan.FromHours(hours), Length.FromCentimeters(centimetres), Temperature.FromDegreesCelsius(celsius), LidPosition.Off, Site));
        Refused(0, 1, 28, 93);
        Refused(-1, 1, 28, 93);
        Refused(1, 0, 28, 93);
        Refused(1, 1, 0, 93);
        Refused(1, 1, 28, 30);
        Refused(1, 1, 28, 39.9);
    }
}
