using Stockwright.Simmering;

namespace Stockwright.Planning;

/// <summary>What a plan was worked out with, kept so that a prediction can run the pot again without planning again.</summary>
/// <param name="Environment">Pot, hob and room.</param>
/// <param name="Script">What is done to the pot, nights included.</param>
/// <param name="Fitted">The load.</param>
/// <param name="Fitter">Works out the yield of a run.</param>
/// <param name="Central">The central run.</param>
internal sealed record PlanWorkings(PotEnvironment Environment, SimmerScript Script, FittedLoad Fitted, PotFitter Fitter, SimmerOutcome Central)
{
    /// <summary>What the log has taught about loss, heat and water; null for a plan that has met no pot yet.</summary>
    public PotBelief? Belief { get; init; }

    /// <summary>Runs the pot of a plan again, as it was settled.</summary>
    public static PlanWorkings Of(BatchPlan plan)
    {
        PlanRequest request = plan.Request with { Schedule = plan.Request.Schedule with { Night = plan.Night } };
        PotSize size = plan.Size;
        PotEnvironment environment = new(request.Pot, request.Heat, request.Lid, request.Site, Air.PressurePascals(request.Site), request.Assumptions);
        BatchLoad perLitre = BatchLoad.PerLitre(request);
        ScriptWriter writer = new(request, plan.Boiling.Reached, plan.Boiling.PlannedTime, plan.Boiling.BoilingPoint);
        SimmerForecaster forecaster = new(environment, request.Heat, request.Lid, request.Site);
        BatchLoad load = perLitre.Scaled(size.Load.CubicMeters * 1000);
        SimmerScript script = writer.Write(load, size.Water.Kilograms, size.HeldLine.Meters, size.Nights);
        SimmerOutcome central = forecaster.RunDrawn(script);
        FittedLoad fitted = new(size.Load.CubicMeters * 1000, load, size.Water.Kilograms, size.Line.Meters, central, size.CoverDecides)
        {
            HeldMetres = size.HeldLine.Meters,
            LetDownKilograms = size.LetDown.Kilograms,
        };
        return new PlanWorkings(environment, script, fitted, new PotFitter(request, writer, forecaster, perLitre) { Nights = size.Nights }, central);
    }
}
