using RigScenarios.Answers;
using RigScenarios.Files;

namespace RigScenarios.Tests.House;

/// <summary>What the documentation shows is what the program does.</summary>
public sealed class DocumentationTests
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
        foreach (var schema in (string[])[ScenarioFile.JsonSchema, PartsFile.JsonSchema])
        {
            foreach (var name in Names(System.Text.Json.Nodes.JsonNode.Parse(schema)!, "").Distinct())
                Assert.True(FileFormatPage.Contains(name, StringComparison.Ordinal),
                    $"docs/file-format.md doesn't name the field \"{name}\".");
        }
    }

    [Theory]
    [InlineData("file-format.md")]
    [InlineData("what-if.md")]
    [InlineData("cautions.md")]
    public void Links_between_pages_lead_somewhere(string page)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, "docs", page));
        foreach (var link in text.Split("](").Skip(1)
            .Select(rest => rest[..rest.IndexOf(')', StringComparison.Ordinal)].Split('#')[0]).Where(link => link.Length > 0))
            Assert.True(File.Exists(Path.Combine(Repository.Root, "docs", link)), $"{page} links to {link}.");
    }

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
}
