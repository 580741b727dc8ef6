using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary>Runs a command so that whatever goes wrong reaches the user as plain words and an exit code, never as a stack
/// trace.</summary>
internal static class Guard
{
    /// <summary>Runs a command.</summary>
    /// <param name="command">The command. It runs beside the thread that listens for signals, so that one that hangs can be
    /// stopped.</param>
    public static async Task<int> RunAsync(Func<Task<int>> command)
    {
        try
        {
            return await Task.Run(command);
        }
        catch (ScenarioProblemsException exception)
        {
            foreach (var problem in exception.Problems)
                ErrorText.Line(problem.ToString());
            return ExitCodes.BadInput;
        }
        catch (OperationCanceledException)
        {
            ErrorText.Line("Stopped. Nothing was written.");
            return ExitCodes.Stopped;
        }
        catch (Exception exception) when (exception is UnauthorizedAccessException or DirectoryNotFoundException
            or FileNotFoundException or PathTooLongException)
        {
            ErrorText.Line($"error: {exception.Message}");
            return ExitCodes.BadInput;
        }
        catch (IOException exception)
        {
            ErrorText.Line($"error: {exception.Message}");
            return ExitCodes.Failed;
        }
        catch (ArgumentException exception)
        {
            // Messages of the library name the value and what is accepted; the parameter's name behind them is for programmers.
            ErrorText.Line($"error: {exception.Message.Split(" (Parameter")[0]}");
            return ExitCodes.BadInput;
        }
#pragma warning disable CA1031 // The last door before the user: a bug must not print a stack trace at someone on set.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            ErrorText.Line($"error: something went wrong inside RigScenarios: {exception.Message} Please report it with the "
                + "file that led to it.");
            return ExitCodes.Failed;
        }
    }
}
