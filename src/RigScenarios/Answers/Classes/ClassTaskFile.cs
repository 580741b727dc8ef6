using System.Text.RegularExpressions;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.Classes;

/// <summary>Files of tasks for a class: reading with every problem at once, and writing.</summary>
public static partial class ClassTaskFile
{
    /// <summary>What the name of such a file ends in.</summary>
    public const string Ending = ".task.yaml";

    private static readonly NumberFormat Bound = new(-1e6, 1e6);

    private static readonly Format<OpenControl> Control = new RecordFormat<OpenControl>(
        () => new OpenControl(), "A figure or a choice that the class may change.",
        Fields<OpenControl>.Required("field", new TextFormat(400), control => control.Field,
            (control, value) => control with { Field = value }, "Its path in the scenario file, or \"air\" for the coldest air."),
        Fields<OpenControl>.Optional("from", Bound, control => control.Least,
            (control, value) => control with { Least = value }, "The least value that is allowed, in the unit of the page."),
        Fields<OpenControl>.Optional("to", Bound, control => control.Greatest,
            (control, value) => control with { Greatest = value },
            "The greatest value that is allowed, in the unit of the page."));

    private static readonly RecordFormat<ClassTask> Whole = new(
        () => new ClassTask(), "A task for a class: what it is about, what may be changed, what is hidden, what is asked.",
        Fields<ClassTask>.Required("title", new TextFormat(200), task => task.Title,
            (task, value) => task with { Title = value }, "What the task is called."),
        Fields<ClassTask>.OptionalGroup("text", new TextFormat(ClassTask.LongestText, hasLines: true), task => task.Text,
            (task, value) => task with { Text = value }, "The task in the teacher's words."),
        Fields<ClassTask>.Required("scenario", new TextFormat(100), task => task.Scenario,
            (task, value) => task with { Scenario = value }, "The scenario file: own/NAME or samples/NAME."),
        Fields<ClassTask>.Required("build", ScenarioFormat.KitName, task => task.Build,
            (task, value) => task with { Build = value }, "The build's short name."),
        Names("days", 100, task => task.Days, (task, value) => task with { Days = value },
            "The days' short names; all of the scenario if left out."),
        Fields<ClassTask>.WithDefault("causes", new CountFormat(0, Exercises.Exercise.MostCauses), 0, task => task.Causes,
            (task, value) => task with { Causes = value }, "How many things are made wrong on the rig; none if left out."),
        Fields<ClassTask>.WithDefault("seed", new CountFormat(0, 1_000_000), 1, task => task.Seed,
            (task, value) => task with { Seed = value }, "Which things are made wrong."),
        List("controls", new ListFormat<OpenControl>(Control, 100), task => task.Controls,
            (task, value) => task with { Controls = value }, "What the class may change; nothing if left out."),
        List("shown", new ListFormat<QuestionKind>(new ChoiceFormat<QuestionKind>(), 10), task => task.Shown,
            (task, value) => task with { Shown = value },
            "The questions of the answer that are told from the start; none if left out."),
        new Field<ClassTask, TaskReveal>("reveal", new ChoiceFormat<TaskReveal>(), task => task.Reveal != TaskReveal.ByTeacher,
            task => task.Reveal, (task, value) => task with { Reveal = value }, false,
            "Until when the rest is hidden; until the teacher reveals it if left out."),
        Names("estimates", 20, task => task.Estimates, (task, value) => task with { Estimates = value },
            "What is to be estimated, by its short names."),
        List("own-questions", new ListFormat<string>(new TextFormat(ClassTask.LongestQuestion), ClassTask.MostOwnQuestions),
            task => task.OwnQuestions, (task, value) => task with { OwnQuestions = value }, "Questions of the teacher's own."),
        Fields<ClassTask>.OptionalGroup("code", new TextFormat(40), task => task.Code,
            (task, value) => task with { Code = value }, "What stands in the address that the class gets."));

    /// <summary>Whether a file's name is that of a task.</summary>
    /// <param name="name">The file's name.</param>
    public static bool IsTaskName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.EndsWith(Ending, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Whether a text can be the code of an address: eight letters and digits with a hyphen in their middle.</summary>
    /// <param name="code">The text.</param>
    public static bool IsCode(string code) => CodeForm().IsMatch(code);

    /// <summary>Reads a task from the text of its file; null if it can't be used.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">The file that it is meant for, for messages; need not exist.</param>
    public static (ClassTask? Task, IReadOnlyList<Diagnostic> Problems) TryReadText(string text, string path)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(path);
        var log = new ReadLog(path);
        ClassTask? task = null;
        if (TextFile.Take(text, log) is { } taken)
            FileFormat.TryReadText(taken, FileFormat.ClassTask, Whole, log, out task);
        if (task?.Code is { } code && !IsCode(code))
            log.Error("code", $"Found \"{code}\".", "the code as the page gave it, such as k7m4-qxpd; or the field left out");
        return (log.HasErrors ? null : task, log.Problems);
    }

    /// <summary>The task as the text of a file.</summary>
    /// <param name="task">The task.</param>
    public static string Text(ClassTask task) => FileFormat.Text(FileFormat.ClassTask, Whole, task);

    private static Field<ClassTask, IReadOnlyList<T>> List<T>(string key, Format<IReadOnlyList<T>> form,
        Func<ClassTask, IReadOnlyList<T>> get, Func<ClassTask, IReadOnlyList<T>, ClassTask> set, string about) =>
        new(key, form, task => get(task).Count > 0, get, set, false, about);

    private static Field<ClassTask, IReadOnlyList<string>> Names(string key, int most, Func<ClassTask, IReadOnlyList<string>> get,
        Func<ClassTask, IReadOnlyList<string>, ClassTask> set, string about) =>
        List(key, new ListFormat<string>(ScenarioFormat.KitName, most), get, set, about);

    // Without letters that are taken for one another: 0 and o, 1, i and l.
    [GeneratedRegex("^[2-9a-hjkmnp-z]{4}-[2-9a-hjkmnp-z]{4}\\z", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex CodeForm();
}
