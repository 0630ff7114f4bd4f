using Stockwright.Recipes;

namespace Stockwright.Storage.Recipes;

/// <summary>A recipe as one stored recipe file.</summary>
internal static class RecipeText
{
    public static string Write(StockRecipe recipe) => RecipeFile.ToJson(recipe);

    public static StockRecipe Read(string json)
    {
        try
        {
            return RecipeFile.Parse(json);
        }
        catch (FormatException trouble)
        {
            throw new StoredDocumentException($"The stored recipe cannot be read: {trouble.Message}", trouble);
        }
    }
}
