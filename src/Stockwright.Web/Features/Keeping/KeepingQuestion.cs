using Stockwright.Keeping;
using UnitsNet;

namespace Stockwright.Web.Features.Keeping;

/// <summary>What the keeping page was asked.</summary>
/// <param name="Made">Day of making.</param>
/// <param name="Frozen">Day it went into the freezer and came out; null when it never was.</param>
/// <param name="Portion">The portion as it lies in the freezer.</param>
/// <param name="Volume">How much is in it.</param>
/// <param name="From">Temperature it goes into the freezer with.</param>
/// <param name="Freezer">Air of the freezer.</param>
/// <param name="Fridge">Air of the fridge it thaws in.</param>
/// <param name="Tap">Water it thaws in.</param>
/// <param name="Altitude">Of the kitchen, or as typed.</param>
public sealed record KeepingQuestion(
    DateOnly Made, FrozenSpell? Frozen, FrozenPortion Portion, Volume Volume, Temperature From, Temperature Freezer, Temperature Fridge, Temperature Tap, Length Altitude);

/// <summary>What freezing and thawing take; null for what takes longer than <see cref="FreezingTime.Longest"/>.</summary>
/// <param name="Freeze">To 10 °C below zero at the centre, or what the freezer allows.</param>
/// <param name="Centre">That temperature.</param>
/// <param name="ThawInFridge">Until nothing is frozen, in the fridge.</param>
/// <param name="ThawInWater">The same in cold tap water.</param>
public sealed record FreezingAnswer(FreezingEstimate? Freeze, Temperature Centre, FreezingEstimate? ThawInFridge, FreezingEstimate? ThawInWater);
