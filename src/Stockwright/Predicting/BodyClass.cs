namespace Stockwright.Predicting;

/// <summary>How a stock stands in the fridge, from water to glaze.</summary>
public enum BodyClass
{
    /// <summary>Liquid.</summary>
    Watery,

    /// <summary>Slips, no set.</summary>
    Syrupy,

    /// <summary>Just set.</summary>
    Trembling,

    /// <summary>Spoonable.</summary>
    SoftJelly,

    /// <summary>Turns out.</summary>
    FirmJelly,

    /// <summary>Cuts clean.</summary>
    VeryFirm,

    /// <summary>Stiff.</summary>
    DemiGlace,

    /// <summary>Leather.</summary>
    Glace,
}

/// <summary>
/// Words and bounds of the body classes (B.11). The bounds are estimates anchored at 1 % (fragile), 3 % (dessert jelly), 10 to
/// 15 % (demi-glace) and 25 % (glace) of McGee 2004.
/// </summary>
public static class BodyClasses
{
    /// <summary>Gelatin that runs thick without setting (estimate: several times the syrupy bound).</summary>
    private const double ThickPercent = 3;

    private static readonly (double Percent, string Name, string Look, string Feel)[] Rows =
    [
        (0, "watery", "liquid", "thin"),
        (0.5, "syrupy", "slips, no set", "light"),
        (0.9, "trembling", "just set, breaks when poured", "some body"),
        (1.6, "soft jelly", "spoonable, holds the mark of the spoon", "good stock"),
        (2.8, "firm jelly", "turns out, can be sliced", "sticks to the lips"),
        (5, "very firm", "rubbery, cuts clean", "coats the spoon"),
        (10, "demi-glace", "stiff", "coats and clings"),
        (18, "glace", "leather or toffee, keeps", "syrup"),
    ];

    /// <summary>The class of an effective concentration, as it stands after a night in the fridge.</summary>
    /// <param name="effectivePercent">Effective concentration, per cent by mass; zero or more.</param>
    public static BodyClass Of(double effectivePercent)
    {
        int index = 0;
        while (index < Rows.Length - 1 && effectivePercent >= Rows[index + 1].Percent)
        {
            index++;
        }

        return (BodyClass)index;
    }

    /// <summary>
    /// The class of a stock: by its set, and no lower than syrupy where so much gelatin is dissolved that it runs thick, though long or hot cooking
    /// has left it too short to set.
    /// </summary>
    /// <param name="effectivePercent">Effective concentration, per cent by mass; zero or more.</param>
    /// <param name="gelatinPercent">All dissolved gelatin, whatever is left of its strength, per cent by mass.</param>
    internal static BodyClass Of(double effectivePercent, double gelatinPercent)
    {
        BodyClass set = Of(effectivePercent);
        return set == BodyClass.Watery && gelatinPercent >= ThickPercent ? BodyClass.Syrupy : set;
    }

    /// <summary>Lowest effective concentration of a class, per cent by mass.</summary>
    public static double LeastPercent(BodyClass body) => Rows[(int)body].Percent;

    /// <summary>The class in words.</summary>
    public static string Name(BodyClass body) => Rows[(int)body].Name;

    /// <summary>What it looks like cold.</summary>
    public static string Look(BodyClass body) => Rows[(int)body].Look;

    /// <summary>How it feels warm.</summary>
    public static string Feel(BodyClass body) => Rows[(int)body].Feel;
}
