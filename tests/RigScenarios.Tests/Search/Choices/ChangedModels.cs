using RigScenarios.Search.Choices;

namespace RigScenarios.Tests.Search.Choices;

/// <summary>The same model with its slots and candidates in another order.</summary>
internal sealed class PermutedModel : IChoiceModel
{
    private readonly IChoiceModel model;
    private readonly int[] slots;
    private readonly int[][] candidates;

    public PermutedModel(IChoiceModel model, Random random)
    {
        this.model = model;
        slots = [.. Enumerable.Range(0, model.Slots.Count)];
        random.Shuffle(slots);
        candidates = [.. slots.Select(slot =>
        {
            int[] order = [.. Enumerable.Range(0, model.Slots[slot].Candidates.Count)];
            random.Shuffle(order);
            return order;
        })];
        Slots = [.. slots.Select((slot, i) => model.Slots[slot] with
        {
            Candidates = [.. candidates[i].Select(candidate => model.Slots[slot].Candidates[candidate])],
        })];
        Goals = [.. model.Goals.Select(goal => goal with { Sum = Turned(goal.Sum), DependsOn = Turned(goal.DependsOn) })];
        Musts = [.. model.Musts.Select(must => must with { Sum = Turned(must.Sum), DependsOn = Turned(must.DependsOn) })];
    }

    public IReadOnlyList<ChoiceSlot> Slots { get; }

    public IReadOnlyList<ChoiceGoal> Goals { get; }

    public IReadOnlyList<ChoiceMust> Musts { get; }

    public bool IsCompatible(int slot, int candidate) => model.IsCompatible(slots[slot], candidates[slot][candidate]);

    public bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB)
    {
        var (a, b) = ((slots[slotA], candidates[slotA][candidateA]), (slots[slotB], candidates[slotB][candidateB]));
        if (a.Item1 > b.Item1)
            (a, b) = (b, a);
        return model.IsCompatible(a.Item1, a.Item2, b.Item1, b.Item2);
    }

    public ChoiceBounds? Bounds(ChoiceBox box)
    {
        var own = ChoiceBox.All(model);
        for (var i = 0; i < slots.Length; i++)
            own = own.With(slots[i], box.Possible(i).Select(candidate => candidates[i][candidate]));
        return model.Bounds(own);
    }

    public ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation) =>
        model.Evaluate(Original(choice), cancellation);

    /// <summary>The choice as the model without the other order knows it.</summary>
    public Choice Original(Choice choice) =>
        new(Enumerable.Range(0, slots.Length).Select(slot => Array.IndexOf(slots, slot))
            .Select(place => candidates[place][choice[place]]));

    private ChoiceSum? Turned(ChoiceSum? sum) => sum is null ? null : sum with
    {
        Weights = [.. slots.Select((slot, i) =>
            (IReadOnlyList<decimal?>)[.. candidates[i].Select(candidate => sum.Weights[slot][candidate])])],
    };

    private int[]? Turned(IReadOnlyList<int>? dependsOn) =>
        dependsOn?.Select(slot => Array.IndexOf(slots, slot)).ToArray();
}

/// <summary>The same model without one candidate of a slot that has several.</summary>
internal sealed class FewerCandidates(IChoiceModel model, int slot, int candidate) : IChoiceModel
{
    public IReadOnlyList<ChoiceSlot> Slots => model.Slots;

    public IReadOnlyList<ChoiceGoal> Goals => model.Goals;

    public IReadOnlyList<ChoiceMust> Musts => model.Musts;

    public bool IsCompatible(int one, int place) => (one != slot || place != candidate) && model.IsCompatible(one, place);

    public bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB) =>
        model.IsCompatible(slotA, candidateA, slotB, candidateB);

    public ChoiceBounds? Bounds(ChoiceBox box) => model.Bounds(box);

    public ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation) => model.Evaluate(choice, cancellation);
}

/// <summary>A clock that goes on by a second whenever it is read; its timers never ring.</summary>
internal sealed class SteppingClock : TimeProvider
{
    private long seconds;

    public override long TimestampFrequency => 1;

    public override long GetTimestamp() => Interlocked.Increment(ref seconds);

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) => new Silent();

    private sealed class Silent : ITimer
    {
        public bool Change(TimeSpan dueTime, TimeSpan period) => true;

        public void Dispose()
        {
        }

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}
