using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace Stockwright.Bench.Web;

/// <summary>Requests no client library would send, written to the socket as they stand: broken request lines, hosts and bodies, and a client that hangs up.</summary>
internal static class RawRequests
{
    private static readonly string[] Hosts = ["", "localhost:99999", "localhost:abc", "localhost:", "[::1", "a b", ":80", "%zz", "localhost:-1", "évil", "x\"", "localhost\tx", new string('h', 300) + ".example"];

    /// <summary>The request of a number, whether the client hangs up at once, and the first line of the answer; empty when it was cut off.</summary>
    public static async Task<(string Said, int Status)> SendAsync(Uri app, IReadOnlyList<string> pages, int seed, int number, CancellationToken cancellationToken)
    {
        Random random = new(unchecked((seed * 1_000_003) + number));
        string page = pages[random.Next(pages.Count)];
        bool hangsUp = false;
        string text;
        switch (random.Next(8))
        {
            case 0 or 1:
                text = $"GET {page} HTTP/1.1\r\nHost: {Hosts[random.Next(Hosts.Length)]}\r\nConnection: close\r\n\r\n";
                break;
            case 2:
                text = $"GET {page} HTTP/1.0\r\n\r\n";
                break;
            case 3:
                text = $"GET {page}\0 HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";
                break;
            case 4:
                text = $"POST /api/plans HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 999\r\n\r\n{{\"recipe\":";
                hangsUp = true;
                break;
            case 5:
                text = $"POST /api/plans HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\nzz\r\n{{}}\r\n0\r\n\r\n";
                break;
            case 6:
                text = $"GET http://localhost:99999{page} HTTP/1.1\r\nHost: localhost:99999\r\nConnection: close\r\n\r\n";
                break;
            default:
                text = $"GET {page} HTTP/1.1\r\nHost: localhost\r\n\r\n";
                hangsUp = true;
                break;
        }

        string said = $"#{number.ToString(CultureInfo.InvariantCulture)} raw {(hangsUp ? "hangs up " : "")}{text.ReplaceLineEndings("\\n")}";
        using TcpClient client = new() { LingerState = new LingerOption(hangsUp, 0) };
        await client.ConnectAsync(app.Host, app.Port, cancellationToken);
        NetworkStream stream = client.GetStream();
        await stream.WriteAsync(Encoding.UTF8.GetBytes(text), cancellationToken);
        if (hangsUp)
        {
            await Task.Delay(random.Next(30), cancellationToken);
            return (said, 0);
        }

        using StreamReader reader = new(stream, Encoding.Latin1);
        string? first;
        try
        {
            first = await reader.ReadLineAsync(cancellationToken);
            await reader.ReadToEndAsync(cancellationToken);
        }
        catch (IOException)
        {
            return (said, 0);
        }

        return (said, first is { Length: > 12 } && int.TryParse(first.AsSpan(9, 3), NumberStyles.None, CultureInfo.InvariantCulture, out int status) ? status : 0);
    }
}
