using RigScenarios.Numerics;

namespace RigScenarios.Balance;

/// <summary>Solves for the edges of the balance envelope on one line of the plane, directly: each margin's zeros, all of
/// them.</summary>
internal sealed class EnvelopeLine(RigPlane plane, HeadKernel head)
{
    /// <summary>Samples on a line; zeros closer together than that are still found (see <see cref="LineZeros"/>).</summary>
    private const int Samples = 129;

    /// <summary>N·m: a zero of one step's margin counts if no other step holds the rig there.</summary>
    private const double TiltTolerance = 1e-8;

    /// <summary>Zeros of each margin on the line of one first value, from low to high along the second.</summary>
    public List<(BalanceEdge Limit, double Second, bool Limiting)> Edges(double first, double low, double high)
    {
        plane.Line(first);
        var samples = new double[Samples];
        for (var i = 0; i < Samples; i++)
            samples[i] = low + ((high - low) * i / (Samples - 1));
        var edges = new List<(BalanceEdge Limit, double Second, bool Limiting)>();
        void Add(BalanceEdge limit, double second) => edges.Add((limit, second, OthersHold(limit, second)));

        foreach (var limit in (BalanceEdge[])[BalanceEdge.TravelFrontEnd, BalanceEdge.TravelRearEnd])
            LineZeros.Of(at => PlainMargin(limit, plane.At(at)), samples).ForEach(at => Add(limit, at));

        // At the ends of the travel the tilt margin has kinks: there the line is cut.
        double[] cut = [.. samples.Concat(edges.Select(edge => edge.Second)).Order()];
        foreach (var setting in Enumerable.Range(0, head.Settings))
        {
            foreach (var at in LineZeros.Of(at => Held(setting, plane.At(at)), cut))
            {
                if (head.Margins(plane.At(at)).Tilt < TiltTolerance)
                    Add(BalanceEdge.Tilt, at);
            }
        }

        if (double.IsFinite(head.RatedLoad))
            LineZeros.Of(at => PlainMargin(BalanceEdge.Load, plane.At(at)), samples).ForEach(at => Add(BalanceEdge.Load, at));
        edges.Sort((a, b) => a.Second.CompareTo(b.Second));
        return edges;
    }

    private double PlainMargin(BalanceEdge limit, PointMass rig) => limit switch
    {
        BalanceEdge.TravelFrontEnd => head.Front - rig.Centre.X,
        BalanceEdge.TravelRearEnd => rig.Centre.X - head.Rear,
        _ => head.RatedLoad - rig.Kilograms,
    };

    /// <summary>What the head holds less the worst residual with one setting of the counterbalance.</summary>
    private double Held(int setting, PointMass rig)
    {
        var upright = head.Upright(rig);
        return head.Held - head.Worst(head.ForeAft(rig), upright - head.Setting(setting, upright));
    }

    private bool OthersHold(BalanceEdge limit, double second)
    {
        var margins = head.Margins(plane.At(second));
        return Enum.GetValues<BalanceEdge>().All(other => other == limit || margins.Of(other) >= 0);
    }
}
