using RigScenarios.Search.Choices;

namespace RigScenarios.Tests.Search.Choices;

/// <summary>A model around another one.</summary>
internal abstract class WatchedModel(IChoiceModel model) : IChoiceModel
{
    public IReadOnlyList<ChoiceSlot> Slots => model.Slots;

    // A figure that only running tells is among the goals, so that choices are run.
    public IReadOnlyList<ChoiceGoal> Goals => [.. model.Goals, new ChoiceGoal("run")];

    public IReadOnlyList<ChoiceMust> Musts => model.Musts;

    public bool IsCompatible(int slot, int candidate) => model.IsCompatible(slot, candidate);

    public bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB) =>
        model.IsCompatible(slotA, candidateA, slotB, candidateB);

    public virtual ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation)
    {
        var figures = model.Evaluate(choice, cancellation);
        return figures with { Goals = [.. figures.Goals, choice.Sum()] };
    }
}

/// <summary>Counts how often it is run.</summary>
internal sealed class CountingModel(IChoiceModel model) : WatchedModel(model)
{
    private int runs;

    public int Runs => runs;

    public override ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation)
    {
        Interlocked.Increment(ref runs);
        return base.Evaluate(choice, cancellation);
    }
}

/// <summary>Is stopped while it is run for the third time.</summary>
internal sealed class StoppingModel(IChoiceModel model, CancellationTokenSource stop) : WatchedModel(model)
{
    private int runs;

    public override ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation)
    {
        if (Interlocked.Increment(ref runs) == 3)
            stop.Cancel();
        cancellation.ThrowIfCancellationRequested();
        return base.Evaluate(choice, cancellation);
    }
}

/// <summary>Can't be run.</summary>
internal sealed class FaultyModel(IChoiceModel model) : WatchedModel(model)
{
    public override ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation) =>
        throw new InvalidOperationException("no such part");
}
