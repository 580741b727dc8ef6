using RigScenarios.Sweeps.Tables;
using Spectre.Console;

namespace RigScenarios.Cli.Commands;

/// <summary>Work of very many steps: how far it is, how quickly it goes and how long it will take stand on standard error; where
/// nobody watches, as a line each half minute, which is what a log wants.</summary>
internal static class WatchedWork
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(30);

    /// <summary>Does the work.</summary>
    /// <param name="title">What is done, in a few words.</param>
    /// <param name="pace">How far it is at its begin, and what is told to it.</param>
    /// <param name="clock">The clock.</param>
    /// <param name="work">The work; it tells how many steps are done.</param>
    public static async Task RunAsync(string title, SweepPace pace, TimeProvider clock, Func<IProgress<long>, Task> work)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        if (!console.Profile.Capabilities.Interactive || Console.IsErrorRedirected)
        {
            var told = clock.GetTimestamp();
            await work(new Told(done =>
            {
                pace.Tell(done);
                if (clock.GetElapsedTime(told) < Pause)
                    return;
                told = clock.GetTimestamp();
                Console.Error.WriteLine($"{title}: {pace.Words}");
            }));
            return;
        }
        await console.Progress().AutoClear(true).Columns(new SpinnerColumn(), new TaskDescriptionColumn(), new PercentageColumn())
            .StartAsync(async context =>
            {
                var task = context.AddTask(Markup.Escape(title), maxValue: Math.Max(1, pace.Count));
                await work(new Told(done =>
                {
                    pace.Tell(done);
                    task.Value = done;
                    task.Description = Markup.Escape($"{title}: {pace.Words} (Ctrl-C stops it)");
                }));
            });
    }

    private sealed class Told(Action<long> tell) : IProgress<long>
    {
        public void Report(long value) => tell(value);
    }
}
