using Spectre.Console;

namespace RigScenarios.Cli.Commands;

/// <summary>Work that takes a while: how far it is stands on standard error where somebody watches, and nothing where nobody
/// does. Ctrl-C stops it.</summary>
internal static class LongWork
{
    /// <summary>Does the work.</summary>
    /// <param name="title">What is done, in a few words.</param>
    /// <param name="work">The work; it tells the part that is done, 0…1.</param>
    public static T Run<T>(string title, Func<IProgress<double>, T> work)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        return !console.Profile.Capabilities.Interactive || Console.IsErrorRedirected
            ? work(new Told(_ => { }))
            : console.Progress().AutoClear(true).Start(context =>
            {
                var task = context.AddTask(Markup.Escape($"{title} (Ctrl-C stops it)"), maxValue: 1);
                return work(new Told(part => task.Value = Math.Max(task.Value, part)));
            });
    }

    private sealed class Told(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
