using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Cli.Answers;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using RigScenarios.Search;
using RigScenarios.Simulation;
using Spectre.Console;
using UnitsNet;

namespace RigScenarios.Cli.Commands;

/// <summary><c>day SCENARIO</c>: whether the days complete with the batteries in rotation, where they break, and what the least kit is.</summary>
internal static class DayCommand
{
    public static Command Create()
    {
        var options = new ScenarioOptions();
        var days = new Option<string[]>("--days")
        {
            Description = "Only these days, by their short names, in this order; all of the file if left out.", HelpName = "NAME",
            AllowMultipleArgumentsPerToken = true, DefaultValueFactory = _ => [],
        };
        var least = new Option<bool>("--least") { Description = "Search the least number of batteries, then of bays, with which the days complete, and say where every smaller kit fails." };
        var atSwap = new Option<string?>("--keep-at-swap") { Description = "With --least: charge that each battery shall still hold when it comes off, such as \"15 %\".", HelpName = "SHARE" };
        var atEnd = new Option<string?>("--keep-at-end") { Description = "With --least: how long what is left at the end shall last, such as \"1 h\".", HelpName = "TIME" };
        var json = new Option<bool>("--json") { Description = "Print the answer as JSON (docs/json.md says what is in it)." };
        var command = new Command("day", "Run the days in a row with all batteries, swaps and chargers: do they complete, where do they break, what is left.");
        options.AddWithoutDayTo(command);
        command.Add(days);
        command.Add(least);
        command.Add(atSwap);
        command.Add(atEnd);
        command.Add(json);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var wish = Wish(parsed.GetValue(atSwap), parsed.GetValue(atEnd));
            var scenario = options.Read(parsed);
            var answers = options.Builds(parsed, scenario)
                .Select(build => Answer(scenario, build, parsed.GetRequiredValue(days), parsed.GetValue(least) || wish != KitWish.None ? wish : null, cancellation)).ToList();
            if (parsed.GetValue(json))
                Console.Out.WriteLine(DayJson.Text(scenario, answers));
            else
                DayText.Write(AnswerText.Console(), scenario, answers);
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    private static DayAnswer Answer(Scenario scenario, string build, string[] days, KitWish? wish, CancellationToken cancellation)
    {
        var (powered, plan) = ScenarioPlan.Of(scenario, build, days);
        var result = DaySimulation.Run(powered, plan, cancellation: cancellation);
        var kit = wish is null ? null : Search(progress => LeastKit.Find(powered, plan, wish, progress, cancellation));
        return new DayAnswer(
            build, scenario.Builds[build].Title ?? build, days.Length > 0 ? days : [.. scenario.Days.Keys], plan, result, NotPlanned.Of(scenario, build), wish ?? KitWish.None, kit);
    }

    private static KitWish Wish(string? atSwap, string? atEnd)
    {
        var log = new ReadLog("");
        var share = Read(atSwap, new QuantityFormat<Ratio>(Ratio.FromPercent(0), Ratio.FromPercent(100), "15 %"), "--keep-at-swap", log);
        var time = Read(atEnd, new DurationFormat(Duration.Zero, Duration.FromHours(1000), "1 h"), "--keep-at-end", log);
        return log.HasErrors ? throw new ScenarioProblemsException(log.Problems) : new KitWish(share, time);
    }

    private static T? Read<T>(string? text, Format<T> form, string option, ReadLog log)
        where T : struct =>
        text is not null && form.TryRead(new TextNode(text, TextPlace.None), option, log, out var value) ? value : null;

    private static LeastKitResult Search(Func<IProgress<LeastKitProgress>, LeastKitResult> search)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        return !console.Profile.Capabilities.Interactive || Console.IsErrorRedirected
            ? search(new Told(_ => { }))
            : console.Progress().AutoClear(true).Start(context =>
            {
                var task = context.AddTask("Trying kits", maxValue: 1);
                return search(new Told(progress => task.Value = (double)progress.Tried / progress.AtMost));
            });
    }

    private sealed class Told(Action<LeastKitProgress> tell) : IProgress<LeastKitProgress>
    {
        public void Report(LeastKitProgress value) => tell(value);
    }
}
