using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// What a head can give against the rig's weight: <c>C(θ) = k sin θ</c> (an ideal spring), where k is one of the head's steps or
/// any value
/// of a range. 0 is a step only if it is listed.
/// </summary>
public sealed record Counterbalance
{
    private Counterbalance(IReadOnlyList<Torque> steps, Torque least, Torque greatest) =>
        (Steps, Least, Greatest) = (steps, least, greatest);

    /// <summary>The steps, in their order on the head; empty where any value of the range can be dialled in.</summary>
    public IReadOnlyList<Torque> Steps { get; }

    /// <summary>The number of the first setting on the dial: 0 where it gives nothing, else 1.</summary>
    public int FirstSetting => Steps is [{ NewtonMeters: 0 }, ..] ? 0 : 1;

    /// <summary>The least k.</summary>
    public Torque Least { get; }

    /// <summary>The greatest k.</summary>
    public Torque Greatest { get; }

    /// <summary>A head with steps.</summary>
    /// <param name="steps">k of each step; at least one, each 0 or more.</param>
    /// <exception cref="ArgumentException">There is no step.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A step is below 0 or not finite.</exception>
    public static Counterbalance OfSteps(IEnumerable<Torque> steps)
    {
        Torque[] all = [.. steps];
        if (all.Length == 0)
            throw new ArgumentException(
                "The head has no counterbalance step; accepted: one or more, for instance 0 N·m for a head without any.",
                nameof(steps));
        foreach (var (i, step) in all.Index())
            Require.NotNegative(step.NewtonMeters, "N·m", $"Step {i + 1}");
        return new(all, all.MinBy(step => step.NewtonMeters), all.MaxBy(step => step.NewtonMeters));
    }

    /// <summary>A head on which any value of a range can be dialled in.</summary>
    /// <param name="least">The least k; 0 or more.</param>
    /// <param name="greatest">The greatest k; not below the least.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside of that.</exception>
    public static Counterbalance OfRange(Torque least, Torque greatest)
    {
        Require.NotNegative(least.NewtonMeters, "N·m", nameof(least));
        Require.Within(greatest.NewtonMeters, least.NewtonMeters, double.MaxValue, "N·m", nameof(greatest));
        return new([], least, greatest);
    }
}
