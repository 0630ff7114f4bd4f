namespace Stockwright.Web.Shell;

/// <summary>A setting that cannot be used; the message says which and what to write.</summary>
public sealed class SettingException(string message) : Exception(message);

/// <summary>Settings the operator may give, as environment variables or on the command line.</summary>
/// <param name="DataFolder">Folder of the database and the keys; <c>STOCKWRIGHT_DATA</c>.</param>
/// <param name="Demo">True to fill a fresh data folder with the demo kitchen; <c>STOCKWRIGHT_DEMO=false</c> starts empty.</param>
/// <param name="Hosts">Names it answers to besides the machine's own; <c>STOCKWRIGHT_HOSTS</c>.</param>
public sealed record StockwrightOptions(string DataFolder, bool Demo, IReadOnlyList<string> Hosts)
{
    public const string HostsSetting = "STOCKWRIGHT_HOSTS";

    private static readonly char[] Between = [',', ';', ' '];

    /// <summary>Folder of the keys of form tokens.</summary>
    public DirectoryInfo KeyFolder => new(Path.Combine(DataFolder, "keys"));

    /// <summary>Reads the settings; a folder that is not named lies in the user's local application data.</summary>
    /// <exception cref="SettingException">A setting is none.</exception>
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
            throw new SettingException($"STOCKWRIGHT_DEMO is '{demo}'; write true or false.");
        }

        string[] hosts = (configuration[HostsSetting] ?? "").Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (Array.Find(hosts, host => !IsHost(host)) is { } wrong)
        {
            throw new SettingException($"{HostsSetting} has '{wrong}'; write names or addresses without http:// and without a port, with commas between, like stock.example.org, *.kitchen.example");
        }

        return new StockwrightOptions(Path.GetFullPath(folder), fills, hosts);
    }

    private static bool IsHost(string text) => text is "*"
        || Uri.CheckHostName(text.StartsWith("*.", StringComparison.Ordinal) ? text[2..] : text.Trim('[', ']')) is not UriHostNameType.Unknown;
}
