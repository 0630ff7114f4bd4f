using System.Net;
using Microsoft.Extensions.Primitives;

namespace Stockwright.Web.Shell;

/// <summary>
/// Answers only to names of this machine and to those the operator gave. There is no sign-in, so a page elsewhere that points its own
/// name at this machine (DNS rebinding) could otherwise read and write the kitchen; browsers still say that name in the Host header.
/// The framework's own host filter knows fixed names only, while a machine's addresses change.
/// </summary>
internal sealed class HostCheck(StockwrightOptions options, IConfiguration configuration, OwnAddresses own)
{
    private readonly StringSegment[] named = [.. options.Hosts.Concat(Configured(configuration)).Select(name => new StringSegment(name))];

    /// <summary>True when a host, without its port, is one of ours; a request of HTTP/1.0 may have none.</summary>
    public bool Answers(string host)
    {
        string name = host.TrimEnd('.');
        return name.Length == 0
            || string.Equals(name, "localhost", StringComparison.OrdinalIgnoreCase)
            || name.EndsWith(".localhost", StringComparison.OrdinalIgnoreCase)
            || own.HasName(name)
            || (IPAddress.TryParse(name, out IPAddress? address) && own.Has(address))
            || HostString.MatchesAny(name, named);
    }

    /// <summary>Hosts in the addresses it listens on: who writes one there answers to it.</summary>
    private static IEnumerable<string> Configured(IConfiguration configuration)
    {
        string[] addresses =
        [
            .. (configuration["urls"] ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries),
            .. configuration.GetSection("Kestrel:Endpoints").GetChildren().Select(endpoint => endpoint["Url"] ?? ""),
        ];
        foreach (string address in addresses)
        {
            if (Uri.TryCreate(address, UriKind.Absolute, out Uri? uri) && uri.HostNameType is UriHostNameType.Dns)
            {
                yield return uri.Host;
            }
        }
    }
}

/// <summary>Puts the check in front of everything.</summary>
internal static class HostCheckStart
{
    public static void AddHostCheck(this IServiceCollection services)
    {
        services.AddSingleton<OwnAddresses>();
        services.AddSingleton<HostCheck>();
    }

    public static IApplicationBuilder UseHostCheck(this WebApplication app)
    {
        HostCheck check = app.Services.GetRequiredService<HostCheck>();
        return app.Use((context, next) => check.Answers(context.Request.Host.Host) ? next(context) : RefuseAsync(context));
    }

    private static Task RefuseAsync(HttpContext context)
    {
        string host = context.Request.Host.Host;
        string message = $"Stockwright does not answer to the name {host} here. Open it by the address it printed when it started; "
            + $"if this name is yours, whoever runs it can allow it with the setting {StockwrightOptions.HostsSetting}={host}";
        return (FriendlyErrors.IsProgram(context)
            ? Results.Problem(message, statusCode: StatusCodes.Status400BadRequest)
            : Results.Text(message, "text/plain", System.Text.Encoding.UTF8, StatusCodes.Status400BadRequest)).ExecuteAsync(context);
    }
}
