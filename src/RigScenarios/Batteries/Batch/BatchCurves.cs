using System.Runtime.InteropServices;
using RigScenarios.Cells;
using RigScenarios.Numerics;

namespace RigScenarios.Batteries.Batch;

/// <summary>
/// The curves of a kind of pack, in a form for the kernel, which many cases of a batch share: the open-circuit voltage as
/// straight lines between so many places that they lie within <see cref="VoltageError"/> of the cubics, and the usable capacity
/// as a sum of hinges.
/// </summary>
internal sealed class BatchCurves
{
    /// <summary>How far the lines may lie from the cubics, V of a group, as long as <see cref="MostCells"/> allow.</summary>
    public const double VoltageError = 5e-6;

    private const int FewestCells = 512;
    private const int MostCells = 1 << 15;

    // In a place of its own that the collector never moves: the kernel reads it by its address.
    private readonly float[] cells;

    /// <param name="openCircuit">U(z) of one group.</param>
    /// <param name="usable">kappa(T).</param>
    public BatchCurves(OpenCircuitVoltage openCircuit, UsableCapacity usable)
    {
        var curve = openCircuit.Curve;
        Cells = FewestCells;
        while (Cells < MostCells && Bend(curve, Cells) > VoltageError)
            Cells *= 2;
        cells = GC.AllocateUninitializedArray<float>(2 * Cells, pinned: true);
        for (var i = 0; i < Cells; i++)
        {
            // The rise goes from one rounded value to the next, so that the lines meet.
            var from = (float)curve.At((double)i / Cells);
            cells[2 * i] = from;
            cells[(2 * i) + 1] = (float)(curve.At((i + 1.0) / Cells) - from);
        }

        var kelvins = usable.Kelvins;
        var fractions = usable.Fractions;
        ColdestUsable = fractions[0];
        Hinges = new UsableHinge[kelvins.Length - 1];
        for (var i = 0; i < Hinges.Length; i++)
        {
            var width = kelvins[i + 1] - kelvins[i];
            Hinges[i] = new UsableHinge(kelvins[i], width, (fractions[i + 1] - fractions[i]) / width);
        }
    }

    /// <summary>Number of lines of the open-circuit voltage, each over as much of the state of charge.</summary>
    public int Cells { get; }

    /// <summary>Where the lines lie in memory as long as this object lives: value and rise of each, from empty to
    /// full.</summary>
    public long Address => Marshal.UnsafeAddrOfPinnedArrayElement(cells, 0);

    /// <summary>kappa below the first hinge.</summary>
    public double ColdestUsable { get; }

    /// <summary>What kappa gains from cold to warm.</summary>
    public UsableHinge[] Hinges { get; }

    // The middle of a line is where it is farthest off, where the curve is smooth.
    private static double Bend(MonotoneCubic curve, int count)
    {
        var most = 0.0;
        for (var i = 0; i < count; i++)
        {
            var ends = curve.At((double)i / count) + curve.At((i + 1.0) / count);
            most = Math.Max(most, Math.Abs(curve.At((i + 0.5) / count) - (ends / 2)));
        }

        return most;
    }
}

/// <summary>A range of temperature in which the usable capacity changes along a straight line.</summary>
/// <param name="From">Its lower end, K.</param>
/// <param name="Width">How wide it is, K.</param>
/// <param name="Slope">How fast kappa rises, 1/K.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct UsableHinge(double From, double Width, double Slope);
