using System.CommandLine;
using RigScenarios.Cli;
using RigScenarios.Cli.Commands;

return await CommandLine.RunAsync(args);

namespace RigScenarios.Cli
{
    /// <summary>The commands of <c>rigscenarios</c>, and what happens when one goes wrong.</summary>
    public static class CommandLine
    {
        /// <summary>Runs a command line.</summary>
        /// <param name="args">The words after the program's name.</param>
        /// <param name="clock">The clock that says which day it is; the system's if left out.</param>
        /// <returns>0 an answer was given, whatever it is; 1 something failed that the input isn't to blame for; 2 the input
        /// can't be used; 130 stopped by the user; 143 ended by the system.</returns>
        public static async Task<int> RunAsync(string[] args, TimeProvider? clock = null)
        {
            ArgumentNullException.ThrowIfNull(args);
            Console.OutputEncoding = System.Text.Encoding.UTF8;
            var root = new RootCommand("Will this camera rig run all day, and does it balance? Runs builds through shooting "
                + "days, puts them on their heads, and says what would help. Ends with 0 when there is an answer, whatever it "
                    + "is; with 1 when the work failed for a reason outside the input; with 2 when a file, a path or an "
                        + "option can't be used; with 130 when you stopped it, with 143 when the system did.")
            {
                CheckCommand.Create(),
                RunCommand.Create(clock ?? TimeProvider.System),
                DayCommand.Create(clock ?? TimeProvider.System),
                BalanceCommand.Create(clock ?? TimeProvider.System),
                WiringCommand.Create(clock ?? TimeProvider.System),
                SweepCommand.Create(clock ?? TimeProvider.System),
                GatherCommand.Create(clock ?? TimeProvider.System),
                UncertaintyCommand.Create(clock ?? TimeProvider.System),
                AboutCommand.Create(),
                CompareCommand.Create(clock ?? TimeProvider.System),
                AgingCommand.Create(clock ?? TimeProvider.System),
                TravelCommand.Create(clock ?? TimeProvider.System),
                FitCommand.Create(clock ?? TimeProvider.System),
                SearchCommand.Create(clock ?? TimeProvider.System),
                TakeAlongCommand.Create(clock ?? TimeProvider.System),
                SheetCommand.Create(clock ?? TimeProvider.System),
                ExerciseCommand.Create(clock ?? TimeProvider.System),
                NotebookCommand.Create(clock ?? TimeProvider.System),
                NewCommand.Create(),
                OpenCommand.Create(clock ?? TimeProvider.System),
                SiteCommand.Create(),
            };
            root.SetAction((_, cancellation) => Guard.RunAsync(() => DemoCommand.RunAsync(cancellation)));
            var parsed = root.Parse(args);
            if (parsed.Errors.Count > 0)
            {
                foreach (var error in parsed.Errors)
                    ErrorText.Line($"error: {error.Message}");
                ErrorText.Line("See: rigscenarios --help");
                return ExitCodes.BadInput;
            }
            // A signal is told on a thread of the pool: one stays free beside a command that takes a thread for every core.
            ThreadPool.GetMinThreads(out var threads, out var ports);
            ThreadPool.SetMinThreads(Math.Max(threads, Environment.ProcessorCount + 2), ports);
            using var signals = new StopSignals();
            // The parser's own way of stopping knows no difference between the signals.
            var configuration = new InvocationConfiguration { ProcessTerminationTimeout = null };
            return await signals.EndOf(parsed.InvokeAsync(configuration, signals.Token));
        }
    }
}
