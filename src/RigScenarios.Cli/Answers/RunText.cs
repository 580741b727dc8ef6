using RigScenarios.Answers;
using RigScenarios.Limits;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes the whole answer for people: what a tired person must know on the first screen of 24 lines, then the
/// details.</summary>
internal static class RunText
{
    /// <summary>The headline and the questions: all that is known before a search begins.</summary>
    /// <param name="console">The console.</param>
    /// <param name="answers">The answers of all builds, the one with the least left first: it is the one that is shown.</param>
    public static void Verdict(IAnsiConsole console, IReadOnlyList<RigAnswer> answers)
    {
        AnswerText.Headline(console, answers[0]);
        if (answers.Count > 1)
        {
            var others = answers.Skip(1).Select(other => $"{AnswerText.Title(other)} ({other.Verdict.InWords()})");
            Paragraph.Write(console,
                $"Of {answers.Count} builds this one has the least left. The others: {string.Join(", ", others)}.");
        }
        console.WriteLine();
        AnswerText.Questions(console, answers[0]);
    }

    /// <summary>The first set that makes it work, or what was tried and what stays in the way.</summary>
    /// <param name="console">The console.</param>
    /// <param name="sets">What was found.</param>
    public static void FirstWay(IAnsiConsole console, WorkingSets sets)
    {
        if (WouldWorkSentences.Heading(sets) is not { } heading)
            return;
        Paragraph.Heading(console, heading);
        foreach (var line in WouldWorkSentences.InTheWay(sets))
            Paragraph.Write(console, line, "  ");
        if (sets.Sets.Count > 0)
            Paragraph.Write(console, WouldWorkSentences.Of(sets.Sets[0]), "  1. ");
    }

    /// <summary>What stands below the cautions: the other ways, the other builds, the details.</summary>
    /// <param name="console">The console.</param>
    /// <param name="answers">The answers, the one that is shown first.</param>
    /// <param name="sets">What would make it work; null where nobody looked.</param>
    /// <param name="leading">The assumptions that move it most; null where nobody looked.</param>
    public static void Rest(
        IAnsiConsole console, IReadOnlyList<RigAnswer> answers, WorkingSets? sets, IReadOnlyList<AssumptionEffect>? leading)
    {
        var answer = answers[0];
        RestsOn(console, leading);
        if (sets is { Sets.Count: > 1 })
        {
            Paragraph.Heading(console, "Other ways");
            for (var i = 1; i < sets.Sets.Count; i++)
                Paragraph.Write(console, WouldWorkSentences.Of(sets.Sets[i]), $"  {i + 1}. ");
        }
        if (answers.Count > 1)
        {
            Paragraph.Heading(console, "The other builds (--build NAME shows one)");
            foreach (var other in answers.Skip(1))
                Paragraph.Write(console, $"{other.Build}: {AnswerSentences.Headline(other)}", "  - ");
        }
        AnswerText.StaysBehind(console, answer);
        Devices(console, answer);
        Age(console, answer);
        AnswerText.Details(console, answer);
        Assumed(console, answer, leading);
        if (sets is { Sets.Count: > 0 })
            FirstWayAsOptions(console, sets.Sets[0]);
        if (answer.Scenario.Note is { } note)
        {
            Paragraph.Heading(console, "About this file");
            Paragraph.Write(console, note, "  ");
        }
        // The end is what still stands on the screen when all of it has run through.
        console.WriteLine();
        Paragraph.Write(console, $"{AnswerText.Title(answer)}. {AnswerSentences.Headline(answer)}", bold: true);
    }

    // Straight to the console: an option that is broken over two lines can't be copied.
    private static void FirstWayAsOptions(IAnsiConsole console, WorkingSet set)
    {
        Paragraph.Heading(console, "The first way as options of the same command (--json has those of each way)");
        foreach (var setting in set.Settings)
            console.Profile.Out.Writer.WriteLine($"  --set \"{setting}\"");
    }

    private static void Devices(IAnsiConsole console, RigAnswer answer)
    {
        var times = new AnswerTimes(answer.Plan.Days);
        Paragraph.Heading(console, "Devices");
        var stopped = answer.Simulation.Devices.Values.Where(device => device.FirstStop is not null)
            .OrderBy(device => device.FirstStop!.At.Seconds).GroupBy(device => device.FirstStop!);
        foreach (var group in stopped)
        {
            var names = group.Select(device => device.Title + (device.Essential ? " (essential)" : ""));
            var (stop, verb) = (group.Key, group.Count() == 1 ? "stops" : "stop");
            Paragraph.Write(console,
                $"{string.Join(", ", names)} {verb} {times.When(stop.At)} in {times.Title(stop.Day, stop.Block)}: "
                + $"{AnswerSentences.Because(answer, stop.Reason)}.", "  - ");
        }
        var running = answer.Simulation.Devices.Values.Where(device => device.FirstStop is null)
            .Select(device => device.Title).ToList();
        if (running.Count > 0)
            Paragraph.Write(console, $"Run whenever they are wanted, planned swaps aside: {string.Join(", ", running)}.", "  - ");
    }

    private static void Age(IAnsiConsole console, RigAnswer answer)
    {
        var lines = AgeOfAnswer.Lines(answer);
        if (lines.Count == 0)
            return;
        Paragraph.Heading(console, "Age (rigscenarios aging tells the years ahead)");
        foreach (var line in lines)
            Paragraph.Write(console, line, "  - ");
    }

    private static void RestsOn(IAnsiConsole console, IReadOnlyList<AssumptionEffect>? leading)
    {
        if (leading is not { Count: > 0 })
            return;
        Paragraph.Heading(console, "Rests on");
        foreach (var rest in LeadingAssumptions.RestsOn(leading))
            Paragraph.Write(console, $"{rest.Text} ({rest.Path})", "  - ");
    }

    private static void Assumed(IAnsiConsole console, RigAnswer answer, IReadOnlyList<AssumptionEffect>? leading)
    {
        Paragraph.Heading(console, "Assumed");
        foreach (var sentence in NotPlanned.Of(answer.Scenario, answer.Build, answer.Days.Count))
            Paragraph.Write(console, sentence, "  - ");
        var moving = leading is null ? "" : leading.Count > LeadingAssumptions.Told
            ? " What moves the answer most stands under \"Rests on\"; the others move it less."
            : " None but those under \"Rests on\" moves it by a minute.";
        if (leading is { Count: 0 })
            moving = " None of them moves it by a minute.";
        Paragraph.Write(console,
            $"{answer.Assumed.Count} figures in all are assumed because no file gives them; --json lists them.{moving}",
            "  - ");
    }
}
