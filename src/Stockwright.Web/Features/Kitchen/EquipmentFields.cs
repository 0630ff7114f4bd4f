namespace Stockwright.Web.Features.Kitchen;

/// <summary>Names of the fields that describe a vessel, its lid and its hob.</summary>
internal static class EquipmentFields
{
    public const string Pot = "pot";
    public const string PotShape = "pot-shape";
    public const string PotDiameter = "pot-diameter";
    public const string PotBrimDiameter = "pot-brim-diameter";
    public const string PotHeight = "pot-height";
    public const string PotVolume = "pot-volume";
    public const string PotMaterial = "pot-material";
    public const string PotMass = "pot-mass";
    public const string PotKind = "pot-kind";
    public const string PotGauge = "pot-gauge";
    public const string PotPower = "pot-power";
    public const string Lid = "lid";
    public const string Gap = "gap";
    public const string Hob = "hob";
    public const string HobKind = "hob-kind";
    public const string HobPower = "hob-power";
    public const string HobEfficiency = "hob-efficiency";

    /// <summary>Chosen in place of a pot or hob of the kitchen.</summary>
    public const string Own = "own";
}
