using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>A device of the rig that is run.</summary>
/// <param name="Name">Its name in the network.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Essential">Whether the rig is of no use without it.</param>
/// <param name="Number">Its number in the network.</param>
internal sealed record RigDevice(string Name, string Title, bool Essential, int Number);

/// <summary>The rig that is run: its wiring, and what its devices do in each stretch of the days.</summary>
internal sealed class SimulatedRig
{
    /// <summary>The device that stands for the charging of a hot-swap reserve.</summary>
    public const string ReserveCharger = "hot-swap reserve";

    private readonly Func<DayStretch, OrderedMap<string>> statesIn;
    private readonly Func<string, PowerState, double> ownWatts;

    /// <param name="network">The wiring.</param>
    /// <param name="devices">Its devices; null for all of the network.</param>
    /// <param name="statesIn">The state of each device in a stretch, by its name; one that isn't named is off.</param>
    /// <param name="reserve">What carries it through a swap; null for nothing.</param>
    /// <param name="ownWatts">What a device draws from the battery inside it in a state, W; null where there are none.</param>
    public SimulatedRig(WiringNetwork network, IReadOnlyList<(string Name, string Title)>? devices,
        Func<DayStretch, OrderedMap<string>> statesIn, HotSwapReserve? reserve,
        Func<string, PowerState, double>? ownWatts = null)
    {
        this.ownWatts = ownWatts ?? ((_, _) => 0);
        Network = reserve is null ? network : new WiringNetwork([.. network.Elements, new Device(ReserveCharger, null, new(
            [new(BuildWiring.On,
                DeviceDraw.OfPower(
                Power.FromWatts((double)reserve.ChargePower.Watts / HotSwapReserve.ChargeEfficiency.DecimalFractions)))]))]);
        this.statesIn = statesIn;
        Devices = [.. (devices ?? [.. network.Elements.OfType<Device>().Select(device => (device.Name, device.Name))])
            .Select(item =>
        {
            var number = Network.NumberOf(item.Name);
            return new RigDevice(item.Name, item.Title, ((Device)Network[number]).Essential, number);
        })];
    }

    /// <summary>The wiring.</summary>
    public WiringNetwork Network { get; }

    /// <summary>The devices, in the order of the build.</summary>
    public IReadOnlyList<RigDevice> Devices { get; }

    /// <summary>A build as a rig.</summary>
    public static SimulatedRig Of(PoweredBuild powered, HotSwapReserve? reserve) => new(
        BuildWiring.Of(powered), [.. powered.Devices.Select(item => (item.Key, item.Value.Name))], stretch =>
            BuildWiring.States(powered, stretch.StateOf), reserve,
        (device, state) => (double)powered.Devices[device].DrawIn(state).Watts);

    /// <summary>The state of each device of the network in a stretch; one that isn't named is off.</summary>
    public OrderedMap<string> StatesIn(DayStretch stretch, bool reserveCharges)
    {
        var states = statesIn(stretch);
        return reserveCharges ? states.With(ReserveCharger, BuildWiring.On) : states;
    }

    /// <summary>What a device draws from the battery inside it, W.</summary>
    public double OwnWatts(RigDevice device, PowerState state) => ownWatts(device.Name, state);

    /// <summary>Whether a device is wanted in a stretch: its state draws something.</summary>
    public bool Wants(RigDevice device, OrderedMap<string> states) =>
        ((Device)Network[device.Number]).DrawIn(states.TryGetValue(device.Name, out var state) ? state
            : Wiring.Device.Off).DrawsAnything;
}
