using System.Globalization;
using Stockwright.Cooling;
using Stockwright.Cooling.Growth;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Cooling;

/// <summary>Where links become cooling cases: reads the form, asks the core, and puts its problems at their fields.</summary>
internal static class CoolingService
{
    /// <summary>Works a case out.</summary>
    /// <param name="typed">Everything that was sent.</param>
    /// <param name="units">Measures where the form does not say.</param>
    /// <param name="kitchen">Pots, room and tap.</param>
    /// <param name="home">The limit where the form names none.</param>
    /// <param name="cancellationToken">Ends it between two courses.</param>
    public static CoolingView Answer(TypedForm typed, UnitSystem units, KitchenSetup kitchen, CoolingLimit home, CancellationToken cancellationToken)
    {
        FieldReader reader = new(typed, ReaderUnits.Read(typed[ReaderUnits.QueryKey].Trim()) ?? units);
        CoolingLimit limit = StandardLimits.Find(typed[CoolingFields.Limit.Name].Trim()) ?? home;
        CoolingQuestion? ask = new CoolingReader(reader, kitchen, home).Read();
        MeasuredAnswer? measured = new MeasuredReader(reader, limit).Read(ask);
        CoolingView view = new(typed, reader.Units, limit, null, reader.Problems) { Kitchen = kitchen, Measured = measured };
        if (ask is null || reader.Problems.Count > 0)
        {
            return view;
        }

        CoolingResult result = CoolingForecaster.Forecast(ask.Stock, ask.Method, cancellationToken);
        if (result.Forecast is not { } forecast)
        {
            return view with { Problems = [.. result.Problems.Select(problem => AtTheField(problem, ask))] };
        }

        CoolingAdvice advice = CoolingAdvisor.Advise(ask.Stock, ask.Kit, ask.Limit, cancellationToken);
        (GrowthEstimate, GrowthEstimate)[] growth =
        [
            .. new[] { GrowthModel.ClostridiumPerfringens, GrowthModel.BacillusCereus }
                .Select(model => (GrowthIndicator.Assess(forecast.Central.Curve, model), GrowthIndicator.Assess(forecast.Slow.Curve, model))),
        ];
        return view with { Answer = new CoolingAnswer(ask, JudgedMethod.Of(forecast, ask.Limit), advice, growth, measured) };
    }

    /// <summary>The core counts steps; the form has rows, and the figures of a cold store stand with the kitchen's other things.</summary>
    internal static InputProblem AtTheField(CoolingProblem problem, CoolingQuestion ask)
    {
        string[] parts = problem.Field.Split('-', 3);
        if (parts is not ["step", var number, var part] || !int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int step) || step < 1 || step > ask.Rows.Count)
        {
            return new InputProblem(problem.Field is "steps" ? StepFields.Place.At(1).Name : problem.Field, problem.Message);
        }

        int row = ask.Rows[step - 1];
        FieldRow store = ask.Method.Steps[step - 1].Place is CoolingPlace.ColdAir { Store.AirSpeed.MetersPerSecond: var speed }
            ? speed > 3 ? CoolingFields.BlastAir : speed > 0 ? CoolingFields.WalkInAir : CoolingFields.FridgeAir
            : CoolingFields.FridgeAir;
        string field = part switch
        {
            "added-ice" => StepFields.AddedIce.At(row).Name,
            "added-water" => StepFields.AddedWater.At(row).Name,
            "pour" or "count" => StepFields.Count.At(row).Name,
            "wand-kg" or "wand-start" => CoolingFields.WandWater.Name,
            "air" or "leak" or "heat-capacity" or "speed" => store.Name,
            "watts" => CoolingFields.FridgeWatts.Name,
            _ => StepFields.NameOf(row, part),
        };
        return new InputProblem(field, ask.Rows.Count > 1 ? $"Step {row}: {problem.Message}" : problem.Message);
    }
}
