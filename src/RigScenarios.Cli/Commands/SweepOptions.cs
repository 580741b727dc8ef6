using System.CommandLine;
using System.Globalization;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Cli.Commands;

/// <summary>The words that say what a sweep asks: fields and their values, what is uncertain, how it is sampled, which figures
/// are wanted.</summary>
internal sealed class SweepOptions
{
    private const int UsualSamples = 1024;
    private const int MostSamples = 1_000_000_000;

    private static readonly (string Word, SamplingMethod Method)[] Methods =
        [("random", SamplingMethod.Random), ("latin", SamplingMethod.LatinHypercube), ("sobol", SamplingMethod.Sobol)];

    private readonly Option<string[]> over = Several("--over",
        "A field and its values: a range or a list; may be given several times, for every combination. "
            + "Example: --over \"days.day-one.ambient=-20 °C..20 °C:9\"", "PATH=VALUES");
    private readonly Option<string[]> uncertain = Several("--uncertain",
        "A field that isn't known exactly, and what it may be; may be given several times (docs/what-if.md). "
            + "Example: --uncertain \"parts.brick.battery.energy=190 Wh +- 8 Wh\"", "PATH=SPREAD");
    private readonly Option<string[]> together = Several("--together",
        "Two uncertain fields that go together, and how much (-1 to 1); may be given several times. "
            + "Example: --together \"builds.tripod.battery.capacity-left with builds.tripod.battery.resistance-growth=-0.7\"",
        "FIRST with SECOND=NUMBER");
    private readonly Option<int?> samples = new("--samples") { Description =
        $"How many samples of the uncertain fields there are for each combination; {UsualSamples} if left out.",
        HelpName = "NUMBER" };
    private readonly Option<string?> sampling = new("--sampling") { Description =
        "How the samples are spread: sobol (evenly, the usual one), latin (a Latin hypercube) or random.", HelpName = "WAY" };
    private readonly Option<long?> seed = new("--seed") { Description =
        "Where the samples begin: the same number gives the same ones; 1 if left out.", HelpName = "NUMBER" };
    private readonly Option<string[]> columns = Several("--columns",
        "The figures that are wanted, by their names (docs/sweeps.md), with commas between them; \"all\" for every one; how the "
            + "days go if left out.", "NAMES");

    public void AddTo(Command command)
    {
        foreach (var option in (Option[])[over, uncertain, together, samples, sampling, seed, columns])
            command.Add(option);
    }

    /// <summary>The plan.</summary>
    /// <exception cref="ScenarioProblemsException">Something is not accepted; carries everything that is wrong.</exception>
    public SweepPlan Plan(ParseResult parsed, Scenario scenario)
    {
        var (axes, unsure) = (parsed.GetRequiredValue(over), parsed.GetRequiredValue(uncertain));
        var problems = new List<Diagnostic>();
        if (axes.Length + unsure.Length == 0)
            problems.Add(Problem("--over", "No field is named.", "a field and its values, such as "
                + "--over \"days.day-one.ambient=-20 °C..20 °C:9\", or --uncertain"));
        var method = Methods.FirstOrDefault(one => one.Word == (parsed.GetValue(sampling) ?? Methods[^1].Word));
        if (method.Word is null)
            problems.Add(Problem("--sampling", $"Found \"{parsed.GetValue(sampling)}\".", "sobol, latin or random"));
        var each = parsed.GetValue(samples) ?? UsualSamples;
        if (each is < 1 or > MostSamples)
            problems.Add(Problem("--samples", $"Found {each}.", $"a whole number from 1 to {MostSamples}, such as 1024"));
        if (unsure.Length == 0)
            problems.AddRange(ForSamples(parsed).Select(option => Problem(option, "Nothing is uncertain, so nothing is sampled.",
                "it together with --uncertain")));
        var plan = new SweepPlan();
        try
        {
            plan = PlanText.Read(scenario, axes, unsure, parsed.GetRequiredValue(together)) with
            {
                Method = method.Method, Samples = unsure.Length > 0 ? each : 1, Seed = parsed.GetValue(seed) ?? 1,
            };
        }
        catch (ScenarioProblemsException exception)
        {
            problems.AddRange(exception.Problems);
        }
        return problems.Count > 0 ? throw new ScenarioProblemsException(problems) : plan;
    }

    /// <summary>The figures.</summary>
    public IReadOnlyList<SweepColumn> Columns(ParseResult parsed, Scenario scenario) =>
        Names(parsed) is { Count: > 0 } names ? SweepColumns.Choose(scenario, names) : SweepColumns.Usual;

    /// <summary>The fields that are moved, as they were asked for.</summary>
    public IReadOnlyList<string> Moved(ParseResult parsed) =>
        [.. parsed.GetRequiredValue(over), .. parsed.GetRequiredValue(uncertain), .. parsed.GetRequiredValue(together)];

    /// <summary>The words that ask the same again.</summary>
    public IEnumerable<string> Words(ParseResult parsed, SweepPlan plan)
    {
        foreach (var text in parsed.GetRequiredValue(over))
            yield return $"--over {ShellWord.Of(text)}";
        foreach (var text in parsed.GetRequiredValue(uncertain))
            yield return $"--uncertain {ShellWord.Of(text)}";
        foreach (var text in parsed.GetRequiredValue(together))
            yield return $"--together {ShellWord.Of(text)}";
        if (plan.Uncertain.Count > 0)
            yield return string.Create(CultureInfo.InvariantCulture,
                $"--samples {plan.Samples} --sampling {Methods.First(one => one.Method == plan.Method).Word} --seed {plan.Seed}");
        if (Names(parsed) is { Count: > 0 } names)
            yield return $"--columns {ShellWord.Of(string.Join(',', names))}";
    }

    private List<string> Names(ParseResult parsed) => [.. parsed.GetRequiredValue(columns)
        .SelectMany(text => text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))];

    private IEnumerable<string> ForSamples(ParseResult parsed)
    {
        if (parsed.GetValue(samples) is not null)
            yield return "--samples";
        if (parsed.GetValue(sampling) is not null)
            yield return "--sampling";
        if (parsed.GetValue(seed) is not null)
            yield return "--seed";
    }

    private static Option<string[]> Several(string name, string description, string help) => new(name)
    {
        Description = description, HelpName = help, DefaultValueFactory = _ => [],
    };

    private static Diagnostic Problem(string option, string problem, string accepted) =>
        new(Severity.Error, "", TextPlace.None, option, problem, accepted);
}
