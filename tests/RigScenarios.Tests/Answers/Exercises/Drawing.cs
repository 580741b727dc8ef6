using RigScenarios.Answers;
using RigScenarios.Answers.Exercises;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Answers.Exercises;

/// <summary>Exercises on the demos that work.</summary>
internal static class Drawing
{
    /// <summary>Demos with a build that works.</summary>
    public static TheoryData<string, string> Demos => new() { { "pottery-class", "tripod" }, { "market-hall", "tripod" } };

    public static Scenario Demo(string name) => ScenarioFile.Read(Repository.Data("scenarios", $"{name}.yaml"));

    public static Exercise Of(int seed, string demo = "pottery-class", int causes = 3) =>
        Exercise.Draw(Demo(demo), "tripod", [], seed, causes, cancellation: TestContext.Current.CancellationToken);

    /// <summary>An answer for fields set anew from a scenario, apart from what the exercise itself has run.</summary>
    public static RigAnswer Run(Exercise exercise, Scenario scenario, IEnumerable<FieldSetting> settings) => RigAnswer.Of(
        ScenarioPath.SetAll(scenario, settings.Select(setting => (setting.Path, setting.Value))), exercise.Rig.Build,
        exercise.Rig.Days, new AnswerOptions { SeriesPoints = 0 }, cancellation: TestContext.Current.CancellationToken);

    /// <summary>The repairs of the key.</summary>
    public static IEnumerable<(string Path, string Text)> Key(Exercise exercise) =>
        exercise.Causes.SelectMany(cause => cause.Repair.Settings).Select(setting => (setting.Path, setting.Value));
}
