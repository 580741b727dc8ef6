using System.Globalization;
using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Days;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>What parts say of their own figures: which were assumed and not read on a label.</summary>
internal static class PartAssumptions
{
    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["power.off"] = "draw when off",
        ["power.standby"] = "draw on standby",
        ["power.record"] = "draw in record",
        ["voltage.minimum"] = "least voltage",
        ["voltage.maximum"] = "greatest voltage",
        ["maximum-current"] = "greatest current it takes",
        ["battery.energy"] = "energy",
        ["battery.voltage"] = "nominal voltage",
        ["plate.own-draw"] = "own draw",
        ["plate.switch-off-voltage"] = "voltage at which it switches off",
        ["regulator.input-minimum"] = "least input voltage",
        ["regulator.input-maximum"] = "greatest input voltage",
        ["regulator.output-voltage"] = "output voltage",
        ["regulator.efficiency"] = "efficiency",
        ["regulator.own-draw"] = "own draw",
        ["head.slide"] = "how far the plate slides",
        ["head.axis-below-plate"] = "from the plate down to the tilt axis",
        ["head.counterbalance-to"] = "most counterbalance",
        ["head.friction"] = "friction at rest",
        ["head.drag"] = "tilt drag at 10 °/s",
        ["head.tilt-up"] = "tilt upwards",
        ["head.tilt-down"] = "tilt downwards",
        ["legs.height"] = "height",
        ["legs.foot-radius"] = "from the middle to a foot",
    };

    /// <summary>The figures marked as assumed that a day of a build rests on.</summary>
    public static IEnumerable<AssumedValue> In(Scenario scenario, Build build, ShootingDay day)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        var names = build.Regulators.Keys.Concat(build.Devices.Keys).Prepend(build.Battery.Item);
        if (build.Plate is { } plate)
            names = names.Prepend(plate);
        foreach (var name in names)
        {
            if (scenario.Kit.TryGetValue(name, out var item) && scenario.FindPart(item.Part) is { Assumed.Count: > 0 } part
                && told.Add(item.Part))
            {
                foreach (var value in Of(item.Part, part, field => Enters(field, name, build, day)))
                    yield return value;
            }
        }
    }

    /// <summary>The figures of a part that are marked as assumed.</summary>
    public static IEnumerable<AssumedValue> Of(string id, Part part, Func<string, bool> wanted) =>
        from field in part.Assumed
        where wanted(field) && !IsFromLabel(part, field)
        let value = ValueOf(part, field)
        where value is not null
        select new AssumedValue(
            $"parts.{id}.{field}", $"{part.Name}, {Words.GetValueOrDefault(field, field)}", value,
            Why(part, field),
            Citation.CommonPractice("defaults for parts that are not listed (docs/own-rig.md)"));

    /// <summary>Whether a figure was made of the label and nothing else.</summary>
    private static bool IsFromLabel(Part part, string field) => part.Label is { } label && field switch
    {
        "power.record" => label is { Voltage: not null, Current: not null },
        "maximum-current" => label.Current is not null,
        _ => false,
    };

    private static string Why(Part part, string field) =>
        part.Label?.Voltage is not null && field is "voltage.minimum" or "voltage.maximum"
            ? string.Create(CultureInfo.InvariantCulture, $"made of the {part.Label!.Voltage!.Value.Volts:0.##} V on its label; "
                + $"a figure from its data sheet replaces it")
            : "marked as assumed where the part is described; a figure from its label replaces it";

    /// <summary>The text of one figure of a part; null if it has none of that key.</summary>
    public static string? ValueOf(Part part, string field)
    {
        FileNode? node = PartFormat.Whole.Write(part);
        foreach (var step in field.Split('.'))
            node = (node as MapNode)?.Entries.FirstOrDefault(entry => entry.Key == step)?.Value;
        return field is "kind" or "name" or "note" ? null : (node as TextNode)?.Text;
    }

    /// <summary>The keys of all figures that a part has.</summary>
    public static IEnumerable<string> Figures(Part part) => PartFormat.Whole.NumericFields(part, "").Select(field => field.Path);

    /// <summary>
    /// The mass of a battery makes its heat capacity; that of everything else is not in a day's result. The least voltage of a
    /// device counts
    /// where the battery's own voltage reaches it; a regulator holds its output.
    /// </summary>
    private static bool Enters(string field, string name, Build build, ShootingDay day) => field.Split('.')[0] switch
    {
        "mass" or "size" or "battery" => name == build.Battery.Item,
        "power" => day.Blocks.Values.Any(block => field == $"power.{ChoiceFormat<PowerState>.Word(block.StateOf(name))}"),
        "voltage" => field == "voltage.minimum" && !(build.Devices.TryGetValue(name, out var device)
            && build.Regulators.ContainsKey(device.FedBy ?? build.StandardFeed)),
        "plate" or "regulator" => field != "regulator.input-maximum",
        _ => false,
    };
}
