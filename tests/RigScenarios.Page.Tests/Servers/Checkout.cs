using System.Runtime.CompilerServices;

namespace RigScenarios.Page.Tests.Servers;

/// <summary>Where things lie in the checkout, found from this file's own place.</summary>
internal static class Checkout
{
    public static string Root { get; } = Find();

    public static string Data { get; } = Path.Combine(Root, "data");

    public static string Sample(string name) => File.ReadAllText(Path.Combine(Data, "scenarios", name));

    private static string Find([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
