using RigScenarios.Answers;
using RigScenarios.Balance;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes for people how builds balance: the verdict first, then where to set what, then the limits.</summary>
internal static class BalanceText
{
    public static void Write(IAnsiConsole console, IReadOnlyList<RigAnswer> answers, string file)
    {
        foreach (var answer in answers)
        {
            if (answer != answers[0])
                console.WriteLine();
            Detail(console, answer);
            AnswerText.WayOut(console, answer, file);
        }
        var builds = answers.Select(answer => answer.Balance).OfType<BuildBalance>().ToList();
        var changes = StanceSteps.All(builds);
        foreach (var steps in changes)
            Steps(console, steps);
        Assumed(console, builds, changes);
        // What the verdicts call for, then what this rig asks for, then what always holds.
        var called = answers.SelectMany(answer => AnswerCautions.Of(answer)
            .TakeWhile(caution => caution != AnswerCautions.Predicted(answer.Simulation.ExpectedError)));
        AnswerText.Cautions(
            console, [.. called, .. builds.SelectMany(BalanceWords.Cautions), .. answers.SelectMany(AnswerCautions.Of)]);
    }

    private static void Detail(IAnsiConsole console, RigAnswer answer)
    {
        AnswerText.Headline(console, answer);
        console.WriteLine();
        AnswerText.Questions(console, answer, QuestionKind.Balance, QuestionKind.Stand);
        if (answer.Balance is { } balance)
            Detail(console, balance, AnswerSentences.Questions(answer));
        AnswerText.Details(console, answer, QuestionKind.Balance, QuestionKind.Stand);
    }

    private static void Detail(IAnsiConsole console, BuildBalance balance, IReadOnlyList<QuestionLine> said)
    {
        console.WriteLine();
        // The line of the question may have said it already, or why nothing can be said.
        if (BalanceWords.Answer(balance) is var words && !balance.BalanceMissing.Contains(words)
            && said.All(line => line.Words != words))
            Paragraph.Write(console, words);
        string?[] lines = [BalanceWords.Setting(balance), BalanceWords.AsSet(balance), BalanceWords.Centre(balance)];
        foreach (var line in lines.OfType<string>())
            Paragraph.Write(console, line);
        var helps = BalanceHelp.Find(balance);
        if (helps.Count > 0)
        {
            Paragraph.Heading(console, "What to move");
            foreach (var help in helps.Take(4))
                Paragraph.Write(console, help.Words, "  - ");
        }
        if (balance.Cases.Count > 0)
        {
            Paragraph.Heading(console, "When something changes, camera plate and counterbalance left as they are");
            foreach (var happening in balance.Cases)
                Paragraph.Write(console, $"{happening.Part}, {happening.Title}: {HeadCaseWords.Of(happening)}", "  - ");
        }
        console.WriteLine();
        if (TripodWords.Tipping(balance) is { } tipping)
            Paragraph.Write(console, tipping);
        Paragraph.Write(console, TripodWords.Lifting(balance));
        if (balance.SizesMissing.Count > 0)
            return;
        var about = balance.Present?.CameraPlate ?? balance.Supports.Shoulder?.Pad ?? balance.Mass.Centre.X;
        var shares = balance.Mass.ForeAftShares(about).Take(5)
            .Select(share => $"{share.Key} {share.Value.NewtonMeters:+0.0;-0.0;0.0} N·m");
        Paragraph.Write(console, $"What weighs most, nose down positive: {string.Join(", ", shares)}.");
    }

    private static void Steps(IAnsiConsole console, StanceSteps steps)
    {
        Paragraph.Heading(console,
            $"From {steps.From.Name} to {steps.To.Name}: {steps.Change.Steps} steps, about {AnswerTimes.Length(steps.Time)}");
        if (steps.Change.Off.Count > 0)
            Paragraph.Write(console, $"comes off: {string.Join(", ", steps.Change.Off)}", "  ");
        if (steps.Change.On.Count > 0)
            Paragraph.Write(console, $"goes on: {string.Join(", ", steps.Change.On)}", "  ");
        if (steps.Change.Moved.Count > 0)
            Paragraph.Write(console, $"moves: {string.Join(", ", steps.Change.Moved.Select(Moved))}", "  ");
        if (steps.CameraPlateShift is { } shift)
            console.WriteLine(Math.Abs(shift.Millimeters) < 0.5 ? "  the camera plate stays where it is"
                : $"  the camera plate moves {shift.Millimeters:+0;-0} mm");
    }

    private static void Assumed(IAnsiConsole console, IReadOnlyList<BuildBalance> builds, IReadOnlyList<StanceSteps> changes)
    {
        var values = builds.SelectMany(balance => balance.Assumed).Concat(changes.Count > 0 ? [StanceSteps.UsualTimes] : []);
        var lines = values.Select(value => $"{value.Name} {value.Value}").Distinct().ToList();
        if (lines.Count == 0)
            return;
        Paragraph.Heading(console, "Assumed, because the file does not say (--json has the reasons and sources)");
        Paragraph.Write(console, $"{string.Join("; ", lines)}.", "  ");
    }

    private static string Moved(KeyValuePair<string, RigPoint> moved) =>
        $"{moved.Key} ({moved.Value.X.Millimeters:+0;-0;0} mm along, "
        + $"{moved.Value.Y.Millimeters:+0;-0;0} across, {moved.Value.Z.Millimeters:+0;-0;0} up)";
}
