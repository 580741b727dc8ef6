using System.Text.RegularExpressions;
using RigScenarios.Answers;
using RigScenarios.Files;

namespace RigScenarios.Tests.House;

/// <summary>What the documentation shows is what the program does.</summary>
public sealed partial class DocumentationTests
{
    private static readonly string FileFormatPage = File.ReadAllText(Path.Combine(Repository.Root, "docs", "file-format.md"));

    private static string Example
    {
        get
        {
            const string opening = "```yaml\n";
            var start = FileFormatPage.IndexOf(opening, StringComparison.Ordinal) + opening.Length;
            return FileFormatPage[start..FileFormatPage.IndexOf("```", start, StringComparison.Ordinal)];
        }
    }

    [Fact]
    public void The_example_of_the_file_format_reads_and_runs()
    {
        using var folder = new TemporaryFolder();
        var (scenario, problems) = ScenarioFile.TryRead(folder.Write("lake.yaml", Example));
        Assert.Empty(problems);
        var answer = RigAnswer.Of(scenario!, "tripod", ["morning"], cancellation: TestContext.Current.CancellationToken);
        Assert.True(answer.Simulation.Runtime.Hours > 1);
        foreach (var path in (string[])["days.morning.blocks.fog.length", "builds.tripod.battery.charge",
            "parts.brick.battery.energy"])
        {
            Assert.NotNull(ScenarioPath.Find(scenario!, path));
            Assert.Contains($"    {path}\n", FileFormatPage, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("voltage: 14.4 V", "voltage: \"14,4 V\"")]
    [InlineData("{fed-by: camera-power, essential", "{fed-by: camera-powr, essential")]
    public void The_messages_shown_are_those_that_come(string right, string wrong)
    {
        using var folder = new TemporaryFolder();
        var problems = ScenarioFile.TryRead(folder.Write("lake.yaml",
            Example.Replace(right, wrong, StringComparison.Ordinal))).Problems;
        var told = (Assert.Single(problems) with { File = "lake.yaml" }).ToString();
        Assert.True(FileFormatPage.Contains($"    {told}\n", StringComparison.Ordinal), told);
    }

    [Fact]
    public void Every_field_of_a_scenario_and_a_part_is_named_on_the_page()
    {
        // As code, and whole: "on" in a sentence, in an example of words or in "conditions" is not the field `on`.
        var inCode = CodeSpans().Matches(FileFormatPage)
            .Where(span => !span.Value.Contains(' ', StringComparison.Ordinal) || span.Value.AsSpan().ContainsAny(":{["))
            .SelectMany(match => Keys().Matches(match.Value))
            .Select(match => match.Value).ToHashSet(StringComparer.Ordinal);
        foreach (var schema in (string[])[ScenarioFile.JsonSchema, PartsFile.JsonSchema])
        {
            Each.Of(Names(System.Text.Json.Nodes.JsonNode.Parse(schema)!, "").Distinct(),
                name => Assert.True(inCode.Contains(name), $"docs/file-format.md doesn't name the field \"{name}\"."),
                atLeast: 40);
        }
    }

    [Fact]
    public void Links_between_pages_lead_somewhere()
    {
        var looked = new LookedAt();
        Each.Of(Pages(), page =>
        {
            foreach (var link in Links().Matches(CodeSpans().Replace(File.ReadAllText(page), ""))
                .Select(match => match.Groups["to"].Value))
            {
                if (link.Contains("://", StringComparison.Ordinal))
                    continue;
                looked.One();
                var parts = link.Split('#');
                var target = parts[0].Length == 0 ? page : Path.Combine(Path.GetDirectoryName(page)!, parts[0]);
                Assert.True(Path.Exists(target), $"{Path.GetFileName(page)} links to {link}, which is not there.");
                Assert.True(parts.Length == 1 || Anchors(target).Contains(parts[1]),
                    $"{Path.GetFileName(page)} links to {link}; no heading of that name is there.");
            }
        }, atLeast: 16);
        looked.AtLeast(60);
    }

    /// <summary>Every page for people: the two at the root and all of docs.</summary>
    private static IReadOnlyList<string> Pages() =>
        [.. Directory.GetFiles(Repository.Root, "*.md"), .. Directory.GetFiles(Path.Combine(Repository.Root, "docs"), "*.md")];

    private static HashSet<string> Anchors(string page) => [.. Headings().Matches(File.ReadAllText(page))
        .Select(match => NoWords().Replace(match.Groups["words"].Value.Trim().ToLowerInvariant(), "").Replace(' ', '-'))];

    /// <summary>Field names, without what a battery's data sheet says, which the page names by its kinds.</summary>
    private static IEnumerable<string> Names(System.Text.Json.Nodes.JsonNode schema, string inside)
    {
        if (schema["properties"] is System.Text.Json.Nodes.JsonObject properties)
        {
            foreach (var (name, field) in properties)
            {
                yield return name;
                if (name == "battery" && inside == "parts")
                    continue;
                foreach (var inner in Names(field!, name))
                    yield return inner;
            }
        }
        if (schema["additionalProperties"] is System.Text.Json.Nodes.JsonObject each)
        {
            foreach (var inner in Names(each, inside))
                yield return inner;
        }
    }

    [GeneratedRegex(@"`[^`\n]+`", RegexOptions.CultureInvariant, 5000)]
    private static partial Regex CodeSpans();

    [GeneratedRegex(@"[A-Za-z][\w-]*", RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Keys();

    [GeneratedRegex(@"\]\((?<to>[^)\s]+)\)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Links();

    [GeneratedRegex("^#+ (?<words>.+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant,
        5000)]
    private static partial Regex Headings();

    [GeneratedRegex(@"[^\w\- ]", RegexOptions.CultureInvariant, 5000)]
    private static partial Regex NoWords();
}
