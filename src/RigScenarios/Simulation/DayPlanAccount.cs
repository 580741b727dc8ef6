using RigScenarios.Batteries;
using MathNet.Numerics.Integration;
using RigScenarios.Days;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>Keeps what the result of a plan needs while it runs, and makes the result.</summary>
internal sealed class DayPlanAccount(DaySchedule schedule, IReadOnlyList<BatteryCourse> batteries, IReadOnlyList<DeviceCourse> devices)
{
    private readonly List<DayStretch> stretches = [];
    private readonly List<Swap> swaps = [];
    private readonly List<(OrderedMap<Ratio> Charges, double Out, double Wall)> begins = [];
    private readonly List<(OrderedMap<Ratio> Charges, double Out)> ends = [];

    public void Add(DayStretch stretch) => stretches.Add(stretch);

    public void Add(Swap swap) => swaps.Add(swap);

    public void BeginDay(int day) => begins.Insert(day, (Charges(), batteries.Sum(battery => battery.Ledger.EnergyOut), batteries.Sum(battery => battery.Ledger.FromWall)));

    public void EndDay(int day) => ends.Insert(day, (Charges(), batteries.Sum(battery => battery.Ledger.EnergyOut)));

    public SimulationResult Result(RigFeed feed, BatteryCourse? reserve)
    {
        var end = schedule.Days[^1].End;
        foreach (var battery in batteries)
            battery.Close(end);
        reserve?.Close(end);
        foreach (var device in devices)
            device.Close(end);
        var downs = devices.Where(device => device.Device.Essential)
            .SelectMany(device => device.Spans.Where(span => span.Activity == DeviceActivity.Down).Select(span => DownOf(device.Name, span)))
            .OrderBy(down => down.Start.Seconds).ToList();
        var joulesOut = batteries.Sum(battery => battery.Ledger.EnergyOut);
        var joulesLeft = batteries.Sum(StoredJoules);
        var workSeconds = schedule.Days.Sum(day => day.End - day.Start);
        return new SimulationResult
        {
            Batteries = new(batteries.Select(battery => KeyValuePair.Create(battery.Name, TimelineOf(battery)))),
            HotSwap = reserve is null ? null : TimelineOf(reserve),
            Devices = new(devices.Select(device => KeyValuePair.Create(
                device.Name, new DeviceTimeline(device.Device.Name, device.Device.Essential, device.Spans)))),
            DownTimes = downs,
            Swaps = swaps,
            Days = [.. schedule.Days.Select((day, i) => new DayOutcome(
                i + 1, Duration.FromSeconds(day.Start), Duration.FromSeconds(day.End), begins[i].Charges, ends[i].Charges,
                Energy.FromJoules(ends[i].Out - begins[i].Out),
                Energy.FromJoules((i + 1 < begins.Count ? begins[i + 1].Wall : batteries.Sum(battery => battery.Ledger.FromWall)) - begins[i].Wall),
                downs.TrueForAll(down => down.Cause == DownCause.PlannedSwap || down.Day != i + 1)))],
            LeastChargeAtSwap = swaps.Where(swap => swap.ChargeOff is not null).Select(swap => swap.ChargeOff).Min(),
            EnergyLeft = Energy.FromJoules(joulesLeft),
            TimeLeft = joulesOut > 0 ? Duration.FromSeconds(joulesLeft / (joulesOut / workSeconds)) : Duration.Zero,
            FromPacks = Energy.FromJoules(joulesOut),
            FromWall = Energy.FromJoules(batteries.Sum(battery => battery.Ledger.FromWall)),
            Margins = feed.Margins(batteries[0].Pack),
            Assumed = new(batteries.Select(battery => KeyValuePair.Create(battery.Name, battery.Assumed))),
            ExpectedError = ExpectedError.At(Temperature.FromKelvins(batteries.Min(battery => battery.Coldest))),
        };
    }

    private DownTime DownOf(string device, DeviceSpan span)
    {
        var at = stretches.FindLast(stretch => stretch.Start <= span.Start.Seconds + 1e-9)!;

        // A drop-out at the last moment of a take belongs to the take.
        var before = stretches.FindLast(stretch => stretch.Start < span.Start.Seconds - 1e-9);
        var inTake = span.Cause == DownCause.DropOut && before is { Rolling: true } ? before.Rolling : at.Rolling;
        return new DownTime(device, span.Start, span.End, span.Cause!.Value, span.Because!, at.Day + 1, at.Name, inTake);
    }

    private static BatteryTimeline TimelineOf(BatteryCourse battery) => new()
    {
        Spans = battery.Spans,
        ChargeCourse = battery.Course,
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

    // Capacity at 25 °C times the open-circuit voltage, from empty to the charge.
    private static double StoredJoules(BatteryCourse battery) => battery.Parameters.Groups * battery.Parameters.ChargePerUnit
        * GaussLegendreRule.Integrate(battery.Parameters.OpenCircuit.At, 0, battery.Charge, 64);

    private OrderedMap<Ratio> Charges() => new(batteries.Select(battery => KeyValuePair.Create(battery.Name, Ratio.FromDecimalFractions(battery.Charge))));
}
