using System.Security.Cryptography;
using System.Text;
using Microsoft.Extensions.FileProviders;

namespace Stockwright.Web.Shell;

/// <summary>
/// <c>/sw.js</c>: the service worker, with a version on top that changes with every script, style sheet and build, so that browsers
/// see a new worker when there is something new to keep for the offline page.
/// </summary>
internal sealed class ServiceWorkerScript(IWebHostEnvironment host)
{
    private static readonly string[] Folders = ["js", "css"];

    private readonly Lazy<string> text = new(() => Read(host.WebRootFileProvider));

    public string Text => text.Value;

    private static string Read(IFileProvider files)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(typeof(ServiceWorkerScript).Assembly.ManifestModule.ModuleVersionId.ToByteArray());
        foreach (IFileInfo file in Folders
            .SelectMany(folder => files.GetDirectoryContents(folder))
            .Where(file => !file.IsDirectory)
            .OrderBy(file => file.Name, StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(Content(file)));
        }

        string version = Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
        return $"const version = \"{version}\";\n{Content(files.GetFileInfo("js/worker.js"))}";
    }

    private static string Content(IFileInfo file)
    {
        using StreamReader reader = new(file.CreateReadStream(), Encoding.UTF8);
        return reader.ReadToEnd();
    }
}

/// <summary>Serves the service worker.</summary>
internal static class ServiceWorkerEndpoint
{
    public static void MapServiceWorker(this IEndpointRouteBuilder app) =>
        app.MapMethods("/sw.js", [HttpMethods.Get, HttpMethods.Head], (HttpContext context, ServiceWorkerScript script) =>
        {
            context.Response.Headers.CacheControl = "no-cache";
            return Results.Text(script.Text, "text/javascript; charset=utf-8", Encoding.UTF8);
        }).ExcludeFromDescription();
}
