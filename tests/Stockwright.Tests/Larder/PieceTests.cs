using System.Globalization;
using CsCheck;
using Stockwright.Larder;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Tests.Larder;

public sealed class PieceTests
{
    private static readonly Ingredient Onion = StandardLarder.Table.Get("onion");

    private static readonly Gen<(Ingredient Row, Piece Piece)> AnyPiece =
        from row in Gen.OneOfConst([.. StandardLarder.Table.Ingredients.Where(row => row.Pieces.Count > 0)])
        from index in Gen.Int[0, row.Pieces.Count - 1]
        select (row, row.Pieces[index]);

    [Fact]
    public void Three_medium_onions_are_330_grams_trimmed_and_367_as_bought()
    {
        // USDA SR28 11282: a medium onion is 110 g edible, refuse 10 %.
        Assert.True(PieceParser.TryParse("3 medium onions", Onion, out Mass trimmed));
        Assert.Equal(330, trimmed.Grams, 3.3);
        Assert.Equal(367, Onion.AsBought(trimmed).Grams, 3.67);
        Assert.Equal(330, Onion.Trimmed(Onion.AsBought(trimmed)).Grams, 1e-9);
    }

    [Fact]
    public void Three_large_egg_whites_are_99_grams()
    {
        // USDA SR28 01124: 33 g each.
        Assert.True(PieceParser.TryParse("3 large whites", StandardLarder.Table.Get("egg-white"), out Mass mass));
        Assert.Equal(99, mass.Grams, 1e-9);
    }

    [Theory]
    [InlineData("onion", "2 large", 300)]
    [InlineData("onion", "2 large onions", 300)]
    [InlineData("onion", "3 onions", 330)]
    [InlineData("onion", "3", 330)]
    [InlineData("onion", "1 1/2 medium onions", 165)]
    [InlineData("onion", "1½ medium onion", 165)]
    [InlineData("onion", "1 ½ med. onion", double.NaN)]
    [InlineData("onion", "1 ½ med onion", 165)]
    [InlineData("onion", "1/2 onion", 55)]
    [InlineData("onion", "half an onion", 55)]
    [InlineData("onion", "an onion", 110)]
    [InlineData("onion", "2,5 onions", 275)]
    [InlineData("onion", "2.5 onions", 275)]
    [InlineData("onion", " TWO  Large Onions ", 300)]
    [InlineData("celery", "4 stalks", 160)]
    [InlineData("celery", "4 large stalks of celery", 256)]
    [InlineData("bay-leaf", "2 bay leaves", 0.4)]
    [InlineData("bay-leaf", "1 leaf", 0.2)]
    [InlineData("chicken-carcass", "2 carcasses", 650)]
    [InlineData("chicken-feet", "8 feet", 300)]
    [InlineData("peppercorn", "1 tbsp", 8.7)]
    [InlineData("peppercorn", "10 peppercorns", 0.45)]
    [InlineData("kombu", "10 cm piece", 15)]
    [InlineData("kombu", "2 10 cm pieces", 30)]
    [InlineData("kombu", "2 pieces of 10 cm", 30)]
    [InlineData("kombu", "2 pieces of 4 in", 30)]
    [InlineData("kombu", "10 cm", double.NaN)]
    [InlineData("beef-marrow-bone", "8 slices of 5 cm", 1600)]
    [InlineData("beef-marrow-bone", "8 slices", 1600)]
    [InlineData("tomato-paste", "6 oz", double.NaN)]
    [InlineData("tomato-paste", "6 oz can", 170)]
    [InlineData("tomato", "3 tomatoes", 369)]
    [InlineData("onion", "", double.NaN)]
    [InlineData("onion", "onions", double.NaN)]
    [InlineData("onion", "0 onions", double.NaN)]
    [InlineData("onion", "-3 onions", double.NaN)]
    [InlineData("onion", "3 carrots", double.NaN)]
    [InlineData("onion", "330 g", double.NaN)]
    [InlineData("onion", "1,000.5 onions", double.NaN)]
    [InlineData("onion", "1/0 onion", double.NaN)]
    [InlineData("onion", "NaN onions", double.NaN)]
    [InlineData("onion", "1e3 onions", double.NaN)]
    [InlineData("onion", "3-4 onions", double.NaN)]
    [InlineData("beef-suet", "3", double.NaN)]
    public void Counts_are_read_as_cooks_type_them(string id, string text, double grams)
    {
        bool understood = PieceParser.TryParse(text, StandardLarder.Table.Get(id), out Mass mass);
        Assert.Equal(!double.IsNaN(grams), understood);
        if (understood)
        {
            Assert.Equal(grams, mass.Grams, 1e-9);
        }
    }

    [Theory]
    [InlineData("onion", 330, "3 medium onions")]
    [InlineData("onion", 165, "1½ medium onions")]
    [InlineData("onion", 55, "½ medium onion")]
    [InlineData("onion", 396, "3½ medium onions")]
    [InlineData("onion", 480, "4 medium onions")]
    [InlineData("onion", 2530, "20 medium onions")]
    [InlineData("onion", 5500, "50 medium onions")]
    [InlineData("bay-leaf", 0.6, "3 leaves")]
    [InlineData("garlic", 9, "3 cloves")]
    [InlineData("garlic", 120, "3 heads")]
    [InlineData("peppercorn", 0.3, "7 peppercorns")]
    [InlineData("chicken-carcass", 2700, "8 carcasses")]
    [InlineData("beef-marrow-bone", 1600, "8 slices of 5\u00A0cm")]
    [InlineData("kombu", 15, "1 piece of 10\u00A0cm")]
    public void Masses_are_counted_as_a_cook_counts(string id, double grams, string words)
    {
        // Halves below four, whole up to twenty, tens above: common practice, no source.
        PieceCount? count = PieceCount.Describe(StandardLarder.Table.Get(id), Mass.FromGrams(grams));
        Assert.Equal(words, count?.ToString());
    }

    // 5 cm are 1.97 in, 8 cm 3.15, 10 cm 3.94; a cut is good to half an inch. 6 oz are 170.1 g.
    [Theory]
    [InlineData("beef-marrow-bone", 1600, UnitSystem.UsCustomary, "8 slices of 2\u00A0in")]
    [InlineData("kombu", 30, UnitSystem.UsCustomary, "2 pieces of 4\u00A0in")]
    [InlineData("cassia", 4, UnitSystem.UsCustomary, "1 stick of 3\u00A0in")]
    [InlineData("cassia", 4, UnitSystem.Metric, "1 stick of 8\u00A0cm")]
    [InlineData("onion", 330, UnitSystem.UsCustomary, "3 medium onions")]
    public void A_size_stands_behind_the_count(string id, double grams, UnitSystem units, string words)
    {
        Ingredient row = StandardLarder.Table.Get(id);
        string text = PieceCount.Describe(row, Mass.FromGrams(grams))!.Text(units);
        Assert.Equal(words, text);
        Assert.True(PieceParser.TryParse(text, row, out Mass read));
        Assert.Equal(grams, read.Grams, 1e-9);
    }

    // Worked from the larder's own pieces: a bay leaf 0.2 g, a peppercorn 0.045 g, a clove 0.085 g, a teaspoon of dried thyme 1 g.
    [Theory]
    [InlineData("bay-leaf", 0.06, "½ leaf")]
    [InlineData("bay-leaf", 0.24, "1 leaf")]
    [InlineData("bay-leaf", 0.03, "a pinch")]
    [InlineData("peppercorn", 0.09, "2 peppercorns")]
    [InlineData("peppercorn", 0.3, "7 peppercorns")]
    [InlineData("clove", 0.015, "a pinch")]
    [InlineData("clove", 0.06, "1 clove")]
    [InlineData("thyme-dried", 0.12, "⅛ teaspoon")]
    [InlineData("thyme-dried", 0.24, "¼ teaspoon")]
    [InlineData("thyme-dried", 0.48, "½ teaspoon")]
    [InlineData("thyme-dried", 1.4, "1½ teaspoons")]
    [InlineData("salt", 0.8, "⅛ teaspoon")]
    [InlineData("vinegar", 0.1, "a few drops")]
    [InlineData("vinegar", 2.5, "½ teaspoon")]
    public void What_no_scale_shows_is_measured_by_piece_or_spoon(string id, double grams, string words) =>
        Assert.Equal(words, SmallMeasure.Of(StandardLarder.Table.Get(id), Mass.FromGrams(grams)));

    [Fact]
    public void Nothing_is_rounded_away() =>
        Gen.Select(Gen.OneOfConst([.. StandardLarder.Table.Ingredients]), Gen.Double[1e-4, 5]).Sample((row, grams) =>
        {
            string words = SmallMeasure.Of(row, Mass.FromGrams(grams));
            Assert.False(words.Length == 0 || words.StartsWith('0') || words.Contains("NaN", StringComparison.Ordinal), words);
        });

    [Theory]
    [InlineData(0.99, UnitSystem.Metric, true)]
    [InlineData(1, UnitSystem.Metric, false)]
    [InlineData(2.8, UnitSystem.UsCustomary, true)]
    [InlineData(2.9, UnitSystem.UsCustomary, false)]
    public void A_scale_shows_grams_or_tenths_of_an_ounce(double grams, UnitSystem units, bool unseen) =>
        Assert.Equal(unseen, SmallMeasure.IsUnderScale(Mass.FromGrams(grams), units));

    [Theory]
    [InlineData("beef-suet", 500)]
    [InlineData("onion", 5)]
    [InlineData("onion", 20)] // Nearest is half a small onion, 35 g: too far off to say.
    [InlineData("onion", 0)]
    [InlineData("onion", -100)]
    public void Where_no_piece_makes_sense_none_is_given(string id, double grams) =>
        Assert.Null(PieceCount.Describe(StandardLarder.Table.Get(id), Mass.FromGrams(grams)));

    [Fact]
    public void What_is_described_can_be_read_back()
    {
        Gen.Select(AnyPiece, Gen.Double[0.3, 60]).Sample((picked, howMany) =>
        {
            Mass mass = new PieceCount(howMany, picked.Piece).TrimmedMass(picked.Row);
            PieceCount? described = PieceCount.Describe(picked.Row, mass);
            if (described is null)
            {
                return;
            }

            Assert.True(PieceParser.TryParse(described.ToString(), picked.Row, out Mass read), described.ToString());
            Assert.Equal(described.TrimmedMass(picked.Row).Grams, read.Grams, 1e-6 * mass.Grams);
            Assert.InRange(read.Grams, mass.Grams * 0.749, mass.Grams * 1.251);
        });
    }

    [Fact]
    public void Any_count_of_a_named_piece_is_read_in_proportion()
    {
        Gen.Select(AnyPiece, Gen.Int[1, 500], Gen.Bool).Sample((picked, tenths, comma) =>
        {
            string number = (tenths / 10.0).ToString("0.0", CultureInfo.InvariantCulture);
            string text = (comma ? number.Replace('.', ',') : number) + " " + picked.Piece.Plural;
            Assert.True(PieceParser.TryParseCount(text, picked.Row, out PieceCount? count), text);
            Assert.Equal(picked.Piece, count.Piece);
            Assert.Equal(tenths / 10.0, count.Count, 1e-12);
        });
    }

    [Fact]
    public void No_text_breaks_the_parser()
    {
        Gen.Select(Gen.String[Gen.Char["0123456789 .,/½¼-abconis\t⁄"], 0, 20], AnyPiece).Sample((text, picked) =>
        {
            if (PieceParser.TryParse(text, picked.Row, out Mass mass))
            {
                Assert.True(mass > Mass.Zero);
            }
        });
    }
}
