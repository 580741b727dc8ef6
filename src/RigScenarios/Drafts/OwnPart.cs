using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>A part of one's own figures: what its label leaves open is assumed and marked, and what is marked is taken out
/// again.</summary>
internal static class OwnPart
{
    /// <summary>The ids of parts of own figures begin so.</summary>
    public const string IdStart = "own-";

    private static readonly PartKind[] Battery = [PartKind.Battery];

    private static readonly PartKind[] Plate = [PartKind.Plate];

    private static readonly PartKind[] Regulator = [PartKind.Regulator];

    private static readonly PartKind[] Head = [PartKind.Head];

    private static readonly PartKind[] Legs = [PartKind.Tripod];

    /// <summary>What is taken for each figure that is left open, in this order: a later one may rest on an earlier one. The
    /// figures with their reasons stand in docs/own-rig.md.</summary>
    private static readonly (string Path, PartKind[] Kinds, Func<Part, IQuantity?> Value)[] Defaults =
    [
        ("power.record", [], part => part.Label is { Voltage: { } volts, Current: { } amperes }
            ? Power.FromWatts(Math.Round(volts.Volts * amperes.Amperes, 3)) : null),
        ("power.standby", [], part => part.Power?.Record),
        ("voltage.minimum", [], part => part.Label?.Voltage is { } label && OwnDefaults.Window(label).Minimum is var low
            && low.Volts < (part.Voltage?.Maximum?.Volts ?? double.PositiveInfinity) ? low : null),
        ("voltage.maximum", [], part => part.Label?.Voltage is { } label && OwnDefaults.Window(label).Maximum is var high
            && high.Volts > (part.Voltage?.Minimum?.Volts ?? 0) ? high : null),
        ("maximum-current", [], part => part.Label?.Current),
        ("battery.voltage", Battery, _ => OwnDefaults.BatteryVoltage),
        ("mass", [], part => OwnDefaults.MassOf(part)),
        ("plate.own-draw", Plate, _ => OwnDefaults.PlateOwnDraw),
        ("regulator.input-minimum", Regulator, _ => OwnDefaults.RegulatorInputMinimum),
        ("regulator.input-maximum", Regulator, _ => OwnDefaults.RegulatorInputMaximum),
        ("regulator.efficiency", Regulator, _ => OwnDefaults.RegulatorEfficiency),
        ("regulator.own-draw", Regulator, _ => OwnDefaults.RegulatorOwnDraw),
        ("head.slide", Head, _ => OwnDefaults.HeadSlide),
        ("head.axis-below-plate", Head, _ => OwnDefaults.HeadAxisBelowPlate),
        ("head.counterbalance-to", Head, part => part.Head?.CounterbalanceSteps is { Count: > 0 }
            ? null : OwnDefaults.CounterbalanceOf(part.RatedLoad)),
        ("head.drag", Head, _ => OwnDefaults.HeadDrag),
        ("head.tilt-up", Head, _ => OwnDefaults.HeadTiltUp),
        ("head.tilt-down", Head, _ => OwnDefaults.HeadTiltDown),
        ("legs.height", Legs, _ => OwnDefaults.LegsHeight),
        ("legs.foot-radius", Legs, _ => OwnDefaults.LegsFootRadius),
    ];

    /// <summary>Whether a part of the scenario is one of own figures.</summary>
    public static bool IsOwn(Scenario scenario, string id) =>
        id.StartsWith(IdStart, StringComparison.Ordinal) && scenario.Parts.ContainsKey(id);

    /// <summary>The part with what is assumed where nothing readable is given.</summary>
    /// <param name="given">What is given of it, as it stands in a file.</param>
    public static Part Complete(FileNode given)
    {
        var log = new ReadLog("");
        PartFormat.Whole.TryRead(given, "", log, out var part);
        part ??= new Part();
        var wrong = log.Problems.Select(problem => problem.Path).ToHashSet(StringComparer.Ordinal);
        var marks = new List<string>();
        foreach (var (path, kinds, value) in Defaults)
        {
            if ((kinds.Length > 0 && !kinds.Contains(part.Kind))
                || (GivenTree.Text(given, path) is not null && !wrong.Contains(path)) || value(part) is not { } quantity)
                continue;
            var text = new TextNode(QuantityText.Write(quantity), TextPlace.None);
            if (PartFormat.Whole.TrySet(part, path.Split('.'), text, path, log, out var changed))
                (part, marks) = (changed, [.. marks, path]);
        }
        return marks.Count == 0 ? part : part with { Assumed = [.. marks, .. part.Assumed.Except(marks)] };
    }

    /// <summary>
    /// What is given of a part that was completed: without the marked figures. Where they would not come back as they are they
    /// stay, as given ones.
    /// </summary>
    /// <param name="part">The part.</param>
    public static MapNode Given(Part part)
    {
        var whole = (MapNode)PartFormat.Whole.Write(part);
        var given = part.Assumed.Aggregate(GivenTree.Without(whole, "assumed"), GivenTree.Without);
        // A figure that must be there and isn't yet stands as zero in the whole part, which no file would take.
        var log = new ReadLog("");
        PartFormat.Whole.TryRead(given, "", log, out _);
        given = log.Problems.Where(problem => GivenTree.Text(given, problem.Path) is not null)
            .Aggregate(given, (now, problem) => GivenTree.Without(now, problem.Path));
        return Files.Editing.TreeDifference.Same(PartFormat.Whole.Write(Complete(given)), whole) ? given : whole;
    }
}
