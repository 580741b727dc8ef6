using RigScenarios.Builds;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Fits.Notes;

/// <summary>Field notes that were read and checked, with the scenario that they name.</summary>
/// <param name="Notes">The notes.</param>
/// <param name="Scenario">The scenario.</param>
/// <param name="ScenarioFile">Its file.</param>
/// <param name="Folder">The folder from which the notes name other files.</param>
public sealed record NotedBattery(FieldNotes Notes, Scenario Scenario, string ScenarioFile, string Folder)
{
    /// <summary>A battery of which nobody has noted anything yet: what is believed of it is all there is.</summary>
    /// <param name="scenarioFile">The scenario's file.</param>
    /// <param name="build">The build; null for the scenario's first.</param>
    /// <exception cref="ScenarioProblemsException">The file can't be used, or there is no such build.</exception>
    public static NotedBattery WithoutNotes(string scenarioFile, string? build = null)
    {
        var scenario = Files.ScenarioFile.Read(scenarioFile);
        if (build is not null && !scenario.Builds.ContainsKey(build))
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, scenarioFile, TextPlace.None, "builds",
                $"The scenario has no build \"{build}\".", string.Join(", ", scenario.Builds.Keys),
                NearestName.To(build, scenario.Builds.Keys))]);
        return new NotedBattery(new FieldNotes { Build = build }, scenario, scenarioFile,
            Path.GetDirectoryName(scenarioFile) ?? "");
    }

    /// <summary>The build of notes and logs that name none.</summary>
    public string Build => Notes.Build ?? Scenario.Builds.Keys.First();

    /// <summary>The build that is planned; null for the one of the notes.</summary>
    public string? PlannedBuild { get; init; }

    /// <summary>The build of which the days are asked.</summary>
    public string Planned => PlannedBuild ?? Build;

    /// <summary>The files that the logs are read from.</summary>
    public IEnumerable<string> LogFiles => Notes.Logs.Values.Select(log => Path.Combine(Folder, log.File));

    /// <summary>The build of a note or log.</summary>
    /// <param name="use">The note or log.</param>
    public string BuildOf(WrittenUse use)
    {
        ArgumentNullException.ThrowIfNull(use);
        return use.Build ?? Build;
    }

    /// <summary>The air of a note or log, and whether nobody gave it there or for the whole file.</summary>
    /// <param name="use">The note or log.</param>
    public (Temperature Air, bool Assumed) AirOf(WrittenUse use)
    {
        ArgumentNullException.ThrowIfNull(use);
        return (use.Air ?? Notes.Air) is { } given ? (given, false)
            : (AirOfPlan(use) ?? Scenario.Conditions.Ambient ?? Temperature.FromDegreesCelsius(20), true);
    }

    private Temperature? AirOfPlan(WrittenUse use)
    {
        if (use is not WrittenNote { AsPlanned: { } planned } || !Scenario.Days.TryGetValue(planned, out var day))
            return null;
        // One number for a course: the mean of its points is as near as a note comes.
        return day.AmbientPoints.Count > 0
            ? Temperature.FromKelvins(day.AmbientPoints.Average(point => point.Temperature.Kelvins)) : day.Ambient;
    }

    /// <summary>A build with its parts as the notes take them: without the scale of an earlier fit, and with a draw that a meter
    /// has shown put right where one scale stands for all others.</summary>
    /// <param name="build">Its short name.</param>
    internal PoweredBuild Powered(string build)
    {
        var chosen = Scenario.Builds[build];
        var powered = PoweredBuild.From(chosen with { Battery = chosen.Battery with { LoadScale = null } }, Scenario.PartOf);
        return Notes.Scales == LoadScales.Each ? powered : powered with
        {
            Devices = new(powered.Devices.Select(device => KeyValuePair.Create(device.Key,
                Notes.Meters.TryGetValue(device.Key, out var read) && MeterReading.Of(read, device.Value.Draw) is { } factor
                    ? device.Value with { Draw = device.Value.Draw.Times(factor) } : device.Value))),
        };
    }
}
