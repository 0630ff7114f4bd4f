using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>A way in which glass may hurt the cook or the stock.</summary>
public enum JarRisk
{
    /// <summary>Hot stock into glass at room temperature.</summary>
    HotIntoCold,

    /// <summary>Hot glass into cold water or ice.</summary>
    ColdAroundHot,

    /// <summary>Stock that freezes in the jar.</summary>
    Freezes,

    /// <summary>Room at the top, lids loose, and that this is not canning: always.</summary>
    Lids,
}

/// <summary>One caution about jars.</summary>
/// <param name="Risk">Which.</param>
/// <param name="Step">Number of the step, from zero.</param>
/// <param name="Hot">The warmer temperature, where two meet.</param>
/// <param name="Cold">The colder one.</param>
public sealed record JarCaution(JarRisk Risk, int Step, Temperature? Hot = null, Temperature? Cold = null);

/// <summary>Finds what to be careful of when stock goes into glass (soda-lime glass from memory).</summary>
public static class JarCautions
{
    /// <summary>The cautions of a forecast, in the order of its steps; empty when no jar is used.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="forecast">How it cools.</param>
    public static IReadOnlyList<JarCaution> Of(CoolingCase stock, CoolingForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(forecast);
        List<JarCaution> found = [];
        CoolingVessel vessel = stock.Vessel;
        CoolingCourse course = forecast.Central;
        for (int i = 0; i < course.StepStarts.Count; i++)
        {
            CoolingStep step = forecast.Method.Steps[i];
            vessel = step.Pour?.Vessel ?? vessel;
            if (vessel.Kind != VesselKind.Jar)
            {
                continue;
            }

            // What is in the pot as it is poured is what the step before left.
            Temperature poured = i == 0 ? stock.Start : course.Curve.TemperatureAt(course.StepStarts[i]);
            if (step.Pour is not null && poured - stock.Site.Room > JarSize.ShockLimit)
            {
                found.Add(new JarCaution(JarRisk.HotIntoCold, i, poured, stock.Site.Room));
            }

            Temperature? around = step.Place switch
            {
                CoolingPlace.IceBath => Temperature.FromDegreesCelsius(0),
                CoolingPlace.TapSink => stock.Site.TapWater,
                _ => null,
            };
            if (around is { } water && poured - water > JarSize.ShockLimit)
            {
                found.Add(new JarCaution(JarRisk.ColdAroundHot, i, poured, water));
            }

            if (step.Place is CoolingPlace.ColdAir { Store.Air.DegreesCelsius: < FreezingStock.StockFreezingCelsius })
            {
                found.Add(new JarCaution(JarRisk.Freezes, i));
            }

            if (found.TrueForAll(caution => caution.Risk != JarRisk.Lids))
            {
                found.Add(new JarCaution(JarRisk.Lids, i));
            }
        }

        return found;
    }
}
