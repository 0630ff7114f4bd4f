using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What must hold before anything is computed; each failure is told in the cook's words beside its field.</summary>
internal static class RequestChecks
{
    public static IReadOnlyList<InputProblem> Check(PlanRequest request)
    {
        List<InputProblem> problems = [];
        CheckPot(request.Pot, problems);
        VesselChecks.Check(request, problems);
        if (!request.Pot.HasOwnHeater)
        {
            CheckHob(request.Hob, problems);
        }
        FillChecks.Check(request, problems);
        CheckLid(request.Lid, problems);
        CheckOven(request, problems);
        CheckSite(request.Site, problems);
        if (request.PieceSize is { } piece && !IsWithin(piece.Meters, PlanRequest.PieceSizeRange.Least.Meters, PlanRequest.PieceSizeRange.Most.Meters))
        {
            problems.Add(new("piece-size", "Pieces are between half a centimetre and 30 cm (0.2 and 12 in)."));
        }

        CheckRecipe(request, problems);
        CheckGoal(request, problems);
        CheckTimes(request, problems);
        return problems;
    }

    private static void CheckPot(Pot pot, List<InputProblem> problems)
    {
        foreach ((string field, Length diameter) in new[] { ("pot-diameter", pot.BaseDiameter), ("pot-brim-diameter", pot.BrimDiameter) })
        {
            if (!IsWithin(diameter.Meters, Pot.DiameterRange.Least.Meters, Pot.DiameterRange.Most.Meters))
            {
                problems.Add(new(field, $"A pot is between {KitchenFormat.Both(Pot.DiameterRange.Least)} and {KitchenFormat.Both(Pot.DiameterRange.Most)} across."));
            }
        }

        if (!IsWithin(pot.InnerHeight.Meters, Pot.HeightRange.Least.Meters, Pot.HeightRange.Most.Meters))
        {
            problems.Add(new("pot-height", $"A pot is between {KitchenFormat.Both(Pot.HeightRange.Least)} and {KitchenFormat.Both(Pot.HeightRange.Most)} high inside."));
        }
        if (!IsWithin(pot.EmptyMass.Kilograms, Pot.EmptyMassRange.Least.Kilograms, Pot.EmptyMassRange.Most.Kilograms))
        {
            problems.Add(new("pot-mass", "An empty pot weighs between 50 g and 300 kg."));
        }
    }

    private static void CheckHob(Hob hob, List<InputProblem> problems)
    {
        if (!IsWithin((double)hob.RatedPower.Watts, (double)Hob.PowerRange.Least.Watts, (double)Hob.PowerRange.Most.Watts))
        {
            problems.Add(new("hob-power", "A hob is between 0.2 and 60 kW."));
        }

        if (hob.Kind is HobKind.Crock or HobKind.Jacket)
        {
            problems.Add(new("hob-kind", "The heater of a slow cooker or a kettle is no hob: choose the vessel itself as the pot."));
        }

        if (hob.OwnEfficiency is { } own && !IsWithin(own.DecimalFractions, Hob.EfficiencyRange.Least.DecimalFractions, Hob.EfficiencyRange.Most.DecimalFractions))
        {
            problems.Add(new("hob-efficiency", "Between 5 and 100 % of a hob's power reaches the pot."));
        }
    }

    private static void CheckLid(LidPosition lid, List<InputProblem> problems)
    {
        // A position built without its factory may carry any opening.
        if (!Enum.IsDefined(lid.Kind) || (lid.Kind == LidKind.Ajar && !IsWithin(lid.OpenFraction.DecimalFractions, LidPosition.OpenRange.Least.DecimalFractions, LidPosition.OpenRange.Most.DecimalFractions)))
        {
            problems.Add(new("gap", "A lid ajar leaves 1 to 60 % of the mouth open."));
        }
    }

    private static void CheckOven(PlanRequest request, List<InputProblem> problems)
    {
        if (request.Oven is { } oven && (oven.Levels is < 1 or > 40 || !IsWithin(oven.ShelfLength.Meters, 0.1, 3) || !IsWithin(oven.ShelfWidth.Meters, 0.1, 3)))
        {
            problems.Add(new("oven", "An oven has 1 to 40 shelves, each 10 cm to 3 m (4 in to 10 ft) long and wide."));
        }

        foreach (Tray tray in request.Trays)
        {
            if (tray.Count is < 1 or > 1000 || !IsWithin(tray.InnerLength.Meters, 0.05, 3) || !IsWithin(tray.InnerWidth.Meters, 0.05, 3))
            {
                problems.Add(new("tray", $"{tray.Name}: a tray is 5 cm to 3 m (2 in to 10 ft) long and wide inside, and there is at least one."));
            }
        }
    }

    private static void CheckSite(KitchenSite site, List<InputProblem> problems)
    {
        if (!IsWithin(site.Altitude.Meters, KitchenSite.AltitudeRange.Least.Meters, KitchenSite.AltitudeRange.Most.Meters))
        {
            problems.Add(new("altitude", "Kitchens lie between 400 m below the sea and 5000 m above it (-1300 to 16400 ft)."));
        }

        if (site.MeasuredPressure is { } pressure && !IsWithin(pressure.Pascals, KitchenSite.PressureRange.Least.Pascals, KitchenSite.PressureRange.Most.Pascals))
        {
            problems.Add(new("pressure", "Air pressure at a kitchen lies between 500 and 1100 hPa (14.8 to 32.5 inHg)."));
        }

        if (!IsWithin(site.Room.DegreesCelsius, KitchenSite.RoomRange.Least.DegreesCelsius, KitchenSite.RoomRange.Most.DegreesCelsius))
        {
            problems.Add(new("room", "A kitchen is between 0 and 50 °C (32 to 122 °F)."));
        }

        if (!IsWithin(site.Humidity.DecimalFractions, KitchenSite.HumidityRange.Least.DecimalFractions, KitchenSite.HumidityRange.Most.DecimalFractions))
        {
            problems.Add(new("humidity", "The air's relative humidity is between 0 and 100 %."));
        }

        if (!IsWithin(site.TapWater.DegreesCelsius, KitchenSite.TapRange.Least.DegreesCelsius, KitchenSite.TapRange.Most.DegreesCelsius))
        {
            problems.Add(new("tap", "Cold water is between 0.5 and 40 °C (33 to 104 °F)."));
        }

        if (site.OwnFilmFactor is { } film && !IsWithin(film, KitchenSite.OwnFilmRange.Least, KitchenSite.OwnFilmRange.Most))
        {
            problems.Add(new("film", "A weighed pot gives a film factor between 0.02 and 1.6."));
        }

        if (site.OwnClinging is { } clings && !IsWithin(clings.DecimalFractions, KitchenSite.OwnClingingRange.Least.DecimalFractions, KitchenSite.OwnClingingRange.Most.DecimalFractions))
        {
            problems.Add(new("clings", "Liquor that clings to drained bones is between 1 and 50 % of their weight."));
        }
    }

    private static void CheckRecipe(PlanRequest request, List<InputProblem> problems)
    {
        foreach ((string field, string message) in RecipeValidation.Check(request.Recipe, request.Larder))
        {
            problems.Add(new("recipe", $"This recipe cannot be planned yet ({field}): {message}"));
        }

        bool hasBones = request.Recipe.Lines.Any(line => line.Role == LineRole.Bones && request.Takes(line));
        if (problems.Count == 0 && !hasBones && request.Recipe.Wetting is null)
        {
            problems.Add(new("recipe", "Nothing is left to make stock from: keep at least one of the bones or main ingredients."));
        }

        if (problems.Count == 0 && !hasBones && request.Goal is PlanGoal.UseBones)
        {
            problems.Add(new("bones", "No bones go into this one: ask for so many litres, or fill the pot."));
        }

        if (problems.Count == 0 && request.IsUnderPressure && request.Recipe.Stages.Any(stage => stage.IsRolling || stage.ReducesTo is not null))
        {
            problems.Add(new("lid", "This one has to boil in the open: set the lid ajar or off."));
        }

        if (problems.Count == 0 && request.Lid.Kind == LidKind.On && request.Recipe.BoilsDown)
        {
            problems.Add(new("lid", "With the lid on it does not boil down: take it off."));
        }

        if (problems.Count == 0 && request.SimmerTime is not null && request.Recipe.BoilsDown)
        {
            problems.Add(new("hours", "This one is done when so much of it is left, however long that takes: leave the time empty."));
        }
    }

    private static void CheckGoal(PlanRequest request, List<InputProblem> problems)
    {
        switch (request.Goal)
        {
            case PlanGoal.MakeVolume make:
                string field = make.PortionSize is null ? "litres" : "portion-count";
                if (!IsWithin(make.Yield.Liters, PlanGoal.YieldRange.Least.Liters, PlanGoal.YieldRange.Most.Liters))
                {
                    problems.Add(new(field, "Ask for between 0.1 and 2000 L (a few spoons to a tank)."));
                }

                break;
            case PlanGoal.UseBones use:
                CheckBones(request, use, problems);
                break;
        }
    }

    private static void CheckBones(PlanRequest request, PlanGoal.UseBones use, List<InputProblem> problems)
    {
        if (use.Bones.Count == 0)
        {
            problems.Add(new("bones", "Say how much of which bones you have."));
        }

        for (int i = 0; i < use.Bones.Count; i++)
        {
            if (!request.Larder.TryFind(use.Bones[i].IngredientId, out _))
            {
                problems.Add(new($"bones-{i}-cut", $"The larder has no '{use.Bones[i].IngredientId}'."));
            }

            if (!IsWithin(use.Bones[i].Mass.Kilograms, BonesAtHand.MassRange.Least.Kilograms, BonesAtHand.MassRange.Most.Kilograms))
            {
                problems.Add(new($"bones-{i}-kg", "Bones weigh between 10 g and 2 t."));
            }
        }
    }

    private static void CheckTimes(PlanRequest request, List<InputProblem> problems)
    {
        if (request.SimmerTemperature is { } simmer && !IsWithin(simmer.DegreesCelsius, PlanRequest.SimmerTemperatureRange.Least.DegreesCelsius, PlanRequest.SimmerTemperatureRange.Most.DegreesCelsius))
        {
            problems.Add(new("simmer", "A simmer lies between 40 and 125 °C (104 to 257 °F)."));
        }

        if (request.SimmerTime is { } time && (time < PlanRequest.SimmerTimeRange.Least || time > PlanRequest.SimmerTimeRange.Most))
        {
            problems.Add(new("hours", "Simmer for between a minute and 72 hours."));
        }

        if (request.CheckInterval < PlanRequest.CheckIntervalRange.Least || request.CheckInterval > PlanRequest.CheckIntervalRange.Most)
        {
            problems.Add(new("check", "Look in every 20 minutes to 6 hours."));
        }

        if (request.Schedule.StartAt is null == request.Schedule.ReadyBy is null)
        {
            problems.Add(new("when", "Give either a start or a time to be ready by."));
        }

        if ((request.Schedule.StartAt ?? request.Schedule.ReadyBy) is { Year: < 1900 or > 2200 })
        {
            problems.Add(new("date", "Give a date between 1900 and 2200."));
        }

        if (request.Schedule.WakesAt == request.Schedule.SleepsAt)
        {
            problems.Add(new("wakes", "Waking and bedtime must differ."));
        }
    }

    private static bool IsWithin(double value, double least, double most) => value >= least && value <= most;
}
