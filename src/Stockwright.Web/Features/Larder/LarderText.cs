using Stockwright.Larder;

namespace Stockwright.Web.Features.Larder;

/// <summary>Shelves of the larder as a cook reads them.</summary>
internal static class LarderText
{
    public static string Of(IngredientGroup group) => group switch
    {
        IngredientGroup.Vegetable => "Vegetables and mushrooms",
        IngredientGroup.Aromatic => "Herbs and spices",
        IngredientGroup.DriedSeafood => "Seaweed and dried fish",
        _ => group.ToString(),
    };
}
