using Stockwright.Evidence;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>The central run with the two that lose more and less steam.</summary>
internal sealed record SimmerRuns(SimmerOutcome Central, SimmerOutcome LosesLess, SimmerOutcome LosesMore)
{
    /// <summary>False when the runs met things at times of their own, so that their points do not stand for the same moments.</summary>
    public bool LineUp { get; init; } = true;
}

/// <summary>Runs the pot with central and outer figures and writes the forecast.</summary>
internal sealed class SimmerForecaster
{
    /// <summary>Density of water at 20 C, kg/m3: every volume in a plan is as if measured cold.</summary>
    public const double ColdDensity = 998.2;

    private const int MostSamples = 300;

    private readonly PotEnvironment environment;
    private readonly Stated<Ratio> efficiency;
    private readonly double film;
    private readonly double lossFactor = 1;
    private readonly double lessFactor;
    private readonly double moreFactor;

    public SimmerForecaster(PotEnvironment environment, Hob hob, LidPosition lid, KitchenSite site)
    {
        this.environment = environment;
        efficiency = hob.Efficiency;
        film = SurfaceFilm.For(site, environment.Assumptions).Value;
        (lessFactor, moreFactor) = LossSpread.Both(environment, lid, site);
    }

    /// <summary>With figures of its own for the pot at hand.</summary>
    /// <param name="environment">Pot, hob and room.</param>
    /// <param name="efficiency">Share of the hob's power that reaches the pot.</param>
    /// <param name="film">Loss over that of clean water once fat covers it.</param>
    /// <param name="loss">Loss over that of such a pot.</param>
    public SimmerForecaster(PotEnvironment environment, Stated<Ratio> efficiency, double film, double loss)
    {
        this.environment = environment;
        this.efficiency = efficiency;
        this.film = film;
        lossFactor = loss;
        lessFactor = 1;
        moreFactor = 1;
    }

    /// <summary>How much less and more than the central loss is still likely, as factors.</summary>
    public (double Less, double More) LossFactors => (lessFactor, moreFactor);

    /// <summary>Where water boils in the open here, C.</summary>
    public double BoilingCelsius => environment.BoilingCelsius;

    public SimmerOutcome RunCentral(SimmerScript script) => Run(script, 1, sampled: false);

    /// <summary>The central run as it is drawn, with every point between that may stand higher.</summary>
    public SimmerOutcome RunDrawn(SimmerScript script) => Run(script, 1, sampled: true);

    public SimmerRuns RunAll(SimmerScript script) =>
        new(Run(script, 1, sampled: true), Run(script, lessFactor, sampled: true), Run(script, moreFactor, sampled: true));

    public HeatUp HeatUp(SimmerScript script, SimmerOutcome central)
    {
        SimmerScript start = script with { Stages = [script.Stages[0] with { Seconds = 1, Actions = [], LiftsOut = false }] };
        bool climbs = script.Stages[0].Climbs;
        double Seconds(Ratio share) => climbs
            ? script.Stages[0].Seconds
            : SimmerRun.Execute(environment, start, film, lossFactor, share.DecimalFractions, sampled: false).HeatUpSeconds;

        // A hob too weak for the simmer settles at a temperature of its own for each efficiency, and then the times need not be in order.
        return new HeatUp(
            Ordered(Seconds(efficiency.High), climbs ? script.Stages[0].Seconds : central.HeatUpSeconds, Seconds(efficiency.Low), TimeSpan.FromSeconds),
            central.IsReached,
            Temperature.FromDegreesCelsius(central.FinalCelsius));
    }

    public SimmerForecast Write(SimmerRuns runs)
    {
        SimmerOutcome central = runs.Central;
        double potHeight = environment.Pot.InnerHeight.Meters;
        int points = runs.LineUp ? Math.Min(central.Points.Count, Math.Min(runs.LosesLess.Points.Count, runs.LosesMore.Points.Count)) : central.Points.Count;
        int kept = Math.Min(points, MostSamples);
        List<SimmerSample> samples = new(kept);
        List<(Length, Length)> band = new(kept);
        for (int k = 0; k < kept; k++)
        {
            int i = kept == points ? k : (int)((long)k * (points - 1) / (kept - 1));
            SimmerOutcome.PointInTime point = central.Points[i];
            samples.Add(new SimmerSample(
                TimeSpan.FromSeconds(point.Seconds),
                Temperature.FromDegreesCelsius(point.Celsius),
                Length.FromMeters(point.LevelMetres),
                Cold(point.LiquidKilograms),
                Cold(point.SteamKilograms),
                Power.FromWatts(point.HeatWatts)));
            bool after = i > 0 && central.Points[i - 1].Seconds == point.Seconds;
            double a = runs.LineUp ? runs.LosesMore.Points[i].LevelMetres : runs.LosesMore.LevelAt(point.Seconds, after);
            double b = runs.LineUp ? runs.LosesLess.Points[i].LevelMetres : runs.LosesLess.LevelAt(point.Seconds, after);
            band.Add((Length.FromMeters(Math.Min(Math.Min(a, b), point.LevelMetres)), Length.FromMeters(Math.Max(Math.Max(a, b), point.LevelMetres))));
        }

        List<SimmerCheck> checks = [];
        for (int i = 0; i < central.Checks.Count; i++)
        {
            SimmerOutcome.CheckOutcome check = central.Checks[i];
            SimmerOutcome.CheckOutcome less = runs.LosesLess.CheckLike(check, i);
            SimmerOutcome.CheckOutcome more = runs.LosesMore.CheckLike(check, i);
            checks.Add(new SimmerCheck(
                TimeSpan.FromSeconds(check.Seconds),
                Length.FromMeters(check.LevelBefore),
                Ordered(potHeight - less.LevelBefore, potHeight - check.LevelBefore, potHeight - more.LevelBefore, value => Length.FromMeters(value)),
                Ordered(less.TopUpKilograms, check.TopUpKilograms, more.TopUpKilograms, Cold),
                Length.FromMeters(check.LevelAfter)));
        }

        return new SimmerForecast
        {
            Samples = samples,
            LevelBand = band,
            Checks = checks,
            Length = TimeSpan.FromSeconds(central.TotalSeconds),
            Evaporated = Spread(runs, run => run.SteamKilograms, Cold),
            ToppedUp = Spread(runs, run => run.ToppedUpKilograms, Cold),
            EvaporationRate = Spread(runs, run => run.SteadySteamKilogramsPerSecond / ColdDensity, value => VolumeFlow.FromCubicMetersPerSecond(value)),
            HobEnergy = Ordered(
                runs.LosesLess.HobHeatJoules / efficiency.High.DecimalFractions,
                central.HobHeatJoules / efficiency.Value.DecimalFractions,
                runs.LosesMore.HobHeatJoules / efficiency.Low.DecimalFractions,
                value => Energy.FromJoules(value)),
            HoldSetting = Ratio.FromDecimalFractions(central.HoldWatts / (environment.HobWatts * efficiency.Value.DecimalFractions)),
            FloatingFat = Mass.FromKilograms(central.FloatingFatKilograms),
            LowestLevel = Length.FromMeters(central.LowestMetres),
            Books = new SimmerBooks(
                Mass.FromKilograms(central.MassIn),
                Mass.FromKilograms(central.MassOut),
                Mass.FromKilograms(central.MassLeft),
                Energy.FromJoules(central.EnergyIn),
                Energy.FromJoules(central.EnergyOut),
                Energy.FromJoules(central.EnergyLeft)),
        };
    }

    public static Volume Cold(double kilograms) => Volume.FromCubicMeters(kilograms / ColdDensity);

    private static Band<T> Spread<T>(SimmerRuns runs, Func<SimmerOutcome, double> value, Func<double, T> unit) =>
        Ordered(value(runs.LosesLess), value(runs.Central), value(runs.LosesMore), unit);

    private static Band<T> Ordered<T>(double one, double central, double other, Func<double, T> unit) =>
        new(unit(Math.Min(Math.Min(one, other), central)), unit(central), unit(Math.Max(Math.Max(one, other), central)));

    private SimmerOutcome Run(SimmerScript script, double factor, bool sampled) =>
        SimmerRun.Execute(environment, script, film, factor, efficiency.Value.DecimalFractions, sampled);
}
