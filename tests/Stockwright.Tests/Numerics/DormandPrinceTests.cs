using CsCheck;
using Stockwright.Numerics;
using Stockwright.Tests.Physics;
using Xunit;

namespace Stockwright.Tests.Numerics;

public class DormandPrinceTests
{
    // Harmonic oscillator, exact: cos t, -sin t. A method of order 5 gains a factor 32 when the step is halved
    // (Hairer, Norsett and Wanner 1993, II.3).
    [Fact]
    public void Global_error_falls_with_the_fifth_power_of_the_step()
    {
        double[] errors = [.. new[] { 0.2, 0.1, 0.05, 0.025 }.Select(h => FixedError(h))];
        for (int i = 1; i < errors.Length; i++)
        {
            Assert.InRange(Math.Log2(errors[i - 1] / errors[i]), 4.8, 5.3);
        }
    }

    // y' = -2 t y from 1, exact exp(-t^2): the times of the stages matter as well.
    [Fact]
    public void Order_holds_when_the_right_hand_side_depends_on_time()
    {
        double[] errors = [.. new[] { 0.2, 0.1, 0.05 }.Select(h =>
            Math.Abs(DormandPrince.Integrate(new Bell(), 0, [1], 2, new OdeOptions { FixedStep = h }).FinalState[0] - Math.Exp(-4)))];
        Assert.InRange(Math.Log2(errors[0] / errors[1]), 4.5, 6.5);
        Assert.InRange(Math.Log2(errors[1] / errors[2]), 4.5, 6.5);
    }

    // The quartic of Hairer, Norsett and Wanner 1993, II.6, has order 4: the error between steps falls at least with the fourth power.
    [Fact]
    public void Dense_output_is_of_fourth_order()
    {
        double[] errors = [.. new[] { 0.4, 0.2, 0.1, 0.05 }.Select(DenseError)];
        for (int i = 1; i < errors.Length; i++)
        {
            Assert.InRange(Math.Log2(errors[i - 1] / errors[i]), 3.8, 5.5);
        }
    }

    // Exact solution exp(-t): the global error follows the tolerance.
    [Theory]
    [InlineData(1e-4)]
    [InlineData(1e-7)]
    [InlineData(1e-10)]
    public void Adaptive_error_follows_the_tolerance(double tolerance)
    {
        OdeSolution solution = DormandPrince.Integrate(new Oscillator(), 0, [1, 0], 20, new OdeOptions { RelativeTolerance = tolerance, AbsoluteTolerance = tolerance });
        double error = Math.Max(Math.Abs(solution.FinalState[0] - Math.Cos(20)), Math.Abs(solution.FinalState[1] + Math.Sin(20)));
        Assert.InRange(error, 0, 60 * tolerance);
        Assert.Equal(20, solution.EndTime);
    }

    // Hairer, Norsett and Wanner 1993, I.16 and II.0: the Arenstorf orbit, period 17.0652165601579625588917206249; it closes.
    [Fact]
    public void Arenstorf_orbit_closes()
    {
        double[] start = [0.994, 0, 0, -2.00158510637908252240537862224];
        OdeSolution solution = DormandPrince.Integrate(
            new Arenstorf(), 0, start, 17.0652165601579625588917206249, new OdeOptions { RelativeTolerance = 1e-12, AbsoluteTolerance = 1e-12 });
        Close.To(0.994, solution.FinalState[0], 1e-4);
        Close.To(0, solution.FinalState[1], 1e-4);
        Assert.True(solution.Statistics.Rejected > 0);
    }

    [Fact]
    public void Dense_output_meets_every_end_and_the_solution_between()
    {
        OdeSolution solution = DormandPrince.Integrate(new Oscillator(), 0, [1, 0], 10, new OdeOptions { RelativeTolerance = 1e-9, AbsoluteTolerance = 1e-9 });
        for (double t = 0; t <= 10; t += 0.013)
        {
            double[] state = solution.StateAt(t);
            Close.To(Math.Cos(t), state[0], 2e-7);
            Close.To(-Math.Sin(t), state[1], 2e-7);
            Assert.Equal(state[1], solution.ComponentAt(t, 1));
        }

        Assert.Equal([1, 0], solution.StateAt(0));
        Assert.Equal(solution.FinalState.ToArray(), solution.StateAt(10));
        Assert.Throws<ArgumentOutOfRangeException>(() => solution.StateAt(10.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => solution.ComponentAt(1, 2));
    }

    // cos t crosses zero at pi/2, 3 pi/2, ...: exact.
    [Fact]
    public void Events_are_found_in_order_and_to_their_tolerance()
    {
        OdeOptions options = new() { RelativeTolerance = 1e-11, AbsoluteTolerance = 1e-11, EventTolerance = 1e-9 };
        OdeSolution solution = DormandPrince.Integrate(
            new Oscillator(), 0, [1, 0], 12, options,
            new OdeEvent("falling", (_, y) => y[0], EventDirection.Falling, IsTerminal: false),
            new OdeEvent("rising", (_, y) => y[0], EventDirection.Rising, IsTerminal: false),
            new OdeEvent("stop", (t, _) => t - 11.5));
        Assert.Equal(["falling", "rising", "falling", "rising", "stop"], solution.Events.Select(e => e.Name), StringComparer.Ordinal);
        for (int i = 0; i < 4; i++)
        {
            Close.To(Math.PI * (i + 0.5), solution.Events[i].Time, 3e-8);
        }

        Assert.Equal("stop", solution.TerminatedBy?.Name);
        Close.To(11.5, solution.EndTime, 1e-9);
        Close.To(Math.Cos(11.5), solution.FinalState[0], 1e-8);
    }

    // A terminal event is met by a true step: the end state is as good as the integration, and lies at or past the zero.
    [Fact]
    public void Terminal_event_ends_at_or_just_past_the_zero()
    {
        OdeOptions options = new() { RelativeTolerance = 1e-12, AbsoluteTolerance = 1e-12, EventTolerance = 1e-10 };
        for (double level = 0.95; level > -0.95; level -= 0.1)
        {
            double watched = level;
            OdeEvent crossing = new("level", (_, y) => y[0] - watched, EventDirection.Falling);
            OdeSolution solution = DormandPrince.Integrate(new Oscillator(), 0, [1, 0], 5, options, crossing);
            Close.To(Math.Acos(level), solution.EndTime, 1e-9);
            Assert.True(solution.FinalState[0] - watched <= 0);

            // Carrying on with the same watch does not meet the same crossing again.
            OdeSolution more = DormandPrince.Integrate(new Oscillator(), solution.EndTime, solution.FinalState, solution.EndTime + 1, options, crossing);
            Assert.Null(more.TerminatedBy);
        }
    }

    [Fact]
    public void The_first_of_several_terminal_events_wins()
    {
        OdeOptions options = new() { FixedStep = 1 };
        OdeSolution solution = DormandPrince.Integrate(
            new Oscillator(), 0, [1, 0], 1, options,
            new OdeEvent("late", (t, _) => t - 0.8),
            new OdeEvent("early", (t, _) => t - 0.3),
            new OdeEvent("passed", (t, _) => t - 0.1, IsTerminal: false),
            new OdeEvent("never", (t, _) => t - 0.5, IsTerminal: false));
        OdeSolution reversed = DormandPrince.Integrate(
            new Oscillator(), 0, [1, 0], 1, options, new OdeEvent("early", (t, _) => t - 0.3), new OdeEvent("late", (t, _) => t - 0.8));
        Assert.Equal("early", reversed.TerminatedBy?.Name);
        Assert.Equal(["passed", "early"], solution.Events.Select(e => e.Name), StringComparer.Ordinal);
        Close.To(0.3, solution.EndTime, 2e-7);
    }

    [Fact]
    public void An_event_that_starts_at_zero_does_not_fire_at_once()
    {
        OdeSolution solution = DormandPrince.Integrate(
            new Oscillator(), 0, [1, 0], 4, new OdeOptions { RelativeTolerance = 1e-9, AbsoluteTolerance = 1e-9 }, new OdeEvent("sine", (_, y) => y[1]));
        Close.To(Math.PI, solution.EndTime, 1e-6);
    }

    // Chains of exchanges conserve their total: a linear invariant, kept by every Runge-Kutta method (Hairer, Lubich and
    // Wanner, Geometric Numerical Integration, IV.1).
    [Fact]
    public void Linear_invariants_are_kept_to_rounding() =>
        Gen.Select(Gen.Double[0.01, 5], Gen.Double[0.01, 5], Gen.Double[0.01, 5], Gen.Double[0.1, 10]).Sample(x =>
        {
            OdeSolution solution = DormandPrince.Integrate(
                new Exchange(x.Item1, x.Item2, x.Item3), 0, [x.Item4, 1, 0], 10, new OdeOptions { RelativeTolerance = 1e-4, AbsoluteTolerance = 1e-4 });
            double total = x.Item4 + 1;
            foreach (double t in new[] { 0.3, 2.7, 9.1, 10 })
            {
                Close.Relative(total, solution.StateAt(t).Sum(), 1e-12);
            }
        });

    [Fact]
    public void Tolerances_one_by_one_are_respected()
    {
        OdeOptions loose = new() { RelativeTolerance = 1e-14, AbsoluteTolerances = [1e-2, 1e-2] };
        OdeOptions tight = new() { RelativeTolerance = 1e-14, AbsoluteTolerances = [1e-2, 1e-9] };
        int few = DormandPrince.Integrate(new Oscillator(), 0, [1, 0], 10, loose).Statistics.Accepted;
        int many = DormandPrince.Integrate(new Oscillator(), 0, [1, 0], 10, tight).Statistics.Accepted;
        Assert.True(many > 5 * few);
    }

    [Fact]
    public void Statistics_count_the_evaluations()
    {
        CountingSystem system = new();
        OdeSolution solution = DormandPrince.Integrate(system, 0, [1], 5, OdeOptions.Default);
        Assert.Equal(system.Calls, solution.Statistics.Evaluations);
        Assert.Equal(2 + (6 * (solution.Statistics.Accepted + solution.Statistics.Rejected)), system.Calls);
    }

    [Fact]
    public void Without_dense_output_the_ends_remain()
    {
        OdeSolution solution = DormandPrince.Integrate(
            new Oscillator(), 0, [1, 0], 4, new OdeOptions { KeepDenseOutput = false }, new OdeEvent("zero", (_, y) => y[0], IsTerminal: false));
        Close.To(Math.PI / 2, Assert.Single(solution.Events).Time, 1e-4);
        Assert.Equal(solution.FinalState.ToArray(), solution.StateAt(4));
        Assert.Throws<InvalidOperationException>(() => solution.StateAt(2));
    }

    [Fact]
    public void An_empty_span_returns_the_start()
    {
        OdeSolution solution = DormandPrince.Integrate(new Oscillator(), 3, [1, 0], 3, OdeOptions.Default);
        Assert.Equal([1, 0], solution.FinalState.ToArray());
        Assert.Equal(0, solution.Statistics.Accepted);
    }

    [Fact]
    public void Failures_are_clear()
    {
        Assert.Contains("steps", Assert.Throws<NumericalFailureException>(() =>
            DormandPrince.Integrate(new Oscillator(), 0, [1, 0], 1000, new OdeOptions { MaximumSteps = 10 })).Message, StringComparison.Ordinal);

        // y' = y^2 from 1 blows up at t = 1.
        Assert.Throws<NumericalFailureException>(() => DormandPrince.Integrate(new BlowUp(), 0, [1], 2, OdeOptions.Default));
        Assert.Throws<ArgumentException>(() => DormandPrince.Integrate(new Oscillator(), 0, [1], 1, OdeOptions.Default));
        Assert.Throws<ArgumentException>(() => DormandPrince.Integrate(new Oscillator(), 0, [1, double.NaN], 1, OdeOptions.Default));
        Assert.Throws<ArgumentException>(() => DormandPrince.Integrate(new Oscillator(), 1, [1, 0], 0, OdeOptions.Default));
        Assert.Throws<ArgumentException>(() => DormandPrince.Integrate(new Oscillator(), 0, [1, 0], 1, new OdeOptions { RelativeTolerance = 1 }));
        Assert.Throws<ArgumentException>(() => DormandPrince.Integrate(new Oscillator(), 0, [1, 0], 1, new OdeOptions { AbsoluteTolerances = [1e-6] }));
    }

    private static double FixedError(double h)
    {
        OdeSolution solution = DormandPrince.Integrate(new Oscillator(), 0, [1, 0], 4, new OdeOptions { FixedStep = h });
        return Math.Sqrt(Math.Pow(solution.FinalState[0] - Math.Cos(4), 2) + Math.Pow(solution.FinalState[1] + Math.Sin(4), 2));
    }

    private static double DenseError(double h)
    {
        OdeSolution solution = DormandPrince.Integrate(new Oscillator(), 0, [1, 0], 4, new OdeOptions { FixedStep = h });
        double worst = 0;
        for (double t = 0; t <= 4; t += 0.003)
        {
            worst = Math.Max(worst, Math.Abs(solution.ComponentAt(t, 0) - Math.Cos(t)));
        }

        return worst;
    }

    private readonly struct Oscillator : IOdeSystem
    {
        public int Dimension => 2;

        public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
        {
            dydt[0] = y[1];
            dydt[1] = -y[0];
        }
    }

    private readonly struct Bell : IOdeSystem
    {
        public int Dimension => 1;

        public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt) => dydt[0] = -2 * t * y[0];
    }

    private readonly struct BlowUp : IOdeSystem
    {
        public int Dimension => 1;

        public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt) => dydt[0] = y[0] * y[0];
    }

    private readonly struct Exchange(double a, double b, double c) : IOdeSystem
    {
        public int Dimension => 3;

        public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
        {
            double first = a * Math.Tanh(y[0]);
            double second = b * Math.Tanh(y[1]);
            double third = c * Math.Sin(y[2]);
            dydt[0] = third - first;
            dydt[1] = first - second;
            dydt[2] = second - third;
        }
    }

    private readonly struct Arenstorf : IOdeSystem
    {
        public int Dimension => 4;

        public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
        {
            const double moon = 0.012277471;
            const double earth = 1 - moon;
            double d1 = Math.Pow(((y[0] + moon) * (y[0] + moon)) + (y[1] * y[1]), 1.5);
            double d2 = Math.Pow(((y[0] - earth) * (y[0] - earth)) + (y[1] * y[1]), 1.5);
            dydt[0] = y[2];
            dydt[1] = y[3];
            dydt[2] = y[0] + (2 * y[3]) - (earth * (y[0] + moon) / d1) - (moon * (y[0] - earth) / d2);
            dydt[3] = y[1] - (2 * y[2]) - (earth * y[1] / d1) - (moon * y[1] / d2);
        }
    }

    private sealed class CountingSystem : IOdeSystem
    {
        public int Calls { get; private set; }

        public int Dimension => 1;

        public void Derivatives(double t, ReadOnlySpan<double> y, Span<double> dydt)
        {
            Calls++;
            dydt[0] = -y[0];
        }
    }
}
