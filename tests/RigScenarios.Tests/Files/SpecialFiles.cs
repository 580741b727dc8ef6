using System.Diagnostics;

namespace RigScenarios.Tests.Files;

/// <summary>Makes what stands among files and is none.</summary>
internal static class SpecialFiles
{
    /// <summary>A pipe with a name; the test is skipped where the system has none.</summary>
    public static string Pipe(string path)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "named pipes among files belong to other systems");
        using var made = Process.Start(new ProcessStartInfo("mkfifo", [path]));
        made!.WaitForExit();
        Assert.Equal(0, made.ExitCode);
        return path;
    }

    /// <summary>A device that never ends; the test is skipped where the system has none.</summary>
    public static string Endless()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "this system has no /dev/zero");
        return "/dev/zero";
    }
}
