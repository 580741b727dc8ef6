using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Cli.Answers;
using RigScenarios.Files.Formats;
using RigScenarios.Search;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Cli.Commands;

/// <summary><c>day FILE</c>: the part of the answer that is about the days: swaps, times without the rig, batteries and chargers,
/// and the least kit.</summary>
internal static class DayCommand
{
    /// <param name="clock">Gives today's date, for a journey without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var least = new Option<bool>("--least")
        {
            Description = "Search the least number of batteries, then of bays, that lasts the days, and say where every "
                + "smaller kit fails.",
        };
        var atSwap = new Option<string?>("--keep-at-swap")
        {
            Description = "With --least: charge that each battery shall still hold when it comes off, such as \"15 %\".",
            HelpName = "SHARE",
        };
        var atEnd = new Option<string?>("--keep-at-end")
        {
            Description = "With --least: how long what is left at the end shall last, such as \"1 h\".", HelpName = "TIME",
        };
        var command = new Command("day",
            "Does it last the days? Each swap with its time, times without the rig and why, what each battery and charger does.");
        options.AddAnswerTo(command);
        command.Add(least);
        command.Add(atSwap);
        command.Add(atEnd);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var wish = Wish(parsed.GetValue(atSwap), parsed.GetValue(atEnd));
            var scenario = options.Read(parsed, Today.Of(clock));
            var isAsked = parsed.GetValue(least) || wish != KitWish.None;
            var answers = options.Answers(parsed, scenario, Today.Of(clock), cancellation);
            var days = (options.IsJson(parsed) ? answers : AnswerText.LeastFirst(answers))
                .Select(answer => new DayAnswer(answer, wish, isAsked ? Least(answer, wish, cancellation) : null)).ToList();
            if (options.IsJson(parsed))
                Console.Out.WriteLine(DayJson.Text(scenario, days));
            else
                DayText.Write(AnswerText.Console(), days, options.File(parsed));
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    private static LeastKitResult Least(RigAnswer answer, KitWish wish, CancellationToken cancellation) => LongWork.Run(
        "Trying kits", progress => LeastKit.Find(answer.Powered, answer.Plan, wish, new Part(progress), cancellation));

    private static KitWish Wish(string? atSwap, string? atEnd) => new(
        OptionValue.Read(atSwap, new QuantityFormat<Ratio>(Ratio.FromPercent(0), Ratio.FromPercent(100), "15 %"),
            "--keep-at-swap"),
        OptionValue.Read(atEnd, new DurationFormat(Duration.Zero, Duration.FromHours(1000), "1 h"), "--keep-at-end"));

    private sealed class Part(IProgress<double> progress) : IProgress<LeastKitProgress>
    {
        public void Report(LeastKitProgress value) => progress.Report((double)value.Tried / value.AtMost);
    }
}
