using Stockwright.Larder;
using Stockwright.Recipes;

namespace Stockwright.Planning;

/// <summary>What the solids of a stock are called in a sentence: "the bones", "the vegetables", "the kelp". The one place that decides it.</summary>
public static class SolidsText
{
    /// <summary>What a cook calls it when the parts have no common name.</summary>
    private const string Everything = "everything in the pot";

    /// <summary>The main body of a recipe, as taken: for the form, where no plan stands yet.</summary>
    /// <param name="recipe">The recipe; lines the larder does not know are passed over.</param>
    /// <param name="larder">The larder.</param>
    /// <returns>With its article, for instance <c>the bones</c> or <c>everything in the pot</c>.</returns>
    public static string Of(StockRecipe recipe, LarderTable larder) =>
        Of([.. recipe.Lines.Where(line => line.Role == LineRole.Bones && !line.IsOptional)
            .Select(line => larder.TryFind(line.IngredientId, out Ingredient? found) ? found : null).OfType<Ingredient>()]);

    /// <summary>What is in the pot from the start, which the liquid has to cover.</summary>
    /// <param name="amounts">What goes in.</param>
    internal static string Of(IReadOnlyList<AmountLine> amounts) => Of([.. amounts.Select(line => (line.Ingredient, line.Line))], line => line.Joins == JoinMoment.Start, Everything);

    /// <summary>The same of a load.</summary>
    internal static string Covered(BatchLoad load) => Of(load, line => line.Joins == JoinMoment.Start);

    /// <summary>Without its article, for "2 kg of bones"; <c>solids</c> when the parts have no common name.</summary>
    internal static string Bare(BatchLoad load) => Of(load, line => line.Role == LineRole.Bones, "the solids")["the ".Length..];

    /// <summary>The main body among some lines of a load, or where it has none all of them.</summary>
    /// <param name="load">The load.</param>
    /// <param name="spokenOf">Which of it, for instance what is roasted.</param>
    /// <param name="otherwise">What to say when its parts have no common name.</param>
    internal static string Of(BatchLoad load, Func<RecipeLine, bool> spokenOf, string otherwise = Everything) =>
        Of([.. load.Items.Select(item => (item.Ingredient, item.Line))], spokenOf, otherwise);

    private static string Of(IReadOnlyList<(Ingredient Ingredient, RecipeLine Line)> lines, Func<RecipeLine, bool> spokenOf, string otherwise)
    {
        (Ingredient Ingredient, RecipeLine Line)[] spoken =
        [
            .. lines.Where(line => spokenOf(line.Line) && line.Ingredient.Group != IngredientGroup.Liquid
                && line.Line.Role is not LineRole.Acid and not LineRole.Paste and not LineRole.Fat and not LineRole.Seasoning),
        ];
        (Ingredient Ingredient, RecipeLine Line)[] body = [.. spoken.Where(line => line.Line.Role == LineRole.Bones)];
        return Of([.. (body.Length > 0 ? body : spoken).Select(line => line.Ingredient)], otherwise);
    }

    private static string Of(IReadOnlyCollection<Ingredient> ingredients, string otherwise = Everything)
    {
        // Herbs beside them give no heap a name.
        Body[] kinds = [.. ingredients.Where(ingredient => ingredient.Group != IngredientGroup.Aromatic).Select(KindOf).Distinct()];
        return kinds switch
        {
            [Body.Bones] => "the bones",
            [Body.Meat] => "the meat",
            [Body.Shells] => "the shells",
            [Body.Mushrooms] => "the mushrooms",
            [Body.Kelp] => "the kelp",
            [Body.DriedFish] => "the dried fish",
            _ when kinds.Length > 0 && Array.TrueForAll(kinds, kind => kind is Body.Bones or Body.Meat) => "the bones and meat",
            _ when kinds.Length > 0 && Array.TrueForAll(kinds, kind => kind is Body.Vegetables or Body.Mushrooms) => "the vegetables",
            _ => otherwise,
        };
    }

    private static Body KindOf(Ingredient ingredient) => ingredient.Group switch
    {
        // A whole bird has bones too, but nobody calls it that.
        IngredientGroup.Beef or IngredientGroup.Veal or IngredientGroup.Poultry or IngredientGroup.Pork or IngredientGroup.Lamb or IngredientGroup.Game
            => Has(ingredient, "lean") || Has(ingredient, "whole") ? Body.Meat : Body.Bones,
        IngredientGroup.Fish => Body.Bones,
        IngredientGroup.Shellfish => Body.Shells,
        IngredientGroup.Vegetable => Has(ingredient, "mushroom") || Has(ingredient, "shiitake") ? Body.Mushrooms : Body.Vegetables,
        IngredientGroup.DriedSeafood => Has(ingredient, "kombu") || Has(ingredient, "kelp") ? Body.Kelp : Body.DriedFish,
        _ => Has(ingredient, "bones") ? Body.Bones : Body.Other,
    };

    private static bool Has(Ingredient ingredient, string word) => ingredient.Id.Contains(word, StringComparison.OrdinalIgnoreCase);

    private enum Body
    {
        Bones,
        Meat,
        Shells,
        Vegetables,
        Mushrooms,
        Kelp,
        DriedFish,
        Other,
    }
}
