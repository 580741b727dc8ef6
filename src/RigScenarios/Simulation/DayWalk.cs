using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Simulation;

/// <summary>One walk through a day: the state that <see cref="DayRun"/> carries from block to block.</summary>
internal sealed class DayWalk(
    PoweredBuild powered, ShootingDay day, Temperature ambient, PackAssumptions pack, DayRunOptions options, CancellationToken cancellation)
{
    private readonly WiringNetwork network = BuildWiring.Of(powered, ambient);
    private readonly List<int> stopped = [];

    // One for each combination of states, until something stops.
    private readonly Dictionary<(OrderedMap<PowerState> States, PowerState? Others), WiringDraw> draws = [];
    private readonly List<DischargePoint> series = [];
    private readonly Dictionary<string, (double Seconds, string Cause)> stops = new(StringComparer.Ordinal);
    private readonly PackParameters parameters = new(pack.Pack);
    private readonly LargestLoads loads = new(powered);
    private DischargeStart state = new()
    {
        StateOfCharge = powered.Build.Battery.Charge ?? Ratio.FromPercent(100),
        Temperature = powered.Build.Battery.StartTemperature ?? Temperature.FromKelvins(AirOf(day, ambient).At(ClockOf(day)).Kelvin),
    };

    // The air through the day, which is the same each time that the day is repeated.
    private readonly AirTemperature air = AirOf(day, ambient);

    private double seconds;
    private double deliveredJoules;
    private string? endCause;
    private EndCause? packCause;
    private string endBlock = "";
    private string? firstEssentialBlock;
    private string? firstEssentialCause;
    private double coldest = double.PositiveInfinity;

    public DayResult Result()
    {
        var planned = day.Length;
        var blocks = Blocks();
        DischargeStart? atDayEnd = null;
        double? joulesAtDayEnd = null;
        var days = 0;
        coldest = state.Temperature!.Value.Kelvins;
        for (; days < options.MostDays && endCause is null; days++)
        {
            Repeat(keep: days == 0);
            if (days == 0)
            {
                atDayEnd = state;
                joulesAtDayEnd = deliveredJoules;
            }
        }
        var givenUp = endCause is null;
        endCause ??= $"still running after {options.MostDays} such days";
        var essential = powered.Devices.Where(item => item.Value.Essential && stops.ContainsKey(item.Key)).Select(item => stops[item.Key].Seconds).ToList();
        return new DayResult
        {
            Planned = planned,
            Runtime = Duration.FromSeconds(essential.Count > 0 ? Math.Min(seconds, essential.Min()) : seconds),
            RuntimeIsLowerBound = givenUp && essential.Count == 0,
            EndCause = firstEssentialCause ?? endCause,
            PackEndCause = firstEssentialCause is null ? packCause : null,
            EndBlock = firstEssentialBlock ?? endBlock,
            Devices = [.. powered.Devices.Select(item => stops.TryGetValue(item.Key, out var stop)
                ? new DeviceStop(item.Key, item.Value.Name, item.Value.Essential, Duration.FromSeconds(stop.Seconds), stop.Cause)
                : new DeviceStop(item.Key, item.Value.Name, item.Value.Essential, Duration.FromSeconds(seconds), endCause))],
            Blocks = blocks,
            Series = series,
            ChargeLeft = atDayEnd!.StateOfCharge,
            Delivered = Energy.FromJoules(joulesAtDayEnd!.Value),
            Margins = loads.Margins(pack.Pack),
            Assumed = pack.Assumed,
            ColdestBattery = Temperature.FromKelvins(coldest).ToUnit(TemperatureUnit.DegreeCelsius),
            ExpectedError = ExpectedError.At(Temperature.FromKelvins(coldest)),
        };
    }

    private void Repeat(bool keep)
    {
        var clock = ClockOf(day);
        foreach (var (name, block) in day.Blocks)
        {
            endBlock = name;
            foreach (var (piece, length) in PiecesOf(name, block))
            {
                var left = length;
                while (left > 0)
                {
                    cancellation.ThrowIfCancellationRequested();
                    var ran = Stretch(piece, Math.Min(left, air.At(clock).Until - clock), clock, keep);
                    left -= ran;
                    clock += ran;
                    if (endCause is not null)
                        return;
                }
            }
        }
    }

    /// <summary>Runs until the block is over, something drops out or the pack ends; gives the seconds run.</summary>
    private double Stretch(DayBlock block, double left, double clock, bool keep)
    {
        var (kelvin, slope, _) = air.At(clock);
        var draw = DrawIn(block);
        var points = keep && options.SeriesPoints > 0 ? Math.Max(12, (int)(options.SeriesPoints * left / day.Length.Seconds)) : 0;
        var formula = draw.AtTerminals();
        var run = new DischargeRun(
            parameters,
            slope == 0 && day.AmbientPoints.Count == 0 ? ambient : Temperature.FromKelvins(kelvin),
            state,
            new DemandCursor([formula?.Draw ?? new TerminalDraw(0, 0, 0, draw)], [left], 0),
            new DischargeOptions
            {
                TimeLimit = Duration.FromSeconds(left),
                WatchedVoltage = formula?.Watched is { } volts ? ElectricPotential.FromVolts(volts) : null,
                SeriesPoints = points,
            },
            witness: null,
            slope).Run(cancellation);
        var ran = run.Cause == EndCause.TimeLimit ? left : run.EndTime.Seconds;
        if (points > 0)
        {
            foreach (var point in run.Series)
                series.Add(point with { Time = Duration.FromSeconds(seconds + point.Time.Seconds) });
        }
        loads.See(network, draw, run);
        seconds += ran;
        deliveredJoules += run.Energies.Delivered.Joules;
        state = run.FinalState;
        // At the ends of stretches, so that a run that keeps no series gives the same figure.
        if (keep)
            coldest = Math.Min(coldest, run.EndTemperature.Kelvins);
        switch (run.Cause)
        {
            case EndCause.TimeLimit:
                return left;
            case EndCause.WatchedVoltage:
                Drop(draw.Shortest(run.EndVoltage!.Value.Volts));
                break;
            default:
                packCause = run.Cause;
                endCause = run.Cause.InWords();
                break;
        }
        return ran;
    }

    private void Drop(int element)
    {
        stopped.Add(element);
        draws.Clear();
        var cause = network[element].Name;
        foreach (var device in powered.Devices.Keys.Where(device => !stops.ContainsKey(device) && IsDead(network.NumberOf(device))))
        {
            stops[device] = (seconds, $"drop-out of {cause}");
            if (powered.Devices[device].Essential)
            {
                firstEssentialBlock ??= endBlock;
                firstEssentialCause ??= $"drop-out of {cause}";
            }
        }
        var essential = powered.Devices.Where(item => item.Value.Essential).ToList();
        if (essential.Count > 0 && essential.TrueForAll(item => stops.ContainsKey(item.Key)))
            endCause = $"drop-out of {cause}";
    }

    private bool IsDead(int element)
    {
        for (; element >= 0; element = network.ParentOf(element))
        {
            if (stopped.Contains(element))
                return true;
        }
        return false;
    }

    private static double ClockOf(ShootingDay day) => day.Starts?.ToTimeSpan().TotalSeconds ?? 0;

    private static AirTemperature AirOf(ShootingDay day, Temperature otherwise) => day.AmbientPoints.Count == 0
        ? AirTemperature.Constant(otherwise.Kelvins)
        : AirTemperature.OfDay(day, otherwise.Kelvins, 0, ClockOf(day), double.PositiveInfinity);

    // A block of takes falls into takes and resets, each a block of its own.
    private IEnumerable<(DayBlock Block, double Seconds)> PiecesOf(string name, DayBlock block)
    {
        if (block.Cycle is null)
            return [(block, block.Length.Seconds)];
        var reset = block with { Cycle = null, States = new(powered.Devices.Keys.Select(device => KeyValuePair.Create(device, block.StateInReset(device)))) };
        return DaySchedule.StretchesOf(0, name, block, 0).Select(stretch => (stretch.InReset ? reset : block, stretch.End - stretch.Start));
    }

    private WiringDraw DrawIn(DayBlock block)
    {
        var key = (block.States, block.Others);
        if (!draws.TryGetValue(key, out var draw))
        {
            var open = new bool[network.Count];
            foreach (var element in stopped)
                open[element] = true;
            draws.Add(key, draw = new WiringDraw(network, network.StateOf(BuildWiring.States(powered, block.StateOf)), open));
        }
        return draw;
    }

    // What the pack must deliver at its nominal voltage; behind perfect wires it is the same at any voltage. Where cables can't carry it: what the devices ask for.
    private double WattsIn(DayBlock block)
    {
        var draw = DrawIn(block);
        if (draw.AtTerminals() is { Draw: { Current: 0, Conductance: 0 } formula })
            return formula.Power;
        var volts = powered.Battery.Battery!.Voltage.Volts;
        return draw.At(volts) is { } figures
            ? volts * Enumerable.Range(0, network.Count).Where(i => network.ParentOf(i) < 0).Sum(i => figures[i].Current)
            : powered.Devices.Sum(item => (double)item.Value.DrawIn(block.StateOf(item.Key)).Watts);
    }

    private List<BlockSpan> Blocks()
    {
        var spans = new List<BlockSpan>(day.Blocks.Count);
        var start = 0.0;
        foreach (var (name, block) in day.Blocks)
        {
            var end = start + block.Length.Seconds;
            spans.Add(new BlockSpan(name, block.Title ?? name, Duration.FromSeconds(start), Duration.FromSeconds(end),
                Power.FromWatts(block.Cycle is null ? WattsIn(block) : PiecesOf(name, block).Sum(piece => WattsIn(piece.Block) * piece.Seconds) / block.Length.Seconds)));
            start = end;
        }
        return spans;
    }
}
