using UnitsNet;

namespace Stockwright.Strength;

/// <summary>A stock, or glace, let down with water.</summary>
/// <param name="Water">Water to add, measured cold.</param>
/// <param name="After">What it becomes.</param>
/// <param name="PartsWater">Parts of water to one of stock, by mass.</param>
public sealed record DilutedStock(Volume Water, StockAmount After, double PartsWater);

/// <summary>Diluting, and bringing glace back to stock (B.28).</summary>
public static class Dilution
{
    private const double WaterKilogramsPerLitre = 0.9982;

    /// <summary>Lets a stock down to a strength.</summary>
    /// <param name="stock">What there is.</param>
    /// <param name="gelatin">Gelatin wanted by mass, below that of the stock.</param>
    public static StrengthAnswer<DilutedStock> ToStrength(StockAmount stock, Ratio gelatin)
    {
        ArgumentNullException.ThrowIfNull(stock);
        if (stock.Fault() is { } fault)
        {
            return StrengthAnswer.No<DilutedStock>("stock", fault);
        }

        if (!(gelatin > Ratio.Zero))
        {
            return StrengthAnswer.No<DilutedStock>("target", "The strength wanted must be above zero.");
        }

        if (gelatin >= stock.Gelatin)
        {
            return StrengthAnswer.No<DilutedStock>("target", "It is no stronger than that: reduce it instead.");
        }

        double factor = stock.Gelatin / gelatin;
        double water = stock.Mass.Kilograms * (factor - 1);
        return StrengthAnswer.Of(new DilutedStock(
            Volume.FromLiters(water / WaterKilogramsPerLitre),
            StockAmount.FromMass(stock.Mass * factor, gelatin, stock.Salt / factor),
            factor - 1));
    }
}
