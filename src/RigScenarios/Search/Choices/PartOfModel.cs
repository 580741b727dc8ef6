namespace RigScenarios.Search.Choices;

/// <summary>A model with only some of its goals and musts.</summary>
internal sealed class PartOfModel(IChoiceModel model, IReadOnlyList<int> goals, IReadOnlyList<int> musts) : IChoiceModel
{
    public IReadOnlyList<ChoiceSlot> Slots => model.Slots;

    public IReadOnlyList<ChoiceGoal> Goals { get; } = [.. goals.Select(goal => model.Goals[goal])];

    public IReadOnlyList<ChoiceMust> Musts { get; } = [.. musts.Select(must => model.Musts[must])];

    public bool IsCompatible(int slot, int candidate) => model.IsCompatible(slot, candidate);

    public bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB) =>
        model.IsCompatible(slotA, candidateA, slotB, candidateB);

    public ChoiceBounds? Bounds(ChoiceBox box) => model.Bounds(box) is { } all
        ? new([.. goals.Select(goal => all.GoalsAtLeast[goal])], [.. musts.Select(must => all.MustsMayHold[must])]) : null;

    public ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation)
    {
        // What is a sum is not asked for: without any other figure nothing needs to be run.
        if (Goals.All(goal => goal.Sum is not null) && Musts.All(must => must.Sum is not null))
            return new([.. Goals.Select(_ => double.NaN)], [.. Musts.Select(_ => (bool?)null)]);
        var all = model.Evaluate(choice, cancellation);
        return new([.. goals.Select(goal => all.Goals[goal])], [.. musts.Select(must => all.Musts[must])]);
    }
}
