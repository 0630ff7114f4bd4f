namespace Stockwright.Numerics;

/// <summary>
/// One Dormand-Prince step with its error and its interpolant (equations N.1, N.2 and N.5 in docs/equations-physics.md):
/// tableau of Dormand and Prince 1980; interpolant of Hairer, Norsett and Wanner 1993, II.6. Every combination of slopes keeps linear invariants to rounding.
/// </summary>
internal sealed class DormandPrinceStep<TSystem>
    where TSystem : IOdeSystem
{
    private readonly int dimension;
    private readonly double[] k2;
    private readonly double[] k3;
    private readonly double[] k4;
    private readonly double[] k5;
    private readonly double[] k6;
    private readonly double[] probe;
    private double[] state;
    private double[] trial;
    private double[] k1;
    private double[] k7;
#pragma warning disable IDE0044 // A struct system is called in place; a readonly field would copy it at every call.
    private TSystem system;
#pragma warning restore IDE0044

    internal DormandPrinceStep(TSystem system)
    {
        this.system = system;
        dimension = system.Dimension;
        state = new double[dimension];
        trial = new double[dimension];
        k1 = new double[dimension];
        k2 = new double[dimension];
        k3 = new double[dimension];
        k4 = new double[dimension];
        k5 = new double[dimension];
        k6 = new double[dimension];
        k7 = new double[dimension];
        probe = new double[dimension];
    }

    internal int Dimension => dimension;

    /// <summary>State at the start of the step.</summary>
    internal ReadOnlySpan<double> State => state;

    /// <summary>State at the end of the last step tried.</summary>
    internal ReadOnlySpan<double> Trial => trial;

    internal int Evaluations { get; private set; }

    /// <summary>Begins anew at a state.</summary>
    internal void Start(double time, ReadOnlySpan<double> at)
    {
        at.CopyTo(state);
        Evaluations = 0;
        Slope(time, state, k1);
    }

    /// <summary>Tries a step from the current state; the current state stays.</summary>
    internal void Try(double t, double h)
    {
        // Spans of one length in locals: the compiler then drops most bounds checks.
        ReadOnlySpan<double> y = state;
        ReadOnlySpan<double> a = k1.AsSpan(0, y.Length);
        ReadOnlySpan<double> b = k2.AsSpan(0, y.Length);
        ReadOnlySpan<double> c = k3.AsSpan(0, y.Length);
        ReadOnlySpan<double> d = k4.AsSpan(0, y.Length);
        ReadOnlySpan<double> e = k5.AsSpan(0, y.Length);
        ReadOnlySpan<double> f = k6.AsSpan(0, y.Length);
        Span<double> w = probe.AsSpan(0, y.Length);
        for (int i = 0; i < y.Length; i++)
        {
            w[i] = y[i] + (h * (1d / 5 * a[i]));
        }

        Slope(t + (h / 5), w, k2);
        for (int i = 0; i < y.Length; i++)
        {
            w[i] = y[i] + (h * ((3d / 40 * a[i]) + (9d / 40 * b[i])));
        }

        Slope(t + (3 * h / 10), w, k3);
        for (int i = 0; i < y.Length; i++)
        {
            w[i] = y[i] + (h * ((44d / 45 * a[i]) - (56d / 15 * b[i]) + (32d / 9 * c[i])));
        }

        Slope(t + (4 * h / 5), w, k4);
        for (int i = 0; i < y.Length; i++)
        {
            w[i] = y[i] + (h * ((19372d / 6561 * a[i]) - (25360d / 2187 * b[i]) + (64448d / 6561 * c[i]) - (212d / 729 * d[i])));
        }

        Slope(t + (8 * h / 9), w, k5);
        for (int i = 0; i < y.Length; i++)
        {
            w[i] = y[i] + (h * ((9017d / 3168 * a[i]) - (355d / 33 * b[i]) + (46732d / 5247 * c[i]) + (49d / 176 * d[i]) - (5103d / 18656 * e[i])));
        }

        Slope(t + h, w, k6);
        Span<double> next = trial.AsSpan(0, y.Length);
        for (int i = 0; i < y.Length; i++)
        {
            next[i] = y[i] + (h * ((35d / 384 * a[i]) + (500d / 1113 * c[i]) + (125d / 192 * d[i]) - (2187d / 6784 * e[i]) + (11d / 84 * f[i])));
        }

        Slope(t + h, next, k7);
    }

    /// <summary>Root mean square of the local error over its tolerance (N.2); at most one means acceptable.</summary>
    internal double ErrorNorm(double h, OdeOptions options)
    {
        double sum = 0;
        for (int i = 0; i < dimension; i++)
        {
            double error = h * ((71d / 57600 * k1[i]) - (71d / 16695 * k3[i]) + (71d / 1920 * k4[i])
                - (17253d / 339200 * k5[i]) + (22d / 525 * k6[i]) - (1d / 40 * k7[i]));
            double part = error == 0 ? 0 : error / Scale(options, i, Math.Max(Math.Abs(state[i]), Math.Abs(trial[i])));
            sum += part * part;
        }

        return Math.Sqrt(sum / dimension);
    }

    /// <summary>Writes the five coefficients of the quartic over the step just tried (N.5).</summary>
    internal void WriteDense(double h, Span<double> coefficients)
    {
        for (int i = 0; i < dimension; i++)
        {
            double rise = trial[i] - state[i];
            double bend = (h * k1[i]) - rise;
            coefficients[i] = state[i];
            coefficients[dimension + i] = rise;
            coefficients[(2 * dimension) + i] = bend;
            coefficients[(3 * dimension) + i] = rise - (h * k7[i]) - bend;
            coefficients[(4 * dimension) + i] = h * (
                (-12715105075d / 11282082432 * k1[i])
                + (87487479700d / 32700410799 * k3[i])
                - (10690763975d / 1880347072 * k4[i])
                + (701980252875d / 199316789632 * k5[i])
                - (1453857185d / 822651844 * k6[i])
                + (69997945d / 29380423 * k7[i]));
        }
    }

    /// <summary>Makes the step tried the current state; its last slope is the first of the next.</summary>
    internal void Accept()
    {
        (state, trial) = (trial, state);
        (k1, k7) = (k7, k1);
    }

    /// <summary>A first step that moves the state by about a hundredth of its tolerance scale (Hairer et al., II.4).</summary>
    internal double InitialStep(double t, double span, OdeOptions options)
    {
        (double size, double speed) = (0, 0);
        for (int i = 0; i < dimension; i++)
        {
            double scale = Scale(options, i, Math.Abs(state[i]));
            size += Square(state[i], scale);
            speed += Square(k1[i], scale);
        }

        size = Math.Sqrt(size / dimension);
        speed = Math.Sqrt(speed / dimension);
        double guess = size < 1e-5 || speed < 1e-5 ? 1e-6 : 0.01 * size / speed;
        guess = Math.Min(guess, span);
        for (int i = 0; i < dimension; i++)
        {
            probe[i] = state[i] + (guess * k1[i]);
        }

        Slope(t + guess, probe, k2);
        double curvature = 0;
        for (int i = 0; i < dimension; i++)
        {
            curvature += Square(k2[i] - k1[i], Scale(options, i, Math.Abs(state[i])));
        }

        curvature = Math.Sqrt(curvature / dimension) / guess;
        double steepest = Math.Max(speed, curvature);
        double second = steepest <= 1e-15 ? Math.Max(1e-6, guess * 1e-3) : Math.Pow(0.01 / steepest, 1d / 5);
        double step = Math.Min(100 * guess, second);
        return double.IsFinite(step) && step > 0 ? Math.Min(step, span) : Math.Min(1e-6, span);
    }

    private static double Square(double value, double scale)
    {
        double part = value == 0 ? 0 : value / scale;
        return part * part;
    }

    private static double Scale(OdeOptions options, int i, double size) =>
        (options.AbsoluteTolerances is { } each ? each[i] : options.AbsoluteTolerance) + (options.RelativeTolerance * size);

    private void Slope(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        Evaluations++;
        system.Derivatives(t, y, dydt);
    }
}
