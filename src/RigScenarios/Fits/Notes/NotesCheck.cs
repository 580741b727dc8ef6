using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Fits.Notes;

/// <summary>What must hold between the fields of field notes and the scenario that they name.</summary>
internal static class NotesCheck
{
    private const string WhatRan = "\"devices: {camera: record 60 %, monitor: record}\" for what each did all the time, "
        + "\"stretches\" for one after the other, or \"as-planned\" with a day of the scenario";

    /// <summary>Checks field notes; every problem goes to the log.</summary>
    /// <param name="notes">The notes.</param>
    /// <param name="scenario">The scenario that they name.</param>
    /// <param name="planned">The build that is planned; null for that of the notes.</param>
    /// <param name="log">Where problems go.</param>
    public static void Run(FieldNotes notes, Scenario scenario, string? planned, ReadLog log)
    {
        if ((notes.Build is { } given && !IsBuild(scenario, given, "build", log))
            || (planned is not null && !IsBuild(scenario, planned, "build", log)))
            return;
        var standard = notes.Build ?? scenario.Builds.Keys.First();
        if (notes.Notes.Count + notes.Logs.Count == 0 && notes is { Meters.Count: 0, Capacity: null, Pulse: null }
            && !log.HasErrorIn("notes") && !log.HasErrorIn("logs"))
            log.Error("notes", "There is no note, no log and no test.",
                "such as \"notes: {tuesday: {lasted: 4 h 10 min, air: 3 °C, devices: {camera: record 60 %}}}\"");
        foreach (var (name, note) in notes.Notes)
            Note(scenario, note, standard, $"notes.{name}", log);
        foreach (var (name, use) in notes.Logs)
        {
            var at = $"logs.{name}";
            if (BuildOf(scenario, use, standard, at, log) is { } build)
                Uses(scenario, build, use.Devices, use.Others, at, log);
            foreach (var (column, _) in new[] { ("time", use.Columns.Time ?? (use.Units.Time is null ? "" : null)),
                ("voltage", use.Columns.Voltage ?? (use.Units.Voltage is null ? "" : null)),
                ("current", use.Columns.Current ?? (use.Units.Current is null ? "" : null)) }.Where(item => item.Item2 is null))
                log.Error($"{at}.units.{column}", "A unit is given, but not the name of its column.",
                    $"\"columns: {{{column}: NAME}}\" beside it");
        }
        OneBattery(notes, scenario, standard, planned, log);
        Tests(notes, scenario, scenario.Builds[standard], log);
    }

    private static void Note(Scenario scenario, WrittenNote note, string standard, string at, ReadLog log)
    {
        if (note.Lasted is null == note.StillRunningAfter is null && !log.HasErrorIn($"{at}.lasted")
            && !log.HasErrorIn($"{at}.still-running-after"))
            log.Error(at, note.Lasted is null ? "How long it lasted is missing." : "It can't have ended and still be running.",
                "one of \"lasted: 4 h 10 min\" and \"still-running-after: 3 h\"");
        if (note.Shown is not null && note.StillRunningAfter is null)
            log.Error($"{at}.shown", "A charge that was shown says something only where the rig was still running.",
                "\"still-running-after: 3 h\" beside it");
        var ways = (note.Devices.Count > 0 || note.Others is not null ? 1 : 0) + (note.Stretches.Count > 0 ? 1 : 0)
            + (note.AsPlanned is not null ? 1 : 0);
        if (ways != 1 && !log.HasErrorIn($"{at}.devices") && !log.HasErrorIn($"{at}.stretches"))
            log.Error(at, ways == 0 ? "What ran is missing." : "What ran is said in more than one way.", WhatRan);
        if (BuildOf(scenario, note, standard, at, log) is not { } build)
            return;
        if (note.AsPlanned is { } day && !scenario.Days.ContainsKey(day))
            log.Error($"{at}.as-planned", $"The scenario has no day \"{day}\".", string.Join(", ", scenario.Days.Keys),
                log.Nearest(day, scenario.Days.Keys));
        if (note.Stretches.Count == 0)
            Uses(scenario, build, note.Devices, note.Others, at, log);
        for (var i = 0; i < note.Stretches.Count; i++)
        {
            var path = $"{at}.stretches.{i + 1}";
            Uses(scenario, build, note.Stretches[i].Devices, note.Stretches[i].Others, path, log);
            var isLast = i == note.Stretches.Count - 1;
            if (isLast != note.Stretches[i].Length is null && !log.HasErrorIn($"{path}.length"))
                log.Error($"{path}.length", isLast ? "The last stretch goes on to the end, so it has no length."
                    : "The length is missing.", isLast ? "the field left out" : "such as \"length: 1 h 30 min\"");
        }
        if (note.EndedBy is { } ended and not Build.BatteryFeed)
            EndedBy(scenario, build, ended, $"{at}.ended-by", log);
    }

    private static void EndedBy(Scenario scenario, Build build, string device, string path, ReadLog log)
    {
        if (!build.Devices.ContainsKey(device))
            log.Error(path, $"The build has no device \"{device}\".",
                string.Join(", ", build.Devices.Keys.Prepend(Build.BatteryFeed)),
                log.Nearest(device, build.Devices.Keys.Prepend(Build.BatteryFeed)));
        else if (scenario.PartOf(device)?.Voltage?.Minimum is null)
            log.Error(path, $"The least voltage of \"{device}\" is not known, so nobody can say when it stops.",
                $"\"voltage: {{minimum: 11 V}}\" with its part in the scenario, or \"ended-by: {Build.BatteryFeed}\"");
    }

    private static Build? BuildOf(Scenario scenario, WrittenUse use, string standard, string at, ReadLog log)
    {
        var name = use.Build ?? standard;
        return IsBuild(scenario, name, $"{at}.build", log) ? scenario.Builds[name] : null;
    }

    private static bool IsBuild(Scenario scenario, string name, string path, ReadLog log)
    {
        if (scenario.Builds.ContainsKey(name))
            return true;
        log.Error(path, $"The scenario has no build \"{name}\".", string.Join(", ", scenario.Builds.Keys),
            log.Nearest(name, scenario.Builds.Keys));
        return false;
    }

    private static void Uses(Scenario scenario, Build build, OrderedMap<DeviceUse> devices, DeviceUse? others, string at,
        ReadLog log)
    {
        foreach (var name in devices.Keys.Where(name => !build.Devices.ContainsKey(name)))
            log.Error($"{at}.devices.{name}", $"The build has no device \"{name}\".", string.Join(", ", build.Devices.Keys),
                log.Nearest(name, build.Devices.Keys));
        foreach (var (name, device) in build.Devices)
        {
            var use = devices.TryGetValue(name, out var own) ? own : others;
            var draw = (scenario.PartOf(name)?.Power ?? new PowerDraw()).With(device.Power);
            var missing = use is null ? null : use.Record.Percent > 0 && draw.Record is null ? "record"
                : use.Standby.Percent > 0 && draw.Standby is null ? "standby" : null;
            if (missing is not null)
                log.Error($"{at}.devices.{name}", $"What \"{name}\" draws in the state {missing} is not known.",
                    $"\"power: {{{missing}: 8 W}}\" with its part or its place in the build of the scenario");
        }
    }

    // Notes of two batteries would be fitted to one that is neither.
    private static void OneBattery(FieldNotes notes, Scenario scenario, string standard, string? planned, ReadLog log)
    {
        var battery = scenario.Builds[standard].Battery.Item;
        foreach (var (at, name) in notes.Notes.Select(note => ($"notes.{note.Key}.build", note.Value.Build))
            .Concat(notes.Logs.Select(use => ($"logs.{use.Key}.build", use.Value.Build))).Append(("build", planned)))
        {
            if (name is not null && scenario.Builds.TryGetValue(name, out var build) && build.Battery.Item != battery)
                log.Error(at, $"The build \"{name}\" runs on the battery \"{build.Battery.Item}\", the others on "
                    + $"\"{battery}\".", "notes of one battery in one file");
        }
    }

    private static void Tests(FieldNotes notes, Scenario scenario, Build build, ReadLog log)
    {
        foreach (var (name, read) in notes.Meters)
        {
            var path = $"meters.{name}";
            if (!build.Devices.TryGetValue(name, out var device))
                log.Error(path, $"The build has no device \"{name}\".", string.Join(", ", build.Devices.Keys),
                    log.Nearest(name, build.Devices.Keys));
            else if (read is { Record: null, Standby: null } || read is { Load: not null } or { Duty: not null }
                or { Peak: not null } or { StartUp: not null } or { Off: not null })
                log.Error(path, "A meter's reading says what the device draws in record, in standby or in both.",
                    "such as \"{record: 18.2 W, standby: 11 W}\"");
            else if (MeterReading.Of(read, (scenario.PartOf(name)?.Power ?? new PowerDraw()).With(device.Power)) is null)
                log.Error(path, "The part says nothing, or nothing above 0 W, in the state that was read.",
                    "a state whose draw the part gives");
        }
        if (notes.Capacity is { } capacity && capacity.Charge is null == capacity.Energy is null)
            log.Error("capacity-test", "A capacity test gave a charge or an energy.", "one of \"charge: 11.6 Ah\" and "
                + "\"energy: 165 Wh\"");
        for (var i = 0; i < notes.Known.Count; i++)
        {
            if (!build.Devices.ContainsKey(notes.Known[i]))
                log.Error($"known.{i + 1}", $"The build has no device \"{notes.Known[i]}\".",
                    string.Join(", ", build.Devices.Keys), log.Nearest(notes.Known[i], build.Devices.Keys));
        }
    }
}
