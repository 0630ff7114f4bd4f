using UnitsNet;

namespace Stockwright.Planning;

/// <summary>How much to make: one of three ways to ask.</summary>
public abstract record PlanGoal
{
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
public sealed record BonesAtHand(string IngredientId, Mass Mass);
