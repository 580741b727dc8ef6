using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Answers;

/// <summary>Holds a day's wiring against every limit: what it draws for hours, at the motors' worst, and when devices start together.</summary>
internal sealed class WiringFindings
{
    private const string VoltageRemedy = "a shorter or thicker cable, fewer contacts, an outlet nearer to the battery, or a warmer battery";

    private const double Near = 0.2;

    private readonly WiringOfDay wiring;
    private readonly Dictionary<(string Element, string Limit, LoadCase Case), WiringFinding> worst = [];

    private WiringFindings(WiringOfDay wiring) => this.wiring = wiring;

    /// <summary>All limits, the one with the least left first.</summary>
    public static IReadOnlyList<WiringFinding> Of(WiringOfDay wiring)
    {
        var all = new WiringFindings(wiring);
        all.Steady();
        all.Instants();
        // A short load is told beside the steady one only where it comes nearer to the limit, and near.
        return
        [
            .. all.worst.Values.Where(finding => finding.Case == LoadCase.Steady
                    || !all.worst.TryGetValue((finding.Element, finding.Limit, LoadCase.Steady), out var steady) || finding.Margin.DecimalFractions < Math.Min(Near, steady.Margin.DecimalFractions - 0.005))
                .OrderBy(finding => finding.Margin.DecimalFractions),
        ];
    }

    private void Steady()
    {
        foreach (var element in wiring.Network.Elements)
        {
            var load = wiring.Run.Loads[element.Name];
            foreach (var limit in Currents(element))
            {
                var (value, at) = limit.Output ? (load.OutputCurrent!.Value, load.OutputAt!.Value) : (load.Current, load.At);
                Current(element.Name, limit, value, at, LoadCase.Steady, null);
            }
            if (Threshold(element) is { } threshold && load is { LowestInlet: { } inlet, LowestAt: { } when })
                Voltage(element.Name, threshold.Limit, inlet, threshold.Volts, when, LoadCase.Steady, null);
        }
        if (wiring.Moments.Count == 0)
            return;
        var lowest = wiring.Moments.MinBy(moment => moment.Point.Terminals.Volts)!;
        Voltage(WiringFinding.Battery, "its own cut-off", lowest.Point.Terminals, wiring.Pack.Pack.CutoffVoltage, lowest.At, LoadCase.Steady, lowest.Block);
        var strongest = wiring.Moments.MaxBy(moment => moment.Point.Current.Amperes)!;
        Current(WiringFinding.Battery, BatteryCurrent(), strongest.Point.Current, strongest.At, LoadCase.Steady, strongest.Block);
        Edge();
    }

    private void Edge()
    {
        // Where the voltage is lowest in each block: there the least is left.
        var edges = wiring.Moments.GroupBy(moment => moment.Block).Select(block => block.MinBy(moment => moment.Point.Terminals.Volts)!)
            .Select(moment => (Moment: moment, Factor: WiringTrace.LoadFactorAtEdge(wiring.Network, wiring.Pack.Pack, moment, wiring.StatesIn(moment.Block)))).ToList();
        var (at, factor) = edges.MinBy(edge => edge.Factor);
        if (!double.IsFinite(factor))
            return;
        var draw = (double)at.Point.Power.Watts;
        Keep(new WiringFinding(WiringFinding.Battery, "power that it can deliver through this wiring", LoadCase.Steady, $"{draw:0.0} W", $"about {factor * draw:0} W",
            Share(1 - (1 / factor)), at.At, at.Block, StatesIn(at.Block, LoadCase.Steady, []), "from the model: past it the voltages collapse", "less load at once, thicker cables, or a battery with less resistance"));
    }

    private void Instants()
    {
        var byBlock = wiring.Moments.GroupBy(moment => moment.Block).OrderBy(block => block.Key).ToList();
        foreach (var block in byBlock)
        {
            var states = wiring.StatesIn(block.Key);
            var low = block.MinBy(moment => moment.Point.Terminals.Volts)!;
            Instant(low, states, LoadCase.Peak, [.. Devices(BuildWiring.Peak).Where(device => states[device] == "record")]);
            var first = block.MinBy(moment => moment.At.Seconds)!;
            var before = block.Key == 0 ? null : wiring.StatesIn(block.Key - 1);
            Instant(first, states, LoadCase.StartUp, [.. Devices(BuildWiring.StartUp).Where(device => states[device] != Device.Off && (before is null || before[device] == Device.Off))]);
        }
    }

    private IEnumerable<string> Devices(string state) =>
        wiring.Network.Elements.OfType<Device>().Where(device => device.States.ContainsKey(state)).Select(device => device.Name);

    private void Instant(WiringMoment moment, OrderedMap<string> states, LoadCase kind, IReadOnlyList<string> devices)
    {
        var live = devices.Where(device => moment.Point.Elements[device].Inlet.Volts > 0).ToList();
        if (live.Count == 0)
            return;
        var instant = new OrderedMap<string>(states.Select(item => live.Contains(item.Key) ? new(item.Key, kind == LoadCase.Peak ? BuildWiring.Peak : BuildWiring.StartUp) : item));
        if (WiringTrace.InAnInstant(wiring.Network, wiring.Pack.Pack, moment, instant) is not { } point)
        {
            Keep(new WiringFinding(WiringFinding.Battery, "power that it can deliver through this wiring", kind, "more than there is", "", Share(-1), moment.At, moment.Block,
                StatesIn(moment.Block, kind, live), "from the model: past it the voltages collapse", kind == LoadCase.StartUp ? "switch devices on one after the other" : "less load at once, thicker cables"));
            return;
        }
        foreach (var element in wiring.Network.Elements)
        {
            var at = point.Elements[element.Name];
            if (at.Inlet.Volts <= 0)
                continue;
            foreach (var limit in Currents(element).Where(limit => !limit.IsThermal))
                Current(element.Name, limit, limit.Output ? at.OutputCurrent!.Value : at.Current, moment.At, kind, moment.Block, live);
            if (Threshold(element) is { } threshold && (element is not Device || instant[element.Name] != Device.Off))
                Voltage(element.Name, threshold.Limit, at.Inlet, threshold.Volts, moment.At, kind, moment.Block, live);
        }
        Current(WiringFinding.Battery, BatteryCurrent(), point.Current, moment.At, kind, moment.Block, live);
    }

    private CurrentLimit BatteryCurrent() => new(
        "current out of it", wiring.Pack.Pack.MaximumCurrent, false, false, wiring.Powered.Battery.Battery!.MaximumCurrent is null ? "assumed: the label gives none" : "battery label",
        "less load at once, or a battery that is rated for more");

    private IEnumerable<CurrentLimit> Currents(WiringElement element)
    {
        var kind = new WiringPlace(wiring.Powered, element.Name);
        if (element.MaximumCurrent is { } most)
        {
            yield return kind.Cable is not null
                ? new("rated current of the cable", most, IsThermal: true, false, "parts file", "a cable that is rated for more")
                : new("current through it", most, IsThermal: false, false, "parts file", kind.Outlet is not null ? "another outlet, or fewer devices on this one" : "fewer devices behind it, or a part that is rated for more");
        }
        if (kind.Fuse is { } fuse)
        {
            yield return new($"fuse {fuse.Rating.Amperes:0.##} A, steady at {wiring.Ambient.DegreesCelsius:0} °C", fuse.SteadyAt(wiring.Ambient), IsThermal: true, false,
                $"{fuse.SteadyShare?.Percent ?? 75:0} % of its rating{(fuse.SteadyShare is null ? ", a usual rule" : "")}, less when warm", "share the load over two fused outlets; fit only the fuse that the maker names");
        }
        if (element is Regulator { MaximumOutput: { } output })
            yield return new("current out of it", output, IsThermal: false, Output: true, "parts file", "another regulator for one of the devices, or one that is rated for more");
    }

    private static (string Limit, ElectricPotential Volts)? Threshold(WiringElement element) => element switch
    {
        LowVoltageSwitch { OpensBelow: { } volts } => ("voltage below which it switches off", volts),
        Regulator { InputMinimum: { } volts } => ("lowest voltage of its input window", volts),
        Device { MinimumVoltage: { } volts } => ("lowest voltage that it takes", volts),
        _ => null,
    };

    private void Current(string element, CurrentLimit limit, ElectricCurrent load, Duration at, LoadCase kind, int? block, IReadOnlyList<string>? live = null) =>
        Keep(new WiringFinding(element, limit.Limit, kind, $"{load.Amperes:0.00} A", $"{limit.Allowed.Amperes:0.00} A", Share(limit.Allowed.Amperes > 0 ? 1 - (load.Amperes / limit.Allowed.Amperes) : -1),
            at, block ?? BlockAt(at), StatesIn(block ?? BlockAt(at), kind, live ?? []), limit.Source, kind == LoadCase.StartUp ? "switch devices on one after the other" : limit.Remedy) { Current = load });

    private void Voltage(string element, string limit, ElectricPotential load, ElectricPotential allowed, Duration at, LoadCase kind, int? block, IReadOnlyList<string>? live = null) =>
        Keep(new WiringFinding(element, limit, kind, $"{load.Volts:0.00} V", $"{allowed.Volts:0.00} V", Share((load.Volts / allowed.Volts) - 1), at, block ?? BlockAt(at),
            StatesIn(block ?? BlockAt(at), kind, live ?? []), element == WiringFinding.Battery ? "battery" : "parts file",
            kind == LoadCase.StartUp ? "switch devices on one after the other" : element == WiringFinding.Battery ? "a larger or warmer battery, or less load" : VoltageRemedy) { IsVoltage = true });

    private void Keep(WiringFinding finding)
    {
        var key = (finding.Element, finding.Limit, finding.Case);
        if (!worst.TryGetValue(key, out var kept) || finding.Margin.DecimalFractions < kept.Margin.DecimalFractions)
            worst[key] = finding;
    }

    private int BlockAt(Duration at)
    {
        double end = 0;
        var number = 0;
        foreach (var block in wiring.Day.Blocks.Values)
        {
            end += block.Length.Seconds;
            if (at.Seconds < end - 1e-3 || number == wiring.Day.Blocks.Count - 1)
                return number;
            number++;
        }
        return 0;
    }

    private string StatesIn(int block, LoadCase kind, IReadOnlyList<string> live)
    {
        var of = wiring.Day.Blocks.Values.ElementAt(block);
        return kind switch
        {
            LoadCase.StartUp => live.Count == 1 && wiring.Powered.Devices[live[0]].Count == 1 ? $"{Names(live)} starts" : $"{Names(live)} start together",
            LoadCase.Peak => $"{Names(live)} at the peak",
            _ when wiring.Powered.Devices.Keys.Where(device => of.StateOf(device) == PowerState.Record).ToList() is { Count: > 0 } working => $"{Names(working)} in {ChoiceFormat<PowerState>.Word(PowerState.Record)}",
            _ when wiring.Powered.Devices.Keys.Any(device => of.StateOf(device) == PowerState.Standby) => "on standby",
            _ => "everything off",
        };
    }

    private string Names(IEnumerable<string> devices) => string.Join(", ", devices.Select(wiring.NameOf));

    private static Ratio Share(double share) => Ratio.FromDecimalFractions(share).ToUnit(RatioUnit.Percent);

    /// <param name="Limit">What is limited.</param>
    /// <param name="Allowed">How much is allowed.</param>
    /// <param name="IsThermal">Whether it is warmth over minutes that counts, so that a short load does not.</param>
    /// <param name="Output">Whether it is the current out of a regulator.</param>
    /// <param name="Source">What it rests on.</param>
    /// <param name="Remedy">What widens the margin.</param>
    private sealed record CurrentLimit(string Limit, ElectricCurrent Allowed, bool IsThermal, bool Output, string Source, string Remedy);
}
