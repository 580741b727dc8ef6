using System.CommandLine;
using RigScenarios.Answers.Exercises;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Files;

namespace RigScenarios.Cli.Commands;

/// <summary>The files that an exercise is written to and a solution is read from.</summary>
internal sealed class ExerciseFiles
{
    private readonly Option<string?> student = new("--out") { Description =
        "The student's file to write; the key is not in it.", HelpName = "FILE" };
    private readonly Option<string?> sheet = new("--sheet") { Description =
        "The student's sheet to write, to print (HTML).", HelpName = "PAGE" };
    private readonly Option<string?> key = new("--key") { Description =
        "The teacher's key to write: text (.md) or a page to print (.html).", HelpName = "FILE" };
    private readonly Option<string?> solution = new("--check") { Description =
        "A student's file with changes: run it, and say whether it is solved.", HelpName = "FILE" };
    private readonly Option<string[]> fixes = new("--fix")
    {
        Description = "A change of the student's rig, by its path in the file, instead of --check; may be given several times.",
        HelpName = "PATH=VALUE", DefaultValueFactory = _ => [],
    };

    public void AddTo(Command command)
    {
        foreach (var option in (Option[])[student, sheet, key, solution, fixes])
            command.Add(option);
        command.Validators.Add(parsed =>
        {
            if (parsed.GetValue(solution) is not null && parsed.GetValue(fixes) is { Length: > 0 })
                parsed.AddError("--check and --fix are two ways to give a solution: take one of them.");
        });
    }

    /// <summary>Refuses what can't be written before anything is.</summary>
    public void Check(ParseResult parsed, IReadOnlyList<string> inputs)
    {
        IReadOnlyList<string> read = parsed.GetValue(solution) is { } file ? [.. inputs, file] : inputs;
        var wanted = new[] { ("--out", parsed.GetValue(student), "student.yaml"),
            ("--sheet", parsed.GetValue(sheet), "student.html"), ("--key", parsed.GetValue(key), "key.md") };
        var taken = new List<string>(read);
        foreach (var (option, path, example) in wanted)
        {
            if (path is null)
                continue;
            OutputFile.Check(option, path, example, taken);
            taken.Add(path);
        }
    }

    /// <summary>What the models say of the solution that was given; null where none was.</summary>
    public ExerciseCheck? Checked(ParseResult parsed, Exercise exercise, CancellationToken cancellation)
    {
        if (parsed.GetValue(solution) is { } file)
            return ExerciseCheck.Of(exercise, ScenarioFile.Read(file), cancellation);
        var changes = ScenarioOptions.Changes(parsed.GetRequiredValue(fixes), "--fix");
        return changes.Count > 0 ? ExerciseCheck.Of(exercise, exercise.With(changes), cancellation) : null;
    }

    /// <summary>Writes what was asked for, and says what.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="from">The file that its scenario was read from.</param>
    public IReadOnlyList<(string What, string File)> Write(ParseResult parsed, Exercise exercise, string from)
    {
        var written = new List<(string, string)>();
        if (parsed.GetValue(student) is { } file)
        {
            ScenarioFile.Write(MovedFile.Of(exercise.StudentScenario, from, file), file);
            written.Add(("Student's file", file));
        }
        if (parsed.GetValue(sheet) is { } page)
        {
            TextFile.Write(page, SheetPage.Of(ExercisePages.Student(exercise), whole: true));
            written.Add(("Student's sheet", page));
        }
        if (parsed.GetValue(key) is { } answers)
        {
            TextFile.Write(answers, Path.GetExtension(answers).Equals(".html", StringComparison.OrdinalIgnoreCase)
                ? SheetPage.Of(ExercisePages.Teacher(exercise), whole: true) : ExerciseKey.Markdown(exercise));
            written.Add(("Teacher's key", answers));
        }
        return written;
    }
}
