using System.Diagnostics.CodeAnalysis;
using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>The voltage of a full battery at rest.</summary>
internal static class FullVoltage
{
    /// <summary>Of a battery part, V; false where its figures don't add up, with what is wrong.</summary>
    /// <param name="battery">A part with the group battery, its energy and voltage above zero.</param>
    /// <param name="volts">The voltage.</param>
    /// <param name="problem">What is wrong, in a sentence.</param>
    public static bool TryOf(Part battery, out double volts, [NotNullWhen(false)] out string? problem)
    {
        try
        {
            var pack = PackModel.From(battery.Battery!, battery.Mass, battery.Size, null).Pack;
            volts = pack.SeriesGroups * pack.OpenCircuitVoltage.At(Ratio.FromPercent(100)).Volts;
            problem = null;
            return true;
        }
        catch (ArgumentException exception)
        {
            volts = double.NaN;
            problem = exception.Message.Split(" (Parameter")[0];
            return false;
        }
    }
}
