using Stockwright.Larder;
using Stockwright.Recipes;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>One ingredient of one round.</summary>
/// <param name="Ingredient">The larder row.</param>
/// <param name="Line">The recipe line it comes from; bones at hand borrow the line of the recipe's first bones.</param>
/// <param name="Mass">Mass as it goes in: trimmed, raw, before roasting; exact, unrounded.</param>
/// <param name="AsBought">Mass to buy, peelings included.</param>
/// <param name="MassInPot">Mass after roasting or blanching.</param>
/// <param name="JoinsAt">Time after the heat goes on under the pot.</param>
public sealed record AmountLine(
    Ingredient Ingredient,
    RecipeLine Line,
    Mass Mass,
    Mass AsBought,
    Mass MassInPot,
    TimeSpan JoinsAt);
