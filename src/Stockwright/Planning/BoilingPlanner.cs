using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What the air pressure allows, and how long the simmer is for it.</summary>
internal static class BoilingPlanner
{
    private const double RatingKelvins = 1;

    /// <summary>A simmer is kept so far under the boil, for a pot that boils clouds and loses several times as much (common practice, no source: 2 to 3 K).</summary>
    private const double UnderTheBoilKelvins = 2;

    public static BoilingReport Report(PlanRequest request, PotEnvironment environment)
    {
        SimmerStage stage = request.Recipe.Stages[request.Recipe.MainStage];
        Temperature hottest = Temperature.FromDegreesCelsius(request.IsUnderPressure ? environment.HottestReachableCelsius : environment.BoilingCelsius);
        Temperature asked = request.Pot.Kind == PotKind.SlowCooker
            ? Temperature.FromDegreesCelsius(hottest.DegreesCelsius - UnderTheBoilKelvins) // it finds its own temperature, just under the boil
            : Asked(request, stage, hottest);
        Temperature highest = KeepsUnderTheBoil(request, stage) ? Temperature.FromDegreesCelsius(hottest.DegreesCelsius - UnderTheBoilKelvins) : hottest;
        Temperature reached = asked <= highest ? asked : highest;
        TimeSpan askedTime = request.SimmerTime ?? stage.Time;
        Band<double> stretch = reached < asked ? SimmerStretch.Between(asked, reached) : new Band<double>(1, 1, 1);

        // Only what draws on collagen needs the longer time, and only when the cook has not set the time.
        bool stretches = request.SimmerTime is null && reached < asked && DrawsCollagen(request);
        return new BoilingReport
        {
            Pressure = Pressure.FromPascals(environment.AirPascals),
            PressureIsMeasured = request.Site.MeasuredPressure is not null,
            BoilingPoint = Temperature.FromDegreesCelsius(environment.BoilingCelsius),
            Hottest = hottest,
            Asked = asked,
            Reached = reached,
            AskedTime = askedTime,
            PlannedTime = stretches ? Capped(askedTime * stretch.Central) : askedTime,
            Stretch = stretch,
        };
    }

    /// <summary>True where the recipe simmers and the cook has not said how hot.</summary>
    private static bool KeepsUnderTheBoil(PlanRequest request, SimmerStage stage) =>
        !request.IsUnderPressure && request.SimmerTemperature is null && stage is { IsRolling: false, ReducesTo: null };

    /// <summary>A rolling boil is asked for, not a temperature: where air pressure is a little low that is the boil there.</summary>
    private static Temperature AskedInTheOpen(PlanRequest request, SimmerStage stage, Temperature hottest) =>
        request.SimmerTemperature
        ?? (stage.ReducesTo is not null || (stage.IsRolling && stage.Target.DegreesCelsius - hottest.DegreesCelsius < RatingKelvins) ? hottest : stage.Target);

    /// <summary>A cooker is sold as reaching "about 121 C", so what is asked within a kelvin of its pressure is its pressure; unasked it is too.</summary>
    private static Temperature Asked(PlanRequest request, SimmerStage stage, Temperature hottest)
    {
        if (!request.IsUnderPressure)
        {
            return AskedInTheOpen(request, stage, hottest);
        }

        return request.SimmerTemperature is { } wished && (wished < hottest || wished.DegreesCelsius - hottest.DegreesCelsius > RatingKelvins) ? wished : hottest;
    }

    private static bool DrawsCollagen(PlanRequest request) => request.Recipe.Lines.Any(line =>
        line.Role == LineRole.Bones
        && request.Larder.TryFind(line.IngredientId, out Larder.Ingredient? ingredient)
        && ingredient.Collagen is { Value.DecimalFractions: > 0.005 });

    /// <summary>To the next quarter of an hour, and never past the longest simmer accepted.</summary>
    private static TimeSpan Capped(TimeSpan time)
    {
        TimeSpan rounded = TimeSpan.FromMinutes(Math.Ceiling(time.TotalMinutes / 15) * 15);
        return rounded < PlanRequest.SimmerTimeRange.Most ? rounded : PlanRequest.SimmerTimeRange.Most;
    }
}
