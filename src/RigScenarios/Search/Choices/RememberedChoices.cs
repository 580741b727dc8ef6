using System.Collections.Concurrent;

namespace RigScenarios.Search.Choices;

/// <summary>A model that is asked about each choice only once, and of choices that differ only in slots that no figure depends on
/// about one. Several searches on one of these share what they found.</summary>
/// <param name="model">The model.</param>
public sealed class RememberedChoices(IChoiceModel model) : IChoiceModel
{
    private readonly ConcurrentDictionary<Choice, ChoiceFigures> known = new();

    /// <summary>The slots that no figure depends on: choices that differ only there are the same to the model.</summary>
    private readonly int[] indifferent = [.. Enumerable.Range(0, model.Slots.Count).Where(slot =>
        model.Goals.All(goal => goal.Sum is not null || goal.DependsOn?.Contains(slot) is false)
        && model.Musts.All(must => must.Sum is not null || must.DependsOn?.Contains(slot) is false))];

    /// <summary>How many choices the model was asked about.</summary>
    public int Evaluated => known.Count;

    /// <inheritdoc/>
    public IReadOnlyList<ChoiceSlot> Slots => model.Slots;

    /// <inheritdoc/>
    public IReadOnlyList<ChoiceGoal> Goals => model.Goals;

    /// <inheritdoc/>
    public IReadOnlyList<ChoiceMust> Musts => model.Musts;

    /// <inheritdoc/>
    public bool IsCompatible(int slot, int candidate) => model.IsCompatible(slot, candidate);

    /// <inheritdoc/>
    public bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB) =>
        model.IsCompatible(slotA, candidateA, slotB, candidateB);

    /// <inheritdoc/>
    public ChoiceBounds? Bounds(ChoiceBox box) => model.Bounds(box);

    /// <summary>What came out for a choice, from memory if it was asked before.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="cancellation">Stops the work.</param>
    public ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation)
    {
        var key = KeyOf(choice);
        if (known.TryGetValue(key, out var figures))
            return figures;
        figures = model.Evaluate(choice, cancellation);
        return known.GetOrAdd(key, figures);
    }

    /// <summary>What is remembered of a choice; null if it was not asked.</summary>
    internal ChoiceFigures? Recall(Choice choice) => known.GetValueOrDefault(KeyOf(choice));

    private Choice KeyOf(Choice choice) => indifferent.Length == 0 ? choice
        : new(choice.Select((candidate, slot) => indifferent.Contains(slot) ? 0 : candidate));
}
