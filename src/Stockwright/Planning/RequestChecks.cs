using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What must hold before anything is computed; each failure is told with the part of the request it belongs to.</summary>
internal static class RequestChecks
{
    private const int FirstYear = 1900;
    private const int LastYear = 2200;

    public static IReadOnlyList<Problem> Check(PlanRequest request)
    {
        List<Problem> problems = [];
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
        if (request.PieceSize is { } piece)
        {
            problems.RequireWithin(piece, PlanRequest.PieceSizeRange, PlanPart.PieceSize, ProblemCode.PieceSize);
        }

        CheckRecipe(request, problems);
        CheckGoal(request, problems);
        CheckTimes(request, problems);
        return problems;
    }

    private static void CheckPot(Pot pot, List<Problem> problems)
    {
        problems.RequireWithin(pot.BaseDiameter, Pot.DiameterRange, PlanPart.PotDiameter, ProblemCode.PotAcross);
        problems.RequireWithin(pot.BrimDiameter, Pot.DiameterRange, PlanPart.PotBrimDiameter, ProblemCode.PotAcross);
        problems.RequireWithin(pot.InnerHeight, Pot.HeightRange, PlanPart.PotHeight, ProblemCode.PotHigh);
        problems.RequireWithin(pot.EmptyMass, Pot.EmptyMassRange, PlanPart.PotMass, ProblemCode.PotWeight);
    }

    private static void CheckHob(Hob hob, List<Problem> problems)
    {
        problems.RequireWithin(hob.RatedPower, Hob.PowerRange, PlanPart.HobPower, ProblemCode.HobPower);
        problems.Require(hob.Kind is not (HobKind.Crock or HobKind.Jacket), PlanPart.HobKind, ProblemCode.HobIsVessel);
        if (hob.OwnEfficiency is { } own)
        {
            problems.RequireWithin(own, Hob.EfficiencyRange, PlanPart.HobEfficiency, ProblemCode.HobEfficiency);
        }
    }

    private static void CheckLid(LidPosition lid, List<Problem> problems)
    {
        // A position built without its factory may carry any opening.
        (Ratio least, Ratio most) = LidPosition.OpenRange;
        bool isOpenSoFar = lid.Kind != LidKind.Ajar || ProblemList.IsWithin(lid.OpenFraction.DecimalFractions, least.DecimalFractions, most.DecimalFractions);
        problems.Require(Enum.IsDefined(lid.Kind) && isOpenSoFar, PlanPart.LidOpening, ProblemCode.LidOpening, Figure.Of(least), Figure.Of(most));
    }

    private static void CheckOven(PlanRequest request, List<Problem> problems)
    {
        if (request.Oven is { } oven)
        {
            (Length least, Length most) = Oven.ShelfRange;
            problems.Require(
                oven.Levels >= Oven.LevelsRange.Least && oven.Levels <= Oven.LevelsRange.Most && Fits(oven.ShelfLength, Oven.ShelfRange) && Fits(oven.ShelfWidth, Oven.ShelfRange),
                PlanPart.Oven,
                ProblemCode.OvenSize,
                Figure.Of(Oven.LevelsRange.Most),
                Figure.Of(least),
                Figure.Of(most));
        }

        foreach (Tray tray in request.Trays)
        {
            problems.Require(
                tray.Count >= Tray.CountRange.Least && tray.Count <= Tray.CountRange.Most && Fits(tray.InnerLength, Tray.SideRange) && Fits(tray.InnerWidth, Tray.SideRange),
                PlanPart.Trays,
                ProblemCode.TraySize,
                Figure.Of(tray.Name),
                Figure.Of(Tray.SideRange.Least),
                Figure.Of(Tray.SideRange.Most));
        }
    }

    private static void CheckSite(KitchenSite site, List<Problem> problems)
    {
        (Length lowest, Length highest) = KitchenSite.AltitudeRange;
        problems.Require(Fits(site.Altitude, KitchenSite.AltitudeRange), PlanPart.Altitude, ProblemCode.Altitude, Figure.Of(-lowest), Figure.Of(highest));
        if (site.MeasuredPressure is { } pressure)
        {
            (Pressure least, Pressure most) = KitchenSite.PressureRange;
            problems.Require(ProblemList.IsWithin(pressure.Pascals, least.Pascals, most.Pascals), PlanPart.AirPressure, ProblemCode.AirPressure, Figure.Of(least), Figure.Of(most));
        }

        problems.RequireWithin(site.Room, KitchenSite.RoomRange, PlanPart.Room, ProblemCode.Room);
        problems.RequireWithin(site.Humidity, KitchenSite.HumidityRange, PlanPart.Humidity, ProblemCode.Humidity);
        problems.RequireWithin(site.TapWater, KitchenSite.TapRange, PlanPart.TapWater, ProblemCode.TapWater);
        if (site.OwnFilmFactor is { } film)
        {
            (double least, double most) = KitchenSite.OwnFilmRange;
            problems.Require(ProblemList.IsWithin(film, least, most), PlanPart.FilmFactor, ProblemCode.FilmFactor, Figure.Of(least), Figure.Of(most));
        }

        if (site.OwnClinging is { } clings)
        {
            problems.RequireWithin(clings, KitchenSite.OwnClingingRange, PlanPart.Clinging, ProblemCode.Clinging);
        }
    }

    private static void CheckRecipe(PlanRequest request, List<Problem> problems)
    {
        foreach ((string field, string message) in RecipeValidation.Check(request.Recipe, request.Larder))
        {
            problems.Add(new(PlanPart.Recipe, ProblemCode.RecipeIncomplete, Figure.Of(field), Figure.Of(message)));
        }

        bool hasBones = request.Recipe.Lines.Any(line => line.Role == LineRole.Bones && request.Takes(line));
        if (problems.Count == 0)
        {
            problems.Require(hasBones || request.Recipe.Wetting is not null, PlanPart.Recipe, ProblemCode.NothingToDraw);
        }

        if (problems.Count == 0)
        {
            problems.Require(hasBones || request.Goal is not PlanGoal.UseBones, PlanPart.Bones, ProblemCode.TakesNoBones);
        }

        if (problems.Count == 0 && request.IsUnderPressure)
        {
            problems.Require(!request.Recipe.Stages.Any(stage => stage.IsRolling || stage.ReducesTo is not null), PlanPart.Lid, ProblemCode.BoilsInTheOpen);
        }

        if (problems.Count == 0 && request.Recipe.BoilsDown)
        {
            problems.Require(request.Lid.Kind != LidKind.On, PlanPart.Lid, ProblemCode.LidOnBoilsNotDown);
        }

        if (problems.Count == 0 && request.Recipe.BoilsDown)
        {
            problems.Require(request.SimmerTime is null, PlanPart.SimmerTime, ProblemCode.BoiledDownByAmount);
        }
    }

    private static void CheckGoal(PlanRequest request, List<Problem> problems)
    {
        switch (request.Goal)
        {
            case PlanGoal.MakeVolume make:
                problems.RequireWithin(make.Yield, PlanGoal.YieldRange, PlanPart.Of(make), ProblemCode.YieldRange);
                break;
            case PlanGoal.UseBones use:
                CheckBones(request, use, problems);
                break;
        }
    }

    private static void CheckBones(PlanRequest request, PlanGoal.UseBones use, List<Problem> problems)
    {
        problems.Require(use.Bones.Count > 0, PlanPart.Bones, ProblemCode.BonesMissing);
        for (int row = 0; row < use.Bones.Count; row++)
        {
            BonesAtHand bones = use.Bones[row];
            List<Problem> ofRow = [];
            ofRow.Require(request.Larder.TryFind(bones.IngredientId, out _), PlanPart.BonesCut, ProblemCode.BonesUnknown, Figure.Of(bones.IngredientId));
            ofRow.RequireWithin(bones.Mass, BonesAtHand.MassRange, PlanPart.BonesMass, ProblemCode.BonesWeight);
            problems.AddRange(ofRow.Select(problem => problem with { Row = row }));
        }
    }

    private static void CheckTimes(PlanRequest request, List<Problem> problems)
    {
        PlanSchedule schedule = request.Schedule;
        if (request.SimmerTemperature is { } simmer)
        {
            problems.RequireWithin(simmer, PlanRequest.SimmerTemperatureRange, PlanPart.SimmerTemperature, ProblemCode.SimmerRange);
        }

        if (request.SimmerTime is { } time)
        {
            problems.RequireWithin(time, PlanRequest.SimmerTimeRange, PlanPart.SimmerTime, ProblemCode.SimmerTime);
        }

        problems.RequireWithin(request.CheckInterval, PlanRequest.CheckIntervalRange, PlanPart.CheckInterval, ProblemCode.CheckInterval);
        problems.Require(schedule.StartAt is null != schedule.ReadyBy is null, PlanPart.Schedule, ProblemCode.StartOrReady);
        problems.Require(
            (schedule.StartAt ?? schedule.ReadyBy) is not { Year: < FirstYear or > LastYear },
            schedule.StartAt is null ? PlanPart.ReadyBy : PlanPart.StartAt,
            ProblemCode.Year,
            Figure.Of(FirstYear),
            Figure.Of(LastYear));
        problems.Require(schedule.WakesAt != schedule.SleepsAt, PlanPart.WakesAt, ProblemCode.NeverAsleep);
    }

    private static bool Fits(Length value, (Length Least, Length Most) range) =>
        ProblemList.IsWithin(value.Meters, range.Least.Meters, range.Most.Meters);
}
