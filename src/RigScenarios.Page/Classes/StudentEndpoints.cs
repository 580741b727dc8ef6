using System.Buffers;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Answers;
using RigScenarios.Answers.Classes;
using RigScenarios.Answers.Exercises;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Settings;
using RigScenarios.Scenarios;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Classes;

/// <summary>What the page of a class asks: the task, the rig as a student has set it, handing in. Who comes here has the code of
/// one task and nothing else, and is told what that task does not hide.</summary>
internal sealed partial class StudentEndpoints(LessonRooms rooms, PageLimits limits)
{
    private const int LongestName = 60;

    private const int LongestEstimate = 300;

    private const int MostSettings = 200;

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/lesson/{code}/state", StateAsync);
        routes.MapPost("/api/lesson/{code}/view", ViewAsync);
        routes.MapPost("/api/lesson/{code}/hand-in", HandInAsync);
    }

    private static string Code(HttpContext context) => (string)context.GetRouteValue("code")!;

    private Task StateAsync(HttpContext context)
    {
        var (task, room) = rooms.Find(Code(context));
        return JsonReply.WriteAsync(context, new { version = Version(task, room, Student(context.Request.Query["student"])) });
    }

    private async Task ViewAsync(HttpContext context)
    {
        var json = await RequestBody.ReadAsync(context, limits.LargestJsonBytes);
        var (task, room) = rooms.Find(Code(context));
        var student = Student(RequestJson.Text(json, "student")) ?? Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        var lesson = await rooms.ReadyAsync(task);
        var settings = TaskJson.Map(json, "settings", MostSettings);
        // Looked at before the run: who is told more in between asks again.
        var version = Version(task, room, student);
        var isRevealed = IsRevealed(task, room, student);
        var (rig, view) = await rooms.RunAsync(cancellation =>
        {
            var answer = lesson.AnswerTo(settings, cancellation);
            return (answer, ClassView.Of(lesson, answer, isRevealed, cancellation));
        }, context.RequestAborted);
        var buffer = new ArrayBufferWriter<byte>(16 * 1024);
        using (var writer = new Utf8JsonWriter(buffer))
        {
            writer.WriteStartObject();
            writer.WriteString("student", student);
            writer.WriteString("version", version);
            writer.WriteBoolean("isIn", room.HasFrom(student));
            writer.WriteBoolean("mayHandIn", !isRevealed);
            LessonJson.Write(writer, lesson, rig, view);
            writer.WriteEndObject();
        }
        context.Response.ContentType = "application/json; charset=utf-8";
        await context.Response.Body.WriteAsync(buffer.WrittenMemory, context.RequestAborted);
    }

    private async Task HandInAsync(HttpContext context)
    {
        var json = await RequestBody.ReadAsync(context, limits.LargestJsonBytes);
        var (task, room) = rooms.Find(Code(context));
        var student = Student(RequestJson.Text(json, "student"))
            ?? throw new ProblemException(StatusCodes.Status400BadRequest, "Load this page again before you hand in.");
        var lesson = await rooms.ReadyAsync(task);
        if (IsRevealed(task, room, student))
            throw new ProblemException(StatusCodes.Status409Conflict,
                "The answer has been shown here, so nothing can be handed in any more.");
        var name = Line(RequestJson.Text(json, "name"), LongestName, "name")
            ?? throw new ProblemException(StatusCodes.Status400BadRequest, [new Problem("Write your name first.", "name")]);
        var estimates = Written(lesson, TaskJson.Map(json, "estimates", MostSettings));
        var settings = TaskJson.Map(json, "settings", MostSettings);
        var outcome = await rooms.RunAsync(cancellation => Outcome(lesson, settings, cancellation), context.RequestAborted);
        var at = TimeOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        if (!room.Take(new HandIn(student, name, at, estimates, lesson.Changes(settings), outcome)))
            throw new ProblemException(StatusCodes.Status503ServiceUnavailable,
                $"{LessonRoom.Most} have handed in, and there is no room for more. Tell your teacher.");
        await JsonReply.WriteAsync(context, new { version = Version(task, room, student) });
    }

    private static bool IsRevealed(KeptTask task, LessonRoom room, string? student) => room.IsRevealed
        || (task.Task.Reveal == TaskReveal.OnHandIn && student is not null && room.HasFrom(student));

    /// <summary>Changes with whatever changes what a student may see: the task, and whether it is revealed.</summary>
    private static string Version(KeptTask task, LessonRoom room, string? student) =>
        $"{task.Version[..12]}{(IsRevealed(task, room, student) ? "-told" : "")}"
            + (student is not null && room.HasFrom(student) ? "-in" : "");

    private static string Outcome(ClassLesson lesson, IReadOnlyDictionary<string, string> settings,
        CancellationToken cancellation)
    {
        var answer = lesson.AnswerTo(settings, cancellation);
        return lesson.Exercise is { } exercise
            ? ExerciseSentences.VerdictOf(ExerciseCheck.Of(exercise, answer.Scenario, cancellation))
            : AnswerSentences.Headline(answer);
    }

    private static Dictionary<string, string> Written(ClassLesson lesson, Dictionary<string, string> given)
    {
        var written = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var asked in lesson.Asked)
        {
            if (given.TryGetValue(asked.Name, out var text) && Line(text, LongestEstimate, asked.Name) is { } line)
                written[asked.Name] = line;
        }
        return written.Count > 0 || lesson.Asked.Count == 0 ? written
            : throw new ProblemException(StatusCodes.Status400BadRequest, "Write at least one estimate of your own first.");
    }

    /// <summary>A line of text; null where nothing is written.</summary>
    private static string? Line(string? text, int longest, string path)
    {
        var line = text?.Trim();
        if (string.IsNullOrEmpty(line))
            return null;
        return line.Length <= longest && ShownText.FirstUnseen(line, "") < 0 ? line
            : throw new ProblemException(StatusCodes.Status400BadRequest,
                [new Problem("This can't be handed in.", path, $"text on one line, at most {longest} characters")]);
    }

    private static string? Student(string? key) => key is not null && Key().IsMatch(key) ? key : null;

    [GeneratedRegex("^[0-9a-f]{32}\\z", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Key();
}
