using System.CommandLine;
using RigScenarios.Cli.Answers;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Tables;

namespace RigScenarios.Cli.Commands;

/// <summary><c>sweep FILE --over …</c>: one run for every combination of values, as a table.</summary>
internal static class SweepCommand
{
    /// <param name="clock">Gives today's date, for a battery's life without one, and the time that is over.</param>
    public static Command Create(TimeProvider clock)
    {
        var (options, asked) = (new ScenarioOptions(), new SweepOptions());
        var output = new Option<string>("--out") { Description =
            "The table to write: .csv or .parquet (docs/sweeps.md).", HelpName = "FILE", Required = true };
        var part = new Option<string?>("--part") { Description =
            "Only part K of N, for several machines; \"gather\" puts the parts together.", HelpName = "K/N" };
        var day = new Option<string?>("--asked-on") { Description =
            "The day for which ages of batteries and journeys without a date are asked; today if left out.", HelpName = "DATE" };
        var anew = new Option<bool>("--anew") { Description =
            "Begin anew, where rows of an earlier run are kept or the table is there already." };
        var command = new Command("sweep",
            "What changes along one field, or many, or with what isn't known exactly? Runs one build through the days for every "
                + "combination, up to millions, and writes a table. Stopped or killed, the same command goes on where it was.");
        options.AddTo(command);
        asked.AddTo(command);
        foreach (var option in (Option[])[output, part, day, anew])
            command.Add(option);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(async () =>
        {
            var scenario = options.Read(parsed);
            var file = SweepTableFile.Of("--out", parsed.GetRequiredValue(output), options.Inputs(parsed, scenario));
            if (parsed.GetValue(anew))
                file.Forget();
            using var kept = file.Kept(cancellation);
            var question = Question(parsed, scenario, options, asked) with
            {
                // A sweep that goes on asks for the day on which it began.
                Today = OptionValue.Read(parsed.GetValue(day), new DateFormat(), "--asked-on")
                    ?? kept?.Head.Identity.AskedOn ?? Today.Of(clock),
            };
            var way = SweepRun.WayOf(question, cancellation);
            var head = TableHead.Of(
                SweepIdentityOfQuestion.Of(question, way, Path.GetFileName(options.Named(parsed)), asked.Moved(parsed),
                    Again(parsed, question, options, asked)),
                parsed.GetValue(part) is { } text ? SweepPart.Parse(text, question.Plan.Count) : SweepPart.Whole);
            RefuseOther(file, kept, head);
            if (options.Builds(parsed, scenario) is { Count: > 1 } builds)
                Paragraph.Write(AnswerText.Console(), Taken(builds, head.Identity.Days));
            if (kept is null && !parsed.GetValue(anew) && await file.HoldsAsync(head, cancellation))
            {
                Console.Out.WriteLine($"{head.Count} runs are in {ShownText.Of(file.Path)} already, of the same scenario, "
                    + "command and version. To make them anew: --anew.");
                return ExitCodes.Done;
            }
            using var table = kept ?? file.Begin(head);
            if (table.Done > 0)
                Console.Out.WriteLine($"Going on: {table.Done} of {head.Count} runs are kept from before.");
            if (!await TakeAsync(table, question, file, clock, cancellation))
                return ExitCodes.Stopped;
            var notices = TableNotices.Of(table, question.Plan);
            await file.FinishAsync(table, cancellation);
            Tell(head, file, notices);
            return ExitCodes.Done;
        }));
        return command;
    }

    private static SweepQuestion Question(ParseResult parsed, Scenario scenario, ScenarioOptions options, SweepOptions asked) =>
        new(scenario, options.Builds(parsed, scenario)[0], options.Days(parsed, scenario), asked.Plan(parsed, scenario),
            asked.Columns(parsed, scenario));

    private static string Again(ParseResult parsed, SweepQuestion question, ScenarioOptions options, SweepOptions asked) =>
        string.Join(' ',
        [
            $"rigscenarios sweep {ShellWord.Of(Path.GetFileName(options.Named(parsed)))}",
            .. options.Changed(parsed).Select(change => $"--set {ShellWord.Of(change)}"),
            $"--build {ShellWord.Of(question.Build)}",
            .. question.Days.Select(day => $"--days {ShellWord.Of(day)}"),
            .. asked.Words(parsed, question.Plan),
        ]);

    private static void RefuseOther(SweepTableFile file, UnfinishedTable? kept, TableHead head)
    {
        if (kept is null)
            return;
        var differences = kept.Head.Identity.Differences(head.Identity);
        if (kept.Head.Part != head.Part)
            differences = [.. differences, $"the part ({kept.Head.Part} and {head.Part})"];
        if (differences.Count > 0)
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, file.Unfinished, TextPlace.None, "",
                $"It keeps {kept.Done} of {kept.Head.Count} rows of another sweep: different are "
                    + $"{string.Join("; ", differences)}.",
                "the same command with the same files; another name behind --out; or --anew, which throws these rows away")]);
    }

    /// <summary>Runs what is missing; false where it was stopped and rows are kept.</summary>
    private static async Task<bool> TakeAsync(UnfinishedTable table, SweepQuestion question, SweepTableFile file,
        TimeProvider clock, CancellationToken cancellation)
    {
        var (head, before) = (table.Head, table.Done);
        try
        {
            await WatchedWork.RunAsync("Sweeping", new SweepPace(before, head.Count, clock), clock, progress =>
            {
                var records = SweepRun.Records(question, head.First + before, head.Count - before,
                    new Counted(progress, before), cancellation);
                TableTaking.Take(table, records, clock, cancellation);
                return Task.CompletedTask;
            });
            return true;
        }
        catch (OperationCanceledException) when (table.Done > 0)
        {
            ErrorText.Line($"Stopped. {table.Done} of {head.Count} runs are kept in {file.Unfinished}; the same command goes on "
                + "from there.");
            return false;
        }
    }

    private static void Tell(TableHead head, SweepTableFile file, IReadOnlyList<string> notices)
    {
        var identity = head.Identity;
        var share = head.Part.IsWhole ? "" : $"part {head.Part} of a sweep: ";
        Console.Out.WriteLine($"{share}{head.Count} runs of the build \"{identity.Build}\" on {Named(identity.Days)} "
            + $"-> {ShownText.Of(file.Path)}");
        if (identity.Way.Length > 0)
            Paragraph.Write(AnswerText.Console(), identity.Way);
        foreach (var notice in notices)
            Console.Out.WriteLine($"Notice: {notice}");
    }

    // A table is of one build: which one is told before anything else.
    private static string Taken(IReadOnlyList<string> builds, IReadOnlyList<string> days) =>
        $"Taken: the build \"{builds[0]}\" on {Named(days)}. Others: --build {string.Join(", ", builds.Skip(1))}.";

    private static string Named(IReadOnlyList<string> days) =>
        $"the {(days.Count == 1 ? "day" : "days")} {string.Join(", ", days.Select(day => $"\"{day}\""))}";

    /// <summary>Adds what was done before.</summary>
    private sealed class Counted(IProgress<long> progress, long before) : IProgress<SweepProgress>
    {
        public void Report(SweepProgress value) => progress.Report(before + value.Done);
    }
}
