using RigScenarios.Parts;
using RigScenarios.Scenarios.Forms;
using UnitsNet;

namespace RigScenarios.Scenarios;

/// <summary>What must hold inside a part beyond the range of each field.</summary>
internal static class PartCheck
{
    /// <summary>Checks parts; every problem goes to the log.</summary>
    public static void Run(OrderedMap<Part> parts, string path, ReadLog log)
    {
        foreach (var (id, part) in parts)
        {
            var at = $"{path}.{id}";
            if (log.HasErrorIn($"{at}.kind"))
                continue;
            Needs(part, PartKind.Battery, part.Battery is not null, "battery", at, log);
            Needs(part, PartKind.Plate, part.Plate is not null, "plate", at, log);
            Needs(part, PartKind.Regulator, part.Regulator is not null, "regulator", at, log);
            Needs(part, PartKind.Charger, part.Charger is not null, "charger", at, log);
            Only(part, PartKind.Head, part.Head is not null, "head", at, log);
            Only(part, PartKind.Tripod, part.Legs is not null, "legs", at, log);
            Only(part, PartKind.Rods, part.Rods is not null, "rods", at, log);
            Only(part, PartKind.Arm, part.Arm is not null, "arm", at, log);
            CheckSupport(part, at, log);
            for (var index = 0; index < part.Assumed.Count; index++)
            {
                if (PartAssumptions.ValueOf(part, part.Assumed[index]) is null)
                    log.Error($"{at}.assumed.{index + 1}", $"The part has no figure \"{part.Assumed[index]}\" that could be assumed.", "a field of this part with a figure, such as \"mass\" or \"power.standby\"", log.Nearest(part.Assumed[index], PartAssumptions.Figures(part)));
            }
            if (part.Voltage is { Minimum: { } low, Maximum: { } high } && low.Volts >= high.Volts)
                log.Error($"{at}.voltage", $"The minimum ({low.Volts:G6} V) is not below the maximum ({high.Volts:G6} V).");
            if (part.Regulator is { } regulator && regulator.InputMinimum.Volts >= regulator.InputMaximum.Volts)
                log.Error($"{at}.regulator", $"The least input ({regulator.InputMinimum.Volts:G6} V) is not below the greatest ({regulator.InputMaximum.Volts:G6} V).");
        }
    }

    private static void Needs(Part part, PartKind kind, bool has, string section, string at, ReadLog log)
    {
        if (part.Kind == kind && !has)
            log.Error($"{at}.{section}", $"A {ChoiceForm<PartKind>.Word(kind)} needs the group \"{section}\".");
        Only(part, kind, has, section, at, log);
    }

    private static void Only(Part part, PartKind kind, bool has, string section, string at, ReadLog log)
    {
        if (part.Kind != kind && has)
            log.Error($"{at}.{section}", $"The group \"{section}\" belongs to parts of the kind {ChoiceForm<PartKind>.Word(kind)}; this is a {ChoiceForm<PartKind>.Word(part.Kind)}.");
    }

    private static void CheckSupport(Part part, string at, ReadLog log)
    {
        if (part.Head is { } head)
        {
            if (head.CounterbalanceSteps.Count > 0 == (head.CounterbalanceTo is not null))
                log.Error($"{at}.head.counterbalance-steps", "A head's counterbalance has either steps or a range.", "either \"counterbalance-steps: [0 N·m, 2 N·m, 4 N·m]\" or \"counterbalance-from\" with \"counterbalance-to\"");
            if ((head.CounterbalanceFrom ?? Torque.Zero).NewtonMeters > (head.CounterbalanceTo ?? Torque.FromNewtonMeters(double.MaxValue)).NewtonMeters)
                log.Error($"{at}.head.counterbalance-from", "The least counterbalance is above the greatest.");
        }
        if (part.Legs is { CentreHeight: { } centre } legs && centre >= legs.Height)
            log.Error($"{at}.legs.centre-height", "The centre of gravity of the legs is not below their top.");
        if (part.Rods is { } rods && rods.Bore >= rods.Diameter)
            log.Error($"{at}.rods.bore", $"The bore ({rods.Bore.Millimeters:G6} mm) is not below the diameter ({rods.Diameter.Millimeters:G6} mm).");
    }
}
