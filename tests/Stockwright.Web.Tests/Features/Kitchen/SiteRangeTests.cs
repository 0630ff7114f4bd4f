using Stockwright.Kitchen;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;
using Stockwright.Web.Tests.Features.Planning;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Kitchen;

/// <summary>A kitchen that may be saved may be planned in: page, planner and core know one range of each figure.</summary>
public sealed class SiteRangeTests
{
    [Theory]
    [InlineData("room", "50", true)]
    [InlineData("room", "53", false)]
    [InlineData("tap", "40", true)]
    [InlineData("tap", "60", false)]
    [InlineData("film", "1.6", true)]
    [InlineData("film", "1.7", false)]
    [InlineData("altitude", "-400", true)]
    [InlineData("altitude", "5001", false)]
    [InlineData("pressure", "500", true)]
    [InlineData("pressure", "1101", false)]
    public void Kitchen_and_plan_take_the_same(string field, string typed, bool taken)
    {
        Assert.Equal(taken, PlanQuery.Parse(TypedForm.Empty.With(field, typed), TestBook.London, UnitSystem.Metric, TestBook.Now).Problems.Count == 0);
        FieldReader reader = new(TypedForm.Empty.With("name", "Home").With("zone", "Europe/London").With(field, typed), UnitSystem.Metric);
        KitchenDetails stored = new("Home", "Europe/London", new KitchenSite());
        Assert.Equal(taken, SiteFields.Form.Read(reader, "", stored) is not null);
    }
}
