using System.Collections;
using System.Runtime.InteropServices;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>One recorded moment in plain numbers: s, V, A, state of charge, K; and whether it stands at a step of the
/// demand.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct SeriesSample(double Seconds, double Volts, double Amperes, double Charge,
    double Kelvin, bool AtStep);

/// <summary>
/// Keeps the course of a run in a bounded number of points: all steps of the demand as long as they fit, and as many of the
/// points
/// between them as there is room for; where even the steps don't fit, the lowest and the highest voltage of equal stretches.
/// </summary>
internal sealed class SeriesRecorder(int limit)
{
    private List<SeriesSample> samples = [];

    /// <summary>True if anything is kept at all.</summary>
    public bool Enabled => limit > 0;

    /// <summary>Adds a moment; times don't fall.</summary>
    public void Add(double seconds, in CircuitPoint point, in PackState state, bool atStep)
    {
        if (!Enabled)
            return;
        samples.Add(new SeriesSample(seconds, point.Voltage, point.Current, state.Charge, state.Kelvin, atStep));
        if (samples.Count > Math.Max(16 * limit, 4096))
            samples = Thin(samples, 4 * limit);
    }

    /// <summary>The recorded points with their units.</summary>
    public IReadOnlyList<DischargePoint> Points() => new Series([.. Thin(samples, limit)]);

    private static List<SeriesSample> Thin(List<SeriesSample> all, int target)
    {
        if (all.Count <= target)
            return all;
        var last = all.Count - 1;
        var steps = all.Count(sample => sample.AtStep);
        if (steps + 2 > target)
            return Envelope(all, target);

        // Even stretches of the points between the steps, the steps themselves, the first and the last.
        var room = target - steps - 2;
        var between = all.Count - steps;
        var kept = new List<SeriesSample>(target);
        var seen = 0;
        for (var i = 0; i < all.Count; i++)
        {
            if (all[i].AtStep || i == 0 || i == last)
                kept.Add(all[i]);
            else if ((long)(seen + 1) * room / between > (long)seen * room / between)
                kept.Add(all[i]);
            if (!all[i].AtStep)
                seen++;
        }

        return kept;
    }

    private static List<SeriesSample> Envelope(List<SeriesSample> all, int target)
    {
        if (target < 4)
            return target == 1 ? [all[^1]] : [all[0], all[^1]];
        var bins = (target - 2) / 2;
        var kept = new List<SeriesSample>(target) { all[0] };
        for (var bin = 0; bin < bins; bin++)
        {
            var from = 1 + (int)((long)bin * (all.Count - 2) / bins);
            var to = 1 + (int)((long)(bin + 1) * (all.Count - 2) / bins);
            int low = from, high = from;
            for (var i = from; i < to; i++)
            {
                if (all[i].Volts < all[low].Volts)
                    low = i;
                if (all[i].Volts > all[high].Volts)
                    high = i;
            }

            kept.Add(all[Math.Min(low, high)]);
            if (low != high)
                kept.Add(all[Math.Max(low, high)]);
        }

        kept.Add(all[^1]);
        return kept;
    }

    // Quantities are made when they are asked for: most results are only asked for their end.
    private sealed class Series(SeriesSample[] samples) : IReadOnlyList<DischargePoint>
    {
        public int Count => samples.Length;

        public DischargePoint this[int index]
        {
            get
            {
                ref readonly var sample = ref samples[index];
                return new DischargePoint(
                    Duration.FromSeconds(sample.Seconds),
                    ElectricPotential.FromVolts(sample.Volts),
                    ElectricCurrent.FromAmperes(sample.Amperes),
                    Power.FromWatts(sample.Volts * sample.Amperes),
                    Ratio.FromDecimalFractions(Math.Max(0, sample.Charge)),
                    Temperature.FromKelvins(sample.Kelvin));
            }
        }

        public IEnumerator<DischargePoint> GetEnumerator() =>
            Enumerable.Range(0, samples.Length).Select(i => this[i]).GetEnumerator();

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
