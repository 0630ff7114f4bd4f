using System.Net.Sockets;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Connections;
using Stockwright.Storage;
using Stockwright.Web.Shell;

namespace Stockwright.Web;

/// <summary>Starts the program and, when it cannot start, says why in one line.</summary>
internal static class ProgramStart
{
    private static volatile bool isRunning;

    /// <summary>Keeps the server's and the host's stack traces of a failed start out of the log; <see cref="RunToEndAsync"/> says what was wrong.</summary>
    public static void QuietFailedStarts(this ILoggingBuilder logging)
    {
        logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", level => isRunning && level >= LogLevel.Warning);
        logging.AddFilter("Microsoft.AspNetCore.Server.Kestrel", level => level >= LogLevel.Warning && (isRunning || level < LogLevel.Critical));
    }

    /// <summary>Prepares the data folder, starts to listen, and runs until it is stopped.</summary>
    /// <returns>Exit code: 0, or 1 when it could not start.</returns>
    public static async Task<int> RunToEndAsync(this WebApplication app)
    {
        try
        {
            await app.PrepareStorageAsync();
            await app.StartAsync();
        }
        catch (Exception trouble) when (Why(trouble, app.Configuration) is { } why)
        {
            return Say(why);
        }

        isRunning = true;
        await app.WaitForShutdownAsync();
        await app.DisposeAsync();
        return 0;
    }

    /// <summary>Says why it does not start; gives the exit code.</summary>
    public static int Say(string why)
    {
        Console.Error.WriteLine(why.ReplaceLineEndings(" "));
        return 1;
    }

    private static string? Why(Exception trouble, IConfiguration configuration)
    {
        string addresses = configuration["urls"] ?? "";
        return trouble switch
        {
            StorageTroubleException or SettingException => trouble.Message,
            { InnerException: AddressInUseException } => $"{First(trouble)} Another program, perhaps another Stockwright, listens there: stop it, or choose another port with ASPNETCORE_URLS.",
            FormatException or ArgumentException or OverflowException => $"ASPNETCORE_URLS is '{addresses}': {First(trouble)} Write an address like http://localhost:5140 or http://0.0.0.0:8080.",
            InvalidOperationException when First(trouble).Contains("HTTPS", StringComparison.OrdinalIgnoreCase) =>
                "HTTPS needs a certificate: name its file in ASPNETCORE_Kestrel__Certificates__Default__Path and its password in ASPNETCORE_Kestrel__Certificates__Default__Password, or listen on http://.",
            SocketException => $"It cannot listen on {addresses}: {First(trouble)}. Choose an address of this machine and a free port with ASPNETCORE_URLS.",
            IOException or UnauthorizedAccessException or CryptographicException or InvalidOperationException => $"It does not start: {First(trouble)}",
            _ => null,
        };
    }

    private static string First(Exception trouble) => trouble.Message.Split(['\r', '\n'], 2)[0];
}
