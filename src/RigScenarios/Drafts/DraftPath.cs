namespace RigScenarios.Drafts;

/// <summary>Finds the field of a form that a path of the scenario speaks of.</summary>
internal static class DraftPath
{
    public static string Of(string path, DraftRig rig, IReadOnlyDictionary<string, string> renamed, string build, string day)
    {
        string Thing(string name) => renamed.FirstOrDefault(pair => pair.Value == name).Key ?? name;
        var steps = path.Split('.');
        return steps switch
        {
            ["builds", var name, "battery", "item", ..] when name == build && rig.Battery is { } battery =>
                $"things.{battery.Name}",
            ["builds", var name, "battery", var field] when name == build => field,
            ["builds", var name, "plate"] when name == build && rig.Plate is { } plate => $"things.{plate.Name}",
            ["builds", var name, "devices" or "regulators" or "splitters", var thing, .. var rest] when name == build =>
                Join(["things", Thing(thing), .. rest]),
            ["builds", var name, .. var rest] when name == build => Join(rest),
            ["days", var name, .. var rest] when name == day => Join(rest),
            ["batteries", ..] => "battery-count",
            ["chargers", _, "current", ..] => "charger-current",
            ["chargers", _, "power-hours", ..] => "power-hours",
            ["chargers", ..] => "charger-bays",
            ["swaps", ..] => "swap-at",
            ["kit", var thing, .. var rest] => Join(["things", Thing(thing), .. rest]),
            ["parts", var id, ..] when rig.Things.FirstOrDefault(thing => thing.PartId == id) is { } found =>
                $"things.{found.Name}.{(found.Thing.Own is null ? "part" : "own")}",
            _ => path,
        };
    }

    private static string Join(IEnumerable<string> steps) => string.Join('.', steps);
}
