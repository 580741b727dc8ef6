using System.Text.Json;
using Microsoft.AspNetCore.Http;
using RigScenarios.Answers;
using RigScenarios.Answers.Classes;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Classes;

/// <summary>A task as JSON, as the teacher's page has it.</summary>
internal static class TaskJson
{
    private static readonly JsonNamingPolicy Words = JsonNamingPolicy.KebabCaseLower;

    /// <summary>The task.</summary>
    public static object Of(ClassTask task) => new
    {
        title = task.Title,
        text = task.Text ?? "",
        scenario = task.Scenario,
        build = task.Build,
        days = task.Days,
        causes = task.Causes,
        seed = task.Seed,
        controls = task.Controls.Select(control => new { field = control.Field, from = control.Least, to = control.Greatest }),
        shown = task.Shown.Select(Word),
        reveal = Word(task.Reveal),
        estimates = task.Estimates,
        ownQuestions = task.OwnQuestions,
        code = task.Code,
    };

    /// <summary>The word for a value.</summary>
    public static string Word<T>(T value)
        where T : struct, Enum => Words.ConvertName(value.ToString());

    /// <summary>Reads a task that a page sends, in a request's field "task".</summary>
    /// <exception cref="ProblemException">It is none.</exception>
    public static ClassTask Read(JsonElement request)
    {
        if (!request.TryGetProperty("task", out var json) || json.ValueKind != JsonValueKind.Object)
            throw new ProblemException(StatusCodes.Status400BadRequest,
                [new Problem("The task is missing, or is no group of fields.", "task")]);
        return new ClassTask
        {
            Title = (RequestJson.Text(json, "title") ?? "").Trim(),
            Text = RequestJson.Text(json, "text")?.ReplaceLineEndings("\n").Trim() is { Length: > 0 } text ? text : null,
            Scenario = RequestJson.NeededText(json, "scenario"),
            Build = RequestJson.NeededText(json, "build"),
            Days = Texts(json, "days"),
            Causes = Whole(json, "causes", 0),
            Seed = Whole(json, "seed", 1),
            Controls = [.. Items(json, "controls").Select(item => new OpenControl(RequestJson.NeededText(item, "field"),
                Number(item, "from"), Number(item, "to")))],
            Shown = [.. Texts(json, "shown").Select(word => Enumerated<QuestionKind>(word, "shown"))],
            Reveal = RequestJson.Text(json, "reveal") is { } reveal ? Enumerated<TaskReveal>(reveal, "reveal")
                : TaskReveal.ByTeacher,
            Estimates = Texts(json, "estimates"),
            OwnQuestions = [.. Texts(json, "ownQuestions").Select(question => question.Trim())
                .Where(question => question.Length > 0)],
            Code = RequestJson.Text(json, "code") is { Length: > 0 } code ? code : null,
        };
    }

    /// <summary>Texts by names, at most so many.</summary>
    /// <exception cref="ProblemException">It is no such group.</exception>
    public static Dictionary<string, string> Map(JsonElement json, string name, int most)
    {
        if (!json.TryGetProperty(name, out var group) || group.ValueKind == JsonValueKind.Null)
            return new(StringComparer.Ordinal);
        if (group.ValueKind != JsonValueKind.Object || group.EnumerateObject().Count() > most
            || group.EnumerateObject().Any(field => field.Value.ValueKind != JsonValueKind.String))
            throw Refused(name, $"a group of at most {most} texts");
        return group.EnumerateObject().ToDictionary(field => field.Name, field => field.Value.GetString()!,
            StringComparer.Ordinal);
    }

    private static IReadOnlyList<JsonElement> Items(JsonElement json, string name) =>
        !json.TryGetProperty(name, out var list) || list.ValueKind == JsonValueKind.Null ? []
        : list.ValueKind == JsonValueKind.Array && list.EnumerateArray().All(item => item.ValueKind == JsonValueKind.Object)
            ? [.. list.EnumerateArray()] : throw Refused(name, "a list of groups");

    private static IReadOnlyList<string> Texts(JsonElement json, string name) =>
        !json.TryGetProperty(name, out var list) || list.ValueKind == JsonValueKind.Null ? []
        : list.ValueKind == JsonValueKind.Array && list.EnumerateArray().All(item => item.ValueKind == JsonValueKind.String)
            ? [.. list.EnumerateArray().Select(item => item.GetString()!)] : throw Refused(name, "a list of texts");

    private static int Whole(JsonElement json, string name, int standard) =>
        !json.TryGetProperty(name, out var value) || value.ValueKind == JsonValueKind.Null ? standard
        : value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var number) ? number
        : throw Refused(name, "a whole number");

    private static double? Number(JsonElement json, string name) =>
        !json.TryGetProperty(name, out var value) || value.ValueKind == JsonValueKind.Null ? null
        : value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && double.IsFinite(number) ? number
        : throw Refused(name, "a number");

    private static T Enumerated<T>(string word, string name)
        where T : struct, Enum
    {
        var all = Enum.GetValues<T>();
        return all.Any(value => Word(value) == word) ? all.First(value => Word(value) == word)
            : throw Refused(name, string.Join(", ", all.Select(Word)));
    }

    private static ProblemException Refused(string name, string accepted) =>
        new(StatusCodes.Status400BadRequest, [new Problem($"\"{name}\" can't be read.", name, accepted)]);
}
