using RigScenarios.Answers;
using RigScenarios.Limits;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>What every command says of an answer in the same words: the headline, the lines of the questions, a section, the
/// cautions. All sentences are those of the core.</summary>
internal static class AnswerText
{
    private const int TitleWidth = 18;
    private const int VerdictWidth = 10;

    /// <summary>Standard output; plain 100 columns wide where it is no terminal.</summary>
    public static IAnsiConsole Console()
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings());
        if (!console.Profile.Out.IsTerminal)
            console.Profile.Width = 100;
        return console;
    }

    /// <summary>The build's name for people.</summary>
    /// <param name="answer">The answer.</param>
    public static string Title(RigAnswer answer) => answer.TheBuild.Title ?? answer.Build;

    /// <summary>The answers, the one with the least left first.</summary>
    /// <param name="answers">The answers.</param>
    public static IReadOnlyList<RigAnswer> LeastFirst(IEnumerable<RigAnswer> answers) =>
        [.. answers.OrderByDescending(answer => answer.Verdict).ThenBy(answer => answer.Tightest.Reserve.Time.Seconds)];

    /// <summary>The title of the scenario with build and days, and the headline.</summary>
    /// <param name="console">The console.</param>
    /// <param name="answer">The answer.</param>
    public static void Headline(IAnsiConsole console, RigAnswer answer)
    {
        Paragraph.Write(console, $"{answer.Scenario.Title}. {Title(answer)}. {Days(answer)}.");
        Paragraph.Write(console, AnswerSentences.Headline(answer), bold: true);
    }

    /// <summary>The lines of the questions; of all, or of those that are named.</summary>
    /// <param name="console">The console.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="kinds">The questions; none for all.</param>
    public static void Questions(IAnsiConsole console, RigAnswer answer, params IReadOnlyCollection<QuestionKind> kinds)
    {
        foreach (var line in AnswerSentences.Questions(answer).Where(line => kinds.Count == 0 || kinds.Contains(line.Kind)))
            Question(console, line.Title, line.Verdict, line.Words);
    }

    /// <summary>One question in a line.</summary>
    /// <param name="console">The console.</param>
    /// <param name="title">Its name.</param>
    /// <param name="verdict">Its verdict.</param>
    /// <param name="words">What it rests on.</param>
    public static void Question(IAnsiConsole console, string title, Verdict verdict, string words) =>
        Paragraph.Write(console, words, title.PadRight(TitleWidth) + verdict.InWords().PadRight(VerdictWidth));

    /// <summary>The details of some questions: least left first, what holds with ease in one line.</summary>
    /// <param name="console">The console.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="kinds">The questions; none for all.</param>
    public static void Details(IAnsiConsole console, RigAnswer answer, params IReadOnlyCollection<QuestionKind> kinds)
    {
        foreach (var section in AnswerDetails.Of(answer).Where(section => kinds.Count == 0 || kinds.Contains(section.Kind)))
        {
            Paragraph.Heading(console, section.Heading);
            foreach (var line in section.Lines)
                Paragraph.Write(console, line, "  - ");
            if (section.Folded is { } folded)
                Paragraph.Write(console, folded, "  - ");
        }
    }

    /// <summary>The cautions, each once.</summary>
    /// <param name="console">The console.</param>
    /// <param name="cautions">The cautions, what matters most first.</param>
    public static void Cautions(IAnsiConsole console, IEnumerable<string> cautions)
    {
        Paragraph.Heading(console, "Cautions");
        foreach (var caution in cautions.Distinct())
            Paragraph.Write(console, caution, "  - ");
    }

    /// <summary>Where the way out of a "no" is found, for a command that shows one question only; nothing where all
    /// holds.</summary>
    /// <param name="console">The console.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="file">The scenario file.</param>
    public static void WayOut(IAnsiConsole console, RigAnswer answer, string file)
    {
        if (answer.Verdict is not (Verdict.Fails or Verdict.Close))
            return;
        console.WriteLine();
        // In one line: a command that is broken over two can't be copied.
        console.Profile.Out.Writer.WriteLine($"What would make it work: rigscenarios run {file} --build {answer.Build}");
    }

    /// <summary>What the batteries that stay behind cost the days; nothing where every one arrives.</summary>
    /// <param name="console">The console.</param>
    /// <param name="answer">The answer, of what arrives.</param>
    /// <param name="cancellation">Stops the run with everything there.</param>
    public static void StaysBehind(IAnsiConsole console, RigAnswer answer, CancellationToken cancellation = default)
    {
        if (ArrivalSentences.Cost(answer, answer.WithEverything(cancellation)) is not { } cost)
            return;
        var which = answer.Scenario.Builds.Count > 1 ? $" ({Title(answer)})" : "";
        Paragraph.Heading(console, $"What the days lose by what stays behind{which}");
        Paragraph.Write(console, cost, "  ");
    }

    /// <summary>The days in words.</summary>
    /// <param name="answer">The answer.</param>
    public static string Days(RigAnswer answer) =>
        answer.Days.Count == 1 ? answer.Plan.Days[0].Title ?? answer.Days[0] : $"{answer.Days.Count} days";
}
