using Stockwright.Kitchen;

namespace Stockwright.Planning;

/// <summary>Parts of a <see cref="PlanRequest"/> that a problem or a notice can belong to, each as its path from the request.</summary>
public static class PlanPart
{
    /// <summary><c>Recipe</c>.</summary>
    public const string Recipe = nameof(PlanRequest.Recipe);

    /// <summary><c>Pot</c>.</summary>
    public const string Pot = nameof(PlanRequest.Pot);

    /// <summary><c>Pot.BaseDiameter</c>.</summary>
    public const string PotDiameter = $"{nameof(PlanRequest.Pot)}.{nameof(Kitchen.Pot.BaseDiameter)}";

    /// <summary><c>Pot.BrimDiameter</c>.</summary>
    public const string PotBrimDiameter = $"{nameof(PlanRequest.Pot)}.{nameof(Kitchen.Pot.BrimDiameter)}";

    /// <summary><c>Pot.InnerHeight</c>.</summary>
    public const string PotHeight = $"{nameof(PlanRequest.Pot)}.{nameof(Kitchen.Pot.InnerHeight)}";

    /// <summary><c>Pot.EmptyMass</c>.</summary>
    public const string PotMass = $"{nameof(PlanRequest.Pot)}.{nameof(Kitchen.Pot.EmptyMass)}";

    /// <summary><c>Pot.GaugePressure</c>.</summary>
    public const string PotGauge = $"{nameof(PlanRequest.Pot)}.{nameof(Kitchen.Pot.GaugePressure)}";

    /// <summary><c>Pot.HeaterPower</c>.</summary>
    public const string PotHeater = $"{nameof(PlanRequest.Pot)}.{nameof(Kitchen.Pot.HeaterPower)}";

    /// <summary><c>Hob</c>.</summary>
    public const string Hob = nameof(PlanRequest.Hob);

    /// <summary><c>Hob.Kind</c>.</summary>
    public const string HobKind = $"{nameof(PlanRequest.Hob)}.{nameof(Kitchen.Hob.Kind)}";

    /// <summary><c>Hob.RatedPower</c>.</summary>
    public const string HobPower = $"{nameof(PlanRequest.Hob)}.{nameof(Kitchen.Hob.RatedPower)}";

    /// <summary><c>Hob.OwnEfficiency</c>.</summary>
    public const string HobEfficiency = $"{nameof(PlanRequest.Hob)}.{nameof(Kitchen.Hob.OwnEfficiency)}";

    /// <summary><c>Lid</c>.</summary>
    public const string Lid = nameof(PlanRequest.Lid);

    /// <summary><c>Lid.OpenFraction</c>.</summary>
    public const string LidOpening = $"{nameof(PlanRequest.Lid)}.{nameof(LidPosition.OpenFraction)}";

    /// <summary><c>Oven</c>.</summary>
    public const string Oven = nameof(PlanRequest.Oven);

    /// <summary><c>Trays</c>.</summary>
    public const string Trays = nameof(PlanRequest.Trays);

    /// <summary><c>Site.Altitude</c>.</summary>
    public const string Altitude = $"{nameof(PlanRequest.Site)}.{nameof(KitchenSite.Altitude)}";

    /// <summary><c>Site.MeasuredPressure</c>.</summary>
    public const string AirPressure = $"{nameof(PlanRequest.Site)}.{nameof(KitchenSite.MeasuredPressure)}";

    /// <summary><c>Site.Room</c>.</summary>
    public const string Room = $"{nameof(PlanRequest.Site)}.{nameof(KitchenSite.Room)}";

    /// <summary><c>Site.Humidity</c>.</summary>
    public const string Humidity = $"{nameof(PlanRequest.Site)}.{nameof(KitchenSite.Humidity)}";

    /// <summary><c>Site.TapWater</c>.</summary>
    public const string TapWater = $"{nameof(PlanRequest.Site)}.{nameof(KitchenSite.TapWater)}";

    /// <summary><c>Site.OwnFilmFactor</c>.</summary>
    public const string FilmFactor = $"{nameof(PlanRequest.Site)}.{nameof(KitchenSite.OwnFilmFactor)}";

    /// <summary><c>Site.OwnClinging</c>.</summary>
    public const string Clinging = $"{nameof(PlanRequest.Site)}.{nameof(KitchenSite.OwnClinging)}";

    /// <summary><c>Goal.MakeVolume.Yield</c>.</summary>
    public const string Yield = $"{nameof(PlanRequest.Goal)}.{nameof(PlanGoal.MakeVolume)}.{nameof(PlanGoal.MakeVolume.Yield)}";

    /// <summary><c>Goal.MakeVolume.PortionSize</c>.</summary>
    public const string Portions = $"{nameof(PlanRequest.Goal)}.{nameof(PlanGoal.MakeVolume)}.{nameof(PlanGoal.MakeVolume.PortionSize)}";

    /// <summary><c>Goal.UseBones.Bones</c>.</summary>
    public const string Bones = $"{nameof(PlanRequest.Goal)}.{nameof(PlanGoal.UseBones)}.{nameof(PlanGoal.UseBones.Bones)}";

    /// <summary><c>Goal.UseBones.Bones.IngredientId</c>.</summary>
    public const string BonesCut = $"{nameof(PlanRequest.Goal)}.{nameof(PlanGoal.UseBones)}.{nameof(PlanGoal.UseBones.Bones)}.{nameof(BonesAtHand.IngredientId)}";

    /// <summary><c>Goal.UseBones.Bones.Mass</c>.</summary>
    public const string BonesMass = $"{nameof(PlanRequest.Goal)}.{nameof(PlanGoal.UseBones)}.{nameof(PlanGoal.UseBones.Bones)}.{nameof(BonesAtHand.Mass)}";

    /// <summary><c>FillTo</c>.</summary>
    public const string FillTo = nameof(PlanRequest.FillTo);

    /// <summary><c>PotCount</c>.</summary>
    public const string PotCount = nameof(PlanRequest.PotCount);

    /// <summary><c>HobCount</c>.</summary>
    public const string HobCount = nameof(PlanRequest.HobCount);

    /// <summary><c>Schedule</c>.</summary>
    public const string Schedule = nameof(PlanRequest.Schedule);

    /// <summary><c>Schedule.StartAt</c>.</summary>
    public const string StartAt = $"{nameof(PlanRequest.Schedule)}.{nameof(PlanSchedule.StartAt)}";

    /// <summary><c>Schedule.ReadyBy</c>.</summary>
    public const string ReadyBy = $"{nameof(PlanRequest.Schedule)}.{nameof(PlanSchedule.ReadyBy)}";

    /// <summary><c>Schedule.Now</c>.</summary>
    public const string Now = $"{nameof(PlanRequest.Schedule)}.{nameof(PlanSchedule.Now)}";

    /// <summary><c>Schedule.WakesAt</c>.</summary>
    public const string WakesAt = $"{nameof(PlanRequest.Schedule)}.{nameof(PlanSchedule.WakesAt)}";

    /// <summary><c>Schedule.Night</c>.</summary>
    public const string Night = $"{nameof(PlanRequest.Schedule)}.{nameof(PlanSchedule.Night)}";

    /// <summary><c>SimmerTemperature</c>.</summary>
    public const string SimmerTemperature = nameof(PlanRequest.SimmerTemperature);

    /// <summary><c>SimmerTime</c>.</summary>
    public const string SimmerTime = nameof(PlanRequest.SimmerTime);

    /// <summary><c>CheckInterval</c>.</summary>
    public const string CheckInterval = nameof(PlanRequest.CheckInterval);

    /// <summary><c>TopUp</c>.</summary>
    public const string TopUp = nameof(PlanRequest.TopUp);

    /// <summary><c>PieceSize</c>.</summary>
    public const string PieceSize = nameof(PlanRequest.PieceSize);

    /// <summary><c>Setting</c>.</summary>
    public const string SlowSetting = nameof(PlanRequest.Setting);

    /// <summary><c>SimmersInOven</c>.</summary>
    public const string SimmersInOven = nameof(PlanRequest.SimmersInOven);

    /// <summary>Where a goal says how much it wants: the first row of bones, so many portions, or so much stock.</summary>
    public static string Of(PlanGoal goal) => goal switch
    {
        PlanGoal.UseBones => BonesMass,
        PlanGoal.MakeVolume { PortionSize: not null } => Portions,
        _ => Yield,
    };
}
