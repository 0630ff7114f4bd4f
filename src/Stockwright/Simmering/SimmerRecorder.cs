using Stockwright.Numerics;

namespace Stockwright.Simmering;

/// <summary>Keeps the course of a run for drawing: the same number of points for the same script, so that runs line up.</summary>
internal sealed class SimmerRecorder(PotState pot, SimmerScript script)
{
    private const int WantedPoints = 110;

    private readonly double sampleSeconds = Math.Max(30, script.Stages.Sum(stage => stage.Seconds) / WantedPoints);
    private readonly List<(OdeSolution Solution, HeatMode Mode)> segments = [];

    public void StartInterval() => segments.Clear();

    public void Keep(OdeSolution solution, HeatMode mode) => segments.Add((solution, mode));

    /// <summary>Samples what was kept since the interval began.</summary>
    /// <param name="from">Where the interval began.</param>
    /// <param name="to">Where it ended.</param>
    /// <param name="count">Points, or null for as many as the length of the interval deserves.</param>
    public void EndInterval(double from, double to, int? count)
    {
        if (segments.Count == 0)
        {
            return;
        }

        int points = count ?? Math.Clamp((int)Math.Round((to - from) / sampleSeconds), 1, 40);
        Span<double> state = stackalloc double[PotSystem.StateCount];
        int segment = 0;
        for (int i = 1; i <= points; i++)
        {
            double at = i == points ? to : from + ((to - from) * i / points);
            while (segment < segments.Count - 1 && at > segments[segment].Solution.EndTime)
            {
                segment++;
            }

            (OdeSolution solution, HeatMode mode) = segments[segment];
            solution.StateAt(Math.Clamp(at, solution.StartTime, solution.EndTime), state);
            Record(at, state, mode);
        }
    }

    /// <summary>The pot as it stands now.</summary>
    public void Point(double at) => Record(at, pot.Vector, pot.System.Mode);

    private void Record(double at, ReadOnlySpan<double> state, HeatMode mode)
    {
        pot.Track(state);
        PotSystem system = pot.System;
        double celsius = system.Celsius(state);
        Exchange progress = PotSystem.ExchangeOf(state);
        double liquid = pot.Solids.Liquid(state[PotSystem.Contents], progress);
        double heat = mode switch
        {
            HeatMode.Full => system.FullHeat,
            HeatMode.Off => 0,
            HeatMode.Climb => system.HoldWatts(celsius) + (system.HeatCapacity(state[PotSystem.Contents]) * system.ClimbRate),
            _ => Math.Min(system.FullHeat, system.HoldWatts(celsius)),
        };
        pot.Outcome.Points.Add(new(
            at, celsius, pot.Solids.Level(liquid, celsius, progress), liquid, state[PotSystem.Steam], system.InOven ? 0 : heat));
    }
}
