namespace RigScenarios.Search.Choices;

/// <summary>
/// What can be chosen, what must hold and what is wished, as a search sees it. The physics stays behind it. What is cheap to
/// know is told beforehand (which candidates fit together, figures that are sums); the rest is asked for one choice, or bounded
/// for many.
/// </summary>
/// <remarks>Every member is called from several threads at once and gives the same answer for the same question.</remarks>
public interface IChoiceModel
{
    /// <summary>The slots, at least one.</summary>
    IReadOnlyList<ChoiceSlot> Slots { get; }

    /// <summary>The figures that shall be small; may be none.</summary>
    IReadOnlyList<ChoiceGoal> Goals { get; }

    /// <summary>What must hold; may be none.</summary>
    IReadOnlyList<ChoiceMust> Musts { get; }

    /// <summary>Whether the candidate fits the rest of the build.</summary>
    /// <param name="slot">The slot, from 0.</param>
    /// <param name="candidate">The place of its candidate.</param>
    bool IsCompatible(int slot, int candidate) => true;

    /// <summary>Whether two candidates fit each other. Asked once for each pair, with <paramref name="slotA"/> before
    /// <paramref name="slotB"/>.</summary>
    /// <param name="slotA">A slot, from 0.</param>
    /// <param name="candidateA">The place of its candidate.</param>
    /// <param name="slotB">A later slot.</param>
    /// <param name="candidateB">The place of its candidate.</param>
    bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB) => true;

    /// <summary>
    /// What is known of all choices of a box without running one: no choice in it, compatible or not, is better. A box is only
    /// a set of choices, so a bound is what the best candidates of each slot would give together: the largest battery with the
    /// least draw, the least mass. The bounds hold for the figures as computed, rounding included, and never get worse when a
    /// box gets smaller.
    /// </summary>
    /// <param name="box">The choices.</param>
    /// <returns>The bounds; null where nothing is known.</returns>
    ChoiceBounds? Bounds(ChoiceBox box) => null;

    /// <summary>Everything about one compatible choice. Called only where sums and bounds don't decide; a search remembers what
    /// it has asked.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation);
}

/// <summary>What came out for one choice.</summary>
/// <param name="Goals">For each goal, in the model's order, its figure; NaN where it is not known. The place of a goal that is a
/// sum is not read.</param>
/// <param name="Musts">For each must whether it holds; null where that is not known. The place of a must that is a sum is not
/// read.</param>
public sealed record ChoiceFigures(IReadOnlyList<double> Goals, IReadOnlyList<bool?> Musts);

/// <summary>What is known of all choices of a box.</summary>
/// <param name="GoalsAtLeast">For each goal a figure that none of them is under; minus infinity where there is no bound, and also
/// where the goal may be unknown for one of them. The place of a goal that is a sum is not read.</param>
/// <param name="MustsMayHold">For each must whether it may hold for one of them; false only where it is sure that it does not
/// hold for any. The place of a must that is a sum is not read.</param>
public sealed record ChoiceBounds(IReadOnlyList<double> GoalsAtLeast, IReadOnlyList<bool> MustsMayHold);
