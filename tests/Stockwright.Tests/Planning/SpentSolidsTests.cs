using CsCheck;
using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Simmering;
using Stockwright.Tests.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>The weight of the spent solids: it closes the balance of the whole batch, and its band says what it is made of (F.7).</summary>
public sealed class SpentSolidsTests
{
    private const double Tolerance = 1e-9;

    public static TheoryData<string> Recipes => [.. Stockwright.Recipes.StandardRecipes.Book.Recipes.Select(recipe => recipe.Id)];

    [Theory]
    [MemberData(nameof(Recipes))]
    public void What_goes_in_the_pot_comes_out_of_it(string recipe) => Balances(PlanRequests.For(recipe).Plan());

    [Theory]
    [MemberData(nameof(Recipes))]
    public void So_it_does_by_a_kitchens_own_clinging_figure(string recipe) => Balances(PlanRequests.For(recipe).Clinging(0.23).Plan());

    [Fact]
    public void So_it_does_in_every_plan() =>
        PlanGenerator.Requests.Where(request => BatchPlanner.Plan(request).Plan is not null).Sample(
            request => Balances(request.Plan()),
            iter: 200,
            threads: 2,
            print: request => $"{request.Recipe.Id} {request.Goal} {request.SimmerTime} {request.SimmerTemperature}");

    [Theory]
    [MemberData(nameof(Recipes))]
    public void It_is_the_account_of_what_everything_is_made_of_and_the_row_of_the_ledger(string recipe)
    {
        BatchPlan plan = PlanRequests.For(recipe).Plan();
        double bare = MatterAccount.Of(PredictionCase.Of(plan, new PredictionSettings())).Solids.Sum(row => row.Matter.Kilograms);
        Assert.Equal(bare + Kilograms(plan, "held-by-solids"), plan.SpentSolids.Central.Kilograms, Tolerance * plan.Amounts.Sum(line => line.Mass.Kilograms));
    }

    /// <summary>
    /// Kelp gives nothing but what dissolves and only swells, by 2.5 (1.5 to 4) times its weight; 0.08 (0.05 to 0.12) clings to it. So the ends lie
    /// sqrt[(1.5/2.5 x soaked x 1.08)^2 + (0.04 x drained)^2] above and sqrt[(1/2.5 x soaked x 1.08)^2 + (0.03 x drained)^2] below; what the runs lose hardly counts.
    /// </summary>
    [Fact]
    public void The_band_is_the_independent_sum_of_what_is_uncertain()
    {
        BatchPlan plan = PlanRequests.For("kelp").Plan();
        Band<Mass> spent = plan.SpentSolids;
        double soaked = Kilograms(plan, "soaked-up");
        double drained = spent.Central.Kilograms / 1.08;
        double Far(double swell, double cling) => Math.Sqrt(Math.Pow(swell / 2.5 * soaked * 1.08, 2) + Math.Pow(cling * drained, 2));
        Assert.Equal(1, (spent.High - spent.Central).Kilograms / Far(1.5, 0.04), 0.02);
        Assert.Equal(1, (spent.Central - spent.Low).Kilograms / Far(1, 0.03), 0.02);
    }

    /// <summary>Meat's own loss, 0.43 to 0.61 of its water against 0.53, is the most of it in a chicken stock: the band is at least that wide, and no rumour.</summary>
    [Theory]
    [InlineData("white-chicken")]
    [InlineData("brown-chicken")]
    [InlineData("white-beef")]
    public void A_meat_stock_states_the_range_of_its_meat_and_of_what_clings(string recipe)
    {
        BatchPlan plan = PlanRequests.For(recipe).Plan();
        Band<Mass> spent = plan.SpentSolids;
        double put = plan.Amounts.Sum(line => line.MassInPot.Kilograms);
        Assert.True(spent.Low < spent.Central && spent.Central < spent.High);
        Assert.InRange((spent.High - spent.Central).Kilograms, 0.03 * put, 0.25 * put);
        Assert.InRange((spent.Central - spent.Low).Kilograms, 0.03 * put, 0.25 * put);
        Assert.InRange(spent.Central.Kilograms, 0.5 * put, put);
    }

    /// <summary>
    /// The lighter end of a meat stock, part by part: the most the meat gives, the least that clings (0.05 against 0.08), and all fat and collagen at the high ends
    /// of their cuts' ranges, each with what clings to it. What the runs lose hardly counts.
    /// </summary>
    [Theory]
    [InlineData("duck")]
    [InlineData("pork")]
    [InlineData("white-veal")]
    [InlineData("brown-chicken")]
    public void The_lighter_end_counts_meat_fat_collagen_and_what_clings(string recipe)
    {
        BatchPlan plan = PlanRequests.For(recipe).Plan();
        double meat = 0;
        double fat = 0;
        double collagen = 0;
        foreach (LoadItem item in plan.Workings.Fitted.Load.Items.Where(item => item.Charge is not null))
        {
            SolidGave gave = plan.Workings.Central.Gave.Single(one => ReferenceEquals(one.Solid, item.Charge));
            meat += 1.08 * (item.Charge!.Release.Leaning(1).Liquor(gave.Since, gave.Hottest) - item.Charge.Release.Liquor(gave.Since, gave.Hottest));
            if (StandardCuts.Table.ClassOf(item.Ingredient) is { } cut)
            {
                Stated<Ratio> holds = StandardCuts.Table.CollagenOf(item.Ingredient);
                double most = Math.Max(0, (item.Raw.Fat - item.FatDrainedKilograms) / item.Charge.Release.Fat);
                fat += 1.08 * gave.FreedFat * (Math.Min(most, cut.FreedFat.High / cut.FreedFat.Value) - 1);
                collagen += 1.08 * item.Charge.Release.Gelatin(gave.Since) * (1 + item.Charge.Release.WaterWithGelatin) * ((holds.High / holds.Value) - 1);
            }
        }

        double clings = 0.03 * plan.SpentSolids.Central.Kilograms / 1.08;
        double[] parts = [meat, fat, collagen, clings];
        Assert.All(parts, part => Assert.True(part > 0.005 * plan.SpentSolids.Central.Kilograms, string.Join(' ', parts)));
        Assert.Equal(1, (plan.SpentSolids.Central - plan.SpentSolids.Low).Kilograms / Math.Sqrt(parts.Sum(part => part * part)), 0.01);
    }

    [Fact]
    public void Bones_that_gave_everything_weigh_less_after_a_longer_simmer() => Assert.True(
        PlanRequests.For("white-beef").SimmeringFor(12).Plan().SpentSolids.Central < PlanRequests.For("white-beef").SimmeringFor(1).Plan().SpentSolids.Central);

    // Grindley's cubes lost 40 to 45 %, whole joints boiled in institutions 21 to 27 %: larger pieces keep their water longer, in the plan as in the trials.
    [Fact]
    public void Larger_pieces_come_out_heavier()
    {
        Mass Spent(double? centimetres) => (PlanRequests.For("meat-broth").SimmeringFor(3) with { PieceSize = centimetres is { } size ? Length.FromCentimeters(size) : null }).Plan().SpentSolids.Central;
        Assert.True(Spent(25) > Spent(null) * 1.02);
        Assert.True(Spent(3) <= Spent(null));
    }

    private static void Balances(BatchPlan plan)
    {
        double put = plan.Amounts.Sum(line => line.MassInPot.Kilograms)
            + plan.Ledger.In.Where(row => row.Key is "water-to-line" or "stock-to-line" or "top-ups" or "let-down").Sum(Kilograms);
        double left = plan.Ledger.Out.Where(row => row.Key is not ("held-by-solids" or "soaked-up")).Sum(Kilograms) + plan.Workings.Central.FloatingFatKilograms;
        Assert.Equal(put, plan.SpentSolids.Central.Kilograms + left, Tolerance * put);
        Assert.True(plan.SpentSolids.Low <= plan.SpentSolids.Central && plan.SpentSolids.Central <= plan.SpentSolids.High);
    }

    private static double Kilograms(BatchPlan plan, string row) => plan.Ledger.Out.Where(one => string.Equals(one.Key, row, StringComparison.Ordinal)).Sum(Kilograms);

    private static double Kilograms(LedgerEntry row) => row.Volume.Central.CubicMeters * SimmerForecaster.ColdDensity;
}
