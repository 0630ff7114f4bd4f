using Microsoft.Data.Sqlite;
using Stockwright.Web.Shell;
using Stockwright.Web.Tests.Features.Cooking;
using Xunit;

namespace Stockwright.Web.Tests.Shell;

public sealed class BackupCommandTests
{
    [Theory]
    [InlineData(null, "--STOCKWRIGHT_DATA=/srv")]
    [InlineData("/b/x.db", "--backup", "/b/x.db")]
    [InlineData("/b/x.db", "--backup=/b/x.db", "--STOCKWRIGHT_DATA=/srv")]
    [InlineData("", "--backup")]
    [InlineData("", "--backup", "--STOCKWRIGHT_DATA=/srv")]
    public void The_file_is_read_off_the_command_line(string? file, params string[] args) => Assert.Equal(file, BackupCommand.FileIn(args));

    [Fact]
    public async Task It_copies_while_the_program_runs_and_never_writes_over_a_file()
    {
        await using NewsApp app = new();
        Guid batch = await app.StartBatchAsync("Kept");
        Assert.NotEqual(Guid.Empty, batch);
        StockwrightOptions options = Assert.IsType<StockwrightOptions>(app.Services.GetService(typeof(StockwrightOptions)));
        DirectoryInfo folder = Directory.CreateTempSubdirectory("stockwright-backup-tests-");
        try
        {
            string copy = Path.Combine(folder.FullName, "copy.db");
            Assert.Equal(0, await BackupCommand.RunAsync(options, copy));

            // What was acknowledged a moment ago still stands in the write-ahead log.
            await using (SqliteConnection opened = new($"Data Source={copy};Mode=ReadOnly;Pooling=False"))
            {
                await opened.OpenAsync(TestContext.Current.CancellationToken);
                await using SqliteCommand command = opened.CreateCommand();
                command.CommandText = "SELECT Name FROM Batches";
                Assert.Equal("Kept", await command.ExecuteScalarAsync(TestContext.Current.CancellationToken));
            }

            Assert.Equal(1, await BackupCommand.RunAsync(options, copy));
            Assert.Equal(1, await BackupCommand.RunAsync(options, ""));
            Assert.Equal(1, await BackupCommand.RunAsync(options with { DataFolder = Path.Combine(folder.FullName, "nothing") }, copy + "2"));
            Assert.Equal([copy], Directory.EnumerateFileSystemEntries(folder.FullName), StringComparer.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
