using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Web.Features.Larder;
using Stockwright.Web.Fields;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Larder;

/// <summary>An ingredient as a form: what is not touched keeps its range and source.</summary>
public sealed class IngredientFieldsTests
{
    public static TheoryData<string> Standing => [.. StandardLarder.Table.Ingredients.Select(row => row.Id)];

    [Theory]
    [MemberData(nameof(Standing))]
    public void An_ingredient_read_as_it_was_shown_is_the_same_in_either_measure(string id)
    {
        Ingredient row = StandardLarder.Table.Get(id);
        foreach (UnitSystem units in new[] { UnitSystem.Metric, UnitSystem.UsCustomary })
        {
            FieldReader reader = new(IngredientFields.Write(row, units), units);
            Ingredient? read = IngredientFields.Read(reader, row);
            Assert.Empty(reader.Problems);
            Assert.Equal(row.Pieces, read!.Pieces);
            Assert.Equal(row with { Pieces = read.Pieces }, read);
        }
    }

    [Fact]
    public void A_blank_is_no_figure_and_a_changed_one_is_the_cooks()
    {
        Ingredient onion = StandardLarder.Table.Get("onion");
        TypedForm typed = IngredientFields.Write(onion, UnitSystem.Metric).With("refuse", null).With("roast-loss", "12,5").With("piece-0-mass", "77");
        Ingredient read = IngredientFields.Read(new FieldReader(typed, UnitSystem.Metric), onion)!;
        Assert.NotNull(onion.Refuse);
        Assert.Null(read.Refuse);
        Assert.Equal((0.125, Provenance.CookStated), (read.RoastLoss!.Value.DecimalFractions, read.RoastLoss.Provenance));
        Assert.Equal((77, Provenance.CookStated), (Math.Round(read.Pieces[0].Mass.Value.Grams, 9), read.Pieces[0].Mass.Provenance));
        Assert.Equal(onion.TrueDensity, read.TrueDensity);
    }
}
