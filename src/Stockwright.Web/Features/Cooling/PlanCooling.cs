using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>How a plan's stock gets cold: left in its pot in the fridge, and in an ice bath first, stock and bath stirred every few minutes.</summary>
/// <param name="Volume">Stock of one round.</param>
/// <param name="Start">Temperature it is strained at.</param>
/// <param name="Fat">Fat that floats on it until it is chilled; null as on defatted stock.</param>
/// <param name="Vessel">The pot, filled so far; null when it does not hold it, or stays on its heater.</param>
/// <param name="Fridge">The pot in the household fridge, lid on; null when it cannot be calculated.</param>
/// <param name="IceBath">The ice bath first; null when it cannot be calculated.</param>
public sealed record PlanCooling(Volume Volume, Temperature Start, Mass? Fat, CoolingVessel? Vessel, JudgedMethod? Fridge, JudgedMethod? IceBath)
{
    /// <summary>Works it out for one round of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="limit">The rule.</param>
    /// <param name="cancellationToken">Ends it between two courses.</param>
    public static PlanCooling Of(BatchPlan plan, CoolingLimit limit, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(limit);
        Volume volume = plan.Yield.Central;
        Temperature start = plan.Simmer.Samples is [.., var last] ? last.Temperature : plan.HeatUp.FinalTemperature;
        Mass? fat = plan.Simmer.FloatingFat;
        if (!(volume > Volume.Zero) || volume > plan.Request.Pot.BrimVolume || plan.Request.Pot.HasOwnHeater)
        {
            return new PlanCooling(volume, start, fat, null, null, null);
        }

        CoolingCase stock = new() { Volume = volume, Start = start, Vessel = CoolingVessel.FromPot(plan.Request.Pot, volume), Site = plan.Request.Site, FloatingFat = fat };
        Temperature end = limit.Stages[^1].To.Value;
        Mass water = CoolingDefaults.BathWater(stock);
        CoolingStep away = new() { Place = new CoolingPlace.ColdAir(ColdStore.DomesticFridge) };
        CoolingMethod[] methods =
        [
            CoolingMethod.Of("fridge", "", away with { Lid = LidPosition.On }),
            new("ice", "", [IceBath(), away]),
        ];
        JudgedMethod?[] judged = [.. CoolingForecaster.Compare(stock, methods, cancellationToken).Select(result => result.Forecast is { } forecast ? JudgedMethod.Of(forecast, limit) : null)];
        return new PlanCooling(volume, start, fat, stock.Vessel, judged[0], judged[1]);

        CoolingStep IceBath() => new()
        {
            Place = new CoolingPlace.IceBath(CoolingDefaults.BathIce(stock, end, water), water),
            StockStirring = Stirring.EveryFewMinutes,
            BathStirring = Stirring.EveryFewMinutes,
            Until = end,
        };
    }
}
