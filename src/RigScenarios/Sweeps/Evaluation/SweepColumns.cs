using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>The columns that a sweep can have: figures of every model, the same ones that the answer to that scenario
/// gives.</summary>
public static class SweepColumns
{
    /// <summary>All columns for a scenario.</summary>
    /// <param name="scenario">The scenario; the unit of amounts is its currency.</param>
    public static IReadOnlyList<SweepColumn> All(Scenario scenario) => [.. Readings(scenario).Select(one => one.Column)];

    /// <summary>The columns of a table that asks for nothing special: how the days go.</summary>
    public static IReadOnlyList<SweepColumn> Usual { get; } = [.. DayColumns.All.Select(one => one.Column)];

    /// <summary>The columns of these names, in their order.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="names">The names; <c>all</c> stands for every column.</param>
    /// <exception cref="ScenarioProblemsException">There is no column of a name, or none is named; carries every such
    /// problem.</exception>
    public static IReadOnlyList<SweepColumn> Choose(Scenario scenario, IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        var all = All(scenario);
        var known = all.Select(column => column.Name).ToList();
        var problems = names.Where(name => name != Every && !known.Contains(name))
            .Select(name => Problem($"There is no column \"{name}\".", known, NearestName.To(name, known))).ToList();
        if (names.Count == 0)
            problems.Add(Problem("No column is named.", known, null));
        if (problems.Count > 0)
            throw new ScenarioProblemsException(problems);
        return [.. names.SelectMany(name => name == Every ? all : all.Where(column => column.Name == name)).Distinct()];
    }

    private const string Every = "all";

    /// <summary>How the columns of a question are read.</summary>
    /// <exception cref="ScenarioProblemsException">One of them is not of this list.</exception>
    internal static IReadOnlyList<ColumnReading> ReadingsOf(Scenario scenario, IReadOnlyList<SweepColumn> columns)
    {
        var all = Readings(scenario);
        _ = Choose(scenario, [.. columns.Select(column => column.Name)]);
        return [.. columns.Select(column => all.First(one => one.Column.Name == column.Name))];
    }

    private static List<ColumnReading> Readings(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return [.. DayColumns.All, .. RestColumns.All, .. AnswerColumns.All(CurrencyOf(scenario))];
    }

    // The check of the file holds all amounts to one currency.
    private static string CurrencyOf(Scenario scenario) =>
        scenario.Costs?.Budget?.Currency ?? scenario.Kit.Keys.Select(scenario.PartOf)
            .Select(part => (part?.Buy ?? part?.RentPerDay ?? part?.RentPerWeek ?? part?.RentPerMonth)?.Currency)
            .FirstOrDefault(currency => currency is not null) ?? "";

    private static Diagnostic Problem(string what, IReadOnlyList<string> known, string? nearest) =>
        new(Severity.Error, "", TextPlace.None, "columns", what, $"{string.Join(", ", known)}; {Every}", nearest);
}
