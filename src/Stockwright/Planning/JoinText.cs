using Stockwright.Measures;
using Stockwright.Recipes;

namespace Stockwright.Planning;

/// <summary>When a line goes in, told from the moment its recipe counts from.</summary>
public static class JoinText
{
    private static readonly TimeSpan AtOnce = TimeSpan.FromMinutes(1);

    private static readonly string[] Ordinals = ["first", "second", "third", "fourth", "fifth", "sixth"];

    /// <summary>For instance <c>in 1 h after it simmers</c>, <c>in 1 h before the end</c>, <c>in at the start of the second stage</c>; empty for what goes in with the water.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="line">One of its lines.</param>
    public static string Of(BatchPlan plan, AmountLine line)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(line);
        return line.Line.Joins switch
        {
            JoinMoment.WithStage when line.Line.Stage > 0 => $"in at the start of the {Ordinal(line.Line.Stage)} stage",
            JoinMoment.AfterFirstSkim or JoinMoment.BeforeEnd when plan.Request.IsUnderPressure && !PressureStages.IsLate(line.Line, plan.Boiling.PlannedTime.TotalSeconds)
                => "in before the lid is locked",
            JoinMoment.AfterFirstSkim => AfterSimmer(plan, line),
            JoinMoment.BeforeEnd => BeforeEnd(plan, line),
            _ => "",
        };
    }

    private static string AfterSimmer(BatchPlan plan, AmountLine line)
    {
        // What only dissolves has no moment of its own in the forecast.
        if (line.JoinsAt == TimeSpan.Zero)
        {
            return "in after the first skim";
        }

        string does = HeatText.Of(plan.Request.Recipe).Does;
        TimeSpan after = line.JoinsAt - MainBegins(plan);
        return after < AtOnce ? $"in as soon as it {does}" : $"in {KitchenFormat.Text(after)} after it {does}";
    }

    private static string BeforeEnd(BatchPlan plan, AmountLine line)
    {
        if (line.JoinsAt == TimeSpan.Zero)
        {
            return line.Line.BeforeEnd is { } stated ? $"in {KitchenFormat.Text(stated)} before the end" : "";
        }

        return !plan.Request.IsUnderPressure && line.JoinsAt - MainBegins(plan) < AtOnce
            ? $"in as soon as it {HeatText.Of(plan.Request.Recipe).Does}"
            : $"in {KitchenFormat.Text(plan.Simmer.Length - line.JoinsAt)} before the end";
    }

    /// <summary>When the main stage begins, since the heat went on.</summary>
    private static TimeSpan MainBegins(BatchPlan plan) => plan.Request.Recipe.MainStage == 0
        ? plan.HeatUp.Time.Central
        : plan.Simmer.Length - plan.Boiling.PlannedTime - TimeSpan.FromTicks(plan.Request.Recipe.Stages.Skip(plan.Request.Recipe.MainStage + 1).Sum(stage => stage.Time.Ticks));

    private static string Ordinal(int stage) => stage < Ordinals.Length ? Ordinals[stage] : "next";
}
