using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>One run through the wiring: from drop-out to drop-out, each stretch a discharge under the draws of what still runs.</summary>
internal sealed class WiringWalk
{
    private readonly WiringNetwork network;
    private readonly Pack pack;
    private readonly PackParameters parameters;
    private readonly Temperature ambient;
    private readonly DischargeOptions options;
    private readonly OrderedMap<string>[] states;
    private readonly double[] lengths;
    private readonly bool[] stopped;
    private readonly (double Seconds, string? Because)?[] stops;
    private readonly List<DropOut> dropOuts = [];
    private readonly List<DischargePoint> series = [];
    private readonly LoadWitness witness = new();

    private DischargeStart state;
    private double seconds;
    private int finished;

    public WiringWalk(
        WiringNetwork network, Pack pack, Temperature ambient, DischargeStart start, IReadOnlyList<WiringBlock> blocks, DischargeOptions options)
    {
        this.network = network;
        this.pack = pack;
        this.ambient = ambient;
        this.options = options;
        parameters = new PackParameters(pack);
        states = [.. blocks.Select(block => block.States)];
        lengths = [.. blocks.Select(block => block.Length.Seconds)];
        stopped = new bool[network.Count];
        stops = new (double, string?)?[network.Count];
        state = start;
    }

    public WiringResult Run(CancellationToken cancellation)
    {
        var limit = (options.TimeLimit ?? DischargeOptions.LongestRun).Seconds;
        while (true)
        {
            var draws = Draws();
            var cursor = new DemandCursor(
                [.. draws.Select(draw => new TerminalDraw(0, 0, 0, draw))], lengths, state.DemandOffset.Seconds);
            witness.Origin = seconds;
            var run = new DischargeRun(
                parameters, ambient, state, cursor, options with { TimeLimit = Duration.FromSeconds(limit - seconds) }, witness).Run(cancellation);
            var offset = Duration.FromSeconds(seconds);
            series.AddRange(run.Series.Select(point => point with { Time = offset + point.Time }));
            seconds += run.EndTime.Seconds;
            finished += run.SegmentsFinished;
            state = run.FinalState;
            var draw = draws[cursor.Index];
            if (run.Cause != EndCause.WatchedVoltage)
            {
                if (run is { AtStep: true, EndVoltage: { } volts })
                    witness.See(run.EndTime.Seconds, volts.Volts, draw);
                return End(run, null);
            }

            var element = draw.Shortest(run.EndVoltage!.Value.Volts);
            Drop(element, run.AtStep);
            if (LastEssentialHasStopped())
                return End(run, network[element].Name);
            if (limit - seconds <= DemandCursor.Snap)
                return End(run with { Cause = EndCause.TimeLimit }, null);
        }
    }

    // Blocks of equal states have the same draw, so that passing from one to the other is no change.
    private WiringDraw[] Draws()
    {
        var made = new Dictionary<OrderedMap<string>, WiringDraw>();
        return [.. states.Select(block => made.TryGetValue(block, out var draw) ? draw : made[block] = new WiringDraw(network, network.StateOf(block), stopped))];
    }

    private void Drop(int element, bool rightAfterChange)
    {
        stopped[element] = true;
        dropOuts.Add(new DropOut(network[element].Name, Duration.FromSeconds(seconds), rightAfterChange));
        var dead = new bool[network.Count];
        for (var i = 0; i < network.Count; i++)
        {
            dead[i] = stopped[i] || (network.ParentOf(i) >= 0 && dead[network.ParentOf(i)]);
            if (dead[i] && network[i] is Device)
                stops[i] ??= (seconds, network[element].Name);
        }
    }

    private bool LastEssentialHasStopped()
    {
        var essential = Enumerable.Range(0, network.Count).Where(i => network[i] is Device { Essential: true }).ToList();
        return essential.Count > 0 && essential.TrueForAll(i => stops[i] is not null);
    }

    private WiringResult End(DischargeResult run, string? endedBy)
    {
        var devices = Enumerable.Range(0, network.Count).Where(i => network[i] is Device).ToList();
        var loads = PeakLoads.Of(network, witness);
        return new WiringResult
        {
            EndTime = Duration.FromSeconds(seconds),
            PackEndCause = endedBy is null ? run.Cause : null,
            EndedBy = endedBy,
            AtStep = run.AtStep,
            BlocksFinished = finished,
            FinalState = run.FinalState,
            EndVoltage = run.EndVoltage,
            BuildRuntime = Duration.FromSeconds(devices.Where(i => ((Device)network[i]).Essential).Select(i => stops[i]?.Seconds ?? seconds).Append(seconds).Min()),
            Devices = new OrderedMap<WiringStop>(devices.Select(i => KeyValuePair.Create(
                network[i].Name, new WiringStop(Duration.FromSeconds(stops[i]?.Seconds ?? seconds), stops[i]?.Because)))),
            DropOuts = dropOuts.AsReadOnly(),
            Loads = loads,
            Margins = WiringMargins.Of(network, pack, witness, loads),
            Series = series.AsReadOnly(),
        };
    }
}
