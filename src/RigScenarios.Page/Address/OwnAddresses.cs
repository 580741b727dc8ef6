using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Net;

namespace RigScenarios.Page.Address;

/// <summary>
/// The addresses under which a browser may rightly speak to the server. A name that someone else's server gave out for this
/// machine (rebinding) is not among them: names are taken for loopback only, the network is reached by number.
/// </summary>
internal sealed class OwnAddresses
{
    private readonly HashSet<string> hosts;

    private OwnAddresses(int port, IReadOnlyList<string> network)
    {
        Port = port;
        Network = network;
        hosts = new HashSet<string>([$"127.0.0.1:{port}", $"localhost:{port}", $"[::1]:{port}",
            .. network.Select(host => $"{host}:{port}")], StringComparer.OrdinalIgnoreCase);
    }

    public int Port { get; }

    /// <summary>The machine's addresses on its networks; none where only this machine is listened to.</summary>
    public IReadOnlyList<string> Network { get; }

    public static OwnAddresses Of(int port, bool listen) => new(port, listen ? OnNetworks() : []);

    /// <summary>Whether a <c>Host</c> header names this server.</summary>
    public bool IsHost(string host) => hosts.Contains(host);

    /// <summary>Whether an <c>Origin</c> header is that of a page of this server, opened under the same host as the
    /// request.</summary>
    public bool IsOrigin(string origin, string host) =>
        IsHost(host) && origin.Equals($"http://{host}", StringComparison.OrdinalIgnoreCase);

    private static IReadOnlyList<string> OnNetworks() =>
    [
        .. NetworkInterface.GetAllNetworkInterfaces()
            .Where(network => network.OperationalStatus == OperationalStatus.Up
                && network.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(network => network.GetIPProperties().UnicastAddresses)
            .Select(unicast => unicast.Address)
            .Where(address => !IPAddress.IsLoopback(address) && !address.IsIPv6LinkLocal)
            .OrderBy(address => address.AddressFamily)
            .Select(address => address.AddressFamily == AddressFamily.InterNetworkV6 ? $"[{address}]" : address.ToString())
            .Distinct(StringComparer.Ordinal),
    ];
}
