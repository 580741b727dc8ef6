using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Cli.Commands;

/// <summary>The words that all commands on a scenario share: the file, the build, the days, the changes, the reserve that is
/// wished, and JSON.</summary>
internal sealed class ScenarioOptions
{
    private readonly Argument<string> file = new("FILE") { Description = "The scenario file." };
    private readonly Option<string?> build = new("--build") { Description = "Only this build, by its short name.",
        HelpName = "NAME" };
    private readonly Option<string[]> days = new("--days", "--day")
    {
        Description = "Only these days, by their short names, one after the other; all of the file if left out.",
        HelpName = "NAME",
        AllowMultipleArgumentsPerToken = true,
        DefaultValueFactory = _ => [],
    };
    private readonly Option<string[]> set = new("--set")
    {
        Description = "Change a field for this run, by its path in the file; may be given several times. "
            + "Example: --set \"builds.tripod.battery.capacity-left=80 %\"",
        HelpName = "PATH=VALUE",
        DefaultValueFactory = _ => [],
    };
    private readonly Option<string?> reserve = new("--reserve")
    {
        Description = "The reserve that you want after wrap, such as \"1 h\"; with less of it the verdict is \"close\".",
        HelpName = "TIME",
    };
    private readonly Option<bool> json =
        new("--json") { Description = "Print the answer as JSON (docs/json.md says what is in it)." };

    /// <summary>File, build, days and changes.</summary>
    public void AddTo(Command command)
    {
        AddFileTo(command);
        command.Add(build);
        command.Add(days);
    }

    /// <summary>What every command takes that gives the answer or a part of it.</summary>
    /// <param name="command">The command.</param>
    /// <param name="json">Whether it prints JSON too.</param>
    public void AddAnswerTo(Command command, bool json = true)
    {
        AddTo(command);
        command.Add(reserve);
        if (json)
            command.Add(this.json);
    }

    /// <summary>Only the file and the changes, for a command that is about no build and no day.</summary>
    public void AddFileTo(Command command)
    {
        command.Add(file);
        command.Add(set);
    }

    /// <summary>The changes, as they were given.</summary>
    public IReadOnlyList<string> Changed(ParseResult parsed) => parsed.GetRequiredValue(set);

    /// <summary>The file as it was named, ready to be typed again.</summary>
    public string File(ParseResult parsed) => ShellWord.Of(parsed.GetRequiredValue(file));

    /// <summary>The file as it was named.</summary>
    public string Named(ParseResult parsed) => parsed.GetRequiredValue(file);

    /// <summary>The files that a scenario was read from: itself and its parts files.</summary>
    public IReadOnlyList<string> Inputs(ParseResult parsed, Scenario scenario) =>
        ScenarioFile.Inputs(scenario, parsed.GetRequiredValue(file));

    /// <summary>Whether JSON is wanted.</summary>
    public bool IsJson(ParseResult parsed) => parsed.GetValue(json);

    /// <summary>Whether JSON is wanted, for what checks the options before anything is read.</summary>
    public bool IsJson(System.CommandLine.Parsing.SymbolResult parsed) => parsed.GetValue(json);

    /// <summary>The scenario with its changes; warnings go to standard error.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="today">The day for which the age of batteries is asked where the file names none; null where no age is
    /// used.</param>
    public Scenario Read(ParseResult parsed, DateOnly? today = null) =>
        Read(parsed.GetRequiredValue(file), parsed.GetRequiredValue(set), today);

    /// <summary>A scenario with changes as <c>PATH=VALUE</c>; warnings go to standard error.</summary>
    internal static Scenario Read(string path, IEnumerable<string> changes, DateOnly? today)
    {
        var (scenario, problems) = ScenarioFile.TryRead(path);
        if (scenario is null)
            throw new ScenarioProblemsException(problems);
        foreach (var warning in problems)
            Console.Error.WriteLine(warning);
        return Changed(scenario, changes).AskedOn(today);
    }

    /// <summary>A scenario with changes as <c>PATH=VALUE</c>.</summary>
    internal static Scenario Changed(Scenario scenario, IEnumerable<string> changes) =>
        ScenarioPath.SetAll(scenario, Changes(changes));

    /// <summary>The answers of the builds that are asked about, in the order of the file: the same for every command.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="today">The day for a journey without a date.</param>
    /// <param name="cancellation">Stops it.</param>
    public IReadOnlyList<RigAnswer> Answers(ParseResult parsed, Scenario scenario, DateOnly today, CancellationToken cancellation)
    {
        var options = Asked(parsed, today);
        var (builds, names) = (Builds(parsed, scenario), Days(parsed, scenario));
        return [.. builds.Select(name => RigAnswer.Of(scenario, name, names, options, cancellation: cancellation))];
    }

    /// <summary>The answer of the first of the builds that are asked about.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="today">The day for a journey without a date.</param>
    /// <param name="cancellation">Stops it.</param>
    public RigAnswer FirstAnswer(ParseResult parsed, Scenario scenario, DateOnly today, CancellationToken cancellation) =>
        RigAnswer.Of(scenario, Builds(parsed, scenario)[0], Days(parsed, scenario), Asked(parsed, today),
            cancellation: cancellation);

    /// <summary>What answers are asked with.</summary>
    public AnswerOptions Asked(ParseResult parsed, DateOnly today) => AnswerOptions.EndOnly with
    {
        Today = today,
        Wish = OptionValue.Read(parsed.GetValue(reserve),
            new DurationFormat(Duration.Zero, Duration.FromHours(1000), "1 h"), "--reserve"),
    };

    /// <summary>The builds that are asked about: all, or the one that was named.</summary>
    public IReadOnlyList<string> Builds(ParseResult parsed, Scenario scenario) =>
        parsed.GetValue(build) is { } name ? [Named(scenario.Builds, name, "build", "--build")] : [.. scenario.Builds.Keys];

    /// <summary>The build that was named; null where none was.</summary>
    public string? NamedBuild(ParseResult parsed, Scenario scenario) =>
        parsed.GetValue(build) is null ? null : Builds(parsed, scenario)[0];

    /// <summary>The days that are asked about: all, or those that were named, in their order.</summary>
    public IReadOnlyList<string> Days(ParseResult parsed, Scenario scenario) =>
        parsed.GetRequiredValue(days) is { Length: > 0 } names
        ? [.. names.Select(name => Named(scenario.Days, name, "day", "--days"))] : [.. scenario.Days.Keys];

    /// <summary>Splits <c>PATH=VALUE</c> texts.</summary>
    internal static IReadOnlyList<(string Path, string Text)> Changes(IEnumerable<string> texts, string option = "--set")
    {
        var changes = new List<(string, string)>();
        var problems = new List<Diagnostic>();
        foreach (var text in texts)
        {
            var equals = text.IndexOf('=', StringComparison.Ordinal);
            if (equals > 0)
                changes.Add((text[..equals].Trim(), text[(equals + 1)..].Trim()));
            else
                problems.Add(new Diagnostic(Severity.Error, "", TextPlace.None, option,
                    $"Found \"{(text.Length <= 200 ? text : text[..197] + "...")}\".",
                    "PATH=VALUE, such as \"days.day-one.ambient=-10 °C\""));
        }
        return problems.Count > 0 ? throw new ScenarioProblemsException(problems) : changes;
    }

    private static string Named<T>(OrderedMap<T> things, string name, string what, string option)
        where T : notnull =>
        things.ContainsKey(name) ? name : throw new ScenarioProblemsException([new Diagnostic(
            Severity.Error, "", TextPlace.None, option, $"The scenario has no {what} \"{name}\".", string.Join(", ", things.Keys),
            NearestName.To(name, things.Keys))]);
}
