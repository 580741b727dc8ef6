using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary>What the program's exit code says.</summary>
internal static class ExitCodes
{
    /// <summary>An answer was given, whatever it is.</summary>
    public const int Done = 0;

    /// <summary>The work failed for a reason that the input is not to blame for.</summary>
    public const int Failed = 1;

    /// <summary>A file, a path or an option can't be used.</summary>
    public const int BadInput = 2;

    /// <summary>The user stopped it.</summary>
    public const int Stopped = 130;
}

/// <summary>Runs a command so that whatever goes wrong reaches the user as plain words and an exit code, never as a stack
/// trace.</summary>
internal static class Guard
{
    public static async Task<int> RunAsync(Func<Task<int>> command)
    {
        try
        {
            return await command();
        }
        catch (ScenarioProblemsException exception)
        {
            foreach (var problem in exception.Problems)
                await Console.Error.WriteLineAsync(problem.ToString());
            return ExitCodes.BadInput;
        }
        catch (OperationCanceledException)
        {
            await Console.Error.WriteLineAsync("Stopped. Nothing was written.");
            return ExitCodes.Stopped;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            await Console.Error.WriteLineAsync($"error: {exception.Message}");
            return ExitCodes.Failed;
        }
        catch (ArgumentException exception)
        {
            // Messages of the library name the value and what is accepted; the parameter's name behind them is for programmers.
            await Console.Error.WriteLineAsync($"error: {exception.Message.Split(" (Parameter")[0]}");
            return ExitCodes.BadInput;
        }
#pragma warning disable CA1031 // The last door before the user: a bug must not print a stack trace at someone on set.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            await Console.Error.WriteLineAsync($"error: something went wrong inside RigScenarios: {exception.Message} Please "
                + "report it with the file that led to it.");
            return ExitCodes.Failed;
        }
    }
}
