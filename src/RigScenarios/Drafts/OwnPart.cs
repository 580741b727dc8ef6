using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>Makes a part of one's own figures, and finds the figures in such a part again.</summary>
internal static class OwnPart
{
    /// <summary>The ids of parts that were made from own figures begin so.</summary>
    public const string IdStart = "own-";

    /// <summary>What must be known before a part can be made; problems go to the log at their fields.</summary>
    public static bool Check(RigRole role, OwnFigures own, string path, ReadLog log)
    {
        var before = log.Problems.Count;
        switch (role)
        {
            case RigRole.Battery when own.Energy is null:
                log.Error($"{path}.energy", "The watt-hours of the battery are still needed; they are printed on its label.",
                    "such as \"98 Wh\"");
                break;
            case RigRole.Regulator when own.OutputVoltage is null:
                log.Error($"{path}.output-voltage", "What the regulator gives is still needed.", "such as \"7.6 V\"");
                break;
            case RigRole.Camera or RigRole.Monitor or RigRole.Transmitter or RigRole.Motor or RigRole.MotorController
                when Record(own) is null:
                log.Error($"{path}.power", "What it draws is still needed: the watts on its label, or its volts and amperes.",
                    "such as \"9 W\", or voltage \"12 V\" and current \"0.8 A\"");
                break;
        }
        if (own is { MinimumVoltage: { } low, MaximumVoltage: { } high } && low.Volts >= high.Volts)
            log.Error($"{path}.minimum-voltage",
                $"The least voltage ({low.Volts:G6} V) is not below the greatest ({high.Volts:G6} V).");
        return log.Problems.Count == before;
    }

    /// <summary>The part with these figures and nothing else.</summary>
    public static Part From(RigRole role, OwnFigures own)
    {
        var assumed = new List<string>();
        T Take<T>(T? given, T standard, string field)
            where T : struct
        {
            if (given is null)
                assumed.Add(field);
            return given ?? standard;
        }

        var part = new Part
        {
            Kind = Kind(role),
            Name = own.Name.Length > 0 ? own.Name : $"My {ChoiceFormat<RigRole>.Word(role).Replace('-', ' ')}",
            Mass = Take(own.Mass, OwnDefaults.MassOf(role, own.Energy), "mass"),
        };
        part = role switch
        {
            RigRole.Battery => part with
            {
                Battery = new Battery { Energy = own.Energy!.Value,
                    Voltage = Take(own.Voltage, OwnDefaults.BatteryVoltage, "battery.voltage"), MaximumCurrent = own.Current },
            },
            RigRole.Plate =>
                part with { Plate = new PlateData(Take(own.Power, OwnDefaults.PlateOwnDraw, "plate.own-draw"),
                own.MinimumVoltage, own.Current) },
            RigRole.Regulator => part with
            {
                Regulator = new RegulatorData
                {
                    InputMinimum = Take(own.MinimumVoltage, OwnDefaults.RegulatorInputMinimum, "regulator.input-minimum"),
                    InputMaximum = Take(own.MaximumVoltage, OwnDefaults.RegulatorInputMaximum, "regulator.input-maximum"),
                    OutputVoltage = own.OutputVoltage!.Value,
                    Efficiency = Take(null, OwnDefaults.RegulatorEfficiency, "regulator.efficiency"),
                    OwnDraw = Take(own.Power, OwnDefaults.RegulatorOwnDraw, "regulator.own-draw"),
                    MaximumCurrent = own.Current,
                },
            },
            RigRole.Head => part with
            {
                Size = OwnDefaults.HeadSize,
                RatedLoad = own.RatedLoad,
                Head = new HeadData
                {
                    Slide = Take(null, OwnDefaults.HeadSlide, "head.slide"),
                    AxisBelowPlate = Take(null, OwnDefaults.HeadAxisBelowPlate, "head.axis-below-plate"),
                    CounterbalanceFrom = Torque.Zero,
                    CounterbalanceTo = Take(own.Counterbalance, OwnDefaults.CounterbalanceOf(own.RatedLoad),
                        "head.counterbalance-to"),
                    Drag = Take(own.Drag, OwnDefaults.HeadDrag, "head.drag"),
                    TiltUp = Take(null, OwnDefaults.HeadTiltUp, "head.tilt-up"),
                    TiltDown = Take(null, OwnDefaults.HeadTiltDown, "head.tilt-down"),
                },
            },
            RigRole.Legs => part with
            {
                Legs = new LegsData(Take(own.Height, OwnDefaults.LegsHeight, "legs.height"),
                    Take(own.FootRadius, OwnDefaults.LegsFootRadius, "legs.foot-radius")),
            },
            _ when Record(own) is { } record => part with
            {
                Power = new PowerDraw(null, Take(own.Standby, record, "power.standby"), record),
                Voltage = Window(own, assumed),
                MaximumCurrent = own.Current,
            },
            _ => part,
        };
        return part with { Assumed = assumed };
    }

    /// <summary>The figures of a part that were given and not assumed.</summary>
    public static OwnFigures FiguresOf(RigRole role, Part part)
    {
        T? Given<T>(T? value, string field)
            where T : struct => part.Assumed.Contains(field) ? null : value;

        var own = new OwnFigures { Name = part.Name, Mass = Given(part.Mass, "mass") };
        if (part.Head is { } head)
            return own with { RatedLoad = part.RatedLoad, Drag = Given(head.Drag, "head.drag"),
                Counterbalance = Given(head.CounterbalanceTo, "head.counterbalance-to") };
        if (part.Legs is { } legs)
            return own with { Height = Given<Length>(legs.Height, "legs.height"),
                FootRadius = Given<Length>(legs.FootRadius, "legs.foot-radius") };
        if (part.Battery is { } battery)
            return own with { Energy = battery.Energy, Voltage = Given<ElectricPotential>(battery.Voltage, "battery.voltage"),
                Current = battery.MaximumCurrent };
        if (part.Plate is { } plate)
            return own with { Power = Given(plate.OwnDraw, "plate.own-draw"),
                MinimumVoltage = Given(plate.SwitchOffVoltage, "plate.switch-off-voltage"), Current = plate.MaximumCurrent };
        if (part.Regulator is { } regulator)
        {
            return own with
            {
                MinimumVoltage = Given<ElectricPotential>(regulator.InputMinimum, "regulator.input-minimum"),
                MaximumVoltage = Given<ElectricPotential>(regulator.InputMaximum, "regulator.input-maximum"),
                OutputVoltage = regulator.OutputVoltage,
                Power = Given(regulator.OwnDraw, "regulator.own-draw"),
                Current = regulator.MaximumCurrent,
            };
        }
        own = own with
        {
            Power = part.Power?.Record,
            Standby = Given(part.Power?.Standby, "power.standby"),
            Current = part.MaximumCurrent,
            MinimumVoltage = Given(part.Voltage?.Minimum, "voltage.minimum"),
            MaximumVoltage = Given(part.Voltage?.Maximum, "voltage.maximum"),
        };
        var labels = part.Voltage is { } window ? OwnDefaults.LabelsOf(window)
            .Where(label => GivesWindow(own with { Voltage = label }, part)).ToList() : [];
        if (labels.Count > 0)
            own = own with { Voltage = labels[0] };
        // Watts that came of volts and amperes are not shown as a third figure, which would stand against the two.
        return labels.Select(label => own with { Voltage = label, Power = null })
            .FirstOrDefault(one => Record(one) is { } record && record.Equals(part.Power?.Record)) ?? own;
    }

    /// <summary>A part with other figures; what own figures don't speak of stays as it was.</summary>
    public static Part Changed(RigRole role, Part old, OwnFigures own)
    {
        if (FiguresOf(role, old) == own)
            return old;
        var fresh = From(role, own);
        if (old.Kind != fresh.Kind && role != RigRole.Other)
            return fresh with { Note = old.Note, Buy = old.Buy, RentPerDay = old.RentPerDay };
        var changed = old with
        {
            Name = fresh.Name,
            Mass = fresh.Mass,
            Power = fresh.Power is { } power ? power with { Off = old.Power?.Off } : null,
            Voltage = fresh.Voltage,
            MaximumCurrent = fresh.MaximumCurrent,
            Battery = fresh.Battery is { } battery ? (old.Battery ?? battery) with { Energy = battery.Energy,
                Voltage = battery.Voltage, MaximumCurrent = battery.MaximumCurrent } : null,
            Plate = fresh.Plate,
            RatedLoad = role == RigRole.Head ? fresh.RatedLoad : old.RatedLoad,
            Head = fresh.Head is { } head ? (old.Head ?? head) with { Drag = head.Drag, CounterbalanceTo = head.CounterbalanceTo }
                : old.Head,
            Legs = fresh.Legs is { } legs ? (old.Legs ?? legs) with { Height = legs.Height, FootRadius = legs.FootRadius }
                : old.Legs,
            Regulator = fresh.Regulator is { } regulator
                ? regulator with { Efficiency = old.Regulator?.Efficiency ?? regulator.Efficiency } : null,
        };
        var kept = old.Assumed.Where(field => PartAssumptions.ValueOf(changed, field) is not null && !Covered(field));
        var assumed = fresh.Assumed.Where(field => field != "regulator.efficiency" || old.Regulator is null
            || old.Assumed.Contains(field));
        return changed with { Assumed = [.. assumed, .. kept.Except(assumed, StringComparer.Ordinal)] };
    }

    /// <summary>The draw in record: the watts, else volts times amperes; null if neither is known.</summary>
    public static Power? Record(OwnFigures own) => own.Power
        ?? (own is { Voltage: { } volts, Current: { } amperes }
            ? Power.FromWatts(Math.Round(volts.Volts * amperes.Amperes, 3)) : null);

    private static VoltageWindow? Window(OwnFigures own, List<string> assumed)
    {
        if (own.Voltage is not { } label || own is { MinimumVoltage: not null, MaximumVoltage: not null })
            return own.MinimumVoltage is null && own.MaximumVoltage is null
                ? null : new VoltageWindow(own.MinimumVoltage, own.MaximumVoltage);
        var (low, high) = OwnDefaults.Window(label);
        if (own.MinimumVoltage is null && low.Volts < (own.MaximumVoltage?.Volts ?? double.PositiveInfinity))
            assumed.Add("voltage.minimum");
        else
            low = own.MinimumVoltage ?? default;
        if (own.MaximumVoltage is null && high.Volts > (own.MinimumVoltage?.Volts ?? 0))
            assumed.Add("voltage.maximum");
        else
            high = own.MaximumVoltage ?? default;
        return new VoltageWindow(low.Volts > 0 ? low : null, high.Volts > 0 ? high : null);
    }

    /// <summary>Whether these figures lead to a part's window, with the same ends of it assumed.</summary>
    private static bool GivesWindow(OwnFigures own, Part part)
    {
        var assumed = new List<string>();
        return Window(own, assumed) == part.Voltage && assumed.Count > 0
            && assumed.SequenceEqual(part.Assumed.Where(field => field.StartsWith("voltage.", StringComparison.Ordinal)));
    }

    private static bool Covered(string field) =>
        field.Split('.')[0] is "mass" or "voltage" or "maximum-current" or "plate" or "regulator"
        || field is "power.standby" or "power.record" or "battery.energy" or "battery.voltage" or "battery.maximum-current"
        or "head.drag" or "head.counterbalance-to" or "legs.height" or "legs.foot-radius";

    private static PartKind Kind(RigRole role) => role switch
    {
        RigRole.Camera => PartKind.Body,
        RigRole.Lens => PartKind.Lens,
        RigRole.Battery => PartKind.Battery,
        RigRole.Plate => PartKind.Plate,
        RigRole.Monitor => PartKind.Monitor,
        RigRole.Transmitter => PartKind.Transmitter,
        RigRole.Motor => PartKind.Motor,
        RigRole.MotorController => PartKind.MotorController,
        RigRole.Regulator => PartKind.Regulator,
        RigRole.Head => PartKind.Head,
        RigRole.Legs => PartKind.Tripod,
        _ => PartKind.Support,
    };
}
