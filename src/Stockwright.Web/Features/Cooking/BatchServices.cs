using Stockwright.Web.Features.Cooking.Calendars;
using Stockwright.Web.Features.Cooking.Log;
using Stockwright.Web.Features.Cooking.Photos;
using Stockwright.Web.Features.Cooking.Record;
using Stockwright.Web.Features.Cooking.Stove;
using Stockwright.Web.Shell;

namespace Stockwright.Web.Features.Cooking;

/// <summary>Registers what batches need.</summary>
internal static class BatchServices
{
    public static void AddBatches(this IServiceCollection services)
    {
        services.AddSingleton<BatchChanges>();
        services.AddSingleton(_ => new PhotoService());
        services.AddSingleton<OutlookCache>();
        services.AddSingleton<OpenBatchCache>();
        services.AddScoped<BatchService>();
        services.AddScoped<LogService>();
        services.AddScoped<StoveService>();
        services.AddScoped<BatchStarter>();
        services.AddScoped<TodayService>();
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
