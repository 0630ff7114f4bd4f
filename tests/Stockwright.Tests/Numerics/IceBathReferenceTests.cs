using Stockwright.Numerics;
using Stockwright.Tests.Physics;
using Xunit;

namespace Stockwright.Tests.Numerics;

/// <summary>
/// The ice-bath reference problem (our own): a pot of stock in a bath whose ice gives out, solved beforehand by SciPy's
/// Radau and DOP853 at 1e-13, which agree to 5e-12. States: stock, wall, lid, bath (or ice), evaporated mass.
/// </summary>
public class IceBathReferenceTests
{
    private static readonly OdeOptions Tight = new() { RelativeTolerance = 1e-10, AbsoluteTolerance = 1e-9, EventTolerance = 1e-8 };

    private static readonly OdeEvent IceGone = new("ice gone", (_, y) => y[3], EventDirection.Falling);

    [Fact]
    public void Ice_runs_out_when_the_reference_says() => Close.To(361.8493679, Iced(14400).EndTime, 1e-6);

    [Theory]
    [InlineData(60, 91.5246970922, 52.9436069369, 63.3419168751, 1.99107914118, 0.0096441717)]
    [InlineData(600, 63.5105483501, 40.2930976537, 56.4835443373, 9.1409533663, 0.0547659192)]
    [InlineData(1800, 40.6418801323, 35.5648783966, 36.6546993440, 28.7416243552, 0.0816432995)]
    [InlineData(3600, 33.9847732339, 33.4081908470, 30.7362503166, 32.6183468859, 0.0987805204)]
    [InlineData(7200, 31.2034180168, 31.1491113825, 28.6139509933, 31.0621965966, 0.1242422513)]
    [InlineData(14400, 27.9204413633, 27.9028004589, 26.2595365315, 27.8693887204, 0.1644385869)]
    public void States_match_the_reference(double seconds, double stock, double wall, double lid, double bathOrIce, double evaporated)
    {
        double[] expected = [stock, wall, lid, bathOrIce, evaporated];
        OdeSolution end = StateAfter(seconds);
        for (int i = 0; i < 4; i++)
        {
            Close.To(expected[i], end.FinalState[i], 1e-7);
        }

        Close.To(expected[4], end.FinalState[4], 1e-9);
    }

    [Theory]
    [InlineData(60.0, 700.9416)]
    [InlineData(57.2, 792.1951)]
    [InlineData(40.0, 1880.2190)]
    public void Stock_passes_its_marks_when_the_reference_says(double celsius, double seconds)
    {
        OdeSolution iced = Iced(14400);
        OdeSolution after = DormandPrince.Integrate(
            new IceBath(HasIce: false), iced.EndTime, Thawed(iced), 14400, Tight, new OdeEvent("mark", (_, y) => y[0] - celsius, EventDirection.Falling));
        Close.To(seconds, after.EndTime, 1e-4);
    }

    [Fact]
    public void Dense_output_between_steps_is_good_to_a_hundred_thousandth()
    {
        OdeSolution iced = Iced(14400);
        OdeSolution after = DormandPrince.Integrate(new IceBath(HasIce: false), iced.EndTime, Thawed(iced), 14400, Tight);
        Close.To(91.5246970922, iced.ComponentAt(60, 0), 1e-5);
        Close.To(33.9847732339, after.ComponentAt(3600, 0), 1e-5);
        Close.To(30.7362503166, after.ComponentAt(3600, 2), 1e-5);
    }

    // SciPy's RK45 at rtol 1e-6 took 2836 evaluations here, held up by stability; the same method should not need more.
    [Fact]
    public void Work_is_no_more_than_that_of_the_same_method_elsewhere()
    {
        OdeOptions ordinary = new() { RelativeTolerance = 1e-6, AbsoluteTolerance = 1e-6 };
        OdeSolution iced = DormandPrince.Integrate(new IceBath(HasIce: true), 0, Start, 14400, ordinary, IceGone);
        OdeSolution after = DormandPrince.Integrate(new IceBath(HasIce: false), iced.EndTime, Thawed(iced), 14400, ordinary);
        Assert.InRange(iced.Statistics.Evaluations + after.Statistics.Evaluations, 500, 3600);
        Close.To(361.8493679, iced.EndTime, 1e-3);
        Close.To(33.9847732339, after.ComponentAt(3600, 0), 1e-4);
    }

    private static double[] Start => [95, 95, 60, 2.5, 0];

    private static OdeSolution Iced(double end) => DormandPrince.Integrate(new IceBath(HasIce: true), 0, Start, end, Tight, IceGone);

    private static OdeSolution StateAfter(double seconds)
    {
        OdeSolution iced = Iced(seconds);
        return iced.TerminatedBy is null
            ? iced
            : DormandPrince.Integrate(new IceBath(HasIce: false), iced.EndTime, Thawed(iced), seconds, Tight);
    }

    private static double[] Thawed(OdeSolution iced)
    {
        double[] state = iced.FinalState.ToArray();
        state[3] = 0;
        return state;
    }
}
