using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Runs;
using RigScenarios.Page.Settings;
using RigScenarios.Scenarios;

namespace RigScenarios.Page.OwnFiles;

/// <summary>Reading, checking and saving scenario files as text.</summary>
internal sealed class FileEndpoints(RigFiles files, RunWatch watch, PageLimits limits)
{
    /// <summary>How many pairs of build and day are answered beside a text that is being written.</summary>
    private const int MostAnswers = 12;

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/files/{folder}/{name}", ReadAsync);
        routes.MapPut("/api/files/own/{name}", SaveAsync);
        routes.MapPost("/api/text/check", CheckAsync);
        routes.MapPost("/api/text/help", HelpAsync);
    }

    private Task ReadAsync(HttpContext context)
    {
        var file = files.Read((string)context.GetRouteValue("folder")!, (string)context.GetRouteValue("name")!);
        var (scenario, problems) = files.Check(file.Text, file.Id);
        return PageJson.WriteAsync(context, new
        {
            id = file.Id,
            text = file.Text,
            writable = file.IsWritable,
            version = file.Version,
            problems,
            builds = Titles.Builds(scenario),
            days = Titles.Days(scenario),
        });
    }

    private async Task SaveAsync(HttpContext context)
    {
        var json = await RequestJson.ReadAsync(context, limits.LargestFileBytes);
        var saved = files.Write((string)context.GetRouteValue("name")!, RequestJson.NeededText(json, "text"),
            RequestJson.Text(json, "version"), RequestJson.Flag(json, "replace"));
        await PageJson.WriteAsync(context,
            new { id = saved.Id, version = saved.Version, problems = files.Check(saved.Text, saved.Id).Problems });
    }

    private async Task CheckAsync(HttpContext context)
    {
        var json = await RequestJson.ReadAsync(context, limits.LargestFileBytes);
        var (text, file) = (RequestJson.NeededText(json, "text"), RequestJson.Text(json, "file"));
        var (scenario, problems) = files.Check(text, file);
        var answers = scenario is null
            ? [] : await watch.RunAsync(cancellation => Task.FromResult(Answers(scenario, cancellation)), context.RequestAborted);
        await PageJson.WriteAsync(context, new { problems, answers });
    }

    private async Task HelpAsync(HttpContext context)
    {
        var json = await RequestJson.ReadAsync(context, limits.LargestFileBytes);
        var help = FieldHelp.At(RequestJson.NeededText(json, "text"), RequestJson.NeededCount(json, "line"),
            RequestJson.NeededCount(json, "column"));
        await PageJson.WriteAsync(context, new
        {
            path = help.Path,
            about = help.About,
            accepted = help.Accepted,
            fields = help.Fields.Select(field => new { key = field.Key, about = field.About, accepted = field.Accepted,
                required = field.Required, present = field.Present }),
        });
    }

    private static IReadOnlyList<object> Answers(Scenario scenario, CancellationToken cancellation) => Answers(scenario,
        AnswerOptions.EndOnly with { Today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date) }, cancellation);

    private static IReadOnlyList<object> Answers(Scenario scenario, AnswerOptions options, CancellationToken cancellation) =>
    [
        .. scenario.Builds.Keys.SelectMany(build => scenario.Days.Keys.Select(day => (build, day)))
            .Take(MostAnswers).Select(pair =>
            new { pair.build, pair.day,
                text = AnswerSentences.Headline(RigAnswer.Of(scenario, pair.build, [pair.day], options,
                    cancellation: cancellation)) }),
    ];
}
