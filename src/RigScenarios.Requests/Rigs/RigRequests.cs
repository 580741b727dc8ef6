using System.Text.Json;
using RigScenarios.Drafts;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.OwnFiles;
using RigScenarios.Requests.TakeAlong;

namespace RigScenarios.Requests.Rigs;

/// <summary>The guided form of one's own rig: what it asks, what is given amounts to, and how it becomes a file.</summary>
internal sealed class RigRequests(RigFiles files, RigPlaces places, RigParts parts, RigLogs logs)
{
    /// <summary>What the form asks, what there is to choose from, and an empty rig.</summary>
    public Action<Utf8JsonWriter> Questions()
    {
        var all = parts.Read();
        return json => RigQuestionsJson.Write(json, all);
    }

    /// <summary>What a file gives, for the form.</summary>
    /// <exception cref="ProblemException">There is no such file, build or day, or it has errors.</exception>
    public Action<Utf8JsonWriter> Given(JsonElement json)
    {
        var file = RequestJson.Text(json, "file") is { Length: > 0 } only ? only
            : throw new ProblemException(ReplyStatus.BadRequest,
            [new Problem("One file is to be named.", "file", "such as own/my-rig.yaml")]);
        var place = places.Of(file, RequestJson.Text(json, "build"), RequestJson.Text(json, "day"));
        var before = place.Frame.Before!;
        var given = GivenRig.Of(before, place.Frame);
        return writer =>
        {
            RigQuestionsJson.WriteShown(writer, given);
            writer.WriteObjects("builds", Titles.Builds(before), NamedTitle.Write);
            writer.WriteObjects("days", Titles.Days(before), NamedTitle.Write);
            writer.WriteString("build", place.Frame.Build);
            writer.WriteString("day", place.Frame.Day);
            writer.WriteString("version", place.File!.Version);
        };
    }

    /// <summary>The rig without the file that it was opened from, so that it can go anywhere; or one that came so, as the form
    /// shows it.</summary>
    /// <exception cref="ProblemException">Nothing is given, or its file isn't there.</exception>
    public Action<Utf8JsonWriter> Alone(JsonElement json)
    {
        var place = places.Of(json);
        var alone = RigPlaces.Given(json, place).Alone();
        // One that came from anybody may name a build that it doesn't have.
        var frame = alone.Frame with
        {
            Build = alone.Scenario.Builds.ContainsKey(alone.Frame.Build) ? alone.Frame.Build
                : alone.Scenario.Builds.Keys.FirstOrDefault(alone.Frame.Build),
            Day = alone.Scenario.Days.ContainsKey(alone.Frame.Day) ? alone.Frame.Day
                : alone.Scenario.Days.Keys.FirstOrDefault(alone.Frame.Day),
        };
        var shown = GivenRig.Read(alone.Tree, frame);
        return writer =>
        {
            RigQuestionsJson.WriteShown(writer, shown);
            writer.WriteString("build", frame.Build);
            writer.WriteString("day", frame.Day);
        };
    }

    /// <summary>What is given after an edit.</summary>
    /// <exception cref="ProblemException">The edit can't be read.</exception>
    public Action<Utf8JsonWriter> Edit(JsonElement json)
    {
        if (!json.TryGetProperty("edit", out var edit) || edit.ValueKind != JsonValueKind.Object)
            throw new ProblemException(ReplyStatus.BadRequest,
                [new Problem("The change is missing, or is no group of fields.", "edit")]);
        var edited = RigEdits.Apply(RigPlaces.Given(json, places.Of(json)), edit);
        return writer =>
        {
            RigQuestionsJson.WriteShown(writer, edited.Given);
            writer.WriteString("thing", edited.Thing);
        };
    }

    /// <summary>What a power log says of the battery.</summary>
    /// <exception cref="ProblemException">It can't be used.</exception>
    public Task<object> LogAsync(SentLog sent, CancellationToken cancellation)
    {
        var place = places.Of(sent.What);
        return logs.AnswerAsync(sent, RigSoFar.WholeOf(RigPlaces.Given(sent.What, place)), place.Frame.Build, cancellation);
    }

    /// <summary>Saves the rig as a file.</summary>
    /// <exception cref="ProblemException">It can't be saved under that name.</exception>
    public object Save(JsonElement json)
    {
        var place = places.Of(json);
        var text = places.TextFor(place, RigSoFar.WholeOf(RigPlaces.Given(json, place)));
        var saved = files.Write(RequestJson.NeededText(json, "name"), text, RequestJson.Text(json, "version"),
            RequestJson.Flag(json, "replace"));
        return new { id = saved.Id, build = place.Frame.Build, day = place.Frame.Day,
            version = saved.Version, command = places.Command(saved, place) };
    }

    /// <summary>The sheet to take along.</summary>
    /// <exception cref="ProblemException">There is no such sheet, or no answer yet.</exception>
    public string Sheet(JsonElement json, CancellationToken cancellation)
    {
        var kind = SheetReply.Kind(RequestJson.Text(json, "sheet"));
        var rig = RigSoFar.Of(RigPlaces.Given(json, places.Of(json)), null, cancellation);
        return SheetReply.Page(rig.Answer, kind, RequestJson.Flag(json, "whole"));
    }
}
