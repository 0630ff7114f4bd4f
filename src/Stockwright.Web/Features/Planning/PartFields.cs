using System.Collections.Frozen;
using Stockwright.Planning;

namespace Stockwright.Web.Features.Planning;

/// <summary>Which field of the planner's form each part of a request is typed in.</summary>
internal static class PartFields
{
    private static readonly FrozenDictionary<string, string> Fields = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [PlanPart.Recipe] = PlanFields.Recipe,
        [PlanPart.Pot] = PlanFields.Pot,
        [PlanPart.PotDiameter] = PlanFields.PotDiameter,
        [PlanPart.PotBrimDiameter] = PlanFields.PotBrimDiameter,
        [PlanPart.PotHeight] = PlanFields.PotHeight,
        [PlanPart.PotMass] = PlanFields.PotMass,
        [PlanPart.PotGauge] = PlanFields.PotGauge,
        [PlanPart.PotHeater] = PlanFields.PotPower,
        [PlanPart.Hob] = PlanFields.Hob,
        [PlanPart.HobKind] = PlanFields.HobKind,
        [PlanPart.HobPower] = PlanFields.HobPower,
        [PlanPart.HobEfficiency] = PlanFields.HobEfficiency,
        [PlanPart.Lid] = PlanFields.Lid,
        [PlanPart.LidOpening] = PlanFields.Gap,
        [PlanPart.Oven] = "oven",
        [PlanPart.Trays] = "tray",
        [PlanPart.Altitude] = PlanFields.Altitude,
        [PlanPart.AirPressure] = PlanFields.Pressure,
        [PlanPart.Room] = PlanFields.Room,
        [PlanPart.Humidity] = "humidity",
        [PlanPart.TapWater] = PlanFields.Tap,
        [PlanPart.FilmFactor] = PlanFields.Film,
        [PlanPart.Clinging] = PlanFields.Clings,
        [PlanPart.Yield] = PlanFields.Litres,
        [PlanPart.Portions] = PlanFields.PortionCount,
        [PlanPart.Bones] = PlanFields.Bones,
        [PlanPart.FillTo] = PlanFields.Fill,
        [PlanPart.PotCount] = PlanFields.Pots,
        [PlanPart.HobCount] = PlanFields.Hobs,
        [PlanPart.Schedule] = PlanFields.When,
        [PlanPart.StartAt] = PlanFields.Date,
        [PlanPart.ReadyBy] = PlanFields.Date,
        [PlanPart.Now] = PlanFields.Time,
        [PlanPart.WakesAt] = PlanFields.Wakes,
        [PlanPart.Night] = PlanFields.Night,
        [PlanPart.SimmerTemperature] = PlanFields.Simmer,
        [PlanPart.SimmerTime] = PlanFields.Hours,
        [PlanPart.CheckInterval] = PlanFields.Check,
        [PlanPart.TopUp] = PlanFields.TopUp,
        [PlanPart.PieceSize] = PlanFields.PieceSize,
        [PlanPart.SlowSetting] = PlanFields.SlowSetting,
        [PlanPart.SimmersInOven] = PlanFields.InOven,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The field of a part; a row's where it has rows.</summary>
    /// <param name="part">One of <see cref="PlanPart"/>.</param>
    /// <param name="row">Row of a list, from zero.</param>
    /// <param name="units">Measures of the form: a row's weight is named by its unit.</param>
    public static string Of(string part, int? row, UnitSystem units) => part switch
    {
        PlanPart.BonesCut => PlanFields.BonesField(row ?? 0, "cut"),
        PlanPart.BonesMass => PlanFields.BonesMassField(row ?? 0, units),
        _ => Fields[part],
    };
}
