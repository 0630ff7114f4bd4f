using Stockwright.Evidence;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>The stock at one moment.</summary>
/// <param name="At">Time since the start.</param>
/// <param name="Warmest">Temperature at the slowest-cooling point.</param>
/// <param name="Mean">Mean temperature.</param>
/// <param name="Surroundings">Temperature of the bath, or of the air it stands in.</param>
/// <param name="Step">Number of the step, from zero.</param>
/// <param name="Coldest">Temperature of the coldest part: the bottom while it is liquid, the wall once it is set.</param>
/// <param name="Lid">Temperature of the lid; null without one.</param>
/// <param name="Frozen">Share of the stock's water that is ice.</param>
public readonly record struct CoolingSample(
    TimeSpan At, Temperature Warmest, Temperature Mean, Temperature Surroundings, int Step, Temperature Coldest, Temperature? Lid, Ratio Frozen);

/// <summary>What is kept of the heat, above water at 0 °C; the sums agree to rounding.</summary>
/// <param name="AtStart">Held by stock and vessel at the start.</param>
/// <param name="Added">Brought by ice, water, fresh vessels and lids (ice brings less than nothing).</param>
/// <param name="ToSurroundings">Given to air, bench and bath by side, bottom and top.</param>
/// <param name="Evaporated">Carried off by steam.</param>
/// <param name="ToWands">Taken up by wands.</param>
/// <param name="LeftBehind">Left in vessels poured out of.</param>
/// <param name="WithLids">Gone with lids that were taken off.</param>
/// <param name="AtEnd">Held at the end by stock, vessels and lids.</param>
public sealed record CoolingBooks(
    Energy AtStart, Energy Added, Energy ToSurroundings, Energy Evaporated, Energy ToWands, Energy LeftBehind, Energy WithLids, Energy AtEnd)
{
    /// <summary>What the balance misses by, as a share of the heat at the start.</summary>
    public double RelativeGap => Math.Abs(
        AtStart.Joules + Added.Joules - ToSurroundings.Joules - Evaporated.Joules - ToWands.Joules - LeftBehind.Joules - WithLids.Joules - AtEnd.Joules) / Math.Abs(AtStart.Joules);
}

/// <summary>One course of a method: the central one, or an edge of the band.</summary>
public sealed record CoolingCourse
{
    /// <summary>Moments, closely spaced.</summary>
    public required IReadOnlyList<CoolingSample> Samples { get; init; }

    /// <summary>The slowest-cooling point against time.</summary>
    public required CoolingCurve Curve { get; init; }

    /// <summary>Start of each step that was begun.</summary>
    public required IReadOnlyList<TimeSpan> StepStarts { get; init; }

    /// <summary>Ice melted in baths.</summary>
    public required Mass IceMelted { get; init; }

    /// <summary>Time at which the ice in a bath gave out, or null.</summary>
    public required TimeSpan? IceGoneAt { get; init; }

    /// <summary>Warmest the air of a cold store got, and when; null when none was used.</summary>
    public required (Temperature Air, TimeSpan At)? WarmestStore { get; init; }

    /// <summary>When the first ice forms in the stock, at its wall; null when none does.</summary>
    public required TimeSpan? FirstIceAt { get; init; }

    /// <summary>True when part of the stock freezes.</summary>
    public bool Freezes => FirstIceAt is not null;

    /// <summary>Most the top is warmer than the bottom while it is liquid, from two minutes on, and when.</summary>
    public required (TemperatureDelta Spread, TimeSpan At) Layering { get; init; }

    /// <summary>Number of a step that never reached its end, or null.</summary>
    public required int? StuckInStep { get; init; }

    /// <summary>Heat.</summary>
    public required CoolingBooks Books { get; init; }
}

/// <summary>A method forecast with its band: about eight times in ten the truth is expected between fast and slow.</summary>
/// <param name="Method">The method.</param>
/// <param name="Fast">Fast edge.</param>
/// <param name="Central">Best single course.</param>
/// <param name="Slow">Slow edge.</param>
public sealed record CoolingForecast(CoolingMethod Method, CoolingCourse Fast, CoolingCourse Central, CoolingCourse Slow)
{
    /// <summary>Time to fall to a temperature; an end is null when that course never gets there.</summary>
    public (TimeSpan? Fast, TimeSpan? Central, TimeSpan? Slow) TimeTo(Temperature temperature) =>
        (Fast.Curve.FirstAtOrBelow(temperature), Central.Curve.FirstAtOrBelow(temperature), Slow.Curve.FirstAtOrBelow(temperature));

    /// <summary>How much the air of the cold store warms over what it holds, with its band; null when none is used.</summary>
    public Band<TemperatureDelta>? StoreRise
    {
        get
        {
            ColdStore? store = Method.Steps.Select(step => step.Place).OfType<CoolingPlace.ColdAir>().LastOrDefault()?.Store;
            if (store is null || Central.WarmestStore is not { } central)
            {
                return null;
            }

            double rise = central.Air.DegreesCelsius - store.Air.DegreesCelsius;
            return new Band<TemperatureDelta>(
                TemperatureDelta.FromKelvins(rise * RiseEnds.Low), TemperatureDelta.FromKelvins(rise), TemperatureDelta.FromKelvins(rise * RiseEnds.High));
        }
    }

    /// <summary>Ends of the rise over its middle: what cools the stock sooner may warm the air more, so the edges of the time are not its edges.</summary>
    internal (double Low, double High) RiseEnds { get; init; } = (1, 1);
}

/// <summary>A forecast, or the reasons there is none.</summary>
/// <param name="Forecast">The forecast, or null.</param>
/// <param name="Problems">Empty when there is a forecast.</param>
public sealed record CoolingResult(CoolingForecast? Forecast, IReadOnlyList<CoolingProblem> Problems);
