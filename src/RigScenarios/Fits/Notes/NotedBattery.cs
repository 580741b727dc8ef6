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
    /// <summary>The build of notes and logs that name none.</summary>
    public string Build => Notes.Build ?? Scenario.Builds.Keys.First();

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

    /// <summary>A build with its parts.</summary>
    /// <param name="build">Its short name.</param>
    internal PoweredBuild Powered(string build) => PoweredBuild.From(Scenario.Builds[build], Scenario.PartOf);
}
