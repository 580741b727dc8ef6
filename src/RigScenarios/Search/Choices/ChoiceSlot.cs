namespace RigScenarios.Search.Choices;

/// <summary>A role in a build, and what can fill it.</summary>
/// <param name="Name">The role.</param>
/// <param name="Candidates">The names of what can fill it, at least one, no name twice. A slot that may stay empty has one
/// candidate more, which stands for nothing and weighs and costs zero.</param>
public sealed record ChoiceSlot(string Name, IReadOnlyList<string> Candidates);

/// <summary>A figure that shall be small. What shall be large, like a runtime, is given with its sign turned.</summary>
/// <param name="Name">What it is.</param>
public sealed record ChoiceGoal(string Name)
{
    /// <summary>The sum that it is; null where only <see cref="IChoiceModel.Evaluate"/> knows it.</summary>
    public ChoiceSum? Sum { get; init; }

    /// <summary>The slots that it depends on; null means all of them. It saves work: a figure found for a choice then holds for
    /// every other one with the same candidates in these slots.</summary>
    public IReadOnlyList<int>? DependsOn { get; init; }
}

/// <summary>A condition that must hold. Where nobody knows whether it does, it does not count as held.</summary>
/// <param name="Name">What it asks, in words that can stand in a list of wishes.</param>
public sealed record ChoiceMust(string Name)
{
    /// <summary>The sum that must stay at or under <see cref="AtMost"/>; null where only
    /// <see cref="IChoiceModel.Evaluate"/> knows whether the condition holds.</summary>
    public ChoiceSum? Sum { get; init; }

    /// <summary>The most that the sum may be. What must be large is given with its signs turned.</summary>
    public decimal AtMost { get; init; }

    /// <summary>The slots that it depends on; null means all of them. See <see cref="ChoiceGoal.DependsOn"/>.</summary>
    public IReadOnlyList<int>? DependsOn { get; init; }
}
