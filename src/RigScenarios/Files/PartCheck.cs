using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Files;

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
            if (part.Kind != PartKind.MotorController)
                Needs(part, PartKind.Splitter, part.Splitter is not null, "splitter", at, log);
            Only(part, PartKind.Cable, part.Cable is not null, "cable", at, log);
            CheckWiring(part, at, log);
            Only(part, PartKind.Head, part.Head is not null, "head", at, log);
            Only(part, PartKind.Tripod, part.Legs is not null, "legs", at, log);
            Only(part, PartKind.Rods, part.Rods is not null, "rods", at, log);
            Only(part, PartKind.Arm, part.Arm is not null, "arm", at, log);
            CheckSupport(part, at, log);
            for (var index = 0; index < part.Assumed.Count; index++)
            {
                if (PartAssumptions.ValueOf(part, part.Assumed[index]) is null)
                    log.Error($"{at}.assumed.{index + 1}",
                        $"The part has no figure \"{part.Assumed[index]}\" that could be assumed.",
                        "a field of this part with a figure, such as \"mass\" or \"power.standby\"",
                        log.Nearest(part.Assumed[index], PartAssumptions.Figures(part)));
            }
            if (part.Battery is { ChargeVoltage: { } full, Voltage: var label } && full.Volts <= label.Volts)
                log.Error($"{at}.battery.charge-voltage",
                    $"The battery is charged to {full.Volts:G6} V, which is not above the {label.Volts:G6} V of its label.",
                    "the whole battery's voltage on its charger, such as \"16.8 V\" for one of 14.4 V");
            if (part.Voltage is { Minimum: { } low, Maximum: { } high } && low.Volts >= high.Volts)
                log.Error($"{at}.voltage", $"The minimum ({low.Volts:G6} V) is not below the maximum ({high.Volts:G6} V).");
            if (part.Regulator is { } regulator && regulator.InputMinimum.Volts >= regulator.InputMaximum.Volts)
                log.Error($"{at}.regulator",
                    $"The least input ({regulator.InputMinimum.Volts:G6} V) is not below the greatest "
                        + $"({regulator.InputMaximum.Volts:G6} V).");
        }
    }

    private static void CheckWiring(Part part, string at, ReadLog log)
    {
        if (part.Regulator is { Efficiency.DecimalFractions: 0, LossPerAmpere: null, LossPerAmpereSquared: null }
            && !log.HasErrorIn($"{at}.regulator"))
            log.Error($"{at}.regulator.efficiency", "Neither an efficiency nor a loss is given.",
                "\"efficiency: 92 %\", or \"loss-per-ampere\" and \"loss-per-ampere-squared\"");
        if (part.Power is { Load: LoadKind.Current or LoadKind.Resistance, Duty: not null })
            log.Error($"{at}.power.duty", "A duty belongs to a draw of constant power.", "no \"load\" beside it");
        if (part.Power is { Peak: { } peak, Record: { } record } && peak < record)
            log.Error($"{at}.power.peak",
                $"The peak ({(double)peak.Watts:G6} W) is below the draw at work ({(double)record.Watts:G6} W).");
        foreach (var (group, outlets) in new[] { ("plate", part.Plate?.Outlets), ("splitter", part.Splitter?.Outlets) })
        {
            foreach (var (name, outlet) in outlets ?? OrderedMap<OutletData>.Empty)
            {
                if (outlet is { Voltage: null } and ({ Efficiency: not null } or { InputMinimum: not null }))
                    log.Error($"{at}.{group}.outlets.{name}",
                        "Only an outlet that holds a voltage has an efficiency or a least input.", "\"voltage: 5 V\" beside it");
            }
        }
        if (part.Splitter is { Outlets.Count: 0 } && !log.HasErrorIn($"{at}.splitter"))
            log.Error($"{at}.splitter.outlets", "The splitter has no outlet.");
    }

    private static void Needs(Part part, PartKind kind, bool has, string section, string at, ReadLog log)
    {
        if (part.Kind == kind && !has)
            log.Error($"{at}.{section}", $"A {ChoiceFormat<PartKind>.Word(kind)} needs the group \"{section}\".");
        Only(part, kind, has, section, at, log);
    }

    private static void Only(Part part, PartKind kind, bool has, string section, string at, ReadLog log)
    {
        if (part.Kind != kind && has)
            log.Error($"{at}.{section}",
                $"The group \"{section}\" belongs to parts of the kind {ChoiceFormat<PartKind>.Word(kind)}; this is a "
                    + $"{ChoiceFormat<PartKind>.Word(part.Kind)}.");
    }

    private static void CheckSupport(Part part, string at, ReadLog log)
    {
        if (part.Head is { } head)
        {
            if (head.CounterbalanceSteps.Count > 0 == (head.CounterbalanceTo is not null))
                log.Error($"{at}.head.counterbalance-steps", "A head's counterbalance has either steps or a range.",
                    "either \"counterbalance-steps: [0 N·m, 2 N·m, 4 N·m]\" or \"counterbalance-from\" with "
                        + "\"counterbalance-to\"");
            if ((head.CounterbalanceFrom ?? Torque.Zero).NewtonMeters > (head.CounterbalanceTo
                ?? Torque.FromNewtonMeters(double.MaxValue)).NewtonMeters)
                log.Error($"{at}.head.counterbalance-from", "The least counterbalance is above the greatest.");
        }
        if (part.Legs is { CentreHeight: { } centre } legs && centre >= legs.Height)
            log.Error($"{at}.legs.centre-height", "The centre of gravity of the legs is not below their top.");
        if (part.Rods is { } rods && rods.Bore >= rods.Diameter)
            log.Error($"{at}.rods.bore",
                $"The bore ({rods.Bore.Millimeters:G6} mm) is not below the diameter ({rods.Diameter.Millimeters:G6} mm).");
    }
}
