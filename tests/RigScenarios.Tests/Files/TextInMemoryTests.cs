using RigScenarios.Files;

namespace RigScenarios.Tests.Files;

/// <summary>Text that isn't saved is read as the file would be.</summary>
public sealed class TextInMemoryTests
{
    public static TheoryData<string> Scenarios => [.. Repository.ScenarioFiles.Select(path => Path.GetFileName(path))];

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void A_demo_scenario_reads_the_same_from_text_with_its_parts_files(string name)
    {
        var path = Repository.Data("scenarios", name);
        var (scenario, problems) = ScenarioFile.TryReadText(File.ReadAllText(path), path);
        Assert.Empty(problems);
        var saved = ScenarioFile.Read(path);
        Assert.Equal(ScenarioFile.Text(saved), ScenarioFile.Text(scenario!));
        Assert.Equal(saved.Library, scenario!.Library);
    }

    [Fact]
    public void Problems_name_the_file_and_the_line_though_there_is_no_such_file()
    {
        var (scenario, problems) = ScenarioFile.TryReadText(SmallScenario.Text()
            .Replace("title: By hand", "titel: By hand", StringComparison.Ordinal), "own/new.yaml");
        Assert.Null(scenario);
        Each.Of(problems, problem => Assert.Equal("own/new.yaml", problem.File));
        Assert.Contains(problems, problem => problem.At.Line == 2 && problem.Nearest == "title");
    }

    [Fact]
    public void Checks_between_fields_are_made_as_well()
    {
        var (scenario, problems) = ScenarioFile.TryReadText(SmallScenario.Text(battery: ", charge: 50 %",
            devices: "{nothing: {}}"), "a.yaml");
        Assert.Null(scenario);
        Assert.NotEmpty(problems);
    }

    [Fact]
    public void A_byte_order_mark_is_accepted() =>
        Assert.NotNull(ScenarioFile.TryReadText("\uFEFF" + SmallScenario.Text(), "a.yaml").Scenario);

    [Theory]
    [InlineData("x", 2_200_000, "2 MB")]
    [InlineData("€", 800_000, "2 MB")]
    [InlineData("\0", 1, "code 0")]
    public void Text_beyond_the_bounds_of_a_file_is_refused(string sign, int times, string told)
    {
        var text = SmallScenario.Text() + "\n# " + string.Concat(Enumerable.Repeat(sign, times));
        var (scenario, problems) = ScenarioFile.TryReadText(text, "a.yaml");
        Assert.Null(scenario);
        Assert.Contains(told, Assert.Single(problems).Problem, StringComparison.Ordinal);
    }
}
