using Stockwright.Recipes;

namespace Stockwright.Storage.Mapping;

/// <summary>A recipe as one stored recipe file.</summary>
internal static class RecipeText
{
    public static string Write(StockRecipe recipe) => throw new NotSupportedException(recipe.Id);

    public static StockRecipe Read(string json) => throw new StoredDocumentException(json);
}
