using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Stockwright.Storage.Sqlite;

/// <summary>Lets the migrations tool make a context; the file is never opened.</summary>
internal sealed class DesignTimeFactory : IDesignTimeDbContextFactory<StockwrightContext>
{
    public StockwrightContext CreateDbContext(string[] args)
    {
        DbContextOptionsBuilder<StockwrightContext> options = new();
        SqliteStorage.Configure(options, "design-time.db");
        return new StockwrightContext(options.Options);
    }
}
