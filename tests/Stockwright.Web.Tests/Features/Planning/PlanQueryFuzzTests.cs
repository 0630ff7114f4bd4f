using CsCheck;
using Stockwright.Planning;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;
using Stockwright.Web.Tests.Fields;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Web.Tests.Features.Planning;

/// <summary>Whatever is sent, the codec answers with a request or with reasons, never with an exception, and keeps what was typed.</summary>
public class PlanQueryFuzzTests
{
    [Fact]
    public void Never_throws_and_keeps_everything() => HostileForms.Forms.Sample(entries =>
    {
        TypedForm form = new(entries);
        PlanQueryResult result = PlanQuery.Parse(form, TestBook.London, UnitSystem.Metric, TestBook.Now);
        Assert.Equal(result.Request is null, result.Problems.Count > 0);
        Assert.All(result.Problems, problem => Assert.True(problem.Message.Length is > 0 and < 300, problem.Message));

        // Rows of cuts are numbered afresh and blank ones dropped; everything else stands as it was typed.
        Assert.Equal(
            entries.Where(entry => !RowFields.TryRead(entry.Key, out _)),
            result.Form.Entries.Where(entry => !RowFields.TryRead(entry.Key, out _)));
        Assert.Equal(
            entries.Count(entry => RowFields.TryRead(entry.Key, out _) && !string.IsNullOrWhiteSpace(entry.Value)),
            result.Form.Entries.Count(entry => RowFields.TryRead(entry.Key, out _)));
        _ = result.Form.ToQuery();
        _ = PlanQuery.InUnits(form, UnitSystem.Metric, UnitSystem.UsCustomary).ToQuery();
    }, iter: 3000);

    [Fact]
    public void What_was_accepted_can_be_written_and_read_again() => HostileForms.Forms.Sample(entries =>
    {
        PlanRequest? request = PlanQuery.Parse(new TypedForm(entries), TestBook.London, UnitSystem.Metric, TestBook.Now).Request;
        if (request is not null)
        {
            string query = PlanQuery.ToQuery(request, TestBook.London.Kitchen, UnitSystem.UsCustomary);
            TypedForm written = TypedForm.From(Microsoft.AspNetCore.WebUtilities.QueryHelpers.ParseQuery(query));
            PlanQueryResult again = PlanQuery.Parse(written, TestBook.London, UnitSystem.Metric, TestBook.Now);
            Assert.True(again.Request is not null, query + " " + string.Join(' ', again.Problems));
        }
    }, iter: 3000);
}
