using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Stockwright.Planning;
using Stockwright.Web;
using Stockwright.Web.Features.Cooking;
using Stockwright.Web.Features.Cooling;
using Stockwright.Web.Features.Keeping;
using Stockwright.Web.Features.Planning;
using Stockwright.Web.Features.Strength;
using Stockwright.Web.Fields;
using Stockwright.Web.Shell;

// The full builder also loads what hosts it inside IIS and speaks HTTP/3, which nobody uses here: 2 MB.
WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions
{
    Args = args,

    // The program's own files lie beside it, wherever it is started from.
    ContentRootPath = AppContext.BaseDirectory,
});
builder.WebHost.UseKestrelHttpsConfiguration();

// Started with a bare `dotnet run` there is no launch profile, so neither an address nor the
// development-only asset manifest would be set.
builder.WebHost.UseStaticWebAssets();

// Looking at each style sheet for changes answers every unknown address with 405 to a form: for whoever works on them only.
builder.Configuration["ReloadStaticAssetsAtRuntime"] ??= builder.Environment.IsDevelopment() ? "true" : "false";
builder.WebHost.ConfigureKestrel(server =>
{
    server.AddServerHeader = false;

    // A cooling case with its readings is a link of up to 20,000 characters, each of which may be escaped.
    server.Limits.MaxRequestLineSize = 96 * 1024;
    server.Limits.MaxRequestHeadersTotalSize = 128 * 1024;
});
if (string.IsNullOrWhiteSpace(builder.Configuration["urls"]) && string.IsNullOrWhiteSpace(builder.Configuration["http_ports"]))
{
    builder.WebHost.UseUrls("http://localhost:5140");
}

builder.Logging.QuietFailedStarts();
builder.Logging.AddFilter("Microsoft.Hosting.Lifetime", LogLevel.Warning);
builder.Logging.AddFilter("Microsoft.EntityFrameworkCore", LogLevel.Warning);
builder.Logging.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);
builder.Logging.AddFilter("Microsoft.EntityFrameworkCore", LogLevel.Warning);
builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);

StockwrightOptions options;
try
{
    options = StockwrightOptions.From(builder.Configuration);
}
catch (SettingException wrong)
{
    return ProgramStart.Say(wrong.Message);
}

if (BackupCommand.FileIn(args) is { } backup)
{
    return await BackupCommand.RunAsync(options, backup);
}

builder.Services.AddSingleton(options);
builder.Services.AddSingleton(TimeProvider.System);

// Keys live with the data, so that a form opened before a restart can still be sent after it.
builder.Services.AddDataProtection()
    .SetApplicationName("Stockwright")
    .PersistKeysToFileSystem(options.KeyFolder);
builder.Services.AddKitchenCookies(options.KeyFolder);
builder.Services.AddHostCheck();
builder.Services.AddTransient<IStartupFilter, HeadAsGet>();

builder.Services.AddRazorComponents();
builder.Services.AddHttpContextAccessor();
builder.Services.AddReaderUnits();
builder.Services.AddFriendlyErrors();
builder.Services.AddWorkLimits();
builder.Services.AddOpenApi(document =>
{
    document.AddSchemaTransformer(EntryInput.Describe);
    document.Describe<PlanInput>(PlanFields.All);
    document.Describe<CoolingInput>(CoolingFields.All);
    document.Describe<CoolingStepInput>(StepFields.All);
    document.AddDocumentTransformer((description, _, _) =>
    {
        description.Info.Title = "Stockwright";
        description.Info.Version = "1";
        description.Info.Description = "Plans batches of stock. Quantities are in SI units, named by their unit.";
        description.Servers = [];
        return Task.CompletedTask;
    });
});
builder.Services.ConfigureHttpJsonOptions(json => json.SerializerOptions.Converters.Add(
    new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false)));
builder.Services.AddStorage(options);
builder.Services.AddSingleton<PlanBatch>(BatchPlanner.Plan);
builder.Services.AddSingleton<JudgeStock>(StockOutlook.Of);
builder.Services.AddScoped<PlanService>();
builder.Services.AddSingleton(new PageUnits(PlanLinks.Page, PlanQuery.InUnits));
builder.Services.AddSingleton(new PageUnits(CoolingWriter.Page, CoolingWriter.InUnits));
builder.Services.AddSingleton(new PageUnits(StrengthLinks.Page, StrengthFields.InUnits));
builder.Services.AddSingleton(new PageUnits(KeepingService.Page, KeepingFields.InUnits));
builder.Services.AddBatches();

WebApplication app = builder.Build();

app.UseSecurityHeaders();
app.UseReadableRequests();
app.UseHostCheck();
app.UsePageCaching();
app.UseFriendlyErrors();
app.UseWorkLimits();
app.UseAntiforgery();
app.UseRefusedForms();
app.MapStaticAssets();
app.MapOpenApi();
app.MapUnitsSwitch();
app.MapPlansApi();
app.MapCoolingApi();
app.MapBatchesApi();
app.MapHomeLimit();
app.MapBatches();
app.MapRazorComponents<App>();

app.Lifetime.ApplicationStarted.Register(() =>
{
    IServerAddressesFeature? addresses = app.Services
        .GetRequiredService<Microsoft.AspNetCore.Hosting.Server.IServer>()
        .Features.Get<IServerAddressesFeature>();
    foreach (string address in addresses?.Addresses ?? [])
    {
        Console.WriteLine($"Stockwright is ready at {address}");
    }
});

return await app.RunToEndAsync();
