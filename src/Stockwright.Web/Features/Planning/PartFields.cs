using System.Collections.Frozen;
using Stockwright.Planning;
using Stockwright.Web.Features.Kitchen;

namespace Stockwright.Web.Features.Planning;

/// <summary>Which field of the planner's form each part of a request is typed in.</summary>
internal static class PartFields
{
    private static readonly FrozenDictionary<string, string> Fields = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        [PlanPart.Recipe] = PlanFields.Recipe.Name,
        [PlanPart.Pot] = EquipmentFields.Pot.Name,
        [PlanPart.PotDiameter] = EquipmentFields.PotDiameter.Name,
        [PlanPart.PotBrimDiameter] = EquipmentFields.PotBrimDiameter.Name,
        [PlanPart.PotHeight] = EquipmentFields.PotHeight.Name,
        [PlanPart.PotMass] = EquipmentFields.PotMass.Name,
        [PlanPart.PotGauge] = EquipmentFields.PotGauge.Name,
        [PlanPart.PotHeater] = EquipmentFields.PotPower.Name,
        [PlanPart.Hob] = EquipmentFields.Hob.Name,
        [PlanPart.HobKind] = EquipmentFields.HobKind.Name,
        [PlanPart.HobPower] = EquipmentFields.HobPower.Name,
        [PlanPart.HobEfficiency] = EquipmentFields.HobEfficiency.Name,
        [PlanPart.Lid] = EquipmentFields.Lid.Name,
        [PlanPart.LidOpening] = EquipmentFields.Gap.Name,
        [PlanPart.Oven] = "oven",
        [PlanPart.Trays] = "tray",
        [PlanPart.Altitude] = SiteFields.Altitude.Name,
        [PlanPart.AirPressure] = SiteFields.Pressure.Name,
        [PlanPart.Room] = SiteFields.Room.Name,
        [PlanPart.Humidity] = SiteFields.Humidity.Name,
        [PlanPart.TapWater] = SiteFields.Tap.Name,
        [PlanPart.FilmFactor] = SiteFields.Film.Name,
        [PlanPart.Clinging] = SiteFields.Clings.Name,
        [PlanPart.Yield] = PlanFields.Litres.Name,
        [PlanPart.Portions] = PlanFields.PortionCount.Name,
        [PlanPart.Bones] = RowFields.Bones,
        [PlanPart.FillTo] = PlanFields.Fill.Name,
        [PlanPart.PotCount] = "pots",
        [PlanPart.HobCount] = "hobs",
        [PlanPart.Schedule] = PlanFields.When.Name,
        [PlanPart.StartAt] = PlanFields.Date.Name,
        [PlanPart.ReadyBy] = PlanFields.Date.Name,
        [PlanPart.Now] = PlanFields.Time.Name,
        [PlanPart.WakesAt] = "wakes",
        [PlanPart.Night] = "night",
        [PlanPart.SimmerTemperature] = "simmer",
        [PlanPart.SimmerTime] = "hours",
        [PlanPart.CheckInterval] = "check",
        [PlanPart.TopUp] = "topup",
        [PlanPart.PieceSize] = "piece-size",
        [PlanPart.SlowSetting] = PlanFields.SlowSetting.Row.Name,
        [PlanPart.SimmersInOven] = PlanFields.InOven.Row.Name,
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

    /// <summary>The part of a field, as plans of versions before parts name it; null where no part is typed there.</summary>
    /// <param name="field">Name of the field.</param>
    public static string? PartOf(string field) => field.StartsWith($"{RowFields.Bones}-", StringComparison.Ordinal)
        ? PlanPart.BonesMass
        : Fields.FirstOrDefault(one => string.Equals(one.Value, field, StringComparison.Ordinal)).Key;
}
