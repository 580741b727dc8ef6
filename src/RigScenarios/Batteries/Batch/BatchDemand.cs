using UnitsNet.Units;

namespace RigScenarios.Batteries.Batch;

/// <summary>A demand in plain numbers, which many cases of a batch may share: segments that repeat back to back.</summary>
/// <param name="lengths">Length of each segment, s; above 0.</param>
/// <param name="powers">Constant-power part of each, W; 0 or more.</param>
/// <param name="currents">Constant-current part of each, A; that of a reduced wiring may lie below 0.</param>
/// <param name="conductances">Resistive part of each, S; that of a reduced wiring may lie below 0.</param>
internal sealed class BatchDemand(double[] lengths, double[] powers, double[] currents, double[] conductances)
{
    public BatchDemand(Demand demand)
        : this(
            [.. demand.Segments.Select(segment => segment.Length.Seconds)],
            [.. demand.Segments.Select(segment => (double)segment.ConstantPower.As(PowerUnit.Watt))],
            [.. demand.Segments.Select(segment => segment.ConstantCurrent.Amperes)],
            [.. demand.Segments.Select(segment => segment.Conductance.Siemens)])
    {
    }

    /// <summary>Length of each segment, s.</summary>
    public double[] Lengths { get; } = lengths;

    /// <summary>Constant-power part of each, W.</summary>
    public double[] Powers { get; } = powers;

    /// <summary>Constant-current part of each, A.</summary>
    public double[] Currents { get; } = currents;

    /// <summary>Resistive part of each, S.</summary>
    public double[] Conductances { get; } = conductances;

    /// <summary>The terminal voltage at which the discharge ends in each segment, V; null for the pack's own cut-off in all of
    /// them. Where wiring stands behind the demand something in it may stop before the pack does.</summary>
    public double[]? EndVoltages { get; init; }

    /// <summary>End of each segment, s from the start of the first.</summary>
    public double[] Ends { get; } = EndsOf(lengths);

    /// <summary>Time after which it begins again, s.</summary>
    public double Period => Ends[^1];

    private static double[] EndsOf(double[] lengths)
    {
        var ends = new double[lengths.Length];
        var end = 0.0;
        for (var i = 0; i < ends.Length; i++)
        {
            end += lengths[i];
            ends[i] = end;
        }

        return ends;
    }
}
