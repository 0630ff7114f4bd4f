namespace Stockwright.Tests.Physics.Conduction;

/// <summary>
/// Exact series for unsteady conduction with a film at the surface (Carslaw and Jaeger 1959;
/// Incropera, sections 5.5 to 5.7 [both from memory]): theta = (T - Ta)/(T0 - Ta), Bi = h L/k with L the half thickness or the radius.
/// </summary>
internal static class ExactConduction
{
    internal readonly record struct Theta(double Centre, double Surface, double Mean);

    internal static Theta Slab(double biot, double fourier) => Sum(SlabRoots(biot), fourier, z => 4 * Math.Sin(z) / ((2 * z) + Math.Sin(2 * z)), Math.Cos, z => Math.Sin(z) / z);

    internal static Theta Cylinder(double biot, double fourier) => Sum(
        CylinderRoots(biot),
        fourier,
        z => 2 / z * Bessel(1, z) / ((Bessel(0, z) * Bessel(0, z)) + (Bessel(1, z) * Bessel(1, z))),
        z => Bessel(0, z),
        z => 2 * Bessel(1, z) / z);

    internal static double SphereCentre(double biot, double fourier) => Sum(
        SphereRoots(biot), fourier, SphereCoefficient, z => Math.Sin(z) / z, z => 1).Centre;

    internal static (double Root, double Coefficient) SlabFirst(double biot)
    {
        double z = SlabRoots(biot).First();
        return (z, 4 * Math.Sin(z) / ((2 * z) + Math.Sin(2 * z)));
    }

    internal static (double Root, double Coefficient) CylinderFirst(double biot)
    {
        double z = CylinderRoots(biot).First();
        return (z, 2 / z * Bessel(1, z) / ((Bessel(0, z) * Bessel(0, z)) + (Bessel(1, z) * Bessel(1, z))));
    }

    internal static (double Root, double Coefficient) SphereFirst(double biot)
    {
        double z = SphereRoots(biot).First();
        return (z, SphereCoefficient(z));
    }

    /// <summary>erfc by Simpson's rule on the defining integral.</summary>
    internal static double Erfc(double x)
    {
        const int Pieces = 4000;
        double step = x / Pieces;
        double sum = 1 + Math.Exp(-x * x);
        for (int i = 1; i < Pieces; i++)
        {
            double t = i * step;
            sum += (i % 2 == 1 ? 4 : 2) * Math.Exp(-t * t);
        }

        return 1 - (2 / Math.Sqrt(Math.PI) * sum * step / 3);
    }

    /// <summary>Half space with a film: (T - Ti)/(Tinf - Ti).</summary>
    internal static double HalfSpace(double x, double film, double conductivity, double diffusivity, double seconds)
    {
        double root = Math.Sqrt(diffusivity * seconds);
        double a = film / conductivity;
        return Erfc(x / 2 / root) - (Math.Exp((a * x) + (a * a * diffusivity * seconds)) * Erfc((x / 2 / root) + (a * root)));
    }

    private static double SphereCoefficient(double z) => 4 * (Math.Sin(z) - (z * Math.Cos(z))) / ((2 * z) - Math.Sin(2 * z));

    private static Theta Sum(IEnumerable<double> roots, double fourier, Func<double, double> coefficient, Func<double, double> atSurface, Func<double, double> mean)
    {
        double centre = 0;
        double surface = 0;
        double average = 0;
        foreach (double z in roots)
        {
            double term = coefficient(z) * Math.Exp(-z * z * fourier);
            centre += term;
            surface += term * atSurface(z);
            average += term * mean(z);
            if (z * z * fourier > 60)
            {
                break;
            }
        }

        return new Theta(centre, surface, average);
    }

    private static IEnumerable<double> SlabRoots(double biot) =>
        Enumerable.Range(0, 400).Select(n => Root(z => (z * Math.Sin(z)) - (biot * Math.Cos(z)), n * Math.PI, (n * Math.PI) + (Math.PI / 2)));

    private static IEnumerable<double> SphereRoots(double biot) =>
        Enumerable.Range(0, 400).Select(n => Root(z => (z * Math.Cos(z)) - ((1 - biot) * Math.Sin(z)), (n * Math.PI) + 1e-9, ((n + 1) * Math.PI) - 1e-9));

    private static IEnumerable<double> CylinderRoots(double biot)
    {
        double F(double z) => (z * Bessel(1, z)) - (biot * Bessel(0, z));
        const double Step = 0.05;
        for (double z = 1e-9; z < 150; z += Step)
        {
            if (F(z) * F(z + Step) < 0)
            {
                yield return Root(F, z, z + Step);
            }
        }
    }

    private static double Root(Func<double, double> f, double low, double high)
    {
        double atLow = f(low);
        for (int i = 0; i < 200; i++)
        {
            double middle = (low + high) / 2;
            double at = f(middle);
            (low, high, atLow) = Math.Sign(at) == Math.Sign(atLow) ? (middle, high, at) : (low, middle, atLow);
        }

        return (low + high) / 2;
    }

    /// <summary>Bessel's integral by the trapezoidal rule, which converges faster than any power for a periodic function.</summary>
    private static double Bessel(int order, double x)
    {
        int pieces = 100 + (2 * (int)x);
        double sum = 0.5 * (1 + Math.Cos(order * Math.PI));
        for (int i = 1; i < pieces; i++)
        {
            double t = Math.PI * i / pieces;
            sum += Math.Cos((order * t) - (x * Math.Sin(t)));
        }

        return sum / pieces;
    }
}
