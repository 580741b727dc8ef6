namespace RigScenarios.Search.Choices;

/// <summary>
/// Makes of what is proven of one choice a cut of as many others as the same proof holds for: slot by slot every candidate is
/// let in as long as the bounds, or a figure that does not depend on the slot, still say the same.
/// </summary>
internal sealed class CutMaker(ChoiceTables tables)
{
    /// <summary>What is known of one choice: its figures, if it was run.</summary>
    private readonly record struct Known(Choice Choice, ChoiceFigures? Figures);

    /// <summary>A cut because a must does not hold for this choice; null if that is not proven.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="figures">What came out for it; null where it was not run, and only bounds speak.</param>
    /// <param name="must">The must, by its place in the model.</param>
    public ChoiceCut? NeverHolds(Choice choice, ChoiceFigures? figures, int must)
    {
        var dependsOn = tables.Model.Musts[must].DependsOn;
        bool Proven(ChoiceBox box) => (figures is not null && figures.Musts[must] is not true && IsDecided(box, dependsOn))
            || tables.Model.Bounds(box)?.MustsMayHold[must] is false;
        return Widened(choice, Proven) is { } box ? new(box, null) : null;
    }

    /// <summary>A cut because a goal of this choice, which was run, is not known, where such choices are left out.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="goal">The goal, by its place in the model.</param>
    public ChoiceCut NotKnown(Choice choice, int goal)
    {
        var dependsOn = tables.Model.Goals[goal].DependsOn;
        return new(Widened(choice, box => IsDecided(box, dependsOn))!, null);
    }

    /// <summary>A cut because an entry is no worse in the goals that are no sums; null if that is not proven.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="figures">What came out for it; null where it was not run, and only bounds speak.</param>
    /// <param name="entry">The entry, all its goals known.</param>
    public ChoiceCut? NoBetterThan(Choice choice, ChoiceFigures? figures, ChoicePoint entry) =>
        Widened(choice, box => IsNoBetter(box, new(choice, figures), entry.Others, strictly: false)) is { } box
            ? new(box, [.. entry.Sums.Select(sum => sum!.Value)]) : null;

    /// <summary>A cut because a goal that is no sum is larger than an entry's; null if that is not proven.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="figures">What came out for it; null where it was not run, and only bounds speak.</param>
    /// <param name="entry">The entry, all its goals known.</param>
    public ChoiceCut? WorseThan(Choice choice, ChoiceFigures? figures, ChoicePoint entry) =>
        Widened(choice, box => IsNoBetter(box, new(choice, figures), entry.Others, strictly: true)) is { } box
            ? new(box, null) : null;

    private bool IsNoBetter(ChoiceBox box, Known known, double[] others, bool strictly)
    {
        if (others.Length == 0)
            return !strictly;
        ChoiceBounds? bounds = null;
        var isAsked = false;
        var isWorse = false;
        for (var i = 0; i < others.Length; i++)
        {
            var goal = tables.OtherGoals[i];
            var least = double.NegativeInfinity;
            if (known.Figures is { } figures && IsDecided(box, tables.Model.Goals[goal].DependsOn))
            {
                least = figures.Goals[goal];
            }
            else
            {
                bounds = isAsked ? bounds : tables.Model.Bounds(box);
                isAsked = true;
                least = bounds?.GoalsAtLeast[goal] ?? least;
            }
            isWorse |= least > others[i];
            // Written so that what is not known is no proof.
            if (!strictly && !(least >= others[i]))
                return false;
        }
        return !strictly || isWorse;
    }

    // The box has the choice in it, so a figure is the same all over it where the slots that it depends on are decided.
    private static bool IsDecided(ChoiceBox box, IReadOnlyList<int>? dependsOn) =>
        dependsOn?.All(box.IsDecided) ?? Enumerable.Range(0, box.Slots).All(box.IsDecided);

    private ChoiceBox? Widened(Choice choice, Func<ChoiceBox, bool> proven)
    {
        var box = ChoiceBox.Of(choice);
        if (!proven(box))
            return null;
        for (var slot = 0; slot < tables.Slots; slot++)
        {
            var wide = box.With(slot, tables.Fitting(slot));
            if (proven(wide))
                box = wide;
        }
        // Where nothing is known of boxes, no candidate can be let in alone either.
        if (tables.Model.Bounds(box) is null)
            return box;
        for (var slot = 0; slot < tables.Slots; slot++)
        {
            foreach (var candidate in tables.Fitting(slot).Where(candidate => !box.Possible(slot).Contains(candidate)))
            {
                var wide = box.With(slot, box.Possible(slot).Append(candidate));
                if (proven(wide))
                    box = wide;
            }
        }
        return box;
    }
}
