using System.Runtime.CompilerServices;

namespace RigScenarios.Notebooks.Tests;

/// <summary>
/// A missing snapshot fails the test. To accept new or changed ones, run the tests once with RIGSCENARIOS_ACCEPT_SNAPSHOTS=1,
/// move what lies in a folder __mismatch__ up by one, and read the difference before it is committed.
/// </summary>
internal static class StrictSnapshots
{
    [ModuleInitializer]
    internal static void TurnOn()
    {
        if (Environment.GetEnvironmentVariable("RIGSCENARIOS_ACCEPT_SNAPSHOTS") is null)
            Environment.SetEnvironmentVariable("SNAPSHOOTER_STRICT_MODE", "on");
    }
}
