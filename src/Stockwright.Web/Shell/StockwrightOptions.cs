namespace Stockwright.Web.Shell;

/// <summary>Settings the operator may give, as environment variables or on the command line.</summary>
/// <param name="DataFolder">Folder of the database and the keys; <c>STOCKWRIGHT_DATA</c>.</param>
/// <param name="Demo">True to fill a fresh data folder with the demo kitchen; <c>STOCKWRIGHT_DEMO=false</c> starts empty.</param>
public sealed record StockwrightOptions(string DataFolder, bool Demo)
{
    /// <summary>Reads the settings; a folder that is not named lies in the user's local application data.</summary>
    /// <exception cref="InvalidOperationException"><c>STOCKWRIGHT_DEMO</c> is neither true nor false.</exception>
    public static StockwrightOptions From(IConfiguration configuration)
    {
        string? folder = configuration["STOCKWRIGHT_DATA"];
        if (string.IsNullOrWhiteSpace(folder))
        {
            folder = Path.Combine(
                Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create),
                "Stockwright");
        }

        string? demo = configuration["STOCKWRIGHT_DEMO"];
        bool fills = true;
        if (!string.IsNullOrWhiteSpace(demo) && !bool.TryParse(demo, out fills))
        {
            throw new InvalidOperationException($"STOCKWRIGHT_DEMO is '{demo}'; write true or false.");
        }

        return new StockwrightOptions(Path.GetFullPath(folder), fills);
    }
}
