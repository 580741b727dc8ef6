using System.ComponentModel;
using System.Diagnostics;

namespace RigScenarios.Cli.Commands;

/// <summary>The browser that the system opens addresses with.</summary>
internal static class SystemBrowser
{
    /// <summary>Opens an address; false where no browser can be found. Never fails.</summary>
    /// <param name="address">An address of this program's own server.</param>
    public static bool TryOpen(Uri address)
    {
        try
        {
            if (OperatingSystem.IsWindows())
            {
                using var started = Process.Start(new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true });
                return true;
            }
            if (OperatingSystem.IsMacOS())
                return Start("open", address);
            // Without a display there is no browser to be seen, even where one is installed.
            var hasDisplay = Environment.GetEnvironmentVariable("DISPLAY") is { Length: > 0 }
                || Environment.GetEnvironmentVariable("WAYLAND_DISPLAY") is { Length: > 0 };
            return hasDisplay && Start("xdg-open", address);
        }
        catch (Exception exception) when (exception is Win32Exception or InvalidOperationException
            or PlatformNotSupportedException)
        {
            return false;
        }
    }

    private static bool Start(string program, Uri address)
    {
        using var started = Process.Start(new ProcessStartInfo(program, [address.AbsoluteUri]) { UseShellExecute = false,
            RedirectStandardOutput = true, RedirectStandardError = true });
        return started is not null;
    }
}
