using System.CommandLine;
using System.Globalization;
using RigScenarios.Cli.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Tables;

namespace RigScenarios.Cli.Commands;

/// <summary><c>about TABLE</c>: what the table of a sweep rests on, read from the table; and the scenario out of it, to be run
/// again.</summary>
internal static class AboutCommand
{
    public static Command Create()
    {
        var table = new Argument<string>("TABLE") { Description =
            "A table that \"sweep\" or \"gather\" wrote (.csv or .parquet)." };
        var scenario = new Option<string?>("--scenario") { Description =
            "Write the scenario that the table is of, with its changes and all its parts (.yaml).", HelpName = "FILE" };
        var command = new Command("about",
            "What does this table rest on? Reads from the table of a sweep: the command, version, seed and day that it was made "
                + "with, its columns with units, and whether it is whole and as it was written.") { table, scenario };
        command.SetAction((parsed, cancellation) => Guard.RunAsync(async () =>
        {
            var path = parsed.GetRequiredValue(table);
            var target = parsed.GetValue(scenario);
            if (target is not null)
                OutputFile.Check("--scenario", target, "again.yaml", path, CsvTable.AboutFile(path));
            var (part, problems) = await TablePartFile.TryOpenAsync(path, cancellation);
            if (part is null)
                throw new ScenarioProblemsException(problems);
            if (await part.FaultAsync(cancellation) is { } fault)
                throw new ScenarioProblemsException([new Diagnostic(Severity.Error, path, TextPlace.None, "", fault,
                    "the table as it was written")]);
            if (target is not null)
                TextFile.Write(target, part.Head.Identity.Scenario);
            Tell(part.Head, path, target);
            return ExitCodes.Done;
        }));
        return command;
    }

    private static void Tell(TableHead head, string path, string? target)
    {
        var (console, identity) = (AnswerText.Console(), head.Identity);
        var share = head.Part.IsWhole ? "" : $", part {head.Part} of {identity.Rows}";
        Paragraph.Write(console, string.Create(CultureInfo.InvariantCulture,
            $"{ShownText.Of(path)}: {head.Count} scenarios{share}, whole and as it was written."), bold: true);
        foreach (var (what, value) in ((string, string?)[])
            [("made by", identity.Command), ("version", identity.Version),
            ("scenario", $"{identity.File}, SHA-256 {identity.ScenarioDigest}"), ("build", identity.Build),
            ("days", string.Join(", ", identity.Days)),
            ("asked on", identity.AskedOn?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            ("sampling", identity.Sampling), ("seed", identity.Seed?.ToString(CultureInfo.InvariantCulture)),
            ("computed", identity.Way)])
        {
            if (!string.IsNullOrEmpty(value))
                Paragraph.Write(console, value, $"  {what,-9} ");
        }
        Paragraph.Heading(console, "Columns");
        foreach (var column in identity.Columns)
            Paragraph.Write(console, $"{column.Name}: {column.Meaning}", "  - ");
        if (target is not null)
            Console.Out.WriteLine($"Its scenario: {ShownText.Of(target)}");
    }
}
