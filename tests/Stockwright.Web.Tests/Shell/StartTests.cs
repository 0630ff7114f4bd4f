using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Runtime.InteropServices;
using System.Text.Json;
using Xunit;

namespace Stockwright.Web.Tests.Shell;

/// <summary>The program as a process of its own, started as an operator would.</summary>
public sealed class StartTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("stockwright-start-tests-");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose() => data.Delete(recursive: true);

    [Theory]
    [InlineData("ASPNETCORE_URLS", "nonsense", "nonsense")]
    [InlineData("ASPNETCORE_URLS", "http://localhost:99999", "99999")]
    [InlineData("ASPNETCORE_URLS", "http://203.0.113.7:8080", "203.0.113.7")]
    [InlineData("ASPNETCORE_URLS", "https://127.0.0.1:0", "certificate")]
    [InlineData("STOCKWRIGHT_DEMO", "maybe", "STOCKWRIGHT_DEMO")]
    [InlineData("STOCKWRIGHT_HOSTS", "http://kitchen.example/", "STOCKWRIGHT_HOSTS")]
    public async Task What_cannot_start_says_why_in_one_line(string setting, string value, string named)
    {
        (int code, string output, string error) = await RunAsync((setting, value));
        OneLine(code, output, error, named);
    }

    [Fact]
    public async Task A_port_in_use_is_said_in_one_line()
    {
        using TcpListener other = new(IPAddress.Loopback, 0);
        other.Start();
        string address = $"http://127.0.0.1:{((IPEndPoint)other.LocalEndpoint).Port}";
        (int code, string output, string error) = await RunAsync(("ASPNETCORE_URLS", address));
        OneLine(code, output, error, address);
        Assert.Contains("in use", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Started_from_anywhere_it_serves_its_style_sheets_and_scripts()
    {
        await ServesItsFilesAsync(AppContext.BaseDirectory, leastFiles: 7);
    }

    [Fact]
    public async Task A_published_copy_started_from_anywhere_does_so_too()
    {
        DirectoryInfo copy = Directory.CreateTempSubdirectory("stockwright-published-");
        try
        {
            Publish(copy);
            await ServesItsFilesAsync(copy.FullName, leastFiles: 6);
        }
        finally
        {
            copy.Delete(recursive: true);
        }
    }

    /// <summary>Lays the program out as publishing does: its files beside it, and no list of where the sources lie.</summary>
    private static void Publish(DirectoryInfo copy)
    {
        const string Sources = ".staticwebassets.runtime.json";
        foreach (string file in Directory.EnumerateFiles(AppContext.BaseDirectory).Where(file => !file.EndsWith(Sources, StringComparison.Ordinal) && !file.EndsWith(".pdb", StringComparison.Ordinal)))
        {
            File.Copy(file, Path.Combine(copy.FullName, Path.GetFileName(file)));
        }

        string platform = Path.Combine("runtimes", RuntimeInformation.RuntimeIdentifier);
        Copy(Path.Combine(AppContext.BaseDirectory, platform), Path.Combine(copy.FullName, platform));
        JsonElement roots = JsonElement.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Stockwright.Web" + Sources))).GetProperty("ContentRoots");
        string own = Assert.Single(roots.EnumerateArray().Select(root => root.GetString()!), root => Directory.Exists(Path.Combine(root, "css")));
        Copy(own, Path.Combine(copy.FullName, "wwwroot"));
    }

    private static void Copy(string from, string to)
    {
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    private async Task ServesItsFilesAsync(string program, int leastFiles)
    {
        using Process process = Start("/", program, ("ASPNETCORE_URLS", "http://127.0.0.1:0"));
        try
        {
            string? line = await process.StandardOutput.ReadLineAsync(Stop).AsTask().WaitAsync(Patience, Stop);
            Assert.StartsWith("Stockwright is ready at ", line, StringComparison.Ordinal);
            using HttpClient client = new() { BaseAddress = new Uri(line!["Stockwright is ready at ".Length..]) };
            string page = await client.GetStringAsync(new Uri("/plan", UriKind.Relative), Stop);

            // The framework's own script lies in its package until it is really published.
            string[] files = [.. page.Split('"').Where(part => part.EndsWith(".css", StringComparison.Ordinal) || part.EndsWith(".js", StringComparison.Ordinal))
                .Where(part => leastFiles > 6 || !part.StartsWith("_framework", StringComparison.Ordinal)).Distinct(StringComparer.Ordinal)];
            Assert.True(files.Length >= leastFiles, string.Join(' ', files));
            foreach (string file in files)
            {
                Assert.True((await client.GetByteArrayAsync(new Uri($"/{file}", UriKind.Relative), Stop)).Length > 100, file);
            }

            Assert.True((await client.GetStringAsync(new Uri("/sw.js", UriKind.Relative), Stop)).Length > 100);
        }
        finally
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync(Stop);
        }
    }

    private static void OneLine(int code, string output, string error, string named)
    {
        Assert.Equal(1, code);
        Assert.Equal("", output);
        string line = Assert.Single(error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(named, line, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", line, StringComparison.Ordinal);
    }

    private async Task<(int Code, string Output, string Error)> RunAsync(params (string Name, string Value)[] settings)
    {
        using Process process = Start(data.FullName, AppContext.BaseDirectory, settings);
        Task<string> output = process.StandardOutput.ReadToEndAsync(Stop);
        Task<string> error = process.StandardError.ReadToEndAsync(Stop);
        try
        {
            await process.WaitForExitAsync(Stop).WaitAsync(Patience, Stop);
        }
        catch (TimeoutException)
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"It did not end. {await output}");
        }

        return (process.ExitCode, await output, await error);
    }

    private Process Start(string folder, string program, params (string Name, string Value)[] settings)
    {
        // The program lies beside these tests, copied by the build.
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", [Path.Combine(program, "Stockwright.Web.dll")])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        foreach (string inherited in (string[])["ASPNETCORE_ENVIRONMENT", "DOTNET_ENVIRONMENT", "ASPNETCORE_URLS", "STOCKWRIGHT_DEMO", "STOCKWRIGHT_HOSTS"])
        {
            start.Environment.Remove(inherited);
        }

        start.Environment["STOCKWRIGHT_DATA"] = data.FullName;
        foreach ((string name, string value) in settings)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }
}
