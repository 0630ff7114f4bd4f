using Stockwright.Larder;
using Stockwright.Web.Features.Larder;
using Xunit;

namespace Stockwright.Web.Tests.Features.Larder;

/// <summary>Lists to choose from leave out rows kept for checking, but never drop one that was chosen before.</summary>
public sealed class OfferedCutsTests
{
    private const string Boiled = "chicken-feet-boiled";

    [Fact]
    public void Boiled_feet_are_in_no_list_of_cuts()
    {
        Assert.DoesNotContain(Boiled, CutOptions.Bones(StandardLarder.Table).With("").Value, StringComparison.Ordinal);
        Assert.DoesNotContain(Boiled, CutOptions.GivingGelatin(StandardLarder.Table).With("").Value, StringComparison.Ordinal);
        Assert.DoesNotContain(Boiled, CutOptions.All(StandardLarder.Table).With("").Value, StringComparison.Ordinal);
        Assert.Contains("\"chicken-feet\"", CutOptions.Bones(StandardLarder.Table).With("").Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_has_them_chosen_keeps_them()
    {
        Assert.Contains($"<option value=\"{Boiled}\" selected>Chicken feet, boiled</option>", CutOptions.Bones(StandardLarder.Table).With(Boiled).Value, StringComparison.Ordinal);
        Assert.Contains($"<option value=\"{Boiled}\" selected>Chicken feet, boiled</option>", CutOptions.All(StandardLarder.Table).With(Boiled).Value, StringComparison.Ordinal);
    }
}
