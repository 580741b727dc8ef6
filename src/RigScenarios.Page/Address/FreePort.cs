using System.Net.Sockets;
using System.Net;

namespace RigScenarios.Page.Address;

/// <summary>Finds a port that nobody uses.</summary>
internal static class FreePort
{
    /// <summary>How many ports after the wished one are tried before any other is taken.</summary>
    private const int Near = 20;

    /// <summary>The ports to try, in order: the wished one and those after it, then whichever the system gives.</summary>
    public static IEnumerable<int> From(int wished)
    {
        if (wished > 0)
        {
            foreach (var port in Enumerable.Range(wished, Near).Where(port => port <= IPEndPoint.MaxPort && IsFree(port)))
                yield return port;
        }
        for (var i = 0; i < Near; i++)
            yield return Any();
    }

    private static bool IsFree(int port)
    {
        try
        {
            using var listener = new TcpListener(IPAddress.Loopback, port) { ExclusiveAddressUse = true };
            listener.Start();
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }

    private static int Any()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
