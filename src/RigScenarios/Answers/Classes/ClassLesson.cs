using RigScenarios.Answers.Exercises;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.Classes;

/// <summary>Something that a class is asked to estimate or to find.</summary>
/// <param name="Name">Its short name: <c>energy</c>, <c>until</c>; <c>cause-1</c> and <c>repair-1</c> of an exercise.</param>
/// <param name="Kind">The question of the answer that it belongs to; null for the answer as a whole.</param>
/// <param name="Question">The question in words.</param>
/// <param name="Unit">The unit or the kind of thing that is asked for; empty where the teacher asks.</param>
public sealed record AskedEstimate(string Name, QuestionKind? Kind, string Question, string Unit);

/// <summary>A task made ready: the rig as the class gets it, what may be changed on it, and what is asked.</summary>
public sealed class ClassLesson
{
    private readonly AnswerOptions options;

    private ClassLesson(ClassTask task, RigAnswer answer, Exercise? exercise, IReadOnlyList<ClassControl> all,
        IReadOnlyList<ClassControl> controls, AnswerOptions options)
    {
        (Task, Answer, Exercise, AllControls, Controls, this.options) = (task, answer, exercise, all, controls, options);
        Asked = [.. exercise is null ? Choices(answer).Where(estimate => task.Estimates.Contains(estimate.Name))
            : Findings(exercise), .. task.OwnQuestions.Index().Select(question =>
                new AskedEstimate($"own-{question.Index + 1}", null, question.Item, ""))];
    }

    /// <summary>The task.</summary>
    public ClassTask Task { get; }

    /// <summary>The answer for the rig as the class gets it. It is the teacher's: the class is told no more of it than
    /// <see cref="ClassView"/> says.</summary>
    public RigAnswer Answer { get; }

    /// <summary>The exercise, where things are made wrong; null otherwise.</summary>
    public Exercise? Exercise { get; }

    /// <summary>All that could be given to the class to change.</summary>
    public IReadOnlyList<ClassControl> AllControls { get; }

    /// <summary>What the class may change.</summary>
    public IReadOnlyList<ClassControl> Controls { get; }

    /// <summary>What is asked: the chosen estimates, or the causes of an exercise; then the teacher's own questions.</summary>
    public IReadOnlyList<AskedEstimate> Asked { get; }

    /// <summary>The estimates that can be asked for: only what the rig and its days have.</summary>
    /// <param name="answer">The answer for the rig.</param>
    public static IReadOnlyList<AskedEstimate> Choices(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. Estimates.Of(answer).Select(one => new AskedEstimate(one.Name, one.Kind, one.Question, one.Unit))];
    }

    /// <summary>Makes a task ready.</summary>
    /// <param name="task">The task.</param>
    /// <param name="scenario">The scenario of its file, read or checked.</param>
    /// <param name="asked">What answers are asked with; null for the usual.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build or day, no such exercise can be drawn, or the
    /// task names controls or estimates that this rig does not have; carries all problems of the task.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ClassLesson Of(ClassTask task, Scenario scenario, AnswerOptions? asked = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(scenario);
        var asking = asked ?? AnswerOptions.EndOnly;
        IReadOnlyList<string> days = task.Days.Count > 0 ? task.Days : [.. scenario.Days.Keys];
        var exercise = task.Causes == 0 ? null
            : Exercise.Draw(scenario, task.Build, days, task.Seed, task.Causes, asking, cancellation: cancellation);
        var first = RigAnswer.Of(exercise?.StudentScenario ?? scenario, task.Build, days, asking, cancellation: cancellation);
        // What a solution of an exercise may not change is not offered.
        List<ClassControl> all = [.. ClassControls.Of(first).Where(control => exercise is null
            || (control.Name != ClassControl.Air && FixRules.MayChange(exercise, control.Name)))];
        var controls = Open(task, all, exercise is null ? [.. Choices(first).Select(one => one.Name)] : null);
        var given = ClassControls.Given(first.Scenario, days, controls);
        var answer = ReferenceEquals(given, first.Scenario) ? first
            : RigAnswer.Of(given, task.Build, days, asking, cancellation: cancellation);
        return new(task, answer, exercise, all, controls, asking);
    }

    /// <summary>The scenario with what a student has set.</summary>
    /// <param name="settings">Values by the names of controls.</param>
    /// <exception cref="ScenarioProblemsException">A control is locked, or a value is not accepted.</exception>
    public Scenario With(IReadOnlyDictionary<string, string> settings) =>
        ClassControls.Apply(Answer.Scenario, Answer.Days, Controls, settings);

    /// <summary>The answer for what a student has set.</summary>
    /// <param name="settings">Values by the names of controls.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">A control is locked, a value is not accepted, or no such rig can be
    /// run.</exception>
    public RigAnswer AnswerTo(IReadOnlyDictionary<string, string> settings, CancellationToken cancellation = default)
    {
        var scenario = With(settings);
        return ReferenceEquals(scenario, Answer.Scenario) ? Answer
            : RigAnswer.Of(scenario, Answer.Build, Answer.Days, options, cancellation: cancellation);
    }

    /// <summary>What a student has changed, a line each: "coldest air: 4 °C → -8 °C".</summary>
    /// <param name="settings">Values by the names of controls.</param>
    public IReadOnlyList<string> Changes(IReadOnlyDictionary<string, string> settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return [.. Controls.Where(control => settings.TryGetValue(control.Name, out var value) && value != control.Start)
            .Select(control => $"{control.Label}: {control.InWords(control.Start)} → {control.InWords(settings[control.Name])}")];
    }

    private static IEnumerable<AskedEstimate> Findings(Exercise exercise) =>
        Enumerable.Range(1, exercise.Causes.Count).SelectMany(number => ExercisePages.Findings(exercise, number)
            .Select(row => new AskedEstimate(row.Name, null, row.Question, row.Unit)));

    /// <summary>The controls that a task opens, in the order of all; every name that is none is told.</summary>
    private static List<ClassControl> Open(ClassTask task, List<ClassControl> all, IReadOnlyList<string>? estimates)
    {
        var log = new ReadLog("");
        foreach (var (at, control) in task.Controls.Index().Where(one => !all.Exists(known => known.Name == one.Item.Field)))
            log.Error($"controls.{at + 1}.field", $"Nothing that can be changed on this rig is called \"{control.Field}\".",
                null, log.Nearest(control.Field, all.Select(known => known.Name)));
        foreach (var (at, control) in task.Controls.Index().Where(one => one.Item.Least > one.Item.Greatest))
            log.Error($"controls.{at + 1}", $"It goes from {control.Least} to {control.Greatest}, which is less.");
        foreach (var name in estimates is null ? [] : task.Estimates.Except(estimates))
            log.Error("estimates", $"This rig and these days have no estimate \"{name}\".", string.Join(", ", estimates!),
                log.Nearest(name, estimates!));
        if (log.HasErrors)
            throw new ScenarioProblemsException([.. log.Problems]);
        var open = task.Controls.GroupBy(control => control.Field, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);
        return [.. all.Where(control => open.ContainsKey(control.Name))
            .Select(control => control.Within(open[control.Name]))];
    }
}
