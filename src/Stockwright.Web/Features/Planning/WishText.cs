using System.Globalization;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Planning;

/// <summary>How a wish that does not fit at once is met, as a cook reads it.</summary>
internal static class WishText
{
    /// <summary>What a plan does about it.</summary>
    public static string Head(BatchPlan plan) => plan.Fit switch
    {
        { Potfuls: > 1 } => $"It takes {plan.Fit.Potfuls} potfuls: {Rounds(plan.Fit)}",
        { LetDown.CubicMeters: > 0 } => "One batch with less water, let down after straining",
        _ => "One batch with less water: a stronger stock",
    };

    /// <summary>The way by its name.</summary>
    public static string Name(WishWay way) => way.Way switch
    {
        SplitWay.LetDown => "Stronger, and let down with water",
        SplitWay.Stronger => "Stronger, and less of it",
        _ => char.ToUpperInvariant(Rounds(way.Plan.Fit)[0]) + Rounds(way.Plan.Fit)[1..],
    };

    /// <summary>Rounds and pots: <c>2 rounds, 2 pots side by side and 1 in the last</c>.</summary>
    public static string Rounds(FitReport fit) => (fit.AtOnce, fit.Rounds) switch
    {
        (1, var rounds) => string.Create(CultureInfo.InvariantCulture, $"{rounds} rounds, one after the other"),
        (var pots, 1) => string.Create(CultureInfo.InvariantCulture, $"{pots} pots side by side"),
        var (pots, rounds) when fit.Potfuls % pots == 0 => string.Create(CultureInfo.InvariantCulture, $"{rounds} rounds of {pots} pots side by side"),
        var (pots, rounds) => string.Create(CultureInfo.InvariantCulture, $"{rounds} rounds, {pots} pots side by side and {fit.PotsInRound(rounds - 1)} in the last"),
    };

    /// <summary>Volume and body: <c>4.2 L, soft jelly.</c></summary>
    public static string Gives(WishWay way, PlanView view)
    {
        string body = Body(way, view);
        return $"{KitchenFormat.Text(way.Plan.Total.Central, view.Units)}{(body.Length > 0 ? ", " + char.ToLowerInvariant(body[0]) + body[1..] : "")}.";
    }

    /// <summary>Likely body: as the page has it for its own plan, by the middle figures for the others.</summary>
    public static string Body(WishWay way, PlanView view)
    {
        if (view.Outlook is not { HasGelatin: true } outlook)
        {
            return "";
        }

        return BodyText.Head(ReferenceEquals(way.Plan, view.Plan) ? outlook.Likely.Class : Predictor.Predict(way.Plan, outlook.Central.Settings).Body.Class);
    }

    /// <summary>The volume in more words: potfuls, or what it is let down with.</summary>
    public static string More(BatchPlan plan, UnitSystem units)
    {
        string each = $"likely {KitchenFormat.Band(plan.Yield, units)}";
        return plan.Fit switch
        {
            { Potfuls: > 1 } => $"{Rounds(plan.Fit)}; each {each}",
            { LetDown.CubicMeters: > 0 } => $"{KitchenFormat.Text(plan.Yield.Central - plan.Fit.LetDown, units)} strong, let down with {KitchenFormat.Text(plan.Fit.LetDown, units)} of water; {each}",
            _ => each,
        };
    }
}
