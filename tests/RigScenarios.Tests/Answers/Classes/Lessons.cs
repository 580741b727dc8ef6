using RigScenarios.Answers;
using RigScenarios.Answers.Classes;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Answers.Classes;

/// <summary>Tasks on the sample scenarios.</summary>
internal static class Lessons
{
    public static readonly Dictionary<string, string> Nothing = new(StringComparer.Ordinal);

    public static Scenario Sample(string name) => ScenarioFile.Read(Repository.Data("scenarios", $"{name}.yaml"));

    /// <summary>The harbour on its first day: everything hidden, the cold open, all estimates asked.</summary>
    public static ClassTask Harbour { get; } = new()
    {
        Title = "How cold may it be?", Text = "Estimate first.\n\nThen make it colder.", Scenario = "samples/winter-harbour.yaml",
        Build = "tripod", Days = ["day-one"], Controls = [new(ClassControl.Air, -20, 10)],
        Estimates = ["energy", "until", "wiring", "centre", "setting", "tipping", "stand", "works"],
        OwnQuestions = ["What would you ask the gaffer?"],
    };

    /// <summary>The pottery with three things wrong.</summary>
    public static ClassTask Pottery { get; } = new()
    {
        Title = "What is wrong?", Scenario = "samples/pottery-class.yaml", Build = "tripod", Causes = 3, Seed = 2,
        Shown = [QuestionKind.Power, QuestionKind.Wiring, QuestionKind.Balance, QuestionKind.Stand],
    };

    public static ClassLesson Ready(ClassTask task) => ClassLesson.Of(task,
        Sample(Path.GetFileNameWithoutExtension(task.Scenario)), null, TestContext.Current.CancellationToken);

    public static ClassView View(ClassLesson lesson, RigAnswer answer, bool isRevealed = false) =>
        ClassView.Of(lesson, answer, isRevealed, TestContext.Current.CancellationToken);

    /// <summary>Everything in a view that words can tell, as one text.</summary>
    public static string Words(ClassView view) => string.Join('\n', [.. view.Days, .. view.Known,
        .. view.Given.SelectMany(section => section.Rows.SelectMany(row => row).Append(section.Title).Append(section.Note)),
        .. view.Lines.Select(line => $"{line.Title} {line.Words}"), .. view.Hidden, .. view.Check,
        .. view.Estimates.Select(told => $"{told.Asked.Question} {told.Answer}")]);
}
