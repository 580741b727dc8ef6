using RigScenarios.Answers;
using RigScenarios.Cli.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Search.Compare;
using RigScenarios.Simulation;
using RigScenarios.Travel;
using Spectre.Console;

namespace RigScenarios.Tests.Mutations;

/// <summary>An answer as every command shows it, for people and for programs.</summary>
internal static class AllFaces
{
    private static readonly DateOnly Today = new(2026, 6, 1);

    /// <summary>The most builds of a file that are answered.</summary>
    private const int MostBuilds = 3;

    /// <summary>The answers of a scenario's first builds on all its days.</summary>
    public static IReadOnlyList<RigAnswer> Answers(Scenario scenario, CancellationToken cancellation) =>
    [
        .. scenario.Builds.Keys.Take(MostBuilds).Select(build => RigAnswer.Of(scenario, build, [],
            AnswerOptions.EndOnly with { Today = Today }, cancellation: cancellation)),
    ];

    /// <summary>The JSON documents of the commands, and what would make it work where that is asked.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="answers">Its answers; at least one.</param>
    /// <param name="seeks">Whether what would make it work is looked for too, in a few runs.</param>
    /// <param name="cancellation">Stops it.</param>
    public static IEnumerable<string> Json(Scenario scenario, IReadOnlyList<RigAnswer> answers, bool seeks,
        CancellationToken cancellation)
    {
        var sets = seeks ? WouldWork.Find(answers[0], new WouldWorkOptions(MostRuns: 6), cancellation: cancellation) : null;
        yield return RunJson.Text(scenario, [.. answers.Select(answer => RunJson.One(answer, sets, null))]);
        yield return BalanceJson.Text(scenario, answers);
        yield return WiringJson.Text(scenario, answers);
        yield return DayJson.Text(scenario, Days(answers));
        yield return TravelJson.Text(scenario, Journeys(scenario, cancellation), answers[0].Journeys);
        if (answers.Count > 1)
            yield return JsonText.Document(SideBySideShape.Of(Compared(answers, seeks, cancellation)));
    }

    /// <summary>What the commands print.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="answers">Its answers; at least one.</param>
    /// <param name="cancellation">Stops it.</param>
    public static string Text(Scenario scenario, IReadOnlyList<RigAnswer> answers, CancellationToken cancellation)
    {
        using var writer = new StringWriter();
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors, Out = new AnsiConsoleOutput(writer) });
        console.Profile.Width = 100;
        RunText.Verdict(console, answers);
        AnswerText.Cautions(console, AnswerCautions.Of(answers[0]));
        RunText.Rest(console, answers, null, null);
        BalanceText.Write(console, answers, "rig.yaml");
        WiringText.Write(console, answers, "rig.yaml");
        DayText.Write(console, Days(answers), "rig.yaml");
        TravelText.Write(console, scenario, Journeys(scenario, cancellation), answers[0].Journeys, []);
        if (answers.Count > 1)
            CompareText.Write(console, Compared(answers, splits: false, cancellation));
        return writer.ToString();
    }

    private static SideBySide Compared(IReadOnlyList<RigAnswer> answers, bool splits, CancellationToken cancellation) =>
        SideBySide.Of([.. answers.Select(answer => new ComparedRig(answer.Build, answer))], splits: splits,
            cancellation: cancellation);

    private static IReadOnlyList<DayAnswer> Days(IReadOnlyList<RigAnswer> answers) =>
        [.. answers.Select(answer => new DayAnswer(answer, KitWish.None, null))];

    private static IReadOnlyList<(string, TravelAnswer)> Journeys(Scenario scenario, CancellationToken cancellation) =>
        [.. scenario.Journeys.Keys.Select(name => (name, ScenarioTravel.Answer(scenario, name, Today, cancellation)))];
}
