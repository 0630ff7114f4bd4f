using Stockwright.Measures;
using Stockwright.Web.Features.Cooking;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking;

/// <summary>A prediction kept is never one of another log.</summary>
public sealed class OutlookCacheTests
{
    private readonly BatchApp.TestClock clock = new(new DateTimeOffset(2026, 11, 25, 8, 0, 0, TimeSpan.Zero));
    private int made;

    [Fact]
    public void A_prediction_is_made_anew_after_an_entry_in_other_measures_and_after_two_minutes()
    {
        OutlookCache shelf = new(clock);
        Guid batch = Guid.CreateVersion7();
        Assert.Equal(1, Asked(shelf, batch, 3));
        Assert.Equal(1, Asked(shelf, batch, 3));
        Assert.Equal(2, Asked(shelf, batch, 4));
        Assert.Equal(3, Asked(shelf, batch, 4, UnitSystem.UsCustomary));
        Assert.Equal(4, Asked(shelf, Guid.CreateVersion7(), 4));
        Assert.Equal(4, Asked(shelf, batch, 4));
        clock.Now += TimeSpan.FromMinutes(3);
        Assert.Equal(5, Asked(shelf, batch, 4));
        Assert.Equal(6, Asked(shelf, batch, null));
        clock.Now += TimeSpan.FromDays(3);
        Assert.Equal(6, Asked(shelf, batch, null));
    }

    [Fact]
    public void Few_are_kept()
    {
        OutlookCache shelf = new(clock);
        Guid first = Guid.CreateVersion7();
        Asked(shelf, first, null);
        for (int other = 0; other < 40; other++)
        {
            clock.Now += TimeSpan.FromSeconds(1);
            Asked(shelf, Guid.CreateVersion7(), null);
        }

        Assert.Equal(42, Asked(shelf, first, null));
    }

    private int Asked(OutlookCache shelf, Guid batch, int? entries, UnitSystem units = UnitSystem.Metric)
    {
        Assert.Null(shelf.Take(batch, entries, units, () =>
        {
            made++;
            return null;
        }));
        return made;
    }
}
