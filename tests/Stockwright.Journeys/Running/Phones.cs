using System.Net;
using System.Net.Sockets;

namespace Stockwright.Journeys.Running;

/// <summary>Many phones on one machine: connections from loopback addresses of their own, for the app limits what one address may write in a minute.</summary>
internal static class Phones
{
    private const int Addresses = 200;

    /// <summary>A handler whose connections are short and come from one address after the other; where a system has one loopback address only, all come from that.</summary>
    public static SocketsHttpHandler NewHandler()
    {
        int connections = 0;
        return new SocketsHttpHandler
        {
            MaxConnectionsPerServer = Addresses,
            PooledConnectionLifetime = TimeSpan.FromMilliseconds(500),
            ConnectCallback = async (connection, cancellationToken) =>
            {
                Socket socket = new(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
                try
                {
                    if (OperatingSystem.IsLinux())
                    {
                        socket.Bind(new IPEndPoint(new IPAddress([127, 0, 1, (byte)(1 + (Interlocked.Increment(ref connections) % Addresses))]), 0));
                    }

                    await socket.ConnectAsync(connection.DnsEndPoint, cancellationToken);
                    return new NetworkStream(socket, ownsSocket: true);
                }
                catch
                {
                    socket.Dispose();
                    throw;
                }
            },
        };
    }
}
