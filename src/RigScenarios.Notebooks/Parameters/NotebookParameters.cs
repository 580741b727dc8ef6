using Quickenshtein;

namespace RigScenarios.Notebooks.Parameters;

/// <summary>The parameters of a notebook, and the values that a run uses for them.</summary>
public sealed class NotebookParameters
{
    // The open convention of parameterised notebooks: one cell with this tag.
    internal const string Tag = "parameters";

    private readonly string folder;

    /// <param name="folder">The notebook's folder.</param>
    /// <param name="cell">Number of the cell that declares them; null where the notebook has none.</param>
    /// <param name="all">What it declares.</param>
    internal NotebookParameters(string folder, int? cell, IReadOnlyList<NotebookParameter> all)
    {
        this.folder = folder;
        Cell = cell;
        All = all;
    }

    /// <summary>The parameters in the order of the notebook.</summary>
    public IReadOnlyList<NotebookParameter> All { get; }

    /// <summary>Number of the cell that declares them, or null where the notebook has none.</summary>
    public int? Cell { get; }

    /// <summary>
    /// The value of each parameter for a run: what was given, checked, and what the notebook says for the others.
    /// </summary>
    /// <param name="given">Values by name, as a person wrote them; a number may carry its unit.</param>
    /// <exception cref="NotebookInputException">A name is unknown, or a value is of the wrong kind or out of range.</exception>
    public IReadOnlyList<ParameterValue> Resolve(IReadOnlyDictionary<string, string>? given = null) =>
        Resolve(given, new ParameterScope([], new ScenarioChoices(), FallsBack: false));

    internal IReadOnlyList<ParameterValue> Resolve(IReadOnlyDictionary<string, string>? given, ParameterScope scope)
    {
        var problems = new List<string>();
        var read = new Dictionary<string, string>();
        foreach (var (name, text) in given ?? new Dictionary<string, string>())
        {
            if (All.FirstOrDefault(p => p.Name == name) is not { } parameter)
            {
                problems.Add(Unknown(name));
                continue;
            }

            var (value, problem) = parameter.Read(text);
            if (problem is null)
                read[name] = value!;
            else
                problems.Add(problem);
        }

        var values = All.Select(p => new ParameterValue(p, read.GetValueOrDefault(p.Name, p.Default), read.ContainsKey(p.Name)))
            .ToList();
        problems.AddRange(scope.Settle(values, folder));
        return problems.Count > 0 ? throw new NotebookInputException(problems) : values;
    }

    private string Unknown(string name)
    {
        if (All.Count == 0)
            return $"{name}: this notebook has no parameters.";
        var nearest = All.MinBy(p => Levenshtein.GetDistance(p.Name.ToUpperInvariant(), name.ToUpperInvariant()))!;
        var distance = Levenshtein.GetDistance(nearest.Name.ToUpperInvariant(), name.ToUpperInvariant());
        var hint = distance <= Math.Max(3, name.Length / 3) ? $" Did you mean {nearest.Name}?" : "";
        return $"{name}: there is no such parameter.{hint} The notebook has: {string.Join(", ", All.Select(p => p.Name))}.";
    }
}

/// <summary>The value of a parameter in a run.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="Value">Its value in plain form ("-20", "true", "98 Wh").</param>
/// <param name="IsGiven">Whether it was given for the run; otherwise it is the notebook's own.</param>
public sealed record ParameterValue(NotebookParameter Parameter, string Value, bool IsGiven)
{
    internal object? Typed => Parameter.Typed(Value);
}
