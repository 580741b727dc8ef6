using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Fits.Notes;

/// <summary>What notes and plans ask of the battery: the mean power of each device in each stretch, behind the build's own
/// wiring.</summary>
internal static class NoteRun
{
    /// <summary>How often a planned day is begun again at most, until its battery has ended.</summary>
    private const int MostRepeats = 20;

    /// <summary>No battery holds so many times its label.</summary>
    private const double GreatestCapacity = 1.5;

    // Terminal voltages are found to this, V.
    private const double Within = 1e-4;

    /// <summary>What a note says ran.</summary>
    /// <param name="noted">The notes.</param>
    /// <param name="note">The note.</param>
    public static BatteryRun Of(NotedBattery noted, WrittenNote note)
    {
        var powered = noted.Powered(noted.BuildOf(note));
        IReadOnlyList<RunStretch> stretches = note.AsPlanned is { } planned ? Planned(powered, noted.Scenario.Days[planned])
            : note.Stretches.Count > 0 ? [.. note.Stretches.Select(stretch => Stretch(powered, stretch.Length,
                name => UseOf(stretch.Devices, stretch.Others, name)))]
            : [Stretch(powered, null, name => UseOf(note.Devices, note.Others, name))];
        return Run(powered, noted.AirOf(note).Air, stretches, note.EndedBy) with
        {
            InitialTemperature = note.StartTemperature,
            InitialCharge = note.Charge ?? Ratio.FromDecimalFractions(1), Steady = note.Steady,
        };
    }

    /// <summary>A day of the scenario as it is planned, begun again until the battery ends.</summary>
    /// <param name="noted">The notes.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="day">The day.</param>
    public static BatteryRun OfDay(NotedBattery noted, string build, ShootingDay day)
    {
        var powered = noted.Powered(build);
        return Run(powered, MeanAir(day, noted.Scenario.AmbientOn(day)), Planned(powered, day), null) with
        {
            InitialTemperature = powered.Build.Battery.StartTemperature,
            InitialCharge = powered.Build.Battery.Charge ?? Ratio.FromDecimalFractions(1),
        };
    }

    /// <summary>The mean power at the battery's terminals of each device that a log's note names; none where it names none. What
    /// plates, regulators and wires take is shared out in proportion.</summary>
    public static OrderedMap<Power> AtTerminals(NotedBattery noted, WrittenLog log)
    {
        if (log.Devices.Count == 0 && log.Others is null)
            return OrderedMap<Power>.Empty;
        var powered = noted.Powered(noted.BuildOf(log));
        var watts = Watts(powered, name => UseOf(log.Devices, log.Others, name));
        var asked = watts.Where(item => powered.Devices.ContainsKey(item.Key)).Sum(item => item.Value);
        var own = watts.Sum(item => item.Value) - asked;
        var volts = powered.Battery.Battery!.Voltage.Volts;
        var network = BuildWiring.Of(powered);
        var whole = MeanDraw.Of(network, watts).At(volts, Cable.ReferenceKelvin) is { } figures
            ? volts * Enumerable.Range(0, network.Count).Where(i => network.ParentOf(i) < 0).Sum(i => figures[i].Current)
            : asked + own;
        return new OrderedMap<Power>(watts.Where(item => item.Value > 0).Select(item => KeyValuePair.Create(item.Key,
            Power.FromWatts(powered.Devices.ContainsKey(item.Key) ? item.Value * (whole - own) / asked : item.Value))));
    }

    /// <summary>What plates and splitters draw themselves: names in the network that no note scales.</summary>
    public static IEnumerable<string> OwnDraws(PoweredBuild powered) =>
        BuildWiring.Of(powered).Elements.OfType<Device>().Select(device => device.Name)
            .Where(name => !powered.Devices.ContainsKey(name));

    private static DeviceUse UseOf(OrderedMap<DeviceUse> devices, DeviceUse? others, string name) =>
        devices.TryGetValue(name, out var use) ? use : others ?? DeviceUse.AllOff;

    private static BatteryRun Run(PoweredBuild powered, Temperature air, IReadOnlyList<RunStretch> stretches, string? endedBy)
    {
        var network = BuildWiring.Of(powered);
        return new BatteryRun
        {
            Ambient = air, Stretches = stretches, Wiring = network,
            Cutoff = endedBy == Build.BatteryFeed ? null : MeanDraw.StopVoltage(powered, network, stretches[^1], endedBy, Within),
        };
    }

    private static RunStretch Stretch(PoweredBuild powered, Duration? length, Func<string, DeviceUse> useOf) => new(length,
        [new RunState(Ratio.FromDecimalFractions(1), new OrderedMap<Power>(Watts(powered, useOf).Where(item => item.Value > 0)
            .Select(item => KeyValuePair.Create(item.Key, Power.FromWatts(item.Value)))))]);

    private static Dictionary<string, double> Watts(PoweredBuild powered, Func<string, DeviceUse> useOf)
    {
        var watts = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (name, device) in powered.Devices)
        {
            var use = useOf(name);
            watts[name] = Part(use.Off, PowerState.Off) + Part(use.Standby, PowerState.Standby)
                + Part(use.Record, PowerState.Record);

            double Part(Ratio share, PowerState state) => share.DecimalFractions <= 0 ? 0
                : share.DecimalFractions * (double)device.DrawIn(state).Watts;
        }
        foreach (var own in BuildWiring.Of(powered).Elements.OfType<Device>().Where(one => !watts.ContainsKey(one.Name)))
            watts[own.Name] = (double)own.DrawIn(BuildWiring.On).ConstantPower.Watts;
        return watts;
    }

    private static List<RunStretch> Planned(PoweredBuild powered, ShootingDay day)
    {
        var once = day.Blocks.Select(block => Stretch(powered, block.Value.Length, name => UseIn(block.Value, name))).ToList();
        // To the end it goes on as the day does on the whole, which no battery reaches before it has seen the day many times.
        var whole = day.Length.Seconds;
        var mean = Stretch(powered, null, name => Mean(day.Blocks.Values.Select(block => (block.Length.Seconds / whole,
            UseIn(block, name)))));
        var joules = whole * mean.States[0].Devices.Values.Sum(power => (double)power.Watts);
        var repeats = Math.Clamp(Math.Ceiling(GreatestCapacity * powered.Battery.Battery!.Energy.Joules / joules) + 1, 1,
            MostRepeats);
        return [.. Enumerable.Repeat(once, (int)repeats).SelectMany(stretches => stretches), mean];
    }

    private static DeviceUse UseIn(DayBlock block, string device)
    {
        if (block.Cycle is not { } cycle)
            return Of(block.StateOf(device));
        var seconds = block.Length.Seconds;
        var stretches = DaySchedule.StretchesOf(0, "", block, 0).ToList();
        return Mean(stretches.Select(stretch => ((stretch.End - stretch.Start) / seconds, Of(stretch.StateOf(device)))));
    }

    private static DeviceUse Mean(IEnumerable<(double Share, DeviceUse Use)> uses)
    {
        var all = uses.ToList();
        return DeviceUse.Of(
            all.Sum(one => one.Share * one.Use.Off.DecimalFractions),
            all.Sum(one => one.Share * one.Use.Standby.DecimalFractions),
            all.Sum(one => one.Share * one.Use.Record.DecimalFractions));
    }

    private static DeviceUse Of(PowerState state) => state switch
    {
        PowerState.Off => DeviceUse.AllOff,
        PowerState.Standby => DeviceUse.AllStandby,
        _ => DeviceUse.AllRecord,
    };

    private static Temperature MeanAir(ShootingDay day, Temperature otherwise)
    {
        if (day.AmbientPoints.Count == 0)
            return otherwise;
        var (start, end) = (DaySchedule.StartOf(day), DaySchedule.StartOf(day) + day.Length.Seconds);
        var air = AirTemperature.OfDay(day, otherwise.Kelvins, 0, start, end);
        const int Points = 97;
        return Temperature.FromKelvins(Enumerable.Range(0, Points)
            .Average(i => air.At(start + ((end - start) * i / (Points - 1))).Kelvin));
    }
}
