using System.Diagnostics.CodeAnalysis;
using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>The voltage of a full battery, at rest and just off its charger.</summary>
internal static class FullVoltage
{
    /// <summary>Of a battery part, V; false where its figures don't add up, with what is wrong.</summary>
    /// <param name="battery">A part with the group battery, its energy and voltage above zero.</param>
    /// <param name="atRest">The voltage at rest.</param>
    /// <param name="highest">The highest that it can put on something: just off its charger.</param>
    /// <param name="problem">What is wrong, in a sentence.</param>
    public static bool TryOf(Part battery, out double atRest, out double highest, [NotNullWhen(false)] out string? problem)
    {
        try
        {
            var pack = PackModel.From(battery.Battery!, battery.Mass, battery.Size, null).Pack;
            atRest = pack.SeriesGroups * pack.OpenCircuitVoltage.At(Ratio.FromPercent(100)).Volts;
            highest = Math.Max(atRest, pack.SeriesGroups * pack.FullVoltage.Volts);
            problem = null;
            return true;
        }
        catch (ArgumentException exception)
        {
            atRest = highest = double.NaN;
            problem = exception.Message.Split(" (Parameter")[0];
            return false;
        }
    }
}
