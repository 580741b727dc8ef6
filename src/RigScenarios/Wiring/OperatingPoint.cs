using System.Runtime.Intrinsics;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>What one element of a network sees and does at one moment.</summary>
/// <param name="Inlet">Voltage at its inlet.</param>
/// <param name="Outlet">Voltage that it gives on; null for a device.</param>
/// <param name="Current">Current into it.</param>
/// <param name="OutputCurrent">Current out of a regulator; null for others.</param>
/// <param name="Loss">Power that becomes heat in a wire or a regulator; zero for others.</param>
public sealed record ElementPoint(
    ElectricPotential Inlet, ElectricPotential? Outlet, ElectricCurrent Current, ElectricCurrent? OutputCurrent, Power Loss)
{
    /// <summary>Power into it.</summary>
    public Power Power => Power.FromWatts(Inlet.Volts * Current.Amperes);
}

/// <summary>Voltages and currents of a network everywhere, at one moment.</summary>
public sealed record OperatingPoint
{
    internal OperatingPoint(WiringNetwork network, double terminals, ElementFigures[] figures, double airKelvin)
    {
        Terminals = ElectricPotential.FromVolts(terminals);
        var root = Enumerable.Range(0, network.Count).Where(i => network.ParentOf(i) < 0).Sum(i => figures[i].Current);
        Current = ElectricCurrent.FromAmperes(root);
        Elements = new OrderedMap<ElementPoint>(network.Elements
            .Select((element, i) => KeyValuePair.Create(element.Name, PointOf(element, figures[i], airKelvin))));
        Delivered = Power.FromWatts(network.Elements.Select((element, i) => element is Device
            ? figures[i].Inlet * figures[i].Current : 0).Sum());
    }

    /// <summary>Voltage of the pack's terminals.</summary>
    public ElectricPotential Terminals { get; }

    /// <summary>Current out of the pack.</summary>
    public ElectricCurrent Current { get; }

    /// <summary>Power out of the pack.</summary>
    public Power Power => Power.FromWatts(Terminals.Volts * Current.Amperes);

    /// <summary>Power that reaches the devices.</summary>
    public Power Delivered { get; }

    /// <summary>Each element by its name, in the order of the network.</summary>
    public OrderedMap<ElementPoint> Elements { get; }

    private static ElementPoint PointOf(WiringElement element, ElementFigures at, double airKelvin)
    {
        var ohms = element is Wire lead ? lead.Resistance.Ohms
            + (lead.Copper.Ohms * Cable.CopperFactor(Vector512.Create(airKelvin))[0]) : 0;
        double? outlet = element switch
        {
            Wire => at.Inlet - (ohms * at.Current),
            Regulator regulator => regulator.Output.Volts,
            Device => null,
            _ => at.Inlet,
        };
        var loss = element switch
        {
            Wire => ohms * at.Current * at.Current,
            Regulator regulator => (at.Inlet * at.Current) - (regulator.Output.Volts * at.Output),
            _ => 0,
        };
        return new ElementPoint(
            ElectricPotential.FromVolts(at.Inlet),
            outlet is { } volts ? ElectricPotential.FromVolts(volts) : null,
            ElectricCurrent.FromAmperes(at.Current),
            element is Regulator ? ElectricCurrent.FromAmperes(at.Output) : null,
            Power.FromWatts(loss));
    }
}
