using System.Text.Json;
using System.Text.RegularExpressions;
using RigScenarios.Answers.Exercises;
using RigScenarios.Files;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public sealed partial class ExerciseCommandTests
{
    private static readonly string Demo = Repository.Data("scenarios", "pottery-class.yaml");

    [Fact]
    public async Task It_writes_the_students_file_the_sheet_and_the_key_and_prints_no_answer()
    {
        using var folder = new TemporaryFolder();
        string Named(string name) => Path.Combine(folder.Path, name);
        var (student, sheet, key) = (Named("student.yaml"), Named("student.html"), Named("key.md"));
        var (code, text, error) = await ConsoleRun.RunAsync("exercise", Demo, "--seed", "2", "--out", student, "--sheet", sheet,
            "--key", key);
        Assert.Equal("", error);
        Assert.Equal(0, code);
        Assert.Contains("Find the three causes", text, StringComparison.Ordinal);
        var exercise = Exercise.Draw(ScenarioFile.Read(Demo), "tripod", [], 2,
            cancellation: TestContext.Current.CancellationToken);
        var told = text + await File.ReadAllTextAsync(student, TestContext.Current.CancellationToken)
            + await File.ReadAllTextAsync(sheet, TestContext.Current.CancellationToken);
        Each.Of(exercise.Causes, cause =>
        {
            Assert.DoesNotContain(cause.Words, told, StringComparison.Ordinal);
            Assert.DoesNotContain(cause.Repair.Words, told, StringComparison.Ordinal);
        }, atLeast: 3);
        Snapshot.Match(await File.ReadAllTextAsync(key, TestContext.Current.CancellationToken), "ExerciseCommandTests.Key");
        // The student's file is one like any other.
        Assert.Equal(0, (await ConsoleRun.RunAsync("check", student)).Code);
        var (_, run, _) = await ConsoleRun.RunAsync("run", student, "--quick");
        Assert.Contains("No: the camera stops at 15:10, 45 min before wrap", run, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_solution_in_a_file_and_the_same_by_changes_are_judged_alike()
    {
        using var folder = new TemporaryFolder();
        string Named(string name) => Path.Combine(folder.Path, name);
        var (student, key, page) = (Named("student.yaml"), Named("key.md"), Named("key.html"));
        await ConsoleRun.RunAsync("exercise", Demo, "--seed", "2", "--out", student, "--key", key);
        // Whoever follows the key, word for word, has solved it.
        var fixes = Fix().Matches(await File.ReadAllTextAsync(key, TestContext.Current.CancellationToken))
            .Select(match => match.Groups["fix"].Value).ToList();
        var words = fixes.SelectMany(fix => new[] { "--fix", fix }).ToArray();
        var (code, byChanges, _) = await ConsoleRun.RunAsync(["exercise", Demo, "--seed", "2", .. words]);
        Assert.Equal(0, code);
        Assert.StartsWith("Solved: ", byChanges, StringComparison.Ordinal);
        var solved = ScenarioPath.SetAll(ScenarioFile.Read(student), fixes.Select(fix =>
            (fix.Split('=', 2)[0], fix.Split('=', 2)[1])));
        var file = Path.Combine(folder.Path, "solved.yaml");
        ScenarioFile.Write(solved, file);
        var (_, byFile, _) = await ConsoleRun.RunAsync("exercise", Demo, "--seed", "2", "--check", file);
        Assert.Equal(byChanges, byFile);
        var (_, untouched, _) = await ConsoleRun.RunAsync("exercise", Demo, "--seed", "2", "--check", student, "--key", page);
        Assert.StartsWith("Not solved yet: ", untouched, StringComparison.Ordinal);
        Assert.Contains("Three causes are still there.", untouched, StringComparison.Ordinal);
        Assert.Contains("key: On the tripod, everything from one battery",
            await File.ReadAllTextAsync(page, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task For_programs_there_is_the_task_and_the_check_and_no_key()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("exercise", Demo, "--seed", "2", "--json", "--fix",
            "builds.tripod.battery.capacity-left=100 %", "--fix", "builds.tripod.battery.resistance-growth=1");
        Assert.Equal("", error);
        Assert.Equal(0, code);
        using var document = JsonDocument.Parse(text);
        var root = document.RootElement;
        Assert.Equal("rigscenarios exercise 1", root.GetProperty("format").GetString());
        Assert.Equal(700m, root.GetProperty("budget").GetProperty("amount").GetDecimal());
        await DocumentedFields.AssertAsync(root, "# The answer as JSON", "## An exercise for a class");
        var check = root.GetProperty("check");
        Assert.False(check.GetProperty("solved").GetBoolean());
        Assert.Equal(2, check.GetProperty("causes_left").GetInt32());
        Assert.Equal(610m, check.GetProperty("cost").GetProperty("amount").GetDecimal());
        Assert.Equal("EUR", check.GetProperty("cost").GetProperty("currency").GetString());
        var exercise = Exercise.Draw(ScenarioFile.Read(Demo), "tripod", [], 2,
            cancellation: TestContext.Current.CancellationToken);
        Each.Of(exercise.Causes, cause => Assert.DoesNotContain(cause.Words, text, StringComparison.Ordinal), atLeast: 3);
    }

    [Fact]
    public async Task Hints_are_told_up_to_the_step_that_is_asked_for()
    {
        var (_, one, _) = await ConsoleRun.RunAsync("exercise", Demo, "--hint", "1");
        Assert.Contains("Hint 1:", one, StringComparison.Ordinal);
        Assert.DoesNotContain("Hint 2:", one, StringComparison.Ordinal);
        var (_, three, _) = await ConsoleRun.RunAsync("exercise", Demo, "--hint", "3");
        Assert.Contains("Hint 3:", three, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--seed: Found -1. Accepted: a whole number from 0 to 1000000.", "--seed", "-1")]
    [InlineData("--causes: Found 4. Accepted: a whole number from 1 to 3.", "--causes", "4")]
    [InlineData("--hint: Found 0. Accepted: a whole number from 1 to 3.", "--hint", "0")]
    [InlineData("--check and --fix are two ways", "--check", "a.yaml", "--fix", "a=b")]
    [InlineData("--out: Found \"data/scenarios/pottery-class.yaml\"", "--out", "data/scenarios/pottery-class.yaml")]
    [InlineData("--key: Found \"key.yaml\". Rigs and notebooks have such names", "--key", "key.yaml")]
    [InlineData("--fix: Found \"nothing\".", "--fix", "nothing")]
    [InlineData("builds.tripod.batery.charge: ", "--fix", "builds.tripod.batery.charge=50 %")]
    public async Task What_can_not_be_is_refused_before_anything_is_written(string told, params string[] options)
    {
        var (code, text, error) = await ConsoleRun.RunAsync(["exercise", Demo,
            .. options.Select(option => option == "data/scenarios/pottery-class.yaml" ? Demo : option)]);
        Assert.Equal(2, code);
        Assert.Contains(told.Replace("data/scenarios/pottery-class.yaml", Demo, StringComparison.Ordinal), error,
            StringComparison.Ordinal);
        Assert.Equal("", text);
        Assert.False(File.Exists("key.yaml"));
    }

    [Fact]
    public async Task A_rig_that_fails_as_it_is_is_told_so()
    {
        var (code, _, error) = await ConsoleRun.RunAsync("exercise", Repository.Data("scenarios", "winter-harbour.yaml"),
            "--build", "shoulder");
        Assert.Equal(2, code);
        Assert.Contains("An exercise starts from a rig that works, and this one fails. Power:", error, StringComparison.Ordinal);
    }

    [GeneratedRegex("--fix \"(?<fix>[^\"]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Fix();
}
