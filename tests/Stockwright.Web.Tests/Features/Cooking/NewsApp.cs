using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Stockwright.Cooling.Limits;
using Stockwright.Logbook;
using Stockwright.Web.Features.Cooking;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Fields;
using Xunit;

namespace Stockwright.Web.Tests.Features.Cooking;

/// <summary>The whole program in memory, at a moment the test sets, and timers fifty times as fast.</summary>
public sealed class NewsApp : WebApplicationFactory<Program>
{
    public const int TimersFasterBy = 50;

    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-batch-tests-");

    public DateTimeOffset Now { get; set; } = StockwrightFactory.Now;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public HttpClient Browser() => CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });

    /// <summary>Starts a batch of the usual plan that begins an hour from now.</summary>
    public async Task<Guid> StartBatchAsync(string name)
    {
        await using AsyncServiceScope scope = Services.CreateAsyncScope();
        TypedForm form = TypedForm.Empty.With(PlanFields.Recipe.Name, "white-chicken");
        PlanningInputs book = await scope.ServiceProvider.GetRequiredService<IKitchenSource>().LoadAsync(Stop);
        PlanView view = await scope.ServiceProvider.GetRequiredService<PlanService>().PlanAsync(form, Measures.UnitSystem.Metric, Stop);
        Assert.Empty(view.Problems);
        Stockwright.Planning.PlanRequest request = view.Typed.Request! with { Schedule = view.Typed.Request!.Schedule with { StartAt = Now.AddHours(1), ReadyBy = null } };
        Guid id = Guid.CreateVersion7(Now);
        await Services.GetRequiredService<BatchStore>().StartAsync(
            new NewBatch(
                id,
                name,
                StoredPlan.Of(Stockwright.Planning.BatchPlanner.Plan(request).Plan!, book.Kitchen.Name),
                "{}",
                StandardLimits.Default.Id,
                Now.AddHours(1)),
            Stop);
        Services.GetRequiredService<BatchChanges>().Tell(id);
        return id;
    }

    /// <summary>Enters something, as a page or an outbox would have it entered.</summary>
    public async Task EnterAsync(Guid batch, LogFact fact)
    {
        await Services.GetRequiredService<LogStore>().AppendAsync(
            new NewEntry { Id = Guid.CreateVersion7(Now), BatchId = batch, HappenedAt = Now, Who = "AB", Fact = fact }, Stop);
        Services.GetRequiredService<BatchChanges>().Tell(batch);
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("STOCKWRIGHT_DATA", data.FullName);
        builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(new Clock(this)).AddSingleton<JudgeStock>((_, _, _, _) => null));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        SqliteConnection.ClearAllPools();
        if (disposing && data.Exists)
        {
            data.Delete(recursive: true);
        }
    }

    private sealed class Clock(NewsApp app) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => app.Now;

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
            base.CreateTimer(callback, state, Sooner(dueTime), Sooner(period));

        private static TimeSpan Sooner(TimeSpan time) => time > TimeSpan.Zero ? time / TimersFasterBy : time;
    }
}
