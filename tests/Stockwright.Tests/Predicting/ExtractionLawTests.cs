using CsCheck;
using Stockwright.Larder;
using Stockwright.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>What must hold for any load and any course of heat, and closed forms.</summary>
public sealed class ExtractionLawTests
{
    private static readonly string[] Classes = ["hard-beef-bone", "meaty-beef", "calf-foot", "chicken-back", "chicken-feet", "white-fish", "pork-skin"];

    private static readonly Gen<CutInPot[]> Load = Gen.Select(
        Gen.OneOfConst(Classes), Gen.Double[0.05, 5], Gen.Double[0.1, 25], Gen.Double[0, 3], Gen.Double[1, 12],
        (name, kilograms, collagen, joins, piece) => Pots.Cut(name, kilograms, collagen, piece) with { JoinsAt = TimeSpan.FromHours(joins) }).Array[1, 5];

    private static readonly Gen<TemperatureHistory> Course = Gen.Select(Gen.Double[0.05, 3], Gen.Double[10, 125]).Array[2, 8].Select(legs =>
    {
        List<TemperaturePoint> points = [new(TimeSpan.Zero, Temperature.FromDegreesCelsius(15))];
        foreach ((double hours, double celsius) in legs)
        {
            points.Add(new(points[^1].At + TimeSpan.FromHours(hours), Temperature.FromDegreesCelsius(celsius)));
        }

        return new TemperatureHistory(points);
    });

    /// <summary>One pool at one temperature has a closed form: dissolved X(1 - e^-kt), strength X k/(d - k) (e^-kt - e^-dt). To 1e-9.</summary>
    [Theory]
    [InlineData(98, 8)]
    [InlineData(88, 20)]
    [InlineData(121, 1.5)]
    public void One_pool_at_one_temperature(double celsius, double hours)
    {
        ExtractionResult result = Pots.Hold(celsius, hours, Pots.Cut("pork-skin", 1, 24));
        double k = 0.35 * Math.Exp(-109_000 / 8.314462618 * ((1 / (celsius + 273.15)) - (1 / 371.15))) * hours;
        double d = 0.08 * Math.Exp(-100_000 / 8.314462618 * ((1 / (celsius + 273.15)) - (1 / 371.15))) * hours;
        double dissolved = 240 * (1 - Math.Exp(-k));
        Assert.Equal(dissolved, result.Gelatin.Grams, 1e-9 * dissolved);
        double strength = 240 * k / (d - k) * (Math.Exp(-k) - Math.Exp(-d));
        Assert.Equal(strength / dissolved, result.Intactness.DecimalFractions, 1e-9);
    }

    /// <summary>The equations integrated in ten-second steps by Heun's rule over a course with slopes: 0.1 %.</summary>
    [Fact]
    public void A_course_with_slopes_agrees_with_plain_stepping()
    {
        TemperatureHistory course = new(
        [
            new(TimeSpan.Zero, Temperature.FromDegreesCelsius(15)),
            new(TimeSpan.FromHours(1), Temperature.FromDegreesCelsius(95)),
            new(TimeSpan.FromHours(3), Temperature.FromDegreesCelsius(92)),
            new(TimeSpan.FromHours(3), Temperature.FromDegreesCelsius(82)),
            new(TimeSpan.FromHours(3.4), Temperature.FromDegreesCelsius(97)),
            new(TimeSpan.FromHours(9), Temperature.FromDegreesCelsius(97)),
            new(TimeSpan.FromHours(10), Temperature.FromDegreesCelsius(30)),
        ]);
        CutInPot cut = Pots.Cut("chicken-back", 1, 5.8) with { JoinsAt = TimeSpan.FromHours(0.5), LeavesAt = TimeSpan.FromHours(9) };
        ExtractionResult result = Extraction.Run([cut], course);
        (double gelatin, double strength) = Stepped(course, 0.5, 9);
        Assert.Equal(gelatin, result.Gelatin.Grams, 1e-3 * gelatin);
        Assert.Equal(strength / gelatin, result.Intactness.DecimalFractions, 1e-3);
    }

    [Fact]
    public void Collagen_is_neither_made_nor_lost() => Gen.Select(Load, Course, Gen.Double[3.5, 9], Gen.Double[0.3, 1.5]).Sample((load, course, ph, factor) =>
    {
        ExtractionResult result = Extraction.Run(load, course, ph, factor);
        for (int i = 0; i < load.Length; i++)
        {
            double brought = load[i].Mass.Grams * load[i].Collagen.DecimalFractions * factor;
            CutYield cut = result.Cuts[i];
            Assert.Equal(brought, cut.Collagen.Grams, 1e-9 * brought);
            Assert.InRange(cut.Gelatin.Grams, 0, brought * (1 + 1e-12));
        }

        Assert.Equal(result.Cuts.Sum(cut => cut.Gelatin.Grams), result.Gelatin.Grams, 1e-9 * result.Collagen.Grams);
        Assert.InRange(result.Intactness.DecimalFractions, 0, 1 + 1e-12);
    });

    [Fact]
    public void Longer_never_lowers_the_gelatin() => Gen.Select(Load, Course, Gen.Double[0.1, 10], Gen.Double[60, 121]).Sample((load, course, hours, celsius) =>
    {
        Temperature hold = Temperature.FromDegreesCelsius(celsius);
        TemperatureHistory longer = new([.. course.Points, new(course.End, hold), new(course.End + TimeSpan.FromHours(hours), hold)]);
        ExtractionResult before = Extraction.Run(load, course);
        ExtractionResult after = Extraction.Run(load, longer);
        Assert.True(after.Gelatin.Grams >= before.Gelatin.Grams * (1 - 1e-9));
    });

    [Fact]
    public void Hotter_smaller_and_sourer_never_draw_less() => Gen.Select(Load, Gen.Double[61, 118], Gen.Double[0.2, 12]).Sample((load, celsius, hours) =>
    {
        TemperatureHistory Hold(double at) => TemperatureHistory.Steady(Temperature.FromDegreesCelsius(at), TimeSpan.FromHours(hours));
        double plain = Extraction.Run(load, Hold(celsius)).Gelatin.Grams;
        Assert.True(Extraction.Run(load, Hold(celsius + 1)).Gelatin.Grams >= plain);
        Assert.True(Extraction.Run(load, Hold(celsius), ph: 4.5).Gelatin.Grams >= plain);
        CutInPot[] smaller = [.. load.Select(cut => cut with { PieceSize = cut.PieceSize / 2 })];
        Assert.True(Extraction.Run(smaller, Hold(celsius)).Gelatin.Grams >= plain);
    });

    [Fact]
    public void No_collagen_no_body() => Gen.Select(Gen.OneOfConst(Classes), Gen.Double[0, 10], Course).Sample((name, kilograms, course) =>
    {
        ExtractionResult result = Extraction.Run([Pots.Cut(name, kilograms, 0)], course);
        Assert.Equal(0, result.Gelatin.Grams);
        Assert.Equal(0, result.Bloom.Grams);
        Assert.Equal(BodyClass.Watery, BodyClasses.Of(Pots.Effective(result, 1)));
    });

    /// <summary>B.1: nothing below 60 °C for mammals and birds; fish goes on to 40 °C.</summary>
    [Fact]
    public void Below_the_threshold_nothing_comes()
    {
        Assert.Equal(0, Pots.Hold(59.9, 24, Pots.Cut("chicken-back", 1, 5.8)).Gelatin.Grams);
        Assert.True(Pots.Hold(60.1, 24, Pots.Cut("chicken-back", 1, 5.8)).Gelatin.Grams > 0.5);
        Assert.True(Pots.Hold(59.9, 24, Pots.Cut("white-fish", 1, 1.4)).Gelatin.Grams > 0.5);
        Assert.Equal(0, Pots.Hold(39.9, 24, Pots.Cut("white-fish", 1, 1.4)).Gelatin.Grams);
    }

    [Fact]
    public void A_cut_out_of_the_pot_gives_nothing()
    {
        TemperatureHistory course = TemperatureHistory.Steady(Temperature.FromDegreesCelsius(96), TimeSpan.FromHours(8));
        CutInPot cut = Pots.Cut("chicken-back", 1, 5.8);
        double late = Extraction.Run([cut with { JoinsAt = TimeSpan.FromHours(5) }], course).Gelatin.Grams;
        Assert.Equal(Pots.Hold(96, 3, cut).Gelatin.Grams, late, 1e-6);
        double early = Extraction.Run([cut with { LeavesAt = TimeSpan.FromHours(3) }], course).Gelatin.Grams;
        Assert.Equal(late, early, 1e-6);
        Assert.True(Extraction.Run([cut with { LeavesAt = TimeSpan.FromHours(3) }], course).Intactness < Extraction.Run([cut with { JoinsAt = TimeSpan.FromHours(5) }], course).Intactness);
    }

    /// <summary>B.3 and B.4 worked by hand.</summary>
    [Theory]
    [InlineData(6.5, 1)]
    [InlineData(6, 1)]
    [InlineData(5, 1.15)]
    [InlineData(4, 1.3)]
    public void Acid_speeds_it_up(double ph, double expected) => Assert.Equal(expected, ExtractionRates.Acid(ph), 1e-12);

    [Theory]
    [InlineData(1, 4, 2)]
    [InlineData(6, 6, 1)]
    [InlineData(0.5, 6, 2.5)]
    [InlineData(30, 6, 0.5)]
    public void Small_pieces_are_faster(double piece, double reference, double expected) =>
        Assert.Equal(expected, ExtractionRates.Piece(piece / 100, reference / 100), 1e-12 + (expected is 0.5 ? 0.06 : 0));

    [Fact]
    public void Numbers_out_of_range_are_refused()
    {
        CutInPot cut = Pots.Cut("chicken-back", 1, 5.8);
        TemperatureHistory course = TemperatureHistory.Steady(Temperature.FromDegreesCelsius(96), TimeSpan.FromHours(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Extraction.Run([cut], course, ph: 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Extraction.Run([cut], course, kitchenFactor: 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Extraction.Run([cut with { Mass = Mass.FromKilograms(-1) }], course));
        Assert.Throws<ArgumentOutOfRangeException>(() => Extraction.Run([cut with { Collagen = Ratio.FromPercent(120) }], course));
        Assert.Throws<ArgumentOutOfRangeException>(() => Extraction.Run([cut with { PieceSize = Length.Zero }], course));
        Assert.Throws<ArgumentException>(() => new TemperatureHistory([new(TimeSpan.Zero, Temperature.FromDegreesCelsius(20))]));
        Assert.Throws<ArgumentOutOfRangeException>(() => TemperatureHistory.Steady(Temperature.FromDegreesCelsius(200), TimeSpan.FromHours(1)));
        Assert.Throws<ArgumentException>(() => new TemperatureHistory([new(TimeSpan.FromHours(1), Temperature.FromDegreesCelsius(20)), new(TimeSpan.Zero, Temperature.FromDegreesCelsius(20))]));
    }

    private static (double Gelatin, double Strength) Stepped(TemperatureHistory course, double joins, double leaves)
    {
        double[] state = [29, 29, 0];
        const double Step = 10.0 / 3600;
        for (double t = 0; t < course.End.TotalHours - 1e-9; t += Step)
        {
            double[] first = Slope(course, t, state, joins, leaves);
            double[] guess = [.. state.Select((value, i) => value + (Step * first[i]))];
            double[] second = Slope(course, t + Step, guess, joins, leaves);
            state = [.. state.Select((value, i) => value + (Step / 2 * (first[i] + second[i])))];
        }

        return (58 - state[0] - state[1], state[2]);
    }

    private static double[] Slope(TemperatureHistory course, double hours, double[] state, double joins, double leaves)
    {
        double celsius = 30;
        for (int i = 1; i < course.Points.Count; i++)
        {
            (double from, double to) = (course.Points[i - 1].At.TotalHours, course.Points[i].At.TotalHours);
            if (hours >= from && hours <= to && to > from)
            {
                celsius = course.Points[i - 1].Temperature.DegreesCelsius
                    + ((course.Points[i].Temperature.DegreesCelsius - course.Points[i - 1].Temperature.DegreesCelsius) * (hours - from) / (to - from));
            }
        }

        double inverse = (1 / (celsius + 273.15)) - (1 / 371.15);
        double a = celsius > 60 && hours >= joins && hours <= leaves ? Math.Exp(-109_000 / 8.314462618 * inverse) : 0;
        double d = celsius > 40 ? 0.08 * Math.Exp(-100_000 / 8.314462618 * inverse) : 0;
        double soft = 0.6 * a * state[0];
        double hard = 0.12 * a * state[1];
        return [-soft, -hard, soft + hard - (d * state[2])];
    }
}
