using RigScenarios.Batteries;
using RigScenarios.Files;
using RigScenarios.Parts;

namespace RigScenarios.Drafts;

/// <summary>The voltages that a battery puts on what hangs on it over a day.</summary>
/// <param name="EmptyVolts">Where its protection, or the plate, switches off, in V.</param>
/// <param name="FullVolts">Full and just off its charger, with nothing drawn, in V.</param>
/// <param name="NominalVolts">On its label, in V.</param>
internal readonly record struct PackVoltages(double EmptyVolts, double FullVolts, double NominalVolts)
{
    /// <summary>Of a battery; null where its data don't add up, which the check of the scenario tells.</summary>
    public static PackVoltages? Of(Part battery, Part? plate)
    {
        if (!FullVoltage.TryOf(battery, out _, out var full, out _))
            return null;
        var pack = PackModel.From(battery.Battery!, battery.Mass, battery.Size, null).Pack;
        return new PackVoltages(Math.Max(pack.CutoffVoltage.Volts, plate?.Plate?.SwitchOffVoltage?.Volts ?? 0), full,
            battery.Battery!.Voltage.Volts);
    }
}
