namespace RigScenarios.Search.Choices;

/// <summary>A sum in whole numbers of its smallest digit, so that a solver of whole numbers adds it exactly.</summary>
internal sealed class ScaledSum
{
    // The solver's own bound on what it adds is 2^63; weighted and over all slots it has to stay far under it.
    private const decimal Most = 1L << 46;

    private readonly long[][] weights;
    private readonly bool[][] known;
    private readonly long rest;
    private readonly int digits;

    /// <summary>Scales.</summary>
    /// <param name="sum">The sum.</param>
    /// <param name="name">What it is, for the message.</param>
    /// <exception cref="ArgumentException">It has too many digits to be added exactly.</exception>
    public ScaledSum(ChoiceSum sum, string name)
    {
        var all = sum.Weights.SelectMany(slot => slot).Append(sum.Rest).Select(weight => weight ?? 0).ToList();
        digits = all.Max(DigitsOf);
        var unit = Unit(digits);
        // Dividing asks the question without a number that may be too large for its type.
        if (all.Sum(weight => Math.Min(Math.Abs(weight), Most)) > Most / unit)
        {
            throw new ArgumentException($"The parts of \"{name}\" are too large for their {digits} digits after the point; "
                + "round them, or take a larger unit.", nameof(sum));
        }
        weights = [.. sum.Weights.Select(slot => slot.Select(weight => (long)((weight ?? 0) * unit)).ToArray())];
        known = [.. sum.Weights.Select(slot => slot.Select(weight => weight is not null).ToArray())];
        rest = (long)(sum.Rest * unit);
    }

    /// <summary>What the build adds whatever is chosen.</summary>
    public long Rest => rest;

    /// <summary>What a candidate adds; zero where that is not known.</summary>
    public long Weight(int slot, int candidate) => weights[slot][candidate];

    /// <summary>Whether it is known what a candidate adds.</summary>
    public bool IsKnown(int slot, int candidate) => known[slot][candidate];

    /// <summary>The sum of a choice; null where it is not known.</summary>
    public long? Of(Choice choice)
    {
        var sum = rest;
        for (var slot = 0; slot < weights.Length; slot++)
        {
            if (!known[slot][choice[slot]])
                return null;
            sum += weights[slot][choice[slot]];
        }
        return sum;
    }

    /// <summary>The least sum of a box, what is not known counting as zero.</summary>
    public long LeastOf(ChoiceBox box)
    {
        var sum = rest;
        for (var slot = 0; slot < weights.Length; slot++)
        {
            var least = long.MaxValue;
            foreach (var candidate in (int[])box.Possible(slot))
                least = Math.Min(least, weights[slot][candidate]);
            sum += least;
        }
        return sum;
    }

    /// <summary>Whether the sum of every choice of the box is known.</summary>
    public bool IsKnown(ChoiceBox box) =>
        Enumerable.Range(0, weights.Length).All(slot => box.Possible(slot).All(candidate => known[slot][candidate]));

    /// <summary>The scaled sum as the figure that it stands for.</summary>
    public decimal Figure(long sum) => sum / Unit(digits);

    /// <summary>The largest scaled sum that is not over a figure.</summary>
    public long AtMost(decimal figure)
    {
        var most = Most / Unit(digits);
        return (long)decimal.Floor(Math.Clamp(figure, -most, most) * Unit(digits));
    }

    private static decimal Unit(int digits)
    {
        var unit = 1m;
        for (var i = 0; i < digits; i++)
            unit *= 10;
        return unit;
    }

    // Zeros at the end are no digits: 2.500 has one.
    private static int DigitsOf(decimal figure)
    {
        var count = 0;
        for (var behind = figure; behind != decimal.Truncate(behind) && count < 28; behind *= 10)
        {
            count++;
            behind -= decimal.Truncate(behind);
        }
        return count;
    }
}
