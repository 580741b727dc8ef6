using System.Diagnostics;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Answers;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Page.Requests;
using RigScenarios.Page.OwnFiles;
using RigScenarios.Page.Runs;
using RigScenarios.Page.Settings;
using RigScenarios.Page.TakeAlong;
using RigScenarios.Scenarios;
using RigScenarios.Search.Rigs;
using UnitsNet;

namespace RigScenarios.Page.Rigs;

/// <summary>The guided form of one's own rig: what it asks, what is given amounts to, and how it becomes a file.</summary>
internal sealed class RigEndpoints(RigFiles files, ReadScenarios scenarios, PageSockets pages, PageOptions options) : IDisposable
{
    private readonly RigParts parts = new(files.PartsFolder);
    private readonly DayCache days = new();
    private readonly RigLogs logs = new(options.Limits);

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/rig/questions", context => PageJson.WriteAsync(context, RigQuestionsJson.Of(parts.Read())));
        routes.MapGet("/api/rig/given", GivenAsync);
        routes.MapPost("/api/rig/edit", EditAsync);
        routes.MapGet("/api/rig/live", LiveAsync);
        routes.MapPost("/api/rig/log", LogAsync);
        routes.MapPost("/api/rig/save", SaveAsync);
        routes.MapPost("/api/rig/take-along", TakeAlongAsync);
    }

    /// <inheritdoc/>
    public void Dispose() => logs.Dispose();

    private Task GivenAsync(HttpContext context)
    {
        var query = context.Request.Query;
        var file = query["file"] is [{ Length: > 0 } only]
            ? only : throw new ProblemException(StatusCodes.Status400BadRequest,
            [new Problem("One file is to be named.", "file", "such as own/my-rig.yaml")]);
        var place = Place(file, query["build"].FirstOrDefault(), query["day"].FirstOrDefault());
        var before = place.Frame.Before!;
        var given = GivenRig.Of(before, place.Frame);
        return PageJson.WriteAsync(context, new
        {
            given = GivenJson.Write(given.Tree),
            view = RigQuestionsJson.View(given),
            builds = Titles.Builds(before),
            days = Titles.Days(before),
            build = place.Frame.Build,
            day = place.Frame.Day,
            version = place.File!.Version,
        });
    }

    private async Task EditAsync(HttpContext context)
    {
        var json = await RequestJson.ReadAsync(context, options.Limits.LargestJsonBytes);
        if (!json.TryGetProperty("edit", out var edit) || edit.ValueKind != JsonValueKind.Object)
            throw new ProblemException(StatusCodes.Status400BadRequest,
                [new Problem("The change is missing, or is no group of fields.", "edit")]);
        var edited = RigEdits.Apply(Given(json, Place(json)), edit);
        await PageJson.WriteAsync(context, new { given = GivenJson.Write(edited.Given.Tree),
            view = RigQuestionsJson.View(edited.Given), thing = edited.Thing });
    }

    private Task LiveAsync(HttpContext context) => pages.ServeAsync(context, options.Limits.LargestJsonBytes, null, _ =>
        Task.FromResult<IReadOnlyDictionary<string, Func<RunWork>>>(new Dictionary<string, Func<RunWork>>
        {
            ["now"] = () => Answer, ["best"] = () => Best,
        }));

    private Task Answer(JsonElement json, RunReply reply, CancellationToken cancellation)
    {
        var clock = Stopwatch.StartNew();
        var place = Place(json);
        var given = Given(json, place);
        var key = DayCache.KeyOf(given, place, parts.Mark);
        var answer = RigSoFar.Of(given, days.Find(key), cancellation);
        var isWhole = answer.Scenario is not null;
        // Whoever drags wants the picture at once; the text only where somebody looks at it.
        var text = isWhole && !RequestJson.Flag(json, "brief") ? TextFor(place, answer.Scenario!) : null;
        // What it rests on and what would make it work take many runs, so they come after the answer, the sooner done first. The
        // next change stops them.
        var seeks = isWhole && answer.Answer is { Verdict: Verdict.Close or Verdict.Fails };
        reply.Send("answer", writer => RigAnswerJson.Write(writer, answer, RigQuestionsJson.View(given),
            now => days.Charts(key, now), seeks, text));
        if (answer.Answer is { } first)
        {
            var effects = LeadingAssumptions.Find(first, cancellation: cancellation);
            reply.Send("rests-on", writer => RigAnswerJson.Write(writer, effects));
        }
        if (seeks)
        {
            var sets = WouldWork.Find(answer.Answer!, null, new RunProgress(reply, ""), cancellation);
            reply.Send("would-work", writer => RigAnswerJson.Write(writer, sets));
        }
        reply.End("done", writer => writer.WriteNumber("milliseconds", Math.Round(clock.Elapsed.TotalMilliseconds, 1)));
        return Task.CompletedTask;
    }

    /// <summary>The best rigs for the money that is given, in the place of this one; of a search that is stopped those that it
    /// has found so far.</summary>
    private Task Best(JsonElement json, RunReply reply, CancellationToken cancellation)
    {
        var time = options.Limits.SearchTime;
        var question = RigForMoney.Of(Given(json, Place(json)));
        var how = new RigSearchOptions(Duration.FromSeconds(time.TotalSeconds)) { Enough = cancellation };
        var result = RigSearch.Find(question, how, new SearchTime(reply, time), CancellationToken.None);
        if (!result.IsStopped || result.Picks.Count > 0)
            reply.Keep("best-rig", writer => BestRigJson.Write(writer, result));
        cancellation.ThrowIfCancellationRequested();
        reply.End("done", _ => { });
        return Task.CompletedTask;
    }

    private async Task LogAsync(HttpContext context)
    {
        var sent = await SentLog.ReadAsync(context, options.Limits);
        var place = Place(sent.What);
        await PageJson.WriteAsync(context, await logs.AnswerAsync(sent, RigSoFar.WholeOf(Given(sent.What, place)),
            place.Frame.Build,
            context.RequestAborted));
    }

    private async Task SaveAsync(HttpContext context)
    {
        var json = await RequestJson.ReadAsync(context, options.Limits.LargestJsonBytes);
        var place = Place(json);
        var text = TextFor(place, RigSoFar.WholeOf(Given(json, place)));
        var saved = files.Write(RequestJson.NeededText(json, "name"), text, RequestJson.Text(json, "version"),
            RequestJson.Flag(json, "replace"));
        await PageJson.WriteAsync(context, new { id = saved.Id, build = place.Frame.Build, day = place.Frame.Day,
            version = saved.Version, command = Command(saved, place) });
    }

    private async Task TakeAlongAsync(HttpContext context)
    {
        var json = await RequestJson.ReadAsync(context, options.Limits.LargestJsonBytes);
        var kind = SheetReply.Kind(RequestJson.Text(json, "sheet"));
        var rig = RigSoFar.Of(Given(json, Place(json)), null, context.RequestAborted);
        await SheetReply.WriteAsync(context, rig.Answer, kind, RequestJson.Flag(json, "whole"));
    }

    private static GivenRig Given(JsonElement json, RigPlace place) =>
        json.TryGetProperty("given", out var given) && given.ValueKind == JsonValueKind.Object
            ? GivenRig.Read(GivenJson.Read(given), place.Frame)
            : throw new ProblemException(StatusCodes.Status400BadRequest,
                [new Problem("What is given of the rig is missing, or is no group of fields.", "given")]);

    private RigPlace Place(JsonElement json) =>
        Place(RequestJson.Text(json, "file"), RequestJson.Text(json, "build"), RequestJson.Text(json, "day"));

    /// <summary>The build and the day of a file, the first of each where none is named; or those of a new file.</summary>
    private RigPlace Place(string? id, string? build, string? day)
    {
        if (string.IsNullOrEmpty(id))
            return new RigPlace(null, RigFrame.New(parts.Read()) with { Today = Today });
        var file = files.Read(id);
        var scenario = scenarios.Read(file, "The form");
        return new RigPlace(file, new RigFrame(scenario, parts.Read(),
            Named(build, scenario.Builds.Keys, "build", RigFrame.NewBuild),
            Named(day, scenario.Days.Keys, "day", RigFrame.NewDay)) { Today = Today });
    }

    private static DateOnly Today => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date);

    private static string Named(string? name, IEnumerable<string> names, string what, string ofNew) =>
        string.IsNullOrEmpty(name) ? names.FirstOrDefault(ofNew)
        : names.Contains(name, StringComparer.Ordinal) ? name
        : throw new ProblemException(StatusCodes.Status404NotFound,
            [new Problem($"The scenario has no {what} of that name.", what, string.Join(", ", names),
            NearestName.To(name, names))]);

    /// <summary>The text of the file: an existing one keeps its comments and whatever the form doesn't show.</summary>
    private string TextFor(RigPlace place, Scenario after)
    {
        if (place is not { File: { } file, Frame.Before: { } before })
            return ScenarioFile.Text(after);
        // A sample becomes a file in another folder: the parts that it names are the same ones, seen from there.
        var from = Path.GetDirectoryName(file.Path)!;
        if (from != files.OwnFolder)
            after = after with { PartsFrom =
                [.. after.PartsFrom.Select(name => PathFrom.Of(files.OwnFolder, Path.GetFullPath(name, from)))] };
        return ScenarioFile.Edited(file.Text, before, after);
    }

    private string Command(RigText saved, RigPlace place)
    {
        var path = PathFrom.Of(options.CommandFolder ?? files.OwnFolder, saved.Path);
        var which = place.Frame is { Before: { } before } frame && (before.Builds.Count > 1 || before.Days.Count > 1)
            ? $" --build {frame.Build} --day {frame.Day}" : "";
        return $"rigscenarios run {(path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path)}{which}";
    }
}
