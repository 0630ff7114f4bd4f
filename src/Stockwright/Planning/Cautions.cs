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
        "Strain before you stop: a full pot with its solids does not get cold in time. Cool the liquor and the solids fast, keep both in the fridge, and bring both to the boil in the morning.",
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
        "Never fill a pressure cooker above its maker's mark, two thirds for most, half for what foams or swells (beans and grain, not stock): what rises can block the valve. Never start it with less liquid than the maker asks, often 0.25 to 0.5 L (1 to 2 cups): dry, it burns out. The maker's instructions stand above this plan.",
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
        "Raw meat, bones and shells drip: keep them below ready food in the fridge, and wash hands, board and scale after weighing.",
        Practice);

    public static Caution SlowStart { get; } = new(
        "slow-start",
        "Thawed pieces only, never frozen, and none larger than a fist: in a slow cooker they warm slowly, and frozen or large ones stay cold for hours. Its maker's least and most stand above this plan.",
        Practice);

    public static Caution SlowCooker { get; } = new(
        "slow-cooker",
        "Crock, lid and shell get hot enough to burn. Set it on a clear, level top that bears heat, keep the cord dry and clear of the edge, and do not leave it on unless it is made for that.",
        Practice);

    public static Caution SlowWarmSetting { get; } = new(
        "slow-warm-setting",
        $"Do not cook on the warm setting: it keeps hot what is done, at about {KitchenFormat.Both(Simmering.OwnHeat.Warm)}, and leaves a cold pot too long in between.",
        "common practice, no source; the temperature is an estimate");

    public static Caution SlowLid { get; } = new(
        "slow-lid",
        "Steam and hot drops come off the lid: tilt it away from you.",
        Practice);

    public static Caution HotCrock { get; } = new(
        "hot-crock",
        "The crock holds its heat and is heavy and slippery: leave it in the shell while you ladle. Do not cool the stock in it, and keep cold water off it: it cracks.",
        Practice);

    public static Caution KettleValve { get; } = new(
        "kettle-valve",
        "Before you fill, see that the draw-off valve is shut and the tilt is locked: a valve left open pours the lot over your feet.",
        Practice);

    public static Caution KettleLid { get; } = new(
        "kettle-lid",
        "Open the hinged lid from the side by its handle, and let the steam out before you look in. Wall and jacket burn.",
        Practice);

    public static Caution KettleDraining { get; } = new(
        "kettle-draining",
        "Near-boiling stock comes out in a rush: stand aside of valve and lip, with closed shoes, gloves and apron on. Open the valve a little first, or tilt slowly, lid back, into a vessel that stands steady and is not too full to move.",
        Practice);

    /// <summary>A pot on its way into the oven.</summary>
    public static Caution PotIntoOven(Mass full) => new(
        "pot-into-oven",
        $"Only a pot whose lid, knob and handles bear the oven. Full it weighs about {KitchenFormat.Both(full)}, hot, and goes in at knee height: clear the way, bend your knees, and let two lift it if it is heavy.",
        "common practice, no source; the weight is computed from what goes in");

    /// <summary>A pot on its way out of the oven.</summary>
    public static Caution PotOutOfOven(Mass full) => new(
        "pot-out-of-oven",
        $"About {KitchenFormat.Both(full)} of hot pot at knee height: dry, thick cloths (a wet one scalds), pull the shelf out first, nobody behind you, and lift it only as far as the hob.",
        "common practice, no source; the weight is computed from what goes in");

    /// <summary>The weight of the full pot.</summary>
    public static Caution HeavyPot(Mass full) => new(
        "heavy-pot",
        $"Full, this pot weighs about {KitchenFormat.Both(full)}. Fill it on the hob, and do not carry it hot.",
        "computed from what goes in");

    /// <summary>Allergens the larder flags among the ingredients.</summary>
    public static Caution Allergens(IEnumerable<string> flagged) => new(
        "allergens",
        $"Say so on the label: this batch has {string.Join(", ", flagged)}. Other allergens may come in with packets and traces; read them, and follow your local labelling rule.",
        "flags of the larder; Regulation (EU) 1169/2011, Annex II, names celery, fish, crustaceans, molluscs, sulphites and others");
}
