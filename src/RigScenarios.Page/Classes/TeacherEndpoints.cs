using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Answers;
using RigScenarios.Answers.Classes;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Page.Address;
using RigScenarios.Requests.OwnFiles;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Settings;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Classes;

/// <summary>The teacher's page: tasks in the folder of own files, what can be chosen for one, its sheets, and the
/// lesson.</summary>
internal sealed class TeacherEndpoints(TaskFiles tasks, LessonRooms rooms, RigFiles files, ReadScenarios scenarios,
    OwnAddresses addresses, PageLimits limits)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/class/tasks", TasksAsync);
        routes.MapGet("/api/class/places", PlacesAsync);
        routes.MapPost("/api/class/choices", ChoicesAsync);
        routes.MapGet("/api/class/task/{name}", ReadAsync);
        routes.MapPut("/api/class/task/{name}", SaveAsync);
        routes.MapPost("/api/class/sheet", SheetAsync);
        routes.MapGet("/api/class/lesson/{name}", LessonAsync);
        routes.MapPost("/api/class/lesson/{name}", TellAsync);
    }

    private static string Name(HttpContext context) => (string)context.GetRouteValue("name")!;

    private Task TasksAsync(HttpContext context) => JsonReply.WriteAsync(context, new
    {
        tasks = tasks.All().Select(task => new { name = task.Name, title = task.Task?.Task.Title ?? task.Name,
            isRead = task.Task is not null }),
        folder = files.ShownFolder,
    });

    /// <summary>The builds and days of a file.</summary>
    private Task PlacesAsync(HttpContext context)
    {
        var scenario = scenarios.Read(files.Read(context.Request.Query["file"].ToString()), "A task");
        return JsonReply.WriteAsync(context, new { title = scenario.Title, builds = Titles.Builds(scenario),
            days = Titles.Days(scenario) });
    }

    private async Task ChoicesAsync(HttpContext context)
    {
        var json = await RequestBody.ReadAsync(context, limits.LargestJsonBytes);
        // Only what the rig has is asked for here: what the task says of it may be about another rig still.
        var bare = TaskJson.Read(json) with { Controls = [], Estimates = [], OwnQuestions = [], Title = "-" };
        _ = TaskFiles.Checked(bare with { Code = null });
        var lesson = await rooms.TryAsync(bare, context.RequestAborted);
        await JsonReply.WriteAsync(context, new
        {
            controls = lesson.AllControls.Select(LessonJson.Control),
            questions = AnswerSentences.Questions(lesson.Answer).Select(line => new { kind = TaskJson.Word(line.Kind),
                title = line.Title, words = line.Words }),
            headline = AnswerSentences.Headline(lesson.Answer),
            estimates = lesson.Exercise is null ? ClassLesson.Choices(lesson.Answer).Select(asked => new { name = asked.Name,
                kind = asked.Kind is { } kind ? TaskJson.Word(kind) : null, question = asked.Question, unit = asked.Unit }) : [],
            findings = lesson.Exercise is null ? [] : lesson.Asked.Select(asked => asked.Question),
            told = lesson.Exercise is { } exercise ? Answers.Exercises.ExerciseSentences.Task(exercise) : [],
        });
    }

    private Task ReadAsync(HttpContext context)
    {
        var task = tasks.Read(Name(context));
        return JsonReply.WriteAsync(context, Kept(task));
    }

    private async Task SaveAsync(HttpContext context)
    {
        var json = await RequestBody.ReadAsync(context, limits.LargestJsonBytes);
        var task = TaskJson.Read(json);
        if (task.Title.Length == 0)
            throw new ProblemException(StatusCodes.Status400BadRequest, [new Problem("Give the task a title first.", "title")]);
        _ = TaskFiles.Checked(task);
        // Nothing is kept that a class could not open.
        await rooms.TryAsync(task, context.RequestAborted);
        await JsonReply.WriteAsync(context, Kept(tasks.Write(Name(context), task, RequestJson.Text(json, "version"),
            RequestJson.Flag(json, "replace"))));
    }

    private object Kept(KeptTask kept) => new
    {
        name = kept.Name,
        version = kept.Version,
        task = TaskJson.Of(kept.Task),
        addresses = kept.Task.Code is { } code
            ? Hosts.Select(host => $"http://{host}:{addresses.Port}/lesson/{code}").ToArray() : [],
        path = kept.Task.Code is { } own ? $"/lesson/{own}" : null,
        isOnNetwork = addresses.Network.Count > 0,
    };

    private IEnumerable<string> Hosts => addresses.Network.Count > 0 ? addresses.Network : ["127.0.0.1"];

    private async Task SheetAsync(HttpContext context)
    {
        var json = await RequestBody.ReadAsync(context, limits.LargestJsonBytes);
        var isSolution = RequestJson.Flag(json, "solution");
        var task = TaskJson.Read(json);
        _ = TaskFiles.Checked(task.Title.Length > 0 ? task : task with { Title = "-" });
        var lesson = await rooms.TryAsync(task, context.RequestAborted);
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.ContentDisposition =
            $"attachment; filename=\"{(isSolution ? "solution" : "task")}.html\"";
        await context.Response.WriteAsync(
            SheetPage.Of(isSolution ? ClassSheets.Solved(lesson) : ClassSheets.Blank(lesson), RequestJson.Flag(json, "whole")),
            context.RequestAborted);
    }

    private async Task LessonAsync(HttpContext context)
    {
        var task = tasks.Read(Name(context));
        var lesson = await rooms.ReadyAsync(task);
        await WriteAsync(context, task, lesson);
    }

    private async Task TellAsync(HttpContext context)
    {
        var json = await RequestBody.ReadAsync(context, limits.LargestJsonBytes);
        var task = tasks.Read(Name(context));
        var room = rooms.Of(task);
        if (RequestJson.Flag(json, "clear"))
            room.Clear();
        else
            room.IsRevealed = RequestJson.Flag(json, "revealed");
        await WriteAsync(context, task, await rooms.ReadyAsync(task));
    }

    private async Task WriteAsync(HttpContext context, KeptTask task, ClassLesson lesson)
    {
        var room = rooms.Of(task);
        await JsonReply.WriteAsync(context, new
        {
            isRevealed = room.IsRevealed,
            headline = AnswerSentences.Headline(lesson.Answer),
            asked = ClassView.Answers(lesson).Select(told => new { name = told.Asked.Name, question = told.Asked.Question,
                unit = told.Asked.Unit, answer = told.Answer }),
            handIns = room.HandIns.Select(one => new { name = one.Name, at = one.At.ToString("HH:mm", null),
                estimates = one.Estimates, changes = one.Changes, outcome = one.Outcome }),
        });
    }
}
