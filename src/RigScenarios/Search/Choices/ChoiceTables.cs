namespace RigScenarios.Search.Choices;

/// <summary>What a model tells beforehand, asked once and checked: which candidates fit, and the sums in whole numbers.</summary>
internal sealed class ChoiceTables
{
    private readonly bool[][] fits;
    private readonly bool[][][][] fitTogether;

    /// <summary>Asks the model.</summary>
    /// <exception cref="ArgumentException">The model contradicts itself.</exception>
    public ChoiceTables(IChoiceModel model, bool knownOnly)
    {
        ChoiceModelCheck.Check(model);
        Model = model;
        KnownOnly = knownOnly;
        Slots = model.Slots.Count;
        SumGoals = [.. Indices(model.Goals.Select(goal => goal.Sum is not null))];
        OtherGoals = [.. Indices(model.Goals.Select(goal => goal.Sum is null))];
        OtherMusts = [.. Indices(model.Musts.Select(must => must.Sum is null))];
        GoalSums = [.. SumGoals.Select(goal => new ScaledSum(model.Goals[goal].Sum!, model.Goals[goal].Name))];
        MustSums = [.. model.Musts.Where(must => must.Sum is not null).Select(must =>
        {
            var sum = new ScaledSum(must.Sum!, must.Name);
            return (sum, sum.AtMost(must.AtMost));
        })];
        // A candidate whose part of a must is not known is never known to hold it.
        fits = [.. model.Slots.Select((slot, s) => Enumerable.Range(0, slot.Candidates.Count).Select(c =>
            model.IsCompatible(s, c) && Array.TrueForAll(MustSums, must => must.Sum.IsKnown(s, c))
            && (!knownOnly || Array.TrueForAll(GoalSums, sum => sum.IsKnown(s, c)))).ToArray())];
        fitTogether = new bool[Slots][][][];
        for (var a = 0; a < Slots; a++)
            fitTogether[a] = [.. fits[a].Select((fit, c) => TogetherWith(a, c, fit))];
        HasEmptySlot = fits.Any(slot => Array.TrueForAll(slot, fit => !fit));
    }

    public IChoiceModel Model { get; }

    /// <summary>Whether choices with a goal that is not known are left out.</summary>
    public bool KnownOnly { get; }

    public int Slots { get; }

    /// <summary>The goals that are sums, by their place in the model.</summary>
    public int[] SumGoals { get; }

    /// <summary>The other goals.</summary>
    public int[] OtherGoals { get; }

    /// <summary>The musts that are no sums.</summary>
    public int[] OtherMusts { get; }

    /// <summary>The sums of <see cref="SumGoals"/>.</summary>
    public ScaledSum[] GoalSums { get; }

    /// <summary>The sums of musts, and the most that each may be.</summary>
    public (ScaledSum Sum, long AtMost)[] MustSums { get; }

    /// <summary>Whether a choice has to be run: whether there is a goal or a must that is no sum.</summary>
    public bool NeedsRun => OtherGoals.Length + OtherMusts.Length > 0;

    /// <summary>Whether there is a slot without any candidate that fits.</summary>
    public bool HasEmptySlot { get; }

    /// <summary>Whether a candidate fits the build.</summary>
    public bool Fits(int slot, int candidate) => fits[slot][candidate];

    /// <summary>Whether two candidates fit each other, <paramref name="slotA"/> before <paramref name="slotB"/>.</summary>
    public bool FitTogether(int slotA, int a, int slotB, int b) => fitTogether[slotA][a][slotB - slotA - 1][b];

    /// <summary>The least that a sum can be, what is not known counting as zero.</summary>
    public long LeastOf(ScaledSum sum) => sum.Rest + Enumerable.Range(0, Slots).Sum(slot =>
        Fitting(slot).Min(candidate => sum.Weight(slot, candidate)));

    /// <summary>How far the most that a sum can be is over the least.</summary>
    public long RangeOf(ScaledSum sum) => Enumerable.Range(0, Slots).Sum(slot =>
        Fitting(slot).Max(candidate => sum.Weight(slot, candidate))
        - Fitting(slot).Min(candidate => sum.Weight(slot, candidate)));

    /// <summary>The candidates of a slot that fit the build.</summary>
    public IEnumerable<int> Fitting(int slot) => Indices(fits[slot]);

    /// <summary>Every choice of candidates that fit the build.</summary>
    /// <remarks>Only where every slot has such a candidate.</remarks>
    public ChoiceBox AllFitting()
    {
        var box = ChoiceBox.All(Model);
        for (var slot = 0; slot < Slots; slot++)
            box = box.With(slot, Fitting(slot));
        return box;
    }

    /// <summary>Whether compatibility and sums allow a choice.</summary>
    public bool Allows(Choice choice)
    {
        for (var a = 0; a < Slots; a++)
        {
            if (!fits[a][choice[a]])
                return false;
            for (var b = a + 1; b < Slots; b++)
            {
                if (!FitTogether(a, choice[a], b, choice[b]))
                    return false;
            }
        }
        return Array.TrueForAll(MustSums, must => must.Sum.Of(choice) <= must.AtMost);
    }

    /// <summary>The box without candidates that fit no candidate of another slot; null where a slot has none left.</summary>
    public ChoiceBox? Narrowed(ChoiceBox box)
    {
        for (var slot = 0; slot < Slots; slot++)
        {
            var fitting = box.Possible(slot).Where(candidate => FitsAnyInEachSlot(slot, candidate, box)).ToList();
            if (fitting.Count == 0)
                return null;
            if (fitting.Count < box.Possible(slot).Count)
                box = box.With(slot, fitting);
        }
        return box;
    }

    /// <summary>Whether sums, bounds or the front say that no choice of a box is a new entry.</summary>
    public bool IsDecided(ChoiceBox box, IReadOnlyList<ChoicePoint> front)
    {
        if (Array.Exists(MustSums, must => must.Sum.LeastOf(box) > must.AtMost))
            return true;
        var bounds = NeedsRun ? Model.Bounds(box) : null;
        if (bounds is not null && Array.Exists(OtherMusts, must => !bounds.MustsMayHold[must]))
            return true;
        if ((bounds is null && OtherGoals.Length > 0) || !Array.TrueForAll(GoalSums, sum => sum.IsKnown(box)))
            return false;
        var sums = Array.ConvertAll(GoalSums, sum => sum.LeastOf(box));
        var others = Array.ConvertAll(OtherGoals, goal => bounds!.GoalsAtLeast[goal]);
        for (var i = 0; i < front.Count; i++)
        {
            if (front[i].IsNoWorseThan(sums, others))
                return true;
        }
        return false;
    }

    private bool FitsAnyInEachSlot(int slot, int candidate, ChoiceBox box)
    {
        for (var other = 0; other < Slots; other++)
        {
            if (other == slot)
                continue;
            var isFitting = false;
            foreach (var one in (int[])box.Possible(other))
            {
                isFitting = slot < other ? FitTogether(slot, candidate, other, one) : FitTogether(other, one, slot, candidate);
                if (isFitting)
                    break;
            }
            if (!isFitting)
                return false;
        }
        return true;
    }

    private static IEnumerable<int> Indices(IEnumerable<bool> which) =>
        which.Index().Where(item => item.Item).Select(item => item.Index);

    private bool[][] TogetherWith(int slot, int candidate, bool fit) =>
        [.. Enumerable.Range(slot + 1, Slots - slot - 1).Select(other => fits[other].Select((otherFit, c) =>
            fit && otherFit && Model.IsCompatible(slot, candidate, other, c)).ToArray())];
}
