using RigScenarios.Batteries;

namespace RigScenarios.Wiring;

/// <summary>
/// Keeps the extremes of the terminal voltage under each draw of a run. Within one draw every voltage and current of the wiring is a function of the
/// terminal voltage alone, each draw convex in it, so that the largest loads stand at its extremes.
/// </summary>
internal sealed class LoadWitness : DischargeWitness
{
    // A later moment counts only if it is beyond the earlier by more than this, relative: no time is told from rounding.
    private const double Flat = 1e-10;

    private readonly Dictionary<WiringDraw, Extremes> seen = [];
    private WiringDraw? last;
    private Extremes? lastExtremes;

    /// <summary>Time of the run's start, s; is added to all times.</summary>
    public double Origin { get; set; }

    /// <summary>
    /// The draws that were seen, each at its first moment, at its lowest and at its highest voltage: V and s. The first moment, because a load that
    /// doesn't depend on the voltage is at its largest from the beginning.
    /// </summary>
    public IEnumerable<(WiringDraw Draw, double Volts, double Seconds)> Points => seen.SelectMany(item => new[]
    {
        (item.Key, item.Value.First, item.Value.FirstAt), (item.Key, item.Value.Low, item.Value.LowAt), (item.Key, item.Value.High, item.Value.HighAt),
    });

    /// <inheritdoc/>
    public override void See(double seconds, double volts, in TerminalDraw draw) => See(seconds, volts, (WiringDraw)draw.Solved!);

    /// <summary>Tells of one moment.</summary>
    public void See(double seconds, double volts, WiringDraw draw)
    {
        if (draw != last)
        {
            last = draw;
            if (!seen.TryGetValue(draw, out lastExtremes))
                seen.Add(draw, lastExtremes = new Extremes(volts, Origin + seconds));
            lastExtremes.Resume();
        }

        lastExtremes!.See(volts, Origin + seconds);
    }

    private sealed class Extremes(double first, double firstAt)
    {
        private (double Volts, double Seconds)? before;
        private (double Volts, double Seconds)? previous;

        public double First => first;

        public double FirstAt => firstAt;

        public double Low { get; private set; } = double.PositiveInfinity;

        public double LowAt { get; private set; }

        public double High { get; private set; }

        public double HighAt { get; private set; }

        /// <summary>What comes next doesn't go on from what was seen last.</summary>
        public void Resume() => (before, previous) = (null, null);

        public void See(double volts, double seconds)
        {
            Keep(volts, seconds);
            if (previous is { } middle && seconds <= middle.Seconds)
                Resume();
            if (before is { } first && previous is { } turn && (turn.Volts - first.Volts) * (turn.Volts - volts) > 0)
                Turns(first, turn, (volts, seconds));
            (before, previous) = (previous, (volts, seconds));
        }

        // The moments stand too far apart to take the turning point for one of them: that of the parabola through three.
        private void Turns((double Volts, double Seconds) first, (double Volts, double Seconds) turn, (double Volts, double Seconds) last)
        {
            double back = first.Seconds - turn.Seconds, on = last.Seconds - turn.Seconds;
            double down = (first.Volts - turn.Volts) / back, up = (last.Volts - turn.Volts) / on;
            var bend = (up - down) / (on - back);
            var slope = up - (bend * on);
            var at = -slope / (2 * bend);
            if (at > back && at < on)
                Keep(turn.Volts + (at * (slope + (bend * at))), turn.Seconds + at);
        }

        private void Keep(double volts, double seconds)
        {
            if (volts < Low * (1 - Flat))
                (Low, LowAt) = (volts, seconds);
            if (volts > High * (1 + Flat))
                (High, HighAt) = (volts, seconds);
        }
    }
}
