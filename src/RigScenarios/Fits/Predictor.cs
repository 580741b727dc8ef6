using System.Collections.Concurrent;
using System.Runtime.InteropServices;

namespace RigScenarios.Fits;

/// <summary>
/// Something that says what would be observed for given unknowns. It depends on few of them, and is asked the same again and
/// again: what it said is kept.
/// </summary>
internal abstract class Predictor(IEnumerable<int> dependsOn)
{
    private readonly ConcurrentDictionary<Asked, double[]> said = new();

    /// <summary>Numbers of the unknowns on which it depends.</summary>
    public int[] DependsOn { get; } = [.. dependsOn.Where(one => one >= 0).Distinct().Order()];

    /// <summary>Its outputs.</summary>
    public double[] At(ReadOnlySpan<double> theta, CancellationToken cancellation)
    {
        var values = new double[DependsOn.Length];
        for (var i = 0; i < values.Length; i++)
            values[i] = theta[DependsOn[i]];
        var asked = new Asked(values);
        if (said.TryGetValue(asked, out var before))
            return before;
        var outputs = Predict(theta, cancellation);
        said[asked] = outputs;
        return outputs;
    }

    /// <summary>The derivative of its outputs, by central differences.</summary>
    public double[] Gradient(double[] theta, int unknown, double step, CancellationToken cancellation)
    {
        var moved = (double[])theta.Clone();
        moved[unknown] = theta[unknown] + step;
        var above = At(moved, cancellation);
        moved[unknown] = theta[unknown] - step;
        var below = At(moved, cancellation);
        return [.. above.Zip(below, (high, low) => (high - low) / (2 * step))];
    }

    protected abstract double[] Predict(ReadOnlySpan<double> theta, CancellationToken cancellation);

    [StructLayout(LayoutKind.Auto)]
    private readonly struct Asked(double[] values) : IEquatable<Asked>
    {
        private readonly double[] values = values;

        public bool Equals(Asked other) => values.AsSpan().SequenceEqual(other.values);

        public override bool Equals(object? obj) => obj is Asked other && Equals(other);

        public override int GetHashCode()
        {
            var hash = new HashCode();
            hash.AddBytes(MemoryMarshal.AsBytes(values.AsSpan()));
            return hash.ToHashCode();
        }
    }
}

/// <summary>What a log's mean power should be: that of the devices that ran, as its own current sensor shows it.</summary>
internal sealed class PowerPredictor(PowerLog log, UnknownIndex index)
    : Predictor(index.Loads(log.Devices).Append(index.Gain(log.Id)))
{
    protected override double[] Predict(ReadOnlySpan<double> theta, CancellationToken cancellation) =>
        [Math.Log(index.Watts(log.Devices, theta)) + theta[index.Gain(log.Id)]];
}

/// <summary>What a test of one unknown should give: the unknown; 0 where it is none.</summary>
internal sealed class TestPredictor(int unknown) : Predictor([unknown])
{
    protected override double[] Predict(ReadOnlySpan<double> theta, CancellationToken cancellation) =>
        [unknown < 0 ? 0 : theta[unknown]];
}
