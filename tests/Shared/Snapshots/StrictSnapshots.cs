using System.Runtime.CompilerServices;

namespace RigScenarios.Tests.Shared;

/// <summary>
/// A missing snapshot fails the test, whatever the runner's own variable was set to. To accept new or changed ones, run the
/// tests once with RIGSCENARIOS_ACCEPT_SNAPSHOTS=1, move what lies in a folder __mismatch__ up by one, and read the difference
/// before it is committed.
/// </summary>
internal static class StrictSnapshots
{
    public const string Mode = "SNAPSHOOTER_STRICT_MODE";

    [ModuleInitializer]
    internal static void Demand() => Environment.SetEnvironmentVariable(Mode, Accepting.IsWanted ? "off" : "on");
}
