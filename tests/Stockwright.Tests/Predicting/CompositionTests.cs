using Stockwright.Larder;
using Stockwright.Predicting;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Predicting;

/// <summary>Reading, density and nutrition against the USDA SR28 (2016) rows of home-prepared stock.</summary>
public sealed class CompositionTests
{
    /// <summary>
    /// B.16: 3 % gelatin reads 3.9 (to 0.2). The SR28 rows are read as protein gelatin, carbohydrate sugar and ash
    /// salt, which is what the expected values assume (15 % real).
    /// </summary>
    [Theory]
    [InlineData(3, 0, 0, 3.9)]
    [InlineData(1.97, 1.20, 0.70, 4.6)]
    [InlineData(2.52, 3.53, 0.63, 7.6)]
    [InlineData(2.26, 0, 0.74, 3.8)]
    public void Refractometer_reading(double protein, double sugars, double ash, double expected) =>
        Assert.Equal(expected, Of(protein, 0, sugars, ash).Brix, 0.2);

    /// <summary>B.17: SR28 06170 beef, 06172 chicken, 06174 fish; our worked densities from the make-up; 0.003 kg/L.</summary>
    [Theory]
    [InlineData(1.97, 0.09, 1.20, 0.70, 1.012)]
    [InlineData(2.52, 1.20, 3.53, 0.63, 1.020)]
    [InlineData(2.26, 0.81, 0, 0.74, 1.008)]
    public void Density_from_the_make_up(double protein, double fat, double sugars, double ash, double expected) =>
        Assert.Equal(expected, Of(protein, fat, sugars, ash).Density.KilogramsPerLiter, 0.003);

    /// <summary>The cup of SR28 06170 weighs 240 g in 236.588 mL: 1.014 kg/L, from a scale rather than from the make-up; 0.003. (The fish cup, 233 g, would be lighter than water; the chicken cup is off by 0.006.)</summary>
    [Fact]
    public void Beef_stock_weighs_what_its_cup_does() =>
        Assert.Equal(240 / 236.588, Of(1.97, 0.09, 1.20, 0.70).Density.KilogramsPerLiter, 0.003);

    /// <summary>B.21: a cup, 240 g, of SR28 06172 holds 6.05 g protein and 343 mg sodium (1 %) and 86 kcal (3 %: the table uses the food's own factors, we the general 4, 9 and 4).</summary>
    [Fact]
    public void A_cup_of_chicken_stock()
    {
        StockComposition stock = Of(2.52, 1.20, 3.53, 0.63, sodiumMilligrams: 143);
        NutritionFacts cup = NutritionFacts.Of(stock, Mass.FromGrams(240));
        Assert.InRange(cup.Protein.Grams, 6.05 * 0.99, 6.05 * 1.01);
        Assert.InRange(cup.Sodium.Milligrams, 343 * 0.99, 343 * 1.01);
        Assert.InRange(cup.Energy.Kilocalories, 86.4 * 0.97, 86.4 * 1.03);
        Assert.Equal(2.5 * cup.Sodium.Grams, cup.SaltEquivalent.Grams, 1e-9);
    }

    /// <summary>SR28 02047, 38 758 mg sodium in 100 g of salt; 0.1 %.</summary>
    [Fact]
    public void A_gram_of_salt()
    {
        double milligrams = 1000 * StandardCuts.Table.SolublesOf(StandardLarder.Table.Get("salt")).Sodium.Value.DecimalFractions;
        Assert.InRange(milligrams, 387.6 * 0.999, 387.6 * 1.001);
    }

    /// <summary>The gelatin powder of SR28 19177: 335 kcal in 100 g; by 4, 9 and 4 it is 343; 3 %.</summary>
    [Fact]
    public void Energy_of_gelatin_powder() =>
        Assert.InRange(Of(85.6, 0.1, 0, 1.3).EnergyPer(Mass.FromGrams(100)).Kilocalories, 335 * 0.97, 335 * 1.03);

    /// <summary>A US cup of fat weighs 205 g by SR28: 0.866 kg/L spooned; 0.5 %. Clear liquid fat is denser, 0.915 to 0.92 [from memory].</summary>
    [Fact]
    public void A_cup_of_fat()
    {
        Assert.InRange(205 / 236.588, 0.866 * 0.995, 0.866 * 1.005);
        Assert.InRange(FatPrediction.Density.KilogramsPerLiter, 0.915, 0.92);
    }

    private static StockComposition Of(double protein, double fat, double sugars, double ash, double sodiumMilligrams = 0) => new()
    {
        Gelatin = Ratio.FromPercent(protein),
        Juices = Ratio.Zero,
        Sugars = Ratio.FromPercent(sugars),
        Minerals = Ratio.FromPercent(ash),
        Fat = Ratio.FromPercent(fat),
        Sodium = Ratio.FromPercent(sodiumMilligrams / 1000),
    };
}
