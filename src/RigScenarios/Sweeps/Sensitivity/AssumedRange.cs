using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Files.Formats;
using RigScenarios.Sweeps.Sampling;
using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>How far an assumed figure may be off: evenly between the two values that the answer tries for it
/// (<see cref="LeadingAssumptions"/>), which are the ends of what is usual where whoever assumed it knows them.</summary>
internal static class AssumedRange
{
    /// <summary>The spread of a field that was assumed; null where it was not, or its values are no two figures of one
    /// kind.</summary>
    public static Spread? Of(RigAnswer answer, string path) =>
        AssumptionTrials.Of(answer).FirstOrDefault(trial => trial.Path == path) is { } trial ? Between(trial.Usual) : null;

    private static UniformSpread? Between(UsualRange range)
    {
        foreach (var zero in Quantity.Infos.Select(info => info.Zero))
        {
            if (QuantityText.TryRead(range.Least, zero, "1 x", out var least, out _)
                && QuantityText.TryRead(range.Most, zero, "1 x", out var most, out _))
                return (double)least.Value < (double)most.As(least.Unit) ? Spread.Uniform(least, most) : null;
        }
        return null;
    }
}
