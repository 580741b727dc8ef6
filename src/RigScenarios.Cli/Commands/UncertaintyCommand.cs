using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Cli.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;
using RigScenarios.Sweeps.Sensitivity;

namespace RigScenarios.Cli.Commands;

/// <summary><c>uncertainty FILE</c>: how sure is the answer, what makes it unsure, what to measure first.</summary>
internal static class UncertaintyCommand
{
    private const int MostWhole = 100_000;

    /// <param name="clock">Gives today's date, for a battery's life without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var uncertain = Several("--uncertain", "A field that isn't known exactly, and what it may be, instead of what is usual; "
            + "may be given several times (docs/what-if.md). Example: --uncertain \"days.day-one.ambient=-8 °C +- 3 °C\"",
            "PATH=SPREAD");
        var together = Several("--together", "Two uncertain fields that go together, and how much (-1 to 1).",
            "FIRST with SECOND=NUMBER");
        var only = new Option<bool>("--nothing-else") { Description =
            "Nothing is uncertain but the fields behind --uncertain." };
        var figure = new Option<string?>("--figure") { Description =
            $"The figure, by the name of its column (docs/sweeps.md); {SensitivityQuestion.UsualFigure} if left out.",
            HelpName = "NAME" };
        var along = new Option<string?>("--along") { Description =
            "A field and its values: the spread is told at each of them. "
                + "Example: --along \"days.day-one.ambient=-20 °C..10 °C:7\"",
            HelpName = "PATH=VALUES" };
        var rows = new Option<int?>("--rows") { Description =
            "Rows of the design, each a run for every uncertain thing and two more; 512 if left out.", HelpName = "NUMBER" };
        var whole = new Option<int?>("--whole") { Description =
            "How many times the whole answer is asked; 256 if left out, 0 for not at all.", HelpName = "NUMBER" };
        var seed = new Option<long?>("--seed") { Description = "The same number draws the same; 1 if left out.",
            HelpName = "NUMBER" };
        var json = new Option<bool>("--json") { Description =
            "Print the answer as JSON (docs/uncertainty.md says what is in it)." };
        var command = new Command("uncertainty",
            "How sure is the answer? The chance that the days last with all that nobody knows exactly, what it hangs on, and "
                + "what to measure first.");
        options.AddTo(command);
        foreach (var option in (Option[])[uncertain, together, only, figure, along, rows, whole, seed, json])
            command.Add(option);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var today = Today.Of(clock);
            var scenario = options.Read(parsed, today);
            var builds = options.Builds(parsed, scenario);
            var problems = new List<Diagnostic>();
            Within("--rows", parsed.GetValue(rows), VarianceOptions.FewestRows, VarianceOptions.MostRows, problems);
            Within("--whole", parsed.GetValue(whole), 0, MostWhole, problems);
            var given = PlanOf(scenario, parsed.GetRequiredValue(uncertain), parsed.GetRequiredValue(together),
                parsed.GetValue(along), problems);
            if (parsed.GetValue(only) && parsed.GetRequiredValue(uncertain).Length == 0)
                problems.Add(new(Severity.Error, "", TextPlace.None, "--nothing-else", "No field is named as uncertain.",
                    "it together with --uncertain"));
            Known(scenario, parsed.GetValue(figure), problems);
            if (problems.Count > 0)
                throw new ScenarioProblemsException(problems);
            var usual = new SensitivityQuestion(scenario, builds[0], options.Days(parsed, scenario)) { Today = today };
            var question = usual with
            {
                Figure = parsed.GetValue(figure) ?? usual.Figure, Along = given.Axes.Count > 0 ? given.Axes[0] : null,
                WholeSamples = parsed.GetValue(whole) ?? usual.WholeSamples,
                Options = usual.Options with
                {
                    Rows = parsed.GetValue(rows) ?? usual.Options.Rows, Seed = parsed.GetValue(seed) ?? usual.Options.Seed,
                },
                Uncertain = parsed.GetValue(only) ? UsualUncertainty.Only(given.Uncertain, given.Correlations)
                    : given.Uncertain.Count == 0 && given.Correlations.Count == 0 ? null
                    : UsualUncertainty.Of(RigAnswer.Of(scenario, builds[0], usual.Days,
                        AnswerOptions.EndOnly with { Today = today, FollowsUp = false }, null, cancellation))
                        .With(given.Uncertain, given.Correlations),
            };
            var answer = LongWork.Run("Running the days with what is uncertain", progress =>
                SensitivityRun.Of(question, progress, cancellation));
            if (parsed.GetValue(json))
                Console.Out.WriteLine(JsonText.Document(MattersShape.Of(answer)));
            else
                Write(builds, answer);
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    private static SweepPlan PlanOf(Scenario scenario, string[] uncertain, string[] together, string? along,
        List<Diagnostic> problems)
    {
        try
        {
            return PlanText.Read(scenario, along is null ? [] : [along], uncertain, together);
        }
        catch (ScenarioProblemsException exception)
        {
            problems.AddRange(exception.Problems);
            return new();
        }
    }

    private static void Known(Scenario scenario, string? figure, List<Diagnostic> problems)
    {
        try
        {
            if (figure is not null)
                SweepColumns.Choose(scenario, [figure]);
        }
        catch (ScenarioProblemsException exception)
        {
            problems.AddRange(exception.Problems);
        }
    }

    private static void Write(IReadOnlyList<string> builds, SensitivityAnswer answer)
    {
        var console = AnswerText.Console();
        UncertaintyText.Write(console, answer);
        if (builds.Count > 1)
            Paragraph.Write(console, $"Other builds: --build {string.Join(", ", builds.Skip(1))}.");
    }

    private static void Within(string option, int? value, int least, int most, List<Diagnostic> problems)
    {
        if (value is { } number && (number < least || number > most))
            problems.Add(new(Severity.Error, "", TextPlace.None, option, $"Found {number}.",
                $"a whole number from {least} to {most}"));
    }

    private static Option<string[]> Several(string name, string description, string help) => new(name)
    {
        Description = description, HelpName = help, DefaultValueFactory = _ => [],
    };
}
