using Stockwright.Journeys.Running;

[assembly: AssemblyFixture(typeof(AppFixture))]
[assembly: AssemblyFixture(typeof(ChromiumFixture))]

namespace Stockwright.Journeys.Running;

/// <summary>The real app, one process for all journeys, with a fresh data folder and the demo kitchen.</summary>
public sealed class AppFixture : IAsyncLifetime
{
    private WebProcess? app;

    /// <summary>Where it listens.</summary>
    public Uri Address => app?.Address ?? throw new InvalidOperationException("The app has not started.");

    /// <summary>Asks without a browser.</summary>
    public HttpClient Client { get; } = new(new HttpClientHandler { AllowAutoRedirect = false });

    public async ValueTask InitializeAsync()
    {
        app = await WebProcess.StartAsync(TestContext.Current.CancellationToken);
        Client.BaseAddress = app.Address;
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        if (app is not null)
        {
            await app.DisposeAsync();
        }
    }
}
