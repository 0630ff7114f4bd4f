using Stockwright.Larder;

namespace Stockwright.Simmering;

/// <summary>An amount of food by what it is made of, kg.</summary>
/// <param name="Water">Water.</param>
/// <param name="Protein">Protein, collagen and gelatin included.</param>
/// <param name="Fat">Fat.</param>
/// <param name="Ash">Minerals, bone and salt included.</param>
/// <param name="Other">The rest: sugars, fibre, alcohol, and what the food tables round away.</param>
internal readonly record struct Matter(double Water, double Protein, double Fat, double Ash, double Other)
{
    public double Kilograms => Water + Protein + Fat + Ash + Other;

    public static Matter OfWater(double kilograms) => new(kilograms, 0, 0, 0, 0);

    /// <summary>A mass of an ingredient. Food tables may add up to a little more than the whole: then all parts are scaled to it.</summary>
    public static Matter Of(Ingredient ingredient, double kilograms)
    {
        Matter parts = new(
            ingredient.Water.Value.DecimalFractions,
            ingredient.Protein.Value.DecimalFractions,
            ingredient.Fat.Value.DecimalFractions,
            ingredient.Ash.Value.DecimalFractions,
            ingredient.Carbohydrate.DecimalFractions);
        return parts * (kilograms / parts.Kilograms);
    }

    public static Matter operator +(Matter one, Matter other) => new(
        one.Water + other.Water, one.Protein + other.Protein, one.Fat + other.Fat, one.Ash + other.Ash, one.Other + other.Other);

    public static Matter operator -(Matter one, Matter other) => one + (other * -1);

    public static Matter operator *(Matter one, double factor) => new(
        one.Water * factor, one.Protein * factor, one.Fat * factor, one.Ash * factor, one.Other * factor);
}
