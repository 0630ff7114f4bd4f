using Stockwright.Kitchen;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>What a step says and warns of.</summary>
/// <param name="Title">Short imperative title.</param>
/// <param name="Detail">One or two sentences.</param>
/// <param name="Cautions">For the hand at this step.</param>
internal sealed record StepText(string Title, string Detail, params Caution[] Cautions);

/// <summary>Words of the steps that differ from vessel to vessel; what is the same for all stays with <see cref="TimelineWriter"/>.</summary>
internal sealed class VesselSteps(PlanRequest request)
{
    /// <summary>The oven of a pot that simmers in it (common practice, no source: enough for a bare simmer under a lid).</summary>
    public const string OvenText = "110 to 120 °C (230 to 250 °F)";

    /// <summary>The same, coolest and hottest.</summary>
    public static readonly (Temperature Least, Temperature Most) OvenHeat = (Temperature.FromDegreesCelsius(110), Temperature.FromDegreesCelsius(120));

    private bool IsSlow => request.Pot.Kind == PotKind.SlowCooker;

    private bool IsKettle => request.Pot.Kind == PotKind.Kettle;

    private string Setting => VesselNotices.Word(request.Setting);

    /// <summary>True when the pot comes out of the oven before the simmer is over.</summary>
    public static bool LeavesOvenEarly(SimmerOutcome outcome) =>
        outcome.Actions.Any(one => one.Action.Kind == PotActionKind.HoldEnds && one.AtSeconds < outcome.TotalSeconds - 60);

    /// <summary>What is said after how the blanching is done.</summary>
    public string BlanchIn => BlanchPot.IsAnother(request) ? " In a pot on the hob, not in the crock." : "";

    /// <summary>Where the vegetables are sweated.</summary>
    public string SweatIn => IsSlow ? "In a pan on the hob, gently, without colour." : "In the pot, gently, without colour.";

    /// <summary>What is said after how the pot is filled.</summary>
    public string FillDetail => request.Pot.Kind switch
    {
        PotKind.SlowCooker => " Between half and three quarters full. Where its maker allows it, warm the crock with hot water first, or pour the liquid in hot.",
        PotKind.Kettle => " The draw-off valve is shut and its cap on.",
        _ => "",
    };

    /// <summary>Cautions of filling.</summary>
    /// <param name="full">Weight of the full pot.</param>
    public Caution[] FillCautions(Mass full) => request.Pot.Kind switch
    {
        PotKind.SlowCooker => [Cautions.SlowStart, Cautions.HeavyPot(full)],
        PotKind.Kettle => [Cautions.KettleValve],
        _ => [Cautions.HeavyPot(full)],
    };

    /// <summary>The heat goes on.</summary>
    public StepText HeatUp()
    {
        if (IsSlow)
        {
            return new($"Lid on, switch on: {Setting}", "Leave the lid on until it is done: each lift costs about 20 minutes of heat (common practice, no source).", Cautions.SlowCooker, Cautions.SlowWarmSetting);
        }

        string lid = IsKettle ? "Lid open" : "Lid off";
        string detail = request.HeatsUpCovered
            ? $"Lid {(IsKettle ? "down" : "on")}, full heat, until it begins to bubble; then lift the scum."
            : request.Recipe.Kind.IsSkimmed() ? $"{lid}, full heat, no stirring. Scum rises from about 80 °C (180 °F): lift it as it comes." : $"{lid}, full heat.";
        Caution[] cautions = IsKettle ? [Cautions.Unattended, Cautions.KettleLid] : [Cautions.Unattended];
        return new("Heat on", request.SimmersInOven ? $"{detail} Heat the oven to {OvenText} meanwhile, with the shelf low." : detail, cautions);
    }

    /// <summary>It simmers.</summary>
    /// <param name="title">As for a pot on the hob.</param>
    /// <param name="detail">As for a pot on the hob.</param>
    /// <param name="set">Temperature it is kept at.</param>
    /// <param name="warmsUp">True when a step before this says the cautions of the heat.</param>
    public StepText Simmer(string title, string detail, string set, bool warmsUp)
    {
        if (IsSlow)
        {
            return new($"Leave it on {Setting}", $"It stays just under the boil, about {set}. The lid stays on; nobody skims, tops up or looks in.", warmsUp ? [] : [Cautions.SlowCooker, Cautions.SlowWarmSetting]);
        }

        return new(title, request.SimmersInOven ? $"{detail} First on the hob, then in the oven." : detail, warmsUp ? [] : [Cautions.Unattended]);
    }

    /// <summary>Scum is lifted.</summary>
    public StepText Skim() => IsSlow
        ? new("Skim, once", "Now that it is done: tilt the lid away from you, then lift scum and fat from the edge.", Cautions.SlowLid)
        : new("Skim", "Lift scum and fat from the edge; do not stir.");

    /// <summary>Something goes in.</summary>
    public StepText Add(string what) => IsSlow
        ? new($"Add {what}", "Lid off, away from you, and on again at once: each lift costs about 20 minutes of heat (common practice, no source). No splash.", Cautions.SlowLid)
        : new($"Add {what}", "Lower it in gently: hot stock splashes.");

    /// <summary>Into the oven.</summary>
    /// <param name="full">Weight of the full pot.</param>
    public StepText HoldBegins(Mass full) => request.SimmersInOven
        ? new("Lid on, into the oven", $"At {OvenText}, shelf low; common practice, no source. Hob off. No checks while it is in.", Cautions.PotIntoOven(full), Cautions.NightHold)
        : new("Lid on, into a low oven or slow appliance", "About 95 °C (200 °F). No checks until morning.", Cautions.NightHold, Cautions.Straining);

    /// <summary>Out of the oven.</summary>
    /// <param name="full">Weight of the full pot.</param>
    public StepText HoldEnds(Mass full) => request.SimmersInOven
        ? new("Out of the oven", "With dry cloths on both handles, straight onto the hob. Leave a cloth over lid and handles: they stay as hot as the oven was. If time is left, simmer on with the lid as before.", Cautions.PotOutOfOven(full), Cautions.Straining, Cautions.Unattended)
        : new("Out of the oven", "Check the level. If time is left, back on the hob with the lid as before.", Cautions.Straining);

    /// <summary>It stands before straining.</summary>
    /// <param name="isHeatOff">True when the heat is off already.</param>
    public StepText Stand(bool isHeatOff) => IsSlow
        ? new("Switch off, pull the plug, let it stand", "Lid on, the crock in its shell. It settles, and scalds less.")
        : new(isHeatOff ? "Let it stand" : "Heat off, let it stand", "It settles, and scalds less.");

    /// <summary>It is strained.</summary>
    public StepText Strain() => request.Pot.Kind switch
    {
        PotKind.SlowCooker => new("Strain", "Ladle it out of the crock through a fine strainer; let it drip, do not press.", Cautions.HotCrock, Cautions.Straining),
        PotKind.Kettle => new("Drain and strain", "By the draw-off valve, through a strainer at its mouth, or tilt the kettle slowly over one; what the valve leaves is ladled. The solids come out last, with a scoop.", Cautions.KettleDraining, Cautions.Straining),
        _ => new("Strain", "Ladle through a fine strainer; let it drip, do not press.", Cautions.Straining),
    };
}
