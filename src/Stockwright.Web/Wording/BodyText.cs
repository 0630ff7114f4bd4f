using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Measures;
using Stockwright.Predicting;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Wording;

/// <summary>Body, chances and strengths as a cook reads them.</summary>
internal static class BodyText
{
    /// <summary>Classes of body with their words in links and forms.</summary>
    public static readonly IReadOnlyList<FieldWord<BodyClass>> Bodies =
        [.. Enum.GetValues<BodyClass>().Select(body => new FieldWord<BodyClass>(BodyClasses.Name(body).Replace(' ', '-'), body, $"{BodyClasses.Name(body)}: {BodyClasses.Look(body)}"))];

    /// <summary>A chance in tenths: <c>7 in 10</c>; beyond nine and a half and below a half in words.</summary>
    public static string Chance(Ratio chance)
    {
        double tenths = chance.DecimalFractions * 10;
        return tenths switch
        {
            >= 9.95 => "as good as certain",
            >= 9.5 => "more than 9 in 10",
            < 0.5 => "less than 1 in 10",
            _ => string.Create(CultureInfo.InvariantCulture, $"{Math.Round(tenths, MidpointRounding.AwayFromZero):0} in 10"),
        };
    }

    /// <summary>The class with a capital, for the head of a line.</summary>
    public static string Head(BodyClass body)
    {
        string name = BodyClasses.Name(body);
        return char.ToUpperInvariant(name[0]) + name[1..];
    }

    /// <summary>One sentence: <c>Sets to a firm jelly, 7 in 10</c>.</summary>
    public static string Sentence(BodyChance likely) => likely.Class switch
    {
        BodyClass.Watery or BodyClass.Syrupy => $"Stays {BodyClasses.Name(likely.Class)}, {Chance(likely.Chance)}",
        BodyClass.Trembling => $"Just sets, trembling, {Chance(likely.Chance)}",
        BodyClass.VeryFirm => $"Sets very firm, {Chance(likely.Chance)}",
        _ => $"Sets to a {BodyClasses.Name(likely.Class)}, {Chance(likely.Chance)}",
    };

    /// <summary>The other classes worth naming, softer first: <c>trembling 2 in 10, firm jelly 1 in 10</c>.</summary>
    public static string Others(PredictionSample sample) => string.Join(", ", sample.Body
        .Where(entry => entry.Class != sample.MostLikely && entry.Chance.DecimalFractions >= 0.05)
        .Select(entry => $"{BodyClasses.Name(entry.Class)} {Chance(entry.Chance)}"));

    /// <summary>A share of the stock with its range in words.</summary>
    public static string Likely(Band<Ratio> band)
    {
        string low = KitchenFormat.Text(band.Low);
        string high = KitchenFormat.Text(band.High);
        return string.Equals(low, high, StringComparison.Ordinal) ? "" : $"likely {KitchenFormat.Band(band)}";
    }

    /// <summary>A plain number with at most two significant decimals.</summary>
    public static string Number(double value, string format = "0.0") => value.ToString(format, CultureInfo.InvariantCulture);

    /// <summary>How fat is taken off.</summary>
    public static string Of(DefatMethod method) => method switch
    {
        DefatMethod.Ladle => "ladled off hot",
        DefatMethod.Jug => "poured off in a separating jug",
        DefatMethod.Chill => "chilled and lifted off",
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "Unknown way of taking off fat."),
    };
}
