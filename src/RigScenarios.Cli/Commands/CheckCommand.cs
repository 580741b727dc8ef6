using System.CommandLine;
using RigScenarios.Files;
using RigScenarios.Fits.Notes;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary><c>check FILE…</c>: lists every problem of scenarios, parts files and field notes.</summary>
internal static class CheckCommand
{
    public static Command Create()
    {
        var files = new Argument<string[]>("FILE") { Description = "Scenarios, parts files or field notes.",
            Arity = ArgumentArity.OneOrMore };
        var command = new Command("check", "List every problem of scenarios, parts files and field notes.") { files };
        command.SetAction((parsed, _) => Guard.RunAsync(() => Task.FromResult(Check(parsed.GetRequiredValue(files)))));
        return command;
    }

    private static int Check(string[] files)
    {
        var errors = 0;
        foreach (var file in files)
        {
            var problems = ScenarioFile.IsPartsFile(file) ? ScenarioFile.CheckParts(file)
                : FieldNotesFile.IsFieldNotes(file) ? FieldNotesFile.TryRead(file).Problems : ScenarioFile.TryRead(file).Problems;
            foreach (var problem in problems)
                Console.Out.WriteLine(problem);
            var found = problems.Count(problem => problem.Severity == Severity.Error);
            errors += found;
            Console.Out.WriteLine(ShownText.Of(found == 0 ? $"{file}: no errors"
                : $"{file}: {found} error{(found == 1 ? "" : "s")}"));
        }
        return errors == 0 ? ExitCodes.Done : ExitCodes.BadInput;
    }
}
