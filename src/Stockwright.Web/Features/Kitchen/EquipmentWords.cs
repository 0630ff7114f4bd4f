using Stockwright.Kitchen;

namespace Stockwright.Web.Features.Kitchen;

/// <summary>Words of the fields that choose a vessel, a lid or a hob; the first of each list is the default.</summary>
internal static class EquipmentWords
{
    public static readonly (string Word, WallMaterial Value)[] Materials =
    [
        ("steel", WallMaterial.StainlessSteel), ("aluminium", WallMaterial.Aluminium), ("copper", WallMaterial.Copper), ("enamel", WallMaterial.EnamelledIron), ("stoneware", WallMaterial.Stoneware),
    ];

    public static readonly (string Word, PotKind Value)[] PotKinds =
    [
        ("open", PotKind.Open), ("pressure", PotKind.PressureCooker), ("slow", PotKind.SlowCooker), ("kettle", PotKind.Kettle),
    ];

    public static readonly (string Word, SlowCookerSetting Value)[] SlowSettings =
    [
        ("high", SlowCookerSetting.High), ("low", SlowCookerSetting.Low), ("warm", SlowCookerSetting.Warm),
    ];

    public static readonly (string Word, LidKind Value)[] Lids = [("off", LidKind.Off), ("ajar", LidKind.Ajar), ("on", LidKind.On)];

    public static readonly (string Word, HobKind Value)[] HobKinds =
    [
        ("gas", HobKind.Gas), ("coil", HobKind.Coil), ("smooth", HobKind.SmoothTop), ("plate", HobKind.SolidPlate), ("induction", HobKind.Induction),
    ];

    public static readonly (string Word, PotShape Value)[] Shapes =
    [
        ("straight", PotShape.Straight), ("tapered", PotShape.Tapered), ("volume", PotShape.Volume),
    ];
}

/// <summary>The ways to describe a pot.</summary>
internal enum PotShape
{
    Straight,
    Tapered,
    Volume,
}
