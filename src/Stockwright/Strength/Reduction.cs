using UnitsNet;

namespace Stockwright.Strength;

/// <summary>A stock boiled down.</summary>
/// <param name="Before">What it was.</param>
/// <param name="After">What is left.</param>
/// <param name="Lost">Water boiled off.</param>
/// <param name="Factor">How many times stronger, by mass.</param>
public sealed record ReducedStock(StockAmount Before, StockAmount After, Mass Lost, double Factor);

/// <summary>Reducing: water goes, gelatin and salt stay (B.27).</summary>
public static class Reduction
{
    /// <summary>Gelatin above this burns on before it gets stronger, % (common practice: glace stands at about 25 %).</summary>
    private const double MostPercent = 60;

    /// <summary>Boils down to a volume.</summary>
    /// <param name="stock">What there is.</param>
    /// <param name="to">Volume wanted, measured cold, below that.</param>
    public static StrengthAnswer<ReducedStock> ToVolume(StockAmount stock, Volume to)
    {
        ArgumentNullException.ThrowIfNull(stock);
        if (stock.Fault() is { } fault)
        {
            return StrengthAnswer.No<ReducedStock>("stock", fault);
        }

        if (!(to > Volume.Zero) || to >= stock.Volume)
        {
            return StrengthAnswer.No<ReducedStock>("to", "Reducing leaves less than there is, and more than nothing.");
        }

        // Mass of what is left from its volume: the density of the reduced stock depends on its strength, which is solved for.
        double dissolved = stock.Mass.Kilograms * (stock.Gelatin + stock.Salt).DecimalFractions;
        double mass = to.Liters;
        for (int i = 0; i < 50; i++)
        {
            mass = to.Liters * StockAmount.DensityOf(Ratio.FromDecimalFractions(dissolved / mass)).KilogramsPerLiter;
        }

        return mass > 0 && double.IsFinite(mass) && dissolved / mass <= MostPercent / 100
            ? Answer(stock, Mass.FromKilograms(mass))
            : StrengthAnswer.No<ReducedStock>("to", "It would burn on before it gets that far: more than 60 % would be dissolved in it.");
    }

    /// <summary>Boils down to a strength.</summary>
    /// <param name="stock">What there is.</param>
    /// <param name="gelatin">Gelatin wanted by mass, above that of the stock.</param>
    public static StrengthAnswer<ReducedStock> ToStrength(StockAmount stock, Ratio gelatin)
    {
        ArgumentNullException.ThrowIfNull(stock);
        if (stock.Fault() is { } fault)
        {
            return StrengthAnswer.No<ReducedStock>("stock", fault);
        }

        if (stock.Gelatin <= Ratio.Zero)
        {
            return StrengthAnswer.No<ReducedStock>("stock", "There is no gelatin in it to make stronger: reduce it to a volume instead.");
        }

        if (gelatin <= stock.Gelatin)
        {
            return StrengthAnswer.No<ReducedStock>("target", "It is that strong already: dilute it instead.");
        }

        double factor = gelatin / stock.Gelatin;
        return factor * (stock.Gelatin + stock.Salt).Percent <= MostPercent
            ? Answer(stock, stock.Mass / factor)
            : StrengthAnswer.No<ReducedStock>("target", "It would burn on before it gets that far: more than 60 % would be dissolved in it.");
    }

    private static StrengthAnswer<ReducedStock> Answer(StockAmount stock, Mass mass)
    {
        double factor = stock.Mass / mass;
        return StrengthAnswer.Of(new ReducedStock(
            stock, StockAmount.FromMass(mass, stock.Gelatin * factor, stock.Salt * factor), stock.Mass - mass, factor));
    }
}
