using System.Diagnostics;
using System.Text;

namespace Stockwright.Journeys.Running;

/// <summary>
/// The web app as a process of its own, started from its build output as a newcomer would start it: on a free loopback port,
/// with a data folder of its own that goes when the process goes, or one that was there before and stays.
/// </summary>
internal sealed class WebProcess : IAsyncDisposable
{
    private const string Ready = "Stockwright is ready at ";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Process process;
    private readonly DirectoryInfo data;
    private readonly bool ownsData;
    private readonly StringBuilder said = new();
    private readonly TaskCompletionSource<Uri> address = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private WebProcess(Process process, DirectoryInfo data, bool ownsData)
    {
        this.process = process;
        this.data = data;
        this.ownsData = ownsData;
    }

    /// <summary>The address it printed.</summary>
    public Uri Address { get; private set; } = new("http://127.0.0.1");

    /// <summary>Everything it has printed.</summary>
    public string Output
    {
        get
        {
            lock (said)
            {
                return said.ToString();
            }
        }
    }

    /// <summary>Memory held at present, bytes.</summary>
    public long WorkingSetBytes
    {
        get
        {
            process.Refresh();
            return process.WorkingSet64;
        }
    }

    /// <summary>Its number with the operating system.</summary>
    public int ProcessId => process.Id;

    /// <summary>Time the processors have spent on it.</summary>
    public TimeSpan ProcessorTime
    {
        get
        {
            process.Refresh();
            return process.TotalProcessorTime;
        }
    }

    /// <summary>Starts the app and waits until it prints its address.</summary>
    /// <exception cref="InvalidOperationException">The app is not built, ended early or did not get ready.</exception>
    public static Task<WebProcess> StartAsync(CancellationToken cancellationToken = default) => StartAsync(null, cancellationToken);

    /// <summary>A name that is not this machine's own: the app answers to it because it is told to, and browsers do not trust it.</summary>
    public const string InsecureHost = "kitchen.test";

    /// <summary>Starts the app on a data folder, which stays, and waits until it prints its address.</summary>
    /// <exception cref="InvalidOperationException">The app is not built, ended early or did not get ready.</exception>
    public static async Task<WebProcess> StartAsync(DirectoryInfo? data, CancellationToken cancellationToken)
    {
        string program = FindProgram();
        DirectoryInfo folder = data ?? Directory.CreateTempSubdirectory("stockwright-");
        ProcessStartInfo start = new(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet", [program])
        {
            WorkingDirectory = Path.GetDirectoryName(program),
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };

        // The port is the system's choice; the app prints which it was.
        start.Environment["ASPNETCORE_URLS"] = "http://127.0.0.1:0";
        start.Environment["STOCKWRIGHT_DATA"] = folder.FullName;
        start.Environment["STOCKWRIGHT_HOSTS"] = InsecureHost;
        start.Environment.Remove("STOCKWRIGHT_DEMO");
        start.Environment.Remove("ASPNETCORE_ENVIRONMENT");
        start.Environment.Remove("DOTNET_ENVIRONMENT");

        WebProcess app = new(new Process { StartInfo = start, EnableRaisingEvents = true }, folder, ownsData: data is null);
        try
        {
            app.Begin();
            app.Address = await app.address.Task.WaitAsync(Patience, cancellationToken);
            return app;
        }
        catch (Exception problem)
        {
            await app.DisposeAsync();
            throw new InvalidOperationException($"The app did not get ready ({problem.Message}). It said:\n{app.Output}", problem);
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (IsStarted && !process.HasExited)
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
        }

        process.Dispose();
        if (ownsData)
        {
            data.Delete(recursive: true);
        }
    }

    /// <summary>Ends it at once, in the middle of whatever it does (SIGKILL).</summary>
    public async Task KillAsync()
    {
        process.Kill();
        await process.WaitForExitAsync();
    }

    /// <summary>The solution's folder, found from where this program runs.</summary>
    public static string FindSolutionFolder()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Stockwright.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("Run this from its build output inside the solution's folder.");
    }

    private static string FindProgram()
    {
        // .../bin/<configuration>/<framework>: the app is built in the same configuration as this program.
        DirectoryInfo here = new(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory));
        string program = Path.Combine(
            FindSolutionFolder(), "src", "Stockwright.Web", "bin", here.Parent?.Name ?? "Debug", here.Name, "Stockwright.Web.dll");
        return File.Exists(program) ? program : throw new InvalidOperationException($"The app is not built: there is no {program}.");
    }

    private bool IsStarted { get; set; }

    private void Begin()
    {
        process.OutputDataReceived += (_, line) => Hear(line.Data);
        process.ErrorDataReceived += (_, line) => Hear(line.Data);
        process.Exited += (_, _) => address.TrySetException(new InvalidOperationException("it ended at once"));
        IsStarted = process.Start();
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
    }

    private void Hear(string? line)
    {
        if (line is null)
        {
            return;
        }

        lock (said)
        {
            said.AppendLine(line);
        }

        if (line.StartsWith(Ready, StringComparison.Ordinal) && Uri.TryCreate(line[Ready.Length..].Trim(), UriKind.Absolute, out Uri? uri))
        {
            address.TrySetResult(uri);
        }
    }
}
