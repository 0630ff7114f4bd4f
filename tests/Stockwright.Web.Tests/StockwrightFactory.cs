using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http.Timeouts;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Stockwright.Web.Shell;
using Stockwright.Web.Tests;
using Xunit;

[assembly: AssemblyFixture(typeof(StockwrightFactory))]

namespace Stockwright.Web.Tests;

/// <summary>
/// The whole program in memory, on a data folder of its own, at a fixed moment: one for all tests that only read. A test that
/// writes or moves the clock starts a <see cref="KeepingApp"/> or another app of its own.
/// </summary>
public sealed class StockwrightFactory : WebApplicationFactory<Program>
{
    /// <summary>A Wednesday noon in winter, when the demo kitchen's clock shows UTC.</summary>
    public static readonly DateTimeOffset Now = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-web-tests-");

    public HttpClient Reader() => CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false });

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("STOCKWRIGHT_DATA", data.FullName);
        builder.ConfigureTestServices(services => services
            .AddSingleton<TimeProvider>(new FixedClock())
            // A machine with more to do than these tests must not turn a slow answer into a wrong one; WorkLimitsTests test the limit.
            .PostConfigure<RequestTimeoutOptions>(timeouts => timeouts.AddPolicy(WorkLimits.Dear, TimeSpan.FromMinutes(5))));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && data.Exists)
        {
            data.Delete(recursive: true);
        }
    }

    private sealed class FixedClock : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => Now;
    }
}
