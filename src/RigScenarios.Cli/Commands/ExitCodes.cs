namespace RigScenarios.Cli.Commands;

/// <summary>What the program's exit code says (docs/command-line.md).</summary>
internal static class ExitCodes
{
    /// <summary>An answer was given, whatever it is.</summary>
    public const int Done = 0;

    /// <summary>The work failed for a reason that the input is not to blame for.</summary>
    public const int Failed = 1;

    /// <summary>A file, a path or an option can't be used.</summary>
    public const int BadInput = 2;

    /// <summary>The user stopped it: 128 and the number of the signal, as shells count.</summary>
    public const int Stopped = 130;

    /// <summary>The system or another program ended it.</summary>
    public const int Terminated = 143;
}
