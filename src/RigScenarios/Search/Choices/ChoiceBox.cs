using System.Numerics;

namespace RigScenarios.Search.Choices;

/// <summary>Many choices at once: for each slot the candidates that are still possible, and every choice of one of them for each
/// slot. A partial choice is a box in which the slots decided have one candidate and the others have all.</summary>
public sealed class ChoiceBox
{
    private readonly int[][] possible;

    private ChoiceBox(int[][] possible) => this.possible = possible;

    /// <summary>How many slots there are.</summary>
    public int Slots => possible.Length;

    /// <summary>The places of the candidates that are possible in a slot, at least one, rising.</summary>
    /// <param name="slot">The slot, from 0.</param>
    public IReadOnlyList<int> Possible(int slot) => possible[slot];

    /// <summary>Whether the slot has one candidate left.</summary>
    /// <param name="slot">The slot, from 0.</param>
    public bool IsDecided(int slot) => possible[slot].Length == 1;

    /// <summary>Every choice of a model.</summary>
    /// <param name="model">The model.</param>
    public static ChoiceBox All(IChoiceModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return new([.. model.Slots.Select(slot => Enumerable.Range(0, slot.Candidates.Count).ToArray())]);
    }

    /// <summary>One choice alone.</summary>
    /// <param name="choice">The choice.</param>
    public static ChoiceBox Of(Choice choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return new([.. choice.Select(candidate => new[] { candidate })]);
    }

    /// <summary>The same with other candidates possible in one slot.</summary>
    /// <param name="slot">The slot, from 0.</param>
    /// <param name="candidates">The places of its candidates, in any order.</param>
    /// <exception cref="ArgumentException">No candidate is given.</exception>
    public ChoiceBox With(int slot, IEnumerable<int> candidates)
    {
        int[] some = [.. candidates.Distinct().Order()];
        if (some.Length == 0)
            throw new ArgumentException("A slot of a box has at least one candidate.", nameof(candidates));
        var copy = (int[][])possible.Clone();
        copy[slot] = some;
        return new(copy);
    }

    /// <summary>How many choices there are.</summary>
    public BigInteger Count => possible.Aggregate(BigInteger.One, (count, slot) => count * slot.Length);

    /// <summary>Whether the choice is one of these.</summary>
    /// <param name="choice">The choice.</param>
    public bool Has(Choice choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        for (var slot = 0; slot < possible.Length; slot++)
        {
            if (Array.BinarySearch(possible[slot], choice[slot]) < 0)
                return false;
        }
        return true;
    }

    /// <summary>Whether every choice of another box is one of these.</summary>
    /// <param name="other">The other box.</param>
    public bool Has(ChoiceBox other)
    {
        ArgumentNullException.ThrowIfNull(other);
        for (var slot = 0; slot < possible.Length; slot++)
        {
            foreach (var candidate in other.possible[slot])
            {
                if (Array.BinarySearch(possible[slot], candidate) < 0)
                    return false;
            }
        }
        return true;
    }

    /// <summary>Whether a choice is one of both.</summary>
    /// <param name="other">The other box.</param>
    public bool Meets(ChoiceBox other)
    {
        ArgumentNullException.ThrowIfNull(other);
        for (var slot = 0; slot < possible.Length; slot++)
        {
            if (!Array.Exists(other.possible[slot], candidate => Array.BinarySearch(possible[slot], candidate) >= 0))
                return false;
        }
        return true;
    }
}
