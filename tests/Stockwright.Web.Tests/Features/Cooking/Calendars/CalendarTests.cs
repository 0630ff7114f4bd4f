using System.Net;
using System.Text;
using Ical.Net.CalendarComponents;
using Microsoft.Extensions.DependencyInjection;
using Stockwright.Cooking;
using Stockwright.Logbook;
using Stockwright.Planning;
using Stockwright.Web.Features.Cooking;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking.Calendars;

/// <summary>Calendars, held against RFC 5545 by a reader of our own and read back by the library.</summary>
public sealed class CalendarTests
{
    /// <summary>Everything 3.3.11 escapes, characters of two, three and four octets, and more than one line long.</summary>
    private const string Awkward = "Fond brun; veau, bœuf & co. C:\\pots\\big – 昆布だしと鶏ガラの寸胴鍋いっぱいのスープストック 🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲🍲\nsecond line";

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_batch_is_a_valid_calendar_of_the_steps_that_need_hands()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync("Sunday");
        CalendarRules.Component calendar = CalendarRules.Read(await FileAsync(app, $"/batches/{batch}/calendar.ics"));
        BatchCourse course = await CourseAsync(app, batch);
        List<PlanStep> wanted = [.. course.Steps.Select(step => step.Step).Where(step => step.HandsOn > TimeSpan.Zero)];
        Assert.NotEmpty(wanted);
        Assert.Equal(
            wanted.Select(step => ($"{batch:D}-{step.Key}@stockwright", Seconds(step.At), $"{step.Title} – Sunday")),
            calendar.Events.Select(told => (told.One("UID"), CalendarRules.Utc(told.One("DTSTART")), told.Text("SUMMARY"))));
        Assert.All(calendar.Events, told =>
        {
            Assert.Equal("CONFIRMED", told.One("STATUS"));
            Assert.Equal("0", told.One("SEQUENCE"));
            Assert.Equal("P0D, -PT5M", string.Join(", ", told.Parts.Select(alarm => alarm.One("TRIGGER"))));
            Assert.Contains("keep a kitchen timer", told.Text("DESCRIPTION"), StringComparison.Ordinal);
        });
        PlanStep cautious = wanted.First(step => step.Cautions.Count > 0);
        Assert.Contains(cautious.Cautions[0].Text, calendar.Events.ElementAt(wanted.IndexOf(cautious)).Text("DESCRIPTION"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Awkward_names_are_folded_and_escaped()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync(Awkward);
        CalendarRules.Component calendar = CalendarRules.Read(await FileAsync(app, $"/batches/{batch}/calendar.ics"));
        Assert.All(calendar.Events, told => Assert.EndsWith(Awkward, told.Text("SUMMARY"), StringComparison.Ordinal));
        Assert.Equal(Awkward, calendar.Text("NAME"));
    }

    /// <summary>RFC 5545, 3.8.7.4: the sequence is raised when an event is revised, its UID (3.8.4.7) stays.</summary>
    [Fact]
    public async Task Each_entry_raises_the_sequence_and_a_done_step_loses_its_alarm()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync("Sunday");
        string address = $"/batches/{batch}/calendar.ics";
        CalendarRules.Component before = CalendarRules.Read(await FileAsync(app, address));
        string key = (await CourseAsync(app, batch)).Steps.First(step => step.Step.HandsOn > TimeSpan.Zero).Key;
        app.Now += TimeSpan.FromMinutes(65);
        await app.EnterAsync(batch, new LogFact.StepDone(key));
        await app.EnterAsync(batch, new LogFact.Skimmed());

        CalendarRules.Component after = CalendarRules.Read(await FileAsync(app, address));
        Assert.Equal(
            before.Events.Select(told => told.One("UID")).Order(StringComparer.Ordinal),
            after.Events.Select(told => told.One("UID")).Order(StringComparer.Ordinal),
            StringComparer.Ordinal);
        Assert.All(after.Events, told =>
        {
            Assert.Equal("2", told.One("SEQUENCE"));
            Assert.Equal(app.Now, CalendarRules.Utc(told.One("LAST-MODIFIED")));
        });
        CalendarRules.Component done = after.Events.First(told => told.One("UID").Contains($"-{key}@", StringComparison.Ordinal));
        Assert.Equal("CANCELLED", done.One("STATUS"));
        Assert.Empty(done.Parts);

        // What is subscribed to is read whole: there it is left out.
        CalendarRules.Component feed = CalendarRules.Read(await FileAsync(app, $"/calendar/{await TokenAsync(app)}.ics"));
        Assert.NotEmpty(feed.Events);
        Assert.Equal(
            after.Events.Where(told => told.One("STATUS") is "CONFIRMED").Select(told => told.One("UID")),
            feed.Events.Select(told => told.One("UID")),
            StringComparer.Ordinal);
        Assert.DoesNotContain(feed.Events, told => told.One("UID").Contains($"-{key}@", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_feed_holds_every_open_batch_and_no_closed_one()
    {
        await using NewsApp app = new();
        Guid one = await app.StartBatchAsync("One");
        Guid other = await app.StartBatchAsync("Other");
        Guid over = await app.StartBatchAsync("Over");
        await app.EnterAsync(over, new LogFact.Closed());
        CalendarRules.Component feed = CalendarRules.Read(await FileAsync(app, $"/calendar/{await TokenAsync(app)}.ics"));
        Assert.Equal(
            new[] { one, other }.Order(),
            feed.Events.Select(told => Guid.Parse(told.One("UID")[..36])).Distinct().Order());
        Assert.All(CalendarRules.Read(await FileAsync(app, $"/batches/{over}/calendar.ics")).Events, told => Assert.Equal("CANCELLED", told.One("STATUS")));
    }

    [Fact]
    public async Task Only_the_secret_address_answers_and_a_renewed_one_replaces_it()
    {
        await using NewsApp app = new();
        string token = await TokenAsync(app);
        HttpClient browser = app.Browser();
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(browser, $"/calendar/{token[..^1]}{(token[^1] == '0' ? '1' : '0')}.ics"));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(browser, "/calendar/x.ics"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(browser, $"/calendar/{token}.ics"));

        using HttpRequestMessage foreign = new(HttpMethod.Post, "/calendar/renew");
        foreign.Headers.Add("Sec-Fetch-Site", "cross-site");
        using HttpResponseMessage refused = await browser.SendAsync(foreign, Stop);
        Assert.Equal(HttpStatusCode.Forbidden, refused.StatusCode);
        Assert.Equal(token, await TokenAsync(app));

        using HttpResponseMessage renewed = await browser.PostAsync(new Uri("/calendar/renew?back=/batches", UriKind.Relative), null, Stop);
        Assert.Equal((HttpStatusCode.SeeOther, "/batches"), (renewed.StatusCode, renewed.Headers.Location?.ToString()));
        Assert.Equal(HttpStatusCode.NotFound, await StatusAsync(browser, $"/calendar/{token}.ics"));
        Assert.Equal(HttpStatusCode.OK, await StatusAsync(browser, $"/calendar/{await TokenAsync(app)}.ics"));
    }

    [Fact]
    public async Task The_library_reads_back_what_it_wrote()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync(Awkward);
        Ical.Net.Calendar calendar = Ical.Net.Calendar.Load(Encoding.UTF8.GetString(await FileAsync(app, $"/batches/{batch}/calendar.ics")))!;
        List<PlanStep> wanted = [.. (await CourseAsync(app, batch)).Steps.Select(step => step.Step).Where(step => step.HandsOn > TimeSpan.Zero)];
        Assert.Equal(wanted.Count, calendar.Events.Count);
        foreach ((PlanStep step, CalendarEvent told) in wanted.Zip(calendar.Events))
        {
            Assert.Equal($"{step.Title} – {Awkward}", told.Summary);
            Assert.Equal(Seconds(step.At).UtcDateTime, told.Start!.AsUtc);
            Assert.Equal(2, told.Alarms.Count);
        }
    }

    private static DateTimeOffset Seconds(DateTimeOffset moment) => DateTimeOffset.FromUnixTimeSeconds(moment.ToUnixTimeSeconds());

    private static Task<string> TokenAsync(NewsApp app) => app.Services.GetRequiredService<BatchStore>().CalendarTokenAsync(Stop);

    private static async Task<HttpStatusCode> StatusAsync(HttpClient browser, string address)
    {
        using HttpResponseMessage answer = await browser.GetAsync(new Uri(address, UriKind.Relative), Stop);
        return answer.StatusCode;
    }

    private static async Task<BatchCourse> CourseAsync(NewsApp app, Guid batch)
    {
        await using AsyncServiceScope scope = app.Services.CreateAsyncScope();
        return (await scope.ServiceProvider.GetRequiredService<BatchService>().OpenAsync(batch, Measures.UnitSystem.Metric, Stop))!.Course!;
    }

    private static async Task<byte[]> FileAsync(NewsApp app, string address)
    {
        using HttpResponseMessage answer = await app.Browser().GetAsync(new Uri(address, UriKind.Relative), Stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("text/calendar", answer.Content.Headers.ContentType?.MediaType);
        return await answer.Content.ReadAsByteArrayAsync(Stop);
    }
}
