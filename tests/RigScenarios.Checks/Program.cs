using RigScenarios.Checks.Table;
using Xunit.MicrosoftTestingPlatform;
using Xunit.Runner.InProc.SystemConsole;

namespace RigScenarios.Checks;

/// <summary>
/// The checks run as in every other test project; besides, <c>table</c> prints what they rest on. So the entry point is written
/// here and not generated.
/// </summary>
internal static class Program
{
    // The test platform calls with one of these.
    private static readonly string[] PlatformSwitches = ["--server", "--internal-msbuild-node"];

    public static async Task<int> Main(string[] args) => args switch
    {
        ["table", .. var rest] => await TableCommand.RunAsync(rest),
        _ when args.Any(PlatformSwitches.Contains) =>
            await TestPlatformTestFramework.RunAsync(args, SelfRegisteredExtensions.AddSelfRegisteredExtensions),
        _ => await ConsoleRunner.Run(args),
    };
}
