using UnitsNet;

namespace RigScenarios.Fits.Notes;

/// <summary>What is taken where field notes say nothing.</summary>
public enum NoteAssumptionKind
{
    /// <summary>The air is that of the scenario, or 20 °C where that says nothing either.</summary>
    Air,

    /// <summary>The battery began as warm as the air.</summary>
    StartTemperature,

    /// <summary>The battery began full.</summary>
    Full,

    /// <summary>Whichever of battery and essential devices stops first ended it.</summary>
    End,

    /// <summary>Devices that are not named were off.</summary>
    Off,

    /// <summary>The time is good to 3 min.</summary>
    Clock,

    /// <summary>What the battery is known for in the scenario comes from an earlier fit, and is put aside.</summary>
    EarlierFit,
}

/// <summary>One thing that is taken, with the notes and logs that it is taken for.</summary>
/// <param name="Kind">What.</param>
/// <param name="Names">The notes and logs.</param>
/// <param name="Air">The air, where it is that; of the first of them.</param>
public sealed record NoteAssumption(NoteAssumptionKind Kind, IReadOnlyList<string> Names, Temperature? Air = null)
{
    /// <summary>All that is taken for these notes, each kind once.</summary>
    internal static IReadOnlyList<NoteAssumption> In(NotedBattery noted)
    {
        List<(string Name, WrittenUse Use)> all = [.. noted.Notes.Notes.Select(note => (note.Key, (WrittenUse)note.Value)),
            .. noted.Notes.Logs.Select(log => (log.Key, (WrittenUse)log.Value))];
        var found = new List<NoteAssumption>();
        foreach (var group in all.Where(item => noted.AirOf(item.Use).Assumed)
            .GroupBy(item => noted.AirOf(item.Use).Air.DegreesCelsius))
            found.Add(new(NoteAssumptionKind.Air, [.. group.Select(item => item.Name)],
                Temperature.FromDegreesCelsius(group.Key)));
        Add(NoteAssumptionKind.StartTemperature, item => item.Use.StartTemperature is null);
        Add(NoteAssumptionKind.Full, item => item.Use.Charge is null);
        Add(NoteAssumptionKind.End, item => item.Use is WrittenNote { EndedBy: null, Lasted: not null });
        Add(NoteAssumptionKind.Off, item => LeavesDevices(noted, item.Use));
        Add(NoteAssumptionKind.Clock, item => item.Use is WrittenNote { ClockWithin: null });
        if (noted.Scenario.Builds[noted.Build].Battery.RuntimeKnownTo is not null)
            found.Add(new(NoteAssumptionKind.EarlierFit, []));
        return found;

        void Add(NoteAssumptionKind kind, Func<(string Name, WrittenUse Use), bool> isTaken)
        {
            List<string> names = [.. all.Where(isTaken).Select(item => item.Name)];
            if (names.Count > 0)
                found.Add(new(kind, names));
        }
    }

    private static bool LeavesDevices(NotedBattery noted, WrittenUse use)
    {
        var devices = noted.Scenario.Builds[noted.BuildOf(use)].Devices.Keys;
        if (use is WrittenNote { Stretches: { Count: > 0 } stretches })
            return stretches.Any(stretch => stretch.Others is null && devices.Any(name => !stretch.Devices.ContainsKey(name)));
        return use is not WrittenNote { AsPlanned: not null } && use.Others is null && use.Devices.Count > 0
            && devices.Any(name => !use.Devices.ContainsKey(name));
    }
}
