using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>How the rig is put together: the setting of the head, places on the mounts and rods, cables.</summary>
internal static class PlaceSections
{
    private static readonly string[] PlaceTitles = ["Part", "On", "Forward", "Left", "Up", "Slides"];

    /// <summary>Camera plate and counterbalance, or what shoulder and hands carry, and the centre of gravity.</summary>
    public static IEnumerable<SheetSection> Setting(RigAnswer answer)
    {
        if (answer.Balance is not { } balance)
            yield break;
        string?[] lines = [BalanceWords.Setting(balance), BalanceWords.AsSet(balance),
            balance.Rig.Build.Stance == Stance.Tripod ? null : BalanceWords.Answer(balance), BalanceWords.Centre(balance)];
        yield return new(balance.Best is null ? "Balance" : "Camera plate and counterbalance", SheetForm.Sentences,
            [.. lines.OfType<string>().Select(line => new[] { line })]);
    }

    /// <summary>Where each thing sits, what can be slid first.</summary>
    public static IEnumerable<SheetSection> Places(RigAnswer answer)
    {
        if (answer.Balance?.Rig is not { } rig)
            yield break;
        var slides = rig.Moveable.Select(thing => thing.Key).ToHashSet(StringComparer.Ordinal);
        var usual = rig.PlacesAssumed.ToHashSet(StringComparer.Ordinal);
        // A power cable lies about; it has no place.
        var rows = rig.Places.Where(place => rig.Things[place.Key].Kind != PartKind.Cable)
            .OrderBy(place => !slides.Contains(place.Key)).Select(place => new[]
        {
            SheetWords.Thing(place.Key) + (usual.Contains(place.Key) ? " *" : "") + Turns(place.Value), On(place.Value),
            SheetWords.Millimetres(place.Value.Forward), SheetWords.Millimetres(place.Value.Left),
            SheetWords.Millimetres(place.Value.Up),
            place.Value is { SlidesFrom: { } from, SlidesTo: { } to }
                ? $"{SheetWords.Millimetres(from)} to {SheetWords.Millimetres(to)}" : "",
        }).ToList();
        if (slides.Count == 0)
            rows = [.. rows.Select(row => row[..5])];
        var assumed = usual.Count > 0 ? " * The usual place, for none is given." : "";
        yield return new("Places, mm", SheetForm.Table, [.. rows])
        {
            Columns = [.. PlaceTitles.Take(slides.Count == 0 ? 5 : 6)],
            Note = "Between mounting points; below zero: backward, right, down." + assumed,
            GoesAs = 1, Keeps = Math.Clamp(slides.Count, 1, 4), Things = "places",
        };
    }

    /// <summary>What feeds what, from which outlet, through which cable.</summary>
    public static IEnumerable<SheetSection> Cables(RigAnswer answer)
    {
        var build = answer.TheBuild;
        var powered = answer.Powered;
        var bare = false;
        var rows = new List<string[]>();
        if (build.Plate is { } plate)
            rows.Add([SheetWords.Thing(build.Battery.Item), "", SheetWords.Thing(plate), "on its contacts", ""]);
        foreach (var (name, from) in Fed(powered))
        {
            powered.Links.TryGetValue(name, out var link);
            bare |= link?.Cable is null;
            rows.Add([SheetWords.Thing(from == Build.BatteryFeed ? build.Battery.Item : from), link?.Outlet ?? "",
                Counted(answer, name), link is { CableName: { } cable, Cable: { } data }
                    ? $"{SheetWords.Thing(cable)}, {data.Gauge}" : "not given",
                link?.Cable is { } known ? $"{known.Length.Meters:0.##} m" : ""]);
        }
        // What nobody says anything about is told in one line.
        rows = [.. rows.GroupBy(row => row[3] == "not given" && row[1].Length == 0 ? row[0] : string.Join('\n', row))
            .Select(alike => (string[])[.. alike.First()[..2], string.Join(", ", alike.Select(row => row[2])),
                .. alike.First()[3..]])];
        string[] titles = ["From", "Outlet", "To", "Cable", "Length"];
        // A column in which nothing stands takes room and says nothing.
        int[] said = [.. Enumerable.Range(0, titles.Length).Where(i => rows.Exists(row => row[i].Length > 0))];
        yield return new("Cables", SheetForm.Table, [.. rows.Select(row => said.Select(i => row[i]).ToList())])
        {
            Columns = [.. said.Select(i => titles[i])],
            Note = bare ? "A cable that is not given counts as one without resistance: the real voltage is lower." : "",
            GoesAs = 6, Keeps = 6, Things = "cables",
        };
    }

    /// <summary>Everything that is fed, with what feeds it.</summary>
    internal static IEnumerable<(string Name, string From)> Fed(PoweredBuild powered) =>
    [
        .. powered.Regulators.Select(item => (item.Key, item.Value.FedBy)),
        .. powered.Splitters.Select(item => (item.Key, item.Value.FedBy)),
        .. powered.Devices.Select(item => (item.Key, item.Value.FedBy)),
    ];

    private static string Counted(RigAnswer answer, string name) =>
        answer.TheBuild.Devices.TryGetValue(name, out var device) && device.Count > 1
            ? $"{device.Count} × {SheetWords.Thing(name)}" : SheetWords.Thing(name);

    /// <summary>What carries it.</summary>
    internal static string On(PlaceInUse place) => place.On is { } on
        ? (place.AtEnd ? "end of " : "") + SheetWords.Thing(on) : "tripod socket";

    /// <summary>How it is turned; nothing where it is not.</summary>
    internal static string Turns(PlaceInUse place)
    {
        var turns = new[]
        {
            Turn(place.TurnedLeft, "turned left", "turned right"), Turn(place.NoseDown, "nose down", "nose up"),
            Turn(place.LeftSideUp, "left side up", "right side up"),
        }.OfType<string>().ToList();
        return turns.Count == 0 ? "" : $" ({string.Join(", ", turns)})";
    }

    private static string? Turn(Angle? turn, string above, string below) => turn is not { } angle || angle.Degrees == 0
        ? null : $"{Math.Abs(angle.Degrees):0.#}° {(angle.Degrees > 0 ? above : below)}";
}
