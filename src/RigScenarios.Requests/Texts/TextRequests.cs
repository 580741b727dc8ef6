using System.Text.Json;
using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.OwnFiles;
using RigScenarios.Requests.Runs;
using RigScenarios.Scenarios;

namespace RigScenarios.Requests.Texts;

/// <summary>Reading, checking and saving scenario files as text.</summary>
internal sealed class TextRequests(RigFiles files, RunWatch watch, TimeProvider clock)
{
    /// <summary>How many pairs of build and day are answered beside a text that is being written.</summary>
    private const int MostAnswers = 12;

    /// <summary>A file's text.</summary>
    /// <exception cref="ProblemException">There is no such file.</exception>
    public object Read(JsonElement json)
    {
        var file = files.Read(RequestJson.NeededText(json, "id"));
        var (scenario, problems) = files.Check(file.Text, file.Id);
        return new
        {
            id = file.Id,
            text = file.Text,
            writable = file.IsWritable,
            version = file.Version,
            problems,
            builds = Titles.Builds(scenario),
            days = Titles.Days(scenario),
        };
    }

    /// <summary>Saves a text as a file.</summary>
    /// <exception cref="ProblemException">It can't be saved under that name.</exception>
    public object Save(JsonElement json)
    {
        var saved = files.Write(RequestJson.NeededText(json, "name"), RequestJson.NeededText(json, "text"),
            RequestJson.Text(json, "version"), RequestJson.Flag(json, "replace"));
        return new { id = saved.Id, version = saved.Version, problems = files.Check(saved.Text, saved.Id).Problems };
    }

    /// <summary>The problems of a text, and its answers in a sentence each.</summary>
    public async Task<object> CheckAsync(JsonElement json, CancellationToken cancellation)
    {
        var (text, file) = (RequestJson.NeededText(json, "text"), RequestJson.Text(json, "file"));
        var (scenario, problems) = files.Check(text, file);
        var options = AnswerOptions.EndOnly with { Today = DateOnly.FromDateTime(clock.GetLocalNow().Date) };
        var answers = scenario is null ? []
            : await watch.RunAsync(stop => Task.FromResult(Answers(scenario, options, stop)), cancellation);
        return new { problems, answers };
    }

    /// <summary>What the group at a place of a text is, and the fields that may stand in it.</summary>
    public static object Help(JsonElement json)
    {
        var help = FieldHelp.At(RequestJson.NeededText(json, "text"), RequestJson.NeededCount(json, "line"),
            RequestJson.NeededCount(json, "column"));
        return new
        {
            path = help.Path,
            about = help.About,
            accepted = help.Accepted,
            fields = help.Fields.Select(field => new { key = field.Key, about = field.About, accepted = field.Accepted,
                required = field.Required, present = field.Present }),
        };
    }

    private static IReadOnlyList<object> Answers(Scenario scenario, AnswerOptions options, CancellationToken cancellation) =>
    [
        .. scenario.Builds.Keys.SelectMany(build => scenario.Days.Keys.Select(day => (build, day)))
            .Take(MostAnswers).Select(pair =>
            new { pair.build, pair.day,
                text = AnswerSentences.Headline(RigAnswer.Of(scenario, pair.build, [pair.day], options,
                    cancellation: cancellation)) }),
    ];
}
