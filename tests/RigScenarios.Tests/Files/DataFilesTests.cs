using RigScenarios.Files;

namespace RigScenarios.Tests.Files;

public sealed class DataFilesTests
{
    public static TheoryData<string> Scenarios => [.. Repository.ScenarioFiles.Select(path => Path.GetFileName(path))];

    public static TheoryData<string> Parts => [.. Repository.PartsFiles.Select(path => Path.GetFileName(path))];

    [Fact]
    public void There_are_data_files_to_test()
    {
        Assert.NotEmpty(Repository.ScenarioFiles);
        Assert.NotEmpty(Repository.PartsFiles);
    }

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void A_demo_scenario_reads_without_a_problem(string name)
    {
        var (scenario, problems) = ScenarioFile.TryRead(Repository.Data("scenarios", name));
        Assert.Empty(problems);
        Assert.NotNull(scenario);
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_parts_file_reads_without_a_problem(string name)
    {
        Assert.Empty(ScenarioFile.CheckParts(Repository.Data("parts", name)));
        Assert.NotEmpty(PartsFile.Read(Repository.Data("parts", name)));
    }

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void A_scenario_that_is_written_and_read_again_is_the_same(string name)
    {
        var first = ScenarioFile.Read(Repository.Data("scenarios", name));
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "scenarios"));
        Directory.CreateDirectory(Path.Combine(folder.Path, "parts"));
        foreach (var parts in Repository.PartsFiles)
            File.Copy(parts, Path.Combine(folder.Path, "parts", Path.GetFileName(parts)));
        var copy = Path.Combine(folder.Path, "scenarios", name);
        ScenarioFile.Write(first, copy);
        var second = ScenarioFile.Read(copy);
        Assert.Equal(ScenarioFile.Text(first), ScenarioFile.Text(second));
        Assert.Equal(ScenarioPath.NumericFields(first), ScenarioPath.NumericFields(second));
        Assert.Equal(first.Library, second.Library);
        Assert.Equal(first.Days, second.Days);
        Assert.Equal(first.Kit, second.Kit);
        foreach (var (build, was) in first.Builds)
        {
            Assert.Equal(was.Carries, second.Builds[build].Carries);
            Assert.Equal(was.Beside, second.Builds[build].Beside);
            Assert.Equal(was with { Carries = [], Beside = [] }, second.Builds[build] with { Carries = [], Beside = [] });
        }
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Parts_that_are_written_and_read_again_are_the_same(string name)
    {
        var first = PartsFile.Read(Repository.Data("parts", name));
        var text = FileFormat.Text(FileFormat.Parts, FileFormat.PartsForm, new PartsContent(null, first));
        using var folder = new TemporaryFolder();
        var second = PartsFile.Read(folder.Write(name, text));
        Assert.Equal(text, FileFormat.Text(FileFormat.Parts, FileFormat.PartsForm, new PartsContent(null, second)));
    }

    [Theory]
    [InlineData("yes")]
    [InlineData("# no comment")]
    [InlineData("a: b")]
    [InlineData("  spaces around  ")]
    [InlineData("- dash")]
    [InlineData("{brace")]
    [InlineData("quote \" and ' and \\")]
    [InlineData("&anchor *alias !tag")]
    [InlineData("snow ❄ and 𝄞")]
    [InlineData("---")]
    [InlineData("trailing colon:")]
    [InlineData("@at `tick %percent")]
    public void Any_title_survives_writing_and_reading(string title)
    {
        var scenario = SmallScenario.Read(SmallScenario.Text()) with { Title = title };
        Assert.Equal(title, SmallScenario.Read(ScenarioFile.Text(scenario)).Title);
    }

    [Fact]
    public void Writing_leaves_no_temporary_file_behind()
    {
        using var folder = new TemporaryFolder();
        ScenarioFile.Write(SmallScenario.Read(SmallScenario.Text()), Path.Combine(folder.Path, "new", "a.yaml"));
        Assert.Equal(["a.yaml"], Directory.GetFiles(Path.Combine(folder.Path, "new")).Select(Path.GetFileName));
    }

    [Fact]
    public void Lengths_in_minutes_are_written_as_min_and_not_as_the_sign_of_the_metre()
    {
        var text = ScenarioFile.Text(SmallScenario.Read(SmallScenario.Text(blocks: "{all: {length: 45 min, others: record}}")));
        Assert.Contains("45 min", text, StringComparison.Ordinal);
    }
}
