using Stockwright.Kitchen;
using Stockwright.Measures;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>The usual cautions, short, each placed at the step where the hand is at risk.</summary>
internal static class Cautions
{
    private const string Practice = "common practice, no source";

    public static Caution HotFat { get; } = new(
        "hot-fat",
        "Trays hold spitting fat. Drain it into metal, keep water away from it, and use dry cloths.",
        Practice);

    public static Caution PourOffBlanch { get; } = new(
        "scald-blanching",
        "A potful of boiling water: ladle or pour away from you, with the sink clear and nobody behind you.",
        Practice);

    public static Caution Unattended { get; } = new(
        "unattended",
        "Do not leave a lit hob to itself. Unattended cooking is a leading cause of kitchen fires; gas can blow out and a pot can boil dry.",
        "NFPA home fire reports, from memory");

    public static Caution NightHold { get; } = new(
        "night-hold",
        "Only an oven or appliance with its own thermostat and cut-off may run while you sleep. Keep it above 60 °C (140 °F), or your local hot-holding limit.",
        "hot-holding limits differ: check with your local authority");

    public static Caution StopAndCool { get; } = new(
        "stop-and-cool",
        "Strain before you stop: a full pot of bones does not get cold in time. Cool the liquor and the bones fast, keep both in the fridge, and bring both to the boil in the morning.",
        "cooling limits differ: check with your local authority");

    public static Caution Straining { get; } = new(
        "scald-straining",
        "Near-boiling stock burns deep within a second, and the fat on top hides the steam. Ladle it out rather than lift the pot; set the strainer low and steady.",
        "scald times after Moritz and Henriques 1947, from memory");

    public static Caution Cooling { get; } = new(
        "cooling",
        "Get it cold fast: many codes ask for 60 to 21 °C (140 to 70 °F) within 2 hours and 5 °C (41 °F) within 4 more. A deep hot pot in a fridge fails that and warms everything in it. The cooling section of the plan says which ways pass; your local rule stands above it.",
        "FSANZ Standard 3.2.2 clause 7(3); US FDA Food Code 3-501.14 starts at 57 °C (135 °F)");

    public static Caution Glass { get; } = new(
        "glass",
        $"Hot stock cracks cold glass, and freezing cracks full glass: warm the jars or use other tubs, and for the freezer {Headspace.Rule(KitchenFormat.Both)}.",
        $"{Headspace.Source}; glass shock from memory");

    public static Caution NotForTheShelf { get; } = new(
        "not-for-the-shelf",
        "Jars of stock are not shelf-stable: it is a low-acid food. Fridge, freezer, or a tested pressure-canning process; never a boiling-water bath.",
        "USDA Complete Guide to Home Canning, Guide 5");

    public static Caution BeforeLocking { get; } = new(
        "before-locking",
        "Never fill a pressure cooker above its maker's mark, two thirds for most: what rises can block the valve. The maker's instructions stand above this plan.",
        Practice);

    public static Caution UnderPressure { get; } = new(
        "under-pressure",
        "Never force the lid, and never leave it out of hearing. If the valve blows, or the pressure does not hold, turn the heat off and let it stand.",
        Practice);

    public static Caution PressureCooker { get; } = new(
        "pressure-cooker",
        "A full pot vented fast boils up through the valve. Let it fall by itself; if yours is to be released another way, follow its maker. It is not a canner unless it is sold as one.",
        Practice);

    public static Caution Opening { get; } = new(
        "opening",
        "Steam scalds: keep face and arms clear, and let it boil down before you reach in. If the lid does not turn freely there is pressure left; wait.",
        Practice);

    public static Caution RawBones { get; } = new(
        "raw-bones",
        "Raw bones drip: keep them below ready food in the fridge, and wash hands, board and scale after weighing.",
        Practice);

    /// <summary>The weight of the full pot.</summary>
    public static Caution HeavyPot(Mass full) => new(
        "heavy-pot",
        $"Full, this pot weighs about {KitchenFormat.Both(full)}. Fill it on the hob, and do not carry it hot.",
        "computed from what goes in");

    /// <summary>Allergens the larder flags among the ingredients.</summary>
    public static Caution Allergens(IEnumerable<string> flagged) => new(
        "allergens",
        $"Say so on the label: this batch has {string.Join(", ", flagged)}. Other allergens may come in with packets and traces; read them, and follow your local labelling rule.",
        "flags of the larder; EU Regulation 1169/2011 Annex II names celery, fish, crustaceans, molluscs, sulphites and others");
}
