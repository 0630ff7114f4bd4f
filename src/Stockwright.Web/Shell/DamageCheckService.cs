using Stockwright.Storage;

namespace Stockwright.Web.Shell;

/// <summary>Looks through a large database while the first pages are served already; damage goes to the operator's log.</summary>
internal sealed class DamageCheckService(IStockwrightDatabase database, ILogger<DamageCheckService> operators) : BackgroundService
{
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // A start must not wait for this: it may read for minutes.
        await Task.Yield();
        try
        {
            if (await database.FindDamageAsync(stoppingToken) is { } damage && operators.IsEnabled(LogLevel.Critical))
            {
                operators.LogCritical("The database is damaged ({Damage}). Stop the program and put a backup in its place.", damage);
            }
        }
        catch (Exception trouble) when (trouble is not OperationCanceledException && operators.IsEnabled(LogLevel.Critical))
        {
            operators.LogCritical(trouble, "The database could not be looked through. See whether its disk is sound.");
        }
    }
}
