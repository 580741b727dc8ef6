using MathNet.Numerics.Integration;
using RigScenarios.Batteries;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Numerics;
using RigScenarios.Parts;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Simulation;

/// <summary>Keeps what the result needs while the days run, and makes the result.</summary>
internal sealed class SimulationAccount(EventLoop loop, DaySchedule schedule, CancellationToken cancellation)
{
    private readonly List<DayStretch> stretches = [];
    private readonly List<(OrderedMap<Ratio> Charges, double Out, double Wall)> begins = [];
    private readonly List<(OrderedMap<Ratio> Charges, double Out)> ends = [];

    /// <summary>Energy out of all batteries so far, J.</summary>
    public double JoulesOut => loop.Swaps.Batteries.Sum(battery => battery.Ledger.EnergyOut);

    private double JoulesFromWall => loop.Swaps.Batteries.Sum(battery => battery.Ledger.FromWall);

    public void Add(DayStretch stretch) => stretches.Add(stretch);

    public void BeginDay() => begins.Add((Charges(), JoulesOut, JoulesFromWall));

    public void EndDay() => ends.Add((Charges(), JoulesOut));

    /// <summary>The result at the end of the last day, without the reserve.</summary>
    /// <param name="blocks">The blocks of all days.</param>
    public SimulationResult Result(IReadOnlyList<BlockSpan> blocks)
    {
        var (start, end) = (schedule.Days[0].Start, schedule.Days[^1].End);
        foreach (var battery in loop.Swaps.Batteries)
            battery.Close(end);
        loop.Swaps.Reserve.Pack?.Close(end);
        foreach (var device in loop.Devices)
            device.Close(end);
        cancellation.ThrowIfCancellationRequested();
        var downs = loop.Devices.Where(device => device.Device.Essential)
            .SelectMany(device => device.Spans.Where(span => span.Activity == DeviceActivity.Down)
                .Select(span => DownOf(device.Device.Name, span)))
            .OrderBy(down => down.Start.Seconds).ToList();
        var swaps = loop.Swaps.Done.ToList();
        var keeper = loop.Supply.Keeper;
        return new SimulationResult
        {
            Batteries = new(loop.Swaps.Batteries.Select(battery => KeyValuePair.Create(battery.Name, TimelineOf(battery)))),
            HotSwap = loop.Swaps.Reserve.Pack is { } reserve ? TimelineOf(reserve) : null,
            Devices = new(loop.Devices.Select(device => KeyValuePair.Create(device.Device.Name, TimelineOf(device, start, end)))),
            DownTimes = downs,
            Swaps = swaps,
            Days = [.. schedule.Days.Select((day, i) => new DayOutcome(
                i + 1, Duration.FromSeconds(day.Start), Duration.FromSeconds(day.End), begins[i].Charges, ends[i].Charges,
                Energy.FromJoules(ends[i].Out - begins[i].Out),
                Energy.FromJoules((i + 1 < begins.Count ? begins[i + 1].Wall : JoulesFromWall) - begins[i].Wall),
                downs.TrueForAll(down => down.IsPlanned || down.Day != i + 1)))],
            LeastChargeAtSwap = swaps.Where(swap => swap.ChargeOff is not null).Select(swap => swap.ChargeOff).Min(),
            EnergyLeft = Energy.FromJoules(loop.Swaps.Batteries.Sum(StoredJoules)),
            FromPacks = Energy.FromJoules(JoulesOut),
            FromWall = Energy.FromJoules(JoulesFromWall),
            Runtime = Duration.FromSeconds(end - start),
            Reserve = new Reserve(Duration.Zero, false, Energy.Zero, null),
            FirstStop = loop.FirstStop,
            DropOuts = [.. loop.Supply.DropOuts],
            Limits = keeper?.Limits?.Limits(MomentOf) ?? [],
            Loads = keeper?.Loads?.Loads() ?? OrderedMap<ElementLoad>.Empty,
            Series = keeper?.Series.ToList() ?? [],
            Blocks = blocks,
            Stretches = [.. stretches.Select(stretch => new PlannedStretch(
                stretch.Day + 1, stretch.Name, Duration.FromSeconds(stretch.Start), Duration.FromSeconds(stretch.End),
                stretch.Rolling))],
            Network = loop.Rig.Network,
            Assumed = new(loop.Swaps.Batteries.Select(battery => KeyValuePair.Create(battery.Name, battery.Assumed))),
            ColdestBattery = Temperature.FromKelvins(loop.Swaps.Batteries.Min(battery => battery.Coldest))
                .ToUnit(TemperatureUnit.DegreeCelsius),
            ExpectedError = loop.Swaps.Batteries.Select(battery => battery.ExpectedError).OfType<ExpectedError>()
                .OrderByDescending(error => error.Share?.Percent ?? double.PositiveInfinity)
                .FirstOrDefault() ?? ExpectedError.At(
                    Temperature.FromKelvins(loop.Swaps.Batteries[0].Kelvin), !loop.Swaps.Batteries[0].Parameters.HasFarWell),
        };
    }

    private LimitMoment MomentOf(double seconds, int stretch) =>
        new(Duration.FromSeconds(seconds), stretches[stretch].Day + 1, stretches[stretch].Name);

    private DeviceTimeline TimelineOf(SimulatedDevice device, double start, double end)
    {
        var first = device.Spans.FirstOrDefault(span => span is { Activity: DeviceActivity.Down, IsPlanned: false });
        var stop = first is null ? null : StopOf(first);
        return new DeviceTimeline(
            device.Device.Title, device.Device.Essential, [.. device.Spans], stop,
            (stop?.At ?? Duration.FromSeconds(end)) - Duration.FromSeconds(start));
    }

    private DeviceStop StopOf(DeviceSpan span)
    {
        var at = StretchAt(span);
        return new DeviceStop(span.Start, span.Reason!, at.Day + 1, at.Name);
    }

    private DownTime DownOf(string device, DeviceSpan span)
    {
        cancellation.ThrowIfCancellationRequested();
        var at = StretchAt(span);
        return new DownTime(device, span.Start, span.End, span.Reason!, span.Awaits, at.Day + 1, at.Name, at.Rolling);
    }

    // A stop at the last moment of a take belongs to the take.
    private DayStretch StretchAt(DeviceSpan span)
    {
        var at = LastBegunBy(span.Start.Seconds + 1e-9)!;
        var before = LastBegunBy(Math.BitDecrement(span.Start.Seconds - 1e-9));
        return !span.IsPlanned && before is { Rolling: true } ? before : at;
    }

    // Stretches stand in the order of time. A day of short takes has tens of thousands of them, and as many times without a
    // device, so that a search from one end would take minutes.
    private DayStretch? LastBegunBy(double time)
    {
        var begun = SortedPlace.CountWhile(stretches.Count, i => stretches[i].Start <= time);
        return begun > 0 ? stretches[begun - 1] : null;
    }

    private static BatteryTimeline TimelineOf(SimulatedBattery battery) => new()
    {
        Spans = [.. battery.Spans],
        Charges = [.. battery.Charges],
        ChargeLeft = Ratio.FromDecimalFractions(battery.Charge),
        Delivered = Energy.FromJoules(battery.Ledger.EnergyOut),
        Charged = Energy.FromJoules(battery.Ledger.EnergyIn),
        FromWall = Energy.FromJoules(battery.Ledger.FromWall),
        ChargeOut = ElectricCharge.FromCoulombs(battery.Ledger.ChargeOut),
        ChargeIn = ElectricCharge.FromCoulombs(battery.Ledger.ChargeIn),
        SelfDischarge = Ratio.FromDecimalFractions(battery.Ledger.SelfDischarge),
        Heat = Energy.FromJoules(battery.Ledger.Heat),
        Stored = Energy.FromJoules(battery.Ledger.Stored),
    };

    /// <summary>What is left in a battery, J: capacity at 25 °C times the open-circuit voltage, from empty to the
    /// charge.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="charge">Its charge, 0…1.</param>
    public static double StoredJoules(PackParameters pack, double charge) =>
        pack.Groups * pack.ChargePerUnit * GaussLegendreRule.Integrate(pack.OpenCircuit.At, 0, charge, 64);

    private static double StoredJoules(SimulatedBattery battery) => StoredJoules(battery.Parameters, battery.Charge);

    private OrderedMap<Ratio> Charges() =>
        new(loop.Swaps.Batteries.Select(battery => KeyValuePair.Create(battery.Name,
            Ratio.FromDecimalFractions(battery.Charge))));
}
