using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;

namespace Stockwright.Journeys.Running;

/// <summary>
/// The real app with its real web server, in this process, so that its clock can be moved: a night passes in a moment. It can
/// be stopped and started again on the same data and address.
/// </summary>
internal sealed class ClockedApp : IAsyncDisposable
{
    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-clocked-");
    private readonly int port = FreePort();
    private Factory? factory;

    public ClockedApp(DateTimeOffset start)
    {
        Clock = new MovableClock(start);
        Start();
    }

    /// <summary>The app's clock.</summary>
    public MovableClock Clock { get; }

    /// <summary>Where it listens.</summary>
    public Uri Address => new($"http://localhost:{port}");

    public void Start()
    {
        factory = new Factory(data, Clock);
        factory.UseKestrel(port);
        factory.StartServer();
    }

    public async Task StopAsync()
    {
        if (factory is not null)
        {
            await factory.DisposeAsync();
            factory = null;
        }
    }

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        data.Delete(recursive: true);
    }

    private static int FreePort()
    {
        using TcpListener listener = new(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private sealed class Factory(DirectoryInfo data, TimeProvider clock) : WebApplicationFactory<Program>
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            builder.UseEnvironment("Production");
            builder.UseSetting("STOCKWRIGHT_DATA", data.FullName);
            builder.ConfigureTestServices(services => services.AddSingleton(clock));
        }
    }
}
