using RigScenarios.Answers;
using RigScenarios.Simulation;
using Spectre.Console;
using UnitsNet;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes for people the part of the answer that is about the days: the verdict first, then swaps, times without the
/// rig and batteries.</summary>
internal static class DayText
{
    public static void Write(IAnsiConsole console, IReadOnlyList<DayAnswer> answers, string file)
    {
        foreach (var answer in answers)
        {
            if (answer != answers[0])
                console.WriteLine();
            Detail(console, answer);
            AnswerText.WayOut(console, answer.Answer, file);
        }
        AnswerText.Cautions(console, answers.SelectMany(item => AnswerCautions.Of(item.Answer)));
    }

    private static void Detail(IAnsiConsole console, DayAnswer day)
    {
        var answer = day.Answer;
        AnswerText.Headline(console, answer);
        console.WriteLine();
        AnswerText.Questions(console, answer, QuestionKind.Power);
        AnswerText.StaysBehind(console, answer);
        Swaps(console, answer);
        Downs(console, answer);
        Batteries(console, answer);
        Chargers(console, answer);
        Days(console, answer);
        if (day.Least is { } least)
            Least(console, day, least);
        Assumed(console, answer);
    }

    private static void Swaps(IAnsiConsole console, RigAnswer answer)
    {
        var swaps = answer.Simulation.Swaps;
        if (swaps.Count == 0)
        {
            Paragraph.Heading(console, "No battery is swapped.");
            return;
        }
        var least = answer.Simulation.LeastChargeAtSwap is { } charge
            ? $", the emptiest battery comes off with {charge.Percent:0} %" : "";
        Paragraph.Heading(console, $"{(swaps.Count == 1 ? "One swap" : $"{swaps.Count} swaps")}{least}");
        var before = answer.Balance is { } balance ? BalanceWords.BeforeSwap(balance) : null;
        if (before is not null)
            Paragraph.Write(console, $"At every swap: {before}", bold: true);
        var times = new AnswerTimes(answer.Plan.Days);
        var table = Of("When", "Block", "Comes off", "Goes on", "Before it");
        foreach (var swap in swaps)
        {
            string?[] first = [swap.Forced ? "the rig had stopped" : null, before is null ? null : "lock the tilt"];
            Row(table, times.At(swap.Time), times.Title(swap.Day, swap.Block),
                swap.Off is { } off ? $"{off}, {Percent(swap.ChargeOff)}" : "none",
                $"{swap.On}, {Percent(swap.ChargeOn)}", string.Join("; ", first.OfType<string>()));
        }
        console.Write(table);
    }

    private static void Downs(IAnsiConsole console, RigAnswer answer)
    {
        var result = answer.Simulation;
        var times = new AnswerTimes(answer.Plan.Days);
        var planned = result.DownTimes.Where(down => down.IsPlanned).ToList();
        var table = Of("From", "To", "Without", "In", "Reason");
        foreach (var down in result.DownTimes.Except(planned))
        {
            Row(table, times.At(down.Start), times.At(down.End), result.Devices[down.Device].Title,
                DayMoments.Of(down, result, answer.Plan), Reason(answer, down));
        }
        if (table.Rows.Count > 0)
        {
            Paragraph.Heading(console, "Times without an essential device");
            console.Write(table);
        }
        if (planned.Count == 0)
            return;
        var most = planned.GroupBy(down => down.Device).Max(group => group.Sum(down => (down.End - down.Start).Seconds));
        Paragraph.Write(console,
            $"Planned swaps and the restarts after them: {planned.Select(down => down.Start).Distinct().Count()}, "
            + $"together {AnswerTimes.Length(Duration.FromSeconds(most))}.");
    }

    private static void Batteries(IAnsiConsole console, RigAnswer answer)
    {
        var result = answer.Simulation;
        var table =
            Of(["Battery", "Part", .. result.Days.Select(day => result.Days.Count == 1 ? "From and to" : $"Day {day.Number}"),
            "To the rig", "Charged", "Wall"]);
        foreach (var (name, battery) in result.Batteries)
        {
            Row(table, [name, answer.Plan.Batteries[name].Part.Name,
                .. result.Days.Select(day => $"{day.ChargeAtStart[name].Percent:0} to {Percent(day.ChargeAtEnd[name])}"),
                WattHours(battery.Delivered), WattHours(battery.Charged), WattHours(battery.FromWall)]);
        }
        Paragraph.Heading(console, "Batteries, with the charge at the begin and at the end of each day");
        console.Write(table);
    }

    private static void Chargers(IAnsiConsole console, RigAnswer answer)
    {
        var chargers = ChargerWords.Of(answer.Plan);
        if (chargers.Count == 0)
            return;
        Paragraph.Heading(console, "Chargers");
        foreach (var charger in chargers)
            Paragraph.Write(console, charger, "  - ");
    }

    private static void Days(IAnsiConsole console, RigAnswer answer)
    {
        Paragraph.Heading(console, "Days");
        foreach (var day in answer.Simulation.Days)
        {
            var planned = answer.Plan.Days[day.Number - 1];
            var clock = planned.Starts is null ? AnswerTimes.Length(planned.Length)
                : $"{DayPlanWords.Clock(day.Start, 1)} to {DayPlanWords.Clock(day.End, 1)}";
            var wall = day.FromWall.WattHours > 0 ? $", {WattHours(day.FromWall)} from the wall, the night after it too" : "";
            Paragraph.Write(console,
                $"Day {day.Number}, {planned.Title ?? answer.Days[day.Number - 1]}, {clock}: "
                    + $"{(day.Completes ? "lasts" : "does not last")}; "
                + $"{WattHours(day.FromPacks)} from the batteries{wall}.", "  - ");
        }
    }

    private static void Least(IAnsiConsole console, DayAnswer day, LeastKitResult least)
    {
        Paragraph.Heading(console, "The least kit");
        Paragraph.Write(console, DayPlanWords.Least(least, day.Wish));
        var failed = least.Tried.Where(trial => !trial.Survives).ToList();
        if (failed.Count == 0)
            return;
        var table = Of("Batteries", "Bays", "Where it fails");
        foreach (var trial in failed.Where(trial => trial.Simulated))
            Row(table, string.Join(", ", trial.Batteries), $"{trial.BayCount}", trial.Where);
        if (table.Rows.Count > 0)
            console.Write(table);
        var proven = failed.Count(trial => !trial.Simulated);
        if (proven > 0)
            Paragraph.Write(console,
                $"{proven} more hold less energy than the essential devices take, and were not run; --json lists them.");
    }

    private static void Assumed(IAnsiConsole console, RigAnswer answer)
    {
        Paragraph.Heading(console, "Assumed");
        foreach (var sentence in NotPlanned.Of(answer.Scenario, answer.Build, answer.Days.Count))
            Paragraph.Write(console, sentence, "  - ");
        // Batteries of one part share what is assumed of it.
        var count = answer.Simulation.Assumed.Values.SelectMany(values => values).Distinct().Count();
        Paragraph.Write(console, $"{count} figures of the batteries are assumed because no file gives them; --json lists them.",
            "  - ");
    }

    private static string Reason(RigAnswer answer, DownTime down) => AnswerSentences.Because(answer, down.Reason)
        + (down.Awaits is { } awaits ? $"; {AnswerSentences.Because(new(awaits))}" : "");

    private static Table Of(params IEnumerable<string> columns) =>
        new Table().Border(TableBorder.Simple).AddColumns([.. columns.Select(Markup.Escape)]);

    private static void Row(Table table, params IEnumerable<string> cells) => table.AddRow(cells.Select(cell => new Text(cell)));

    private static string Percent(Ratio? share) => share is { } known ? $"{known.Percent:0} %" : "";

    private static string WattHours(Energy energy) => $"{energy.WattHours:0} Wh";
}
