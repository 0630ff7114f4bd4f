using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Stockwright.Web.Shell;

/// <summary>Names and addresses by which this machine is reached. Addresses change while the program runs, so they are read again after a few seconds.</summary>
internal sealed class OwnAddresses(TimeProvider clock)
{
    private static readonly TimeSpan KeptFor = TimeSpan.FromSeconds(10);

    private readonly Lazy<HashSet<string>> names = new(ReadNames);
    private Known? known;

    /// <summary>True for the machine's host name, alone, in its domain, or as announced on the local network (RFC 6762).</summary>
    public bool HasName(string name) => names.Value.Contains(name);

    /// <summary>True for loopback, for no address in particular (0.0.0.0, ::), and for an address of a network interface.</summary>
    public bool Has(IPAddress address)
    {
        IPAddress plain = Plain(address);
        return IPAddress.IsLoopback(plain) || plain.Equals(IPAddress.Any) || plain.Equals(IPAddress.IPv6Any) || Addresses().Contains(plain);
    }

    private HashSet<IPAddress> Addresses()
    {
        if (known is not { } kept || clock.GetElapsedTime(kept.ReadAt) > KeptFor)
        {
            known = kept = new Known(clock.GetTimestamp(), ReadAddresses());
        }

        return kept.Addresses;
    }

    private static HashSet<IPAddress> ReadAddresses()
    {
        try
        {
            return [.. NetworkInterface.GetAllNetworkInterfaces().SelectMany(card => card.GetIPProperties().UnicastAddresses).Select(own => Plain(own.Address))];
        }
        catch (NetworkInformationException)
        {
            // Some sandboxes do not tell; names and loopback still hold.
            return [];
        }
    }

    private static HashSet<string> ReadNames()
    {
        HashSet<string> read = new(StringComparer.OrdinalIgnoreCase);
        try
        {
            string whole = Dns.GetHostName();
            string first = whole.Split('.')[0];
            read.UnionWith([whole, first, $"{first}.local"]);
            if (IPGlobalProperties.GetIPGlobalProperties().DomainName is { Length: > 0 } domain)
            {
                read.Add($"{first}.{domain}");
            }
        }
        catch (Exception trouble) when (trouble is SocketException or NetworkInformationException)
        {
            // A machine without a name is reached by its addresses.
        }

        read.Remove("");
        return read;
    }

    /// <summary>Without the interface it is bound to, and IPv4 as IPv4.</summary>
    private static IPAddress Plain(IPAddress address) => address switch
    {
        { IsIPv4MappedToIPv6: true } => address.MapToIPv4(),
        { AddressFamily: AddressFamily.InterNetworkV6, ScopeId: not 0 } => new IPAddress(address.GetAddressBytes()),
        _ => address,
    };

    private sealed record Known(long ReadAt, HashSet<IPAddress> Addresses);
}
