using System.Globalization;
using System.Reflection;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Sweeps.Tables;

/// <summary>Says what the table of a question will rest on.</summary>
public static class SweepIdentityOfQuestion
{
    /// <summary>The version of the program.</summary>
    public static string Version { get; } =
        typeof(SweepIdentity).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";

    /// <summary>What the table rests on.</summary>
    /// <param name="question">The question.</param>
    /// <param name="way">The way that it goes.</param>
    /// <param name="file">The name of the scenario's file, without its folder.</param>
    /// <param name="moved">The fields that are moved, as they were asked for.</param>
    /// <param name="command">The command, without the names of what it writes and without its part.</param>
    public static SweepIdentity Of(SweepQuestion question, SweepWay way, string file, IReadOnlyList<string> moved, string command)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(way);
        var plan = question.Plan;
        var isDrawn = plan.Uncertain.Count > 0;
        return new SweepIdentity
        {
            Version = Version, Command = command, File = file, Scenario = Text(question), Build = question.Build,
            Days = question.Days.Count > 0 ? question.Days : [.. question.Scenario.Days.Keys],
            AskedOn = HangsOnTheDay(question) ? question.Today : null, Moved = moved,
            Sampling = isDrawn ? plan.Method.ToString() : null, Seed = isDrawn ? plan.Seed : null, Rows = plan.Count,
            Points = PointsDigest.Of(plan), Columns = [SweptColumn.Number, .. SweptColumn.Of(plan), .. question.Columns],
            Way = way.ReductionError is { } error
                ? $"{way.Reason} Its wiring is reduced to a formula, with an error of {Share(error.Percent)}." : way.Reason,
        };
    }

    // Digits of what is next to nothing hang on the machine, and mean nothing.
    private static string Share(double percent) => percent < 0.001 ? "less than 0.001 %"
        : string.Create(CultureInfo.InvariantCulture, $"{percent:G2} %");

    /// <summary>Ages without an end go until the day of the question; which rules a journey without a date meets hangs on
    /// it.</summary>
    private static bool HangsOnTheDay(SweepQuestion question) => question.Scenario.Journeys.Count > 0
        || question.Plan.Paths.Any(path => path.Contains(".age", StringComparison.Ordinal))
        || !ReferenceEquals(question.Scenario, question.Scenario.AskedOn(question.Today));

    // A sweep over parts needs those that its axes name, too.
    private static string Text(SweepQuestion question)
    {
        var scenario = question.Scenario.AskedOn(question.Today);
        var named = question.Plan.Axes.SelectMany(axis => axis.Values).Distinct(StringComparer.Ordinal)
            .Where(id => scenario.Library.ContainsKey(id) && !scenario.Parts.ContainsKey(id))
            .Select(id => KeyValuePair.Create(id, scenario.Library[id]));
        return ScenarioFile.Text((scenario with { Parts = new OrderedMap<Part>(scenario.Parts.Concat(named)) }).SelfContained());
    }
}
