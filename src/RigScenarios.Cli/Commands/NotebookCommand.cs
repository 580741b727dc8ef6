using System.CommandLine;

namespace RigScenarios.Cli.Commands;

internal static class NotebookCommand
{
    public static Command Create() => new("notebook", "Run a notebook and write it as a page.");
}
