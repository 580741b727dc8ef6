using System.Text.Json;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.OwnFiles;
using RigScenarios.Requests.Settings;
using RigScenarios.Scenarios;

namespace RigScenarios.Requests.Rigs;

/// <summary>Where the rig of a form stands: a build and a day of a file or of a new one; and the file that it becomes.</summary>
internal sealed class RigPlaces(RigFiles files, ReadScenarios scenarios, RigParts parts, RequestOptions options)
{
    /// <summary>Changes whenever one of the parts files does.</summary>
    public string PartsMark => parts.Mark;

    /// <summary>What is given of the rig, at its place.</summary>
    /// <exception cref="ProblemException">Nothing is given, or the place isn't there.</exception>
    public static GivenRig Given(JsonElement json, RigPlace place) =>
        json.TryGetProperty("given", out var given) && given.ValueKind == JsonValueKind.Object
            ? GivenRig.Read(GivenJson.Read(given), place.Frame)
            : throw new ProblemException(ReplyStatus.BadRequest,
                [new Problem("What is given of the rig is missing, or is no group of fields.", "given")]);

    /// <summary>The place that a request names: file, build and day.</summary>
    /// <exception cref="ProblemException">It isn't there.</exception>
    public RigPlace Of(JsonElement json) =>
        Of(RequestJson.Text(json, "file"), RequestJson.Text(json, "build"), RequestJson.Text(json, "day"));

    /// <summary>The build and the day of a file, the first of each where none is named; or those of a new file, which are named
    /// as its maker likes: a rig that came without its file keeps the names that it had there.</summary>
    /// <exception cref="ProblemException">They aren't there.</exception>
    public RigPlace Of(string? id, string? build, string? day)
    {
        if (string.IsNullOrEmpty(id))
            return new RigPlace(null, RigFrame.New(parts.Read(), build, day) with { Today = Today });
        var file = files.Read(id);
        var scenario = scenarios.Read(file, "The form");
        return new RigPlace(file, new RigFrame(scenario, parts.Read(),
            Named(build, scenario.Builds.Keys, "build", RigFrame.NewBuild),
            Named(day, scenario.Days.Keys, "day", RigFrame.NewDay)) { Today = Today });
    }

    /// <summary>The text of the file: an existing one keeps its comments and whatever the form doesn't show. Where files lie in
    /// no folder, it describes its parts itself.</summary>
    public string TextFor(RigPlace place, Scenario after)
    {
        if (!options.Abilities.Folder)
            after = after.SelfContained();
        if (place is not { File: { } file, Frame.Before: { } before })
            return ScenarioFile.Text(after);
        // A sample becomes a file in another folder: the parts that it names are the same ones, seen from there.
        var from = Path.GetDirectoryName(file.Path)!;
        if (from != files.OwnFolder)
            after = after with { PartsFrom =
                [.. after.PartsFrom.Select(name => PathFrom.Of(files.OwnFolder, Path.GetFullPath(name, from)))] };
        return ScenarioFile.Edited(file.Text, before, after);
    }

    /// <summary>The command that answers the same as the form.</summary>
    public string Command(RigText saved, RigPlace place)
    {
        var path = PathFrom.Of(options.CommandFolder ?? files.OwnFolder, saved.Path);
        var which = place.Frame is { Before: { } before } frame && (before.Builds.Count > 1 || before.Days.Count > 1)
            ? $" --build {frame.Build} --day {frame.Day}" : "";
        return $"rigscenarios run {(path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path)}{which}";
    }

    private DateOnly Today => DateOnly.FromDateTime(options.Clock.GetLocalNow().Date);

    private static string Named(string? name, IEnumerable<string> names, string what, string ofNew) =>
        string.IsNullOrEmpty(name) ? names.FirstOrDefault(ofNew)
        : names.Contains(name, StringComparer.Ordinal) ? name
        : throw new ProblemException(ReplyStatus.NotFound,
            [new Problem($"The scenario has no {what} of that name.", what, string.Join(", ", names),
            NearestName.To(name, names))]);
}
