using RigScenarios.Cli;

namespace RigScenarios.Tests.Cli;

/// <summary>Tests that take the process's console for themselves.</summary>
[CollectionDefinition(nameof(ConsoleRun), DisableParallelization = true)]
public class ConsoleRun
{
    /// <summary>Runs a command line and gives what it printed and its exit code.</summary>
    public static async Task<(int Code, string Out, string Error)> RunAsync(params string[] args)
    {
        var (output, error) = (Console.Out, Console.Error);
        using var newOutput = new StringWriter();
        using var newError = new StringWriter();
        try
        {
            Console.SetOut(newOutput);
            Console.SetError(newError);
            var code = await CommandLine.RunAsync(args);
            return (code, newOutput.ToString(), newError.ToString());
        }
        finally
        {
            Console.SetOut(output);
            Console.SetError(error);
        }
    }
}
