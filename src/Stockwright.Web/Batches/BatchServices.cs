using Stockwright.Web.Calendars;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Batches;

/// <summary>Registers what batches need.</summary>
internal static class BatchServices
{
    public static void AddBatches(this IServiceCollection services)
    {
        services.AddSingleton<BatchNews>();
        services.AddSingleton(_ => new PhotoDesk());
        services.AddSingleton<OutlookShelf>();
        services.AddSingleton<OpenBatchCache>();
        services.AddScoped<BatchDesk>();
        services.AddScoped<LogDesk>();
        services.AddScoped<StoveDesk>();
        services.AddScoped<BatchStarter>();
        services.AddScoped<TodayDesk>();
        services.AddSingleton<ServiceWorkerScript>();
    }

    public static void MapBatches(this IEndpointRouteBuilder app)
    {
        app.MapBatchLog();
        app.MapLogExport();
        app.MapNews();
        app.MapCalendars();
        app.MapServiceWorker();
    }
}
