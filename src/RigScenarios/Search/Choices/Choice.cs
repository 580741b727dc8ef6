using System.Collections;
using System.Globalization;

namespace RigScenarios.Search.Choices;

/// <summary>One candidate for every slot, by its place in the slot's list. Two choices of the same candidates are
/// equal.</summary>
public sealed class Choice : IReadOnlyList<int>, IEquatable<Choice>, IComparable<Choice>
{
    private readonly int[] candidates;

    /// <summary>A choice of these candidates.</summary>
    /// <param name="candidates">For each slot, in the model's order, the place of its candidate, from 0.</param>
    public Choice(IEnumerable<int> candidates)
    {
        ArgumentNullException.ThrowIfNull(candidates);
        this.candidates = [.. candidates];
    }

    /// <summary>How many slots there are.</summary>
    public int Count => candidates.Length;

    /// <summary>The place of the slot's candidate.</summary>
    /// <param name="index">The slot, from 0.</param>
    public int this[int index] => candidates[index];

    /// <summary>The same with another candidate in one slot.</summary>
    /// <param name="slot">The slot, from 0.</param>
    /// <param name="candidate">The place of its candidate.</param>
    public Choice With(int slot, int candidate) => new(candidates.Select((old, i) => i == slot ? candidate : old));

    /// <summary>The names of the candidates, slot by slot.</summary>
    /// <param name="model">The model whose choice it is.</param>
    public IReadOnlyList<string> NamesIn(IChoiceModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return [.. candidates.Select((candidate, slot) => model.Slots[slot].Candidates[candidate])];
    }

    /// <summary>The candidates, slot by slot.</summary>
    public IEnumerator<int> GetEnumerator() => ((IEnumerable<int>)candidates).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => candidates.GetEnumerator();

    /// <summary>The order of a list of choices: by the candidate of the first slot, then of the second, and so on.</summary>
    /// <param name="other">The other choice; null comes first.</param>
    public int CompareTo(Choice? other) => other is null ? 1 : candidates.AsSpan().SequenceCompareTo(other.candidates);

    /// <summary>Whether the other choice has the same candidates.</summary>
    /// <param name="other">The other choice.</param>
    public bool Equals(Choice? other) => other is not null && candidates.AsSpan().SequenceEqual(other.candidates);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Choice);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var candidate in candidates)
            hash.Add(candidate);
        return hash.ToHashCode();
    }

    /// <summary>Whether both have the same candidates.</summary>
    /// <param name="left">One choice.</param>
    /// <param name="right">The other.</param>
    public static bool operator ==(Choice? left, Choice? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether they differ in a candidate.</summary>
    /// <param name="left">One choice.</param>
    /// <param name="right">The other.</param>
    public static bool operator !=(Choice? left, Choice? right) => !(left == right);

    /// <summary>Whether the left one comes before the right one in a list.</summary>
    /// <param name="left">One choice.</param>
    /// <param name="right">The other.</param>
    public static bool operator <(Choice? left, Choice? right) => Comparer<Choice>.Default.Compare(left, right) < 0;

    /// <summary>Whether the left one does not come after the right one in a list.</summary>
    /// <param name="left">One choice.</param>
    /// <param name="right">The other.</param>
    public static bool operator <=(Choice? left, Choice? right) => Comparer<Choice>.Default.Compare(left, right) <= 0;

    /// <summary>Whether the left one comes after the right one in a list.</summary>
    /// <param name="left">One choice.</param>
    /// <param name="right">The other.</param>
    public static bool operator >(Choice? left, Choice? right) => Comparer<Choice>.Default.Compare(left, right) > 0;

    /// <summary>Whether the left one does not come before the right one in a list.</summary>
    /// <param name="left">One choice.</param>
    /// <param name="right">The other.</param>
    public static bool operator >=(Choice? left, Choice? right) => Comparer<Choice>.Default.Compare(left, right) >= 0;

    /// <summary>The places of the candidates, for a message.</summary>
    public override string ToString() =>
        string.Join(' ', candidates.Select(candidate => candidate.ToString(CultureInfo.InvariantCulture)));
}
