using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace Stockwright.Web.Tests;

/// <summary>The whole program in memory, on a data folder of its own, at a fixed moment.</summary>
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
        builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(new FixedClock()));
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
