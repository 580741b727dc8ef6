using System.Collections.Concurrent;

namespace RigScenarios.Search.Choices;

/// <summary>A model that is asked about each choice only once. Several searches on one of these share what they found.</summary>
/// <param name="model">The model.</param>
public sealed class RememberedChoices(IChoiceModel model) : IChoiceModel
{
    private readonly ConcurrentDictionary<Choice, ChoiceFigures> known = new();

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
        if (known.TryGetValue(choice, out var figures))
            return figures;
        figures = model.Evaluate(choice, cancellation);
        return known.GetOrAdd(choice, figures);
    }

    /// <summary>What is remembered of a choice; null if it was not asked.</summary>
    internal ChoiceFigures? Recall(Choice choice) => known.GetValueOrDefault(choice);

    /// <summary>All that is remembered.</summary>
    internal IEnumerable<KeyValuePair<Choice, ChoiceFigures>> Recalled => known;
}
