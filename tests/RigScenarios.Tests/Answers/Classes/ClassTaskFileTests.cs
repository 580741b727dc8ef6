using RigScenarios.Answers.Classes;
using RigScenarios.Files;

namespace RigScenarios.Tests.Answers.Classes;

/// <summary>Files of tasks: what is written is read again, and what is wrong is told at its line.</summary>
public sealed class ClassTaskFileTests
{
    [Fact]
    public void What_is_written_is_read_again()
    {
        foreach (var task in new[] { Lessons.Harbour with { Code = "k7m4-qxpd", Reveal = TaskReveal.OnHandIn }, Lessons.Pottery,
            new ClassTask { Title = "x", Scenario = "own/a.yaml", Build = "b" },
            Lessons.Harbour with { Text = "Zeile: \"eins\"\n\n# zwei\n- drei", OwnQuestions = ["yes", "12", "- a: b", "'"] } })
        {
            var (read, problems) = ClassTaskFile.TryReadText(ClassTaskFile.Text(task), "a.task.yaml");
            Assert.Empty(problems);
            Assert.Equal(ClassTaskFile.Text(task), ClassTaskFile.Text(read!));
            Assert.Equal(task.Text, read!.Text);
            Assert.Equal(task.Controls, read.Controls);
            Assert.Equal(task.Shown, read.Shown);
            Assert.Equal(task.OwnQuestions, read.OwnQuestions);
            Assert.Equal((task.Reveal, task.Code, task.Seed, task.Causes), (read.Reveal, read.Code, read.Seed, read.Causes));
        }
    }

    [Fact]
    public void Every_mistake_is_told_with_its_line()
    {
        var (task, problems) = ClassTaskFile.TryReadText("""
            rigscenarios: class task 1
            title: Cold
            scenario: own/a.yaml
            bild: tripod
            causes: 4
            shown: [power, wirring]
            reveal: on-hand
            """, "a.task.yaml");
        Assert.Null(task);
        Assert.Equal([("build", 1, null), ("bild", 4, "build"), ("causes", 5, null), ("shown.2", 6, "wiring"),
            ("reveal", 7, "on-hand-in")],
            problems.Select(problem => (problem.Path, problem.At.Line, problem.Nearest)));
    }

    [Theory]
    [InlineData("k7m4-qxpd", true)]
    [InlineData("k7m4qxpd", false)]
    [InlineData("k7m4-qxp0", false)]
    [InlineData("K7M4-QXPD", false)]
    [InlineData("k7m4-qxpd\n", false)]
    [InlineData("../a-bcde", false)]
    public void A_code_is_two_times_four_letters_that_nobody_takes_for_one_another(string code, bool isOne)
    {
        Assert.Equal(isOne, ClassTaskFile.IsCode(code));
        var text = ClassTaskFile.Text(Lessons.Pottery with { Code = code });
        Assert.Equal(isOne, ClassTaskFile.TryReadText(text, "").Task is not null);
    }

    [Fact]
    public void The_file_of_the_documentation_is_one_that_a_class_can_work_on()
    {
        var lines = File.ReadAllLines(Path.Combine(Repository.Root, "docs", "exercises.md"))
            .SkipWhile(line => line != "    rigscenarios: class task 1").TakeWhile(line => line.StartsWith("    ",
                StringComparison.Ordinal)).Select(line => line[4..]);
        var (task, problems) = ClassTaskFile.TryReadText(string.Join('\n', lines), "docs.task.yaml");
        Assert.Empty(problems);
        var lesson = Lessons.Ready(task!);
        Assert.Equal(["air", "builds.tripod.battery.charge"], lesson.Controls.Select(control => control.Name));
        Assert.Equal(["energy", "until", "works", "own-1"], lesson.Asked.Select(asked => asked.Name));
        Assert.Equal(TaskReveal.OnHandIn, task!.Reveal);
    }

    [Fact]
    public void A_scenario_is_no_task_and_a_task_no_scenario()
    {
        var scenario = File.ReadAllText(Repository.Data("scenarios", "winter-harbour.yaml"));
        Assert.Contains(ClassTaskFile.TryReadText(scenario, "").Problems, problem => problem.Path == "rigscenarios");
        Assert.Contains(ScenarioFile.TryReadText(ClassTaskFile.Text(Lessons.Harbour), "a.yaml").Problems,
            problem => problem.Path == "rigscenarios");
    }
}
