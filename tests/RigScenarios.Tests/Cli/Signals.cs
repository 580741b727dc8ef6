using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace RigScenarios.Tests.Cli;

/// <summary>Signals to a program that a test started.</summary>
internal static class Signals
{
    /// <summary>Whether whoever runs the tests ignores Ctrl-C: the programs that they start ignore it too.</summary>
    public static bool IsInterruptIgnored { get; private set; }

    // Before anything else: as soon as one test listens for Ctrl-C within this process, it is no longer told as ignored here, and
    // the programs that are started ignore it all the same.
    [ModuleInitializer]
    internal static void Look()
    {
        const ulong interrupt = 1UL << 1;
        const string ignored = "SigIgn:";
        var line = File.Exists("/proc/self/status") ? File.ReadLines("/proc/self/status")
            .FirstOrDefault(one => one.StartsWith(ignored, StringComparison.Ordinal)) : null;
        IsInterruptIgnored = line is not null && (ulong.Parse(line[ignored.Length..].Trim(), NumberStyles.HexNumber,
            CultureInfo.InvariantCulture) & interrupt) != 0;
    }

    /// <summary>Sends a signal.</summary>
    /// <param name="name">Its name without SIG.</param>
    /// <param name="program">To whom.</param>
    public static void Send(string name, Process program)
    {
        Assert.SkipWhen(name == "INT" && IsInterruptIgnored, "whoever runs the tests ignores Ctrl-C");
        using var kill = Process.Start("kill", [$"-{name}", program.Id.ToString(CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
        Assert.Equal(0, kill.ExitCode);
    }
}
