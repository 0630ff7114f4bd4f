namespace Stockwright.Web.Features.Kitchen;

/// <summary>Where the planner gets the kitchen, larder and recipes of the cook.</summary>
public interface IKitchenSource
{
    /// <summary>Loads what the planner needs.</summary>
    ValueTask<PlanningInputs> LoadAsync(CancellationToken cancellationToken);
}
