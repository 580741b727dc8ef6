using RigScenarios.Batteries;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>What wires and regulators make of the mean power of the devices behind them.</summary>
internal static class WiredDemand
{
    private const string Running = "on";

    /// <summary>The demand at the battery's terminals.</summary>
    /// <param name="wiring">The wiring.</param>
    /// <param name="devices">Mean power of each device, W; one that isn't named is off.</param>
    /// <param name="endedBy">The device at whose minimum voltage the run ends; null for none. Nothing else stops: that it
    /// ran is what was noted.</param>
    public static TerminalDraw Of(WiringNetwork wiring, IReadOnlyDictionary<string, double> devices, string? endedBy)
    {
        var network = new WiringNetwork(wiring.Elements.Select(element => element switch
        {
            Device device => device with
            {
                States = new OrderedMap<DeviceDraw>([new(Running,
                    DeviceDraw.OfPower(Power.FromWatts(devices.GetValueOrDefault(device.Name))))]),
                MinimumVoltage = device.Name == endedBy ? device.MinimumVoltage : null,
            },
            Regulator regulator => regulator with { InputMinimum = null },
            LowVoltageSwitch guard => guard with { OpensBelow = null },
            _ => element,
        }));
        return new TerminalDraw(0, 0, 0, new WiringDraw(network, _ => Running, new bool[network.Count]));
    }
}
