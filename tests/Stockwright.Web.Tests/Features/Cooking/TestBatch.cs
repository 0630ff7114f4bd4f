using Stockwright.Cooking;
using Stockwright.Cooling.Limits;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;
using Stockwright.Web.Tests.Features.Planning;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking;

/// <summary>A batch in a kitchen of some zone, for tests of what is read off a form.</summary>
internal static class TestBatch
{
    public static Batch In(string zone)
    {
        PlanRequest request = PlanQuery.Parse(TypedForm.Empty, TestBook.In(zone), UnitSystem.Metric, TestBook.Now).Request!;
        Assert.Equal(zone, request.Schedule.Zone.Id);
        return new Batch { Id = Guid.CreateVersion7(), Name = "Test", Planned = FakePlan.For(request), Limit = StandardLimits.Default, StartedAt = TestBook.Now };
    }

    public static TypedForm Form(params (string Name, string Value)[] fields) =>
        new([KeyValuePair.Create(EntryFields.Entry, Guid.CreateVersion7().ToString()), .. fields.Select(field => KeyValuePair.Create(field.Name, field.Value))]);

    public static EntryReader Reader(Batch batch, DateTimeOffset now, params (string Name, string Value)[] fields) =>
        new(Form(fields), UnitSystem.Metric, batch, now);
}
