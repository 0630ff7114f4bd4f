using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Physics;
using UnitsNet;

namespace Stockwright.Simmering;

/// <summary>How much less and more than the central figure a pot may lose (F.6): the spread of its surface and of its lid.</summary>
internal static class LossSpread
{
    /// <summary>Range of the lid by itself: of the leak of a locked one, of what gets past any other.</summary>
    public static (double Less, double More) Lid(PotEnvironment environment, LidPosition lid)
    {
        if (environment.IsSealed)
        {
            Stated<double> leak = environment.Assumptions.SealedLeak;
            return (leak.Low / leak.Value, leak.High / leak.Value);
        }

        Stated<Ratio> escape = LidEscape.Fraction(lid);
        return (escape.Low / escape.Value, escape.High / escape.Value);
    }

    /// <summary>What a lid that lets more or less past does to the loss.</summary>
    /// <param name="environment">Pot and lid.</param>
    /// <param name="factor">On what the lid lets past; never more than an open pot does.</param>
    /// <param name="film">Loss of the open surface over that of clean water.</param>
    public static double OfLid(PotEnvironment environment, double factor, double film)
    {
        double escape = environment.LidEscapeFraction;
        return environment.IsSealed ? factor : LidEscape.Past(Math.Min(1, factor * escape), film) / LidEscape.Past(escape, film);
    }

    /// <summary>Both together: surface and lid are independent, so the logarithms of what each does to the loss add in quadrature.</summary>
    public static (double Less, double More) Both(PotEnvironment environment, LidPosition lid, KitchenSite site)
    {
        (double less, double more) = Lid(environment, lid);
        if (environment.IsSealed)
        {
            return (less, more);
        }

        Stated<double> film = SurfaceFilm.For(site, environment.Assumptions);
        double central = LidEscape.Past(environment.LidEscapeFraction, film.Value);
        double OfFilm(double other) => LidEscape.Past(environment.LidEscapeFraction, other) / central;
        return (
            Math.Exp(-Quadrature(OfFilm(film.Low), OfLid(environment, less, film.Value))),
            Math.Exp(Quadrature(OfFilm(film.High), OfLid(environment, more, film.Value))));
    }

    private static double Quadrature(double one, double other) => Math.Sqrt((Math.Log(one) * Math.Log(one)) + (Math.Log(other) * Math.Log(other)));
}
