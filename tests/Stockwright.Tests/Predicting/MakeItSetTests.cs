using CsCheck;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Strength;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>The cheapest way to a class, against brute force.</summary>
public sealed class MakeItSetTests
{
    private static readonly Gen<SetOption> Option = Gen.Select(Gen.Double[0.5, 30], Gen.Double[5, 200], Gen.Double[60, 280], Gen.Double[0.2, 3])
        .Select((price, gelatin, bloom, most) => new SetOption("cut", price, gelatin, gelatin * bloom, most));

    /// <summary>
    /// Three cuts on a grid of 60 steps each; the grid's best feasible point can only be dearer, by a step's worth at most. And no random
    /// feasible point is cheaper than the answer.
    /// </summary>
    [Fact]
    public void Brute_force_finds_nothing_cheaper() => Gen.Select(Option.Array[3], Gen.Double[10, 120], Gen.Double[80, 250], Gen.Double[1.05, 3]).Sample(
        (options, gelatin, bloom, harder) =>
        {
            double target = harder * Math.Sqrt(gelatin * gelatin * bloom);
            SetSolution solution = SetSolver.Solve(gelatin, gelatin * bloom, target, options);
            const int Steps = 40;
            double best = double.PositiveInfinity;
            for (int i = 0; i <= Steps; i++)
            {
                for (int j = 0; j <= Steps; j++)
                {
                    double[] part = [options[0].MostKilograms * i / Steps, options[1].MostKilograms * j / Steps, 0];
                    best = Math.Min(best, CheapestThird(options, gelatin, bloom, target, part));
                }
            }

            Assert.Equal(solution.IsReached, double.IsFinite(best));
            if (solution.IsReached)
            {
                Assert.True(solution.Reached >= target * (1 - 1e-9));
                Assert.True(solution.Cost <= best * (1 + 1e-6) + 1e-9);
                double step = options.Take(2).Sum(option => option.MostKilograms / Steps * option.PricePerKilogram);
                Assert.True(best <= solution.Cost + step + 1e-9);
            }

            for (int i = 0; i < 3; i++)
            {
                Assert.InRange(solution.Kilograms[i], 0, options[i].MostKilograms * (1 + 1e-9));
            }
        },
        iter: 60);

    /// <summary>With one Bloom for all the problem is linear: the cut that costs least for a gram of gelatin, then the next.</summary>
    [Fact]
    public void With_one_Bloom_it_fills_in_order_of_price()
    {
        SetOption[] options = [new("dear", 10, 50, 50 * 225, 5), new("cheap", 2, 100, 100 * 225, 0.5), new("middle", 3, 100, 100 * 225, 5)];
        SetSolution solution = SetSolver.Solve(40, 40 * 225, 140 * 15, options);
        Assert.Equal(0, solution.Kilograms[0], 1e-9);
        Assert.Equal(0.5, solution.Kilograms[1], 1e-9);
        Assert.Equal(0.5, solution.Kilograms[2], 1e-6);
        Assert.Equal(2.5, solution.Cost, 1e-6);
    }

    /// <summary>
    /// Much weak gelatin or little strong for the same money, nothing in the pot: for a unit of cost split t to 1 - t, G M = (50 + 50t)(14 000 - 8 000t), greatest at
    /// t = 3/8 by its derivative, where it is 68.75 x 11 000. Neither cut alone does it for the money.
    /// </summary>
    [Fact]
    public void A_blend_can_be_cheapest()
    {
        SetOption[] options = [new("much and weak", 1, 100, 6000, double.PositiveInfinity), new("little and strong", 1, 50, 14_000, double.PositiveInfinity)];
        SetSolution solution = SetSolver.Solve(0, 0, Math.Sqrt(68.75 * 11_000), options);
        Assert.Equal(1, solution.Cost, 1e-6);
        Assert.Equal(0.375, solution.Kilograms[0], 1e-3);
        Assert.Equal(0.625, solution.Kilograms[1], 1e-3);
    }

    [Fact]
    public void Advice_reaches_the_class_when_followed()
    {
        BatchPlan plan = Pots.Plan("white-chicken", 4);
        SetAdvice advice = MakeItSet.Cheapest(plan, BodyClass.FirmJelly, [new("chicken-feet", 4), new("pork-trotter", 3), new("beef-marrow-bone", 6)]);
        Assert.True(advice.IsReached);
        Assert.Empty(advice.Problems);
        BodyPrediction after = WhatIf.WithCuts(plan, [.. advice.Additions.Select(addition => new CutChange(addition.IngredientId, addition.Mass))]);
        Assert.Equal(BodyClasses.LeastPercent(BodyClass.FirmJelly), after.Effective.Percent, 1e-6);
        Assert.Equal(advice.Cost, advice.Additions.Sum(addition => addition.Cost), 1e-9);
        Assert.True(advice.OrReduceTo < plan.Yield.Central);
    }

    /// <summary>Stirring powder in is the same top-up as the strength page's (10 V (Ct - Ceff) sqrt(225/B)/0.86), which adds effective concentrations and so asks for a little more: up to 5 %.</summary>
    [Theory]
    [InlineData(160)]
    [InlineData(225)]
    [InlineData(280)]
    public void Powder_agrees_with_the_top_up(double bloom)
    {
        BatchPlan plan = Pots.Plan("white-chicken", 4);
        SetAdvice advice = MakeItSet.Cheapest(plan, BodyClass.FirmJelly, [], new AvailablePowder(Mass.FromGrams(bloom), 30));
        double grams = Assert.Single(advice.Additions).Mass.Grams;
        double litres = advice.Now > Ratio.Zero ? plan.Ledger.Out.Where(entry => entry.Key is "yield" or "held-by-solids" or "straining" or "defatting").Sum(entry => entry.Volume.Central.Liters) : 0;
        double simple = GelatinTopUp.ToClass(Volume.FromLiters(litres), advice.Now, BodyClass.FirmJelly, Mass.FromGrams(bloom)).Value!.Powder.Grams;
        Assert.InRange(grams / simple, 0.95, 1.01);
    }

    [Fact]
    public void Missing_prices_are_said_and_left_out()
    {
        SetAdvice advice = MakeItSet.Cheapest(Pots.Plan("white-chicken", 4), BodyClass.FirmJelly, [new("chicken-feet", null), new("onion", 1)], new AvailablePowder(Mass.FromGrams(200), null));
        Assert.False(advice.IsReached);
        Assert.Equal("cuts-0-price cuts-1-price powder-price cuts target", string.Join(' ', advice.Problems.Select(problem => problem.Field)));
        Assert.Contains("No price for", advice.Problems[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Out_of_reach_says_by_how_much()
    {
        SetAdvice advice = MakeItSet.Cheapest(Pots.Plan("white-chicken", 4), BodyClass.Glace, [new("chicken-feet", 4, Mass.FromKilograms(0.5))]);
        Assert.False(advice.IsReached);
        Assert.Equal(0.5, Assert.Single(advice.Additions).Mass.Kilograms, 1e-9);
        Assert.True(advice.Then > advice.Now);
        Assert.Contains("short by", Assert.Single(advice.Problems, problem => problem.Field is "target").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_already_needs_nothing()
    {
        SetAdvice advice = MakeItSet.Cheapest(Pots.Plan("white-veal", 4), BodyClass.Trembling, [new("chicken-feet", 4)]);
        Assert.True(advice.IsReached);
        Assert.Empty(advice.Additions);
        Assert.Null(advice.OrReduceTo);
    }

    [Fact]
    public void A_full_pot_has_no_room_for_more()
    {
        BatchPlan plan = Pots.Plan("white-chicken", 4, request => request with { Goal = new PlanGoal.FillPot() });
        SetAdvice advice = MakeItSet.Cheapest(plan, BodyClass.FirmJelly, [new("chicken-feet", 4)]);
        Assert.True(advice.TooMuchForPot > Volume.Zero);
        Assert.Contains(advice.Problems, problem => problem.Field is "pot");
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        BatchPlan plan = Pots.Plan("white-chicken", 4);
        Assert.Throws<ArgumentException>(() => MakeItSet.Cheapest(plan, BodyClass.Glace, [new("chicken-feet", -1)]));
        Assert.Throws<ArgumentException>(() => MakeItSet.Cheapest(plan, BodyClass.Glace, [], new AvailablePowder(Mass.FromGrams(1000), 3)));
        Assert.Throws<KeyNotFoundException>(() => MakeItSet.Cheapest(plan, BodyClass.Glace, [new("unicorn", 1)]));
    }

    /// <summary>The least of the third cut that meets the target beside two given masses, found by halving.</summary>
    private static double CheapestThird(SetOption[] options, double gelatin, double bloom, double target, double[] kilograms)
    {
        bool Meets(double third)
        {
            double g = gelatin;
            double m = gelatin * bloom;
            for (int i = 0; i < 3; i++)
            {
                double mass = i == 2 ? third : kilograms[i];
                g += mass * options[i].Gelatin;
                m += mass * options[i].BloomNow;
            }

            return Math.Sqrt(g * m) >= target;
        }

        double high = options[2].MostKilograms;
        if (!Meets(high))
        {
            return double.PositiveInfinity;
        }

        double low = 0;
        for (int i = 0; i < 40 && !Meets(0); i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Meets(middle) ? (low, middle) : (middle, high);
        }

        high = Meets(0) ? 0 : high;
        return (kilograms[0] * options[0].PricePerKilogram) + (kilograms[1] * options[1].PricePerKilogram) + (high * options[2].PricePerKilogram);
    }
}
