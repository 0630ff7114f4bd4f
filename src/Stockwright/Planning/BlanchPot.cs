using Stockwright.Kitchen;
using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>What bones are blanched in: the pot itself, or for a slow cooker a pot on the hob, as its heater takes hours to bring water to the boil.</summary>
internal static class BlanchPot
{
    public static bool IsAnother(PlanRequest request) => request.Pot.Kind == PotKind.SlowCooker;

    /// <summary>The forecaster for the blanching water; a pot on the hob is taken to be as large as the crock.</summary>
    public static SimmerForecaster Forecaster(PlanRequest request, SimmerForecaster own) => IsAnother(request)
        ? new(
            new PotEnvironment(Pot.Straight("blanch", "Pot", request.Pot.BrimDiameter, request.Pot.InnerHeight), request.Hob, LidPosition.Off, request.Site, Air.PressurePascals(request.Site), request.Assumptions),
            request.Hob,
            LidPosition.Off,
            request.Site)
        : own;
}
