using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Larder;
using Xunit;

namespace Stockwright.Tests.Larder;

/// <summary>Every number of the standing cuts against a literal copy (Predicting/Data), so that none changes unseen.</summary>
public sealed class CutTableTests
{
    [Fact]
    public void The_classes_stand_as_they_were_written_down()
    {
        IEnumerable<string> standing = StandardCuts.Table.Classes.Select(cut => string.Join(
            ',',
            cut.Id,
            Words(cut.Collagen, ratio => ratio.Percent),
            Words(cut.SoftShare, ratio => ratio.Percent),
            Words(cut.SoftRate, rate => rate.PerSecond * 3600),
            Words(cut.HardRate, rate => rate.PerSecond * 3600),
            Words(cut.FreshBloom, mass => mass.Grams),
            Words(cut.Extractives, ratio => ratio.Percent),
            Words(cut.FreedFat, ratio => ratio.Percent),
            Word(cut.ReferencePiece.Centimeters),
            Word(cut.ExtractivesRate.PerSecond * 3600),
            Word(cut.ExtractsFrom.DegreesCelsius),
            Word(cut.MeltingShift.Kelvins)));
        AssertSame("Predicting.Data.cut-classes.csv", standing);
    }

    [Fact]
    public void Each_ingredient_is_of_the_class_that_was_written_down()
    {
        IEnumerable<string> standing = StandardLarder.Table.Ingredients.Select(row =>
        {
            Solubles solubles = StandardCuts.Table.SolublesOf(row);
            return string.Join(
                ',',
                row.Id,
                StandardCuts.Table.ClassOf(row)?.Id,
                Words(solubles.Sugars, ratio => ratio.Percent),
                Words(solubles.Sodium, ratio => ratio.DecimalFractions * 1e5));
        });
        AssertSame("Predicting.Data.cut-ingredients.csv", standing);
    }

    /// <summary>A name that is nobody's would sit in the file unused.</summary>
    [Fact]
    public void No_class_stands_for_nothing()
    {
        HashSet<string> used = [.. StandardLarder.Table.Ingredients.Select(row => StandardCuts.Table.ClassOf(row)?.Id).OfType<string>()];
        Assert.Equal(StandardCuts.Table.Classes.Select(cut => cut.Id).Order(StringComparer.Ordinal), used.Order(StringComparer.Ordinal));
    }

    private static void AssertSame(string table, IEnumerable<string> standing)
    {
        HashSet<string> written = [.. CsvTable.Read(table).Select(row => string.Join(',', row.Values))];
        HashSet<string> stands = [.. standing];
        string[] fresh = [.. stands.Except(written, StringComparer.Ordinal)];
        string[] gone = [.. written.Except(stands, StringComparer.Ordinal)];
        Assert.True(
            fresh.Length + gone.Length == 0,
            string.Join(Environment.NewLine, [$"{table} differs. If that is meant, take out", .. gone, "and put in", .. fresh]));
    }

    private static string Words<T>(Stated<T> number, Func<T, double> unit) => $"{Word(unit(number.Value))}/{Word(unit(number.Low))}/{Word(unit(number.High))}";

    private static string Word(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
