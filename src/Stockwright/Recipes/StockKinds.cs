namespace Stockwright.Recipes;

/// <summary>What follows from the kind of stock alone.</summary>
internal static class StockKinds
{
    /// <summary>
    /// True when scum is lifted from it (common practice, no source). Kelp and dried things throw none, the raft of a consommé is not to be
    /// touched, and a glace was skimmed as a stock.
    /// </summary>
    public static bool IsSkimmed(this StockKind kind) => kind is not (
        StockKind.KelpAndDriedFish or StockKind.KelpOnly or StockKind.SecondDashi or StockKind.DriedMushroom or StockKind.Consomme or StockKind.Glace);
}
