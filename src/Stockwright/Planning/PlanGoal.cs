using UnitsNet;

namespace Stockwright.Planning;

/// <summary>How much to make: one of three ways to ask.</summary>
public abstract record PlanGoal
{
    /// <summary>Least and most stock asked for at once: a few spoons to a tank.</summary>
    public static readonly (Volume Least, Volume Most) YieldRange = (Volume.FromLiters(0.1), Volume.FromLiters(2000));

    /// <summary>Smallest and largest portion a batch is counted in.</summary>
    public static readonly (Volume Least, Volume Most) PortionRange = (Volume.FromMilliliters(20), Volume.FromLiters(5));

    /// <summary>Fewest and most portions.</summary>
    public static readonly (int Least, int Most) PortionCountRange = (1, 10_000);

    private PlanGoal()
    {
    }

    /// <summary>As much as this pot safely holds.</summary>
    public sealed record FillPot : PlanGoal;

    /// <summary>So much strained stock.</summary>
    /// <param name="Yield">Strained, defatted stock wanted, measured cold.</param>
    /// <param name="PortionSize">Portion size, when the cook asked in portions.</param>
    public sealed record MakeVolume(Volume Yield, Volume? PortionSize = null) : PlanGoal;

    /// <summary>Whatever these bones will make at the recipe's strength.</summary>
    /// <param name="Bones">Raw mass of each cut at hand; replaces the bones of the recipe.</param>
    public sealed record UseBones(IReadOnlyList<BonesAtHand> Bones) : PlanGoal;
}

/// <summary>So much of one cut.</summary>
/// <param name="IngredientId">Stable name of the ingredient.</param>
/// <param name="Mass">Raw mass.</param>
public sealed record BonesAtHand(string IngredientId, Mass Mass)
{
    /// <summary>Least and most of one cut accepted.</summary>
    public static readonly (Mass Least, Mass Most) MassRange = (Mass.FromGrams(10), Mass.FromKilograms(2000));
}
