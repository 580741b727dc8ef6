using System.CommandLine;
using RigScenarios.Answers.Exercises;
using RigScenarios.Cli.Answers;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary><c>exercise FILE --seed N --out STUDENT</c>: a sound rig with a few things made wrong, for a class to find; the
/// teacher's key; the check of a solution.</summary>
internal static class ExerciseCommand
{
    private const int GreatestSeed = 1_000_000;

    /// <param name="clock">Gives today's date, for a journey without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var files = new ExerciseFiles();
        var seed = new Option<int?>("--seed")
        {
            Description = $"Which exercise is drawn, 0 to {GreatestSeed}: the same number on the same file gives the same one. 1 "
                + "if left out.",
            HelpName = "NUMBER",
        };
        var causes = new Option<int?>("--causes")
        {
            Description = $"How many things are wrong, 1 to {Exercise.MostCauses}; {Exercise.MostCauses} if left out.",
            HelpName = "NUMBER",
        };
        var hint = new Option<int?>("--hint")
        {
            Description = "Tell hints up to a step: 1 which question, 2 which thing, 3 which figure.", HelpName = "STEP",
        };
        var command = new Command("exercise",
            "A task for a class: a rig that works, with up to three things made wrong on it. Writes the student's file, a sheet "
                + "to print and the teacher's key, and checks solutions by running them.");
        options.AddAnswerTo(command);
        command.Add(seed);
        command.Add(causes);
        command.Add(hint);
        files.AddTo(command);
        command.Validators.Add(parsed =>
        {
            Range(parsed.GetValue(seed) ?? 1, 0, GreatestSeed, "--seed");
            Range(parsed.GetValue(causes) ?? 1, 1, Exercise.MostCauses, "--causes");
            Range(parsed.GetValue(hint) ?? 1, 1, 3, "--hint");
            void Range(int value, int least, int greatest, string option)
            {
                if (value < least || value > greatest)
                    parsed.AddError($"{option}: Found {value}. Accepted: a whole number from {least} to {greatest}.");
            }
        });
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var today = Today.Of(clock);
            var scenario = options.Read(parsed, today);
            files.Check(parsed, options.Inputs(parsed, scenario));
            var builds = options.Builds(parsed, scenario);
            var exercise = LongWork.Run("Drawing an exercise", progress => Exercise.Draw(scenario, builds[0],
                options.Days(parsed, scenario), parsed.GetValue(seed) ?? 1,
                parsed.GetValue(causes) ?? Exercise.MostCauses, options.Asked(parsed, today),
                progress, cancellation));
            var check = files.Checked(parsed, exercise, cancellation);
            var written = files.Write(parsed, exercise, options.Named(parsed));
            if (options.IsJson(parsed))
                Console.Out.WriteLine(ExerciseJson.Text(exercise, check, parsed.GetValue(hint), written));
            else
                Tell(exercise, check, parsed.GetValue(hint), written, [.. builds.Skip(1)]);
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    private static void Tell(Exercise exercise, ExerciseCheck? check, int? hint,
        IReadOnlyList<(string What, string File)> written, IReadOnlyList<string> others)
    {
        var console = AnswerText.Console();
        if (others.Count > 0)
            Paragraph.Write(console, $"Taken: the build \"{exercise.Rig.Build}\". Others: --build {string.Join(", ", others)}.");
        if (check is null)
        {
            foreach (var line in ExerciseSentences.Task(exercise))
                Paragraph.Write(console, line);
        }
        else
        {
            var lines = ExerciseSentences.Of(check);
            Paragraph.Write(console, lines[0], bold: true);
            foreach (var line in lines.Skip(1))
                Paragraph.Write(console, line);
        }
        foreach (var line in hint is { } step ? ExerciseSentences.Hints(exercise, step) : [])
            Paragraph.Write(console, line);
        foreach (var (what, file) in written)
            Console.Out.WriteLine($"{what}: {ShownText.Of(file)}");
        Paragraph.Write(console, RigScenarios.Answers.AnswerCautions.Always);
    }
}
