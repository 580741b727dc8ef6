using RigScenarios.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using Spectre.Console;
using UnitsNet;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes for people how the days go: the answer first, then swaps, down times and batteries, then what it rests on.</summary>
internal static class DayText
{
    public static void Write(IAnsiConsole console, Scenario scenario, IReadOnlyList<DayAnswer> answers)
    {
        console.MarkupLine($"[bold]{Markup.Escape(scenario.Title)}[/]");
        if (scenario.Note is { } note)
            console.MarkupLine(Markup.Escape(note.Trim()));
        foreach (var answer in answers)
            Detail(console, answer);
        console.MarkupLine("[bold]Mind[/]");
        foreach (var caution in answers.SelectMany(answer => DayPlanWords.Cautions(answer.Result, answer.Plan)).Distinct())
            console.WriteLine($"  - {caution}");
    }

    private static void Detail(IAnsiConsole console, DayAnswer answer)
    {
        var (plan, result) = (answer.Plan, answer.Result);
        console.WriteLine();
        console.MarkupLine($"[bold]{Markup.Escape(answer.BuildTitle)}[/]");
        console.MarkupLine($"[bold]{Markup.Escape(DayPlanWords.Answer(result, plan))}[/]");
        foreach (var sentence in answer.NotPlanned)
            console.WriteLine(sentence);
        console.WriteLine();
        Swaps(console, answer);
        Downs(console, answer);
        Batteries(console, answer);
        Days(console, answer);
        if (answer.Least is { } least)
            Least(console, answer, least);
        Assumed(console, result);
    }

    private static void Swaps(IAnsiConsole console, DayAnswer answer)
    {
        var result = answer.Result;
        if (result.Swaps.Count == 0)
        {
            console.WriteLine("No battery is swapped.");
            console.WriteLine();
            return;
        }
        var table = Of("When", "Block", "Comes off", "with", "Goes on", "with", "");
        foreach (var swap in result.Swaps)
        {
            Row(table, DayPlanWords.Clock(swap.Time, result.Days.Count), answer.BlockTitle(swap.Day, swap.Block), swap.Off ?? "none", Percent(swap.ChargeOff), swap.On, Percent(swap.ChargeOn),
                swap.Forced ? "the rig had stopped" : "");
        }
        Show(console, "Swaps", table);
    }

    private static void Downs(IAnsiConsole console, DayAnswer answer)
    {
        var result = answer.Result;
        if (result.DownTimes.Count == 0)
            return;
        var planned = result.DownTimes.Where(down => down.IsPlanned).ToList();
        var table = Of("Device", "From", "To", "In", "Why");
        foreach (var down in result.DownTimes.Except(planned))
        {
            Row(table, result.Devices[down.Device].Title, DayPlanWords.Clock(down.Start, result.Days.Count), DayPlanWords.Clock(down.End, result.Days.Count),
                DayPlanWords.Moment(down, result, answer.Plan), Cause(down));
        }
        if (table.Rows.Count > 0)
            Show(console, "Down times", table);
        if (planned.Count > 0)
        {
            var minutes = Duration.FromSeconds(planned.GroupBy(down => down.Device).Max(group => group.Sum(down => (down.End - down.Start).Seconds)));
            console.WriteLine($"Planned swaps and the restarts after them: {planned.Select(down => down.Start).Distinct().Count()}, together {DayWords.Length(minutes)}.");
            console.WriteLine();
        }
    }

    private static void Batteries(IAnsiConsole console, DayAnswer answer)
    {
        var result = answer.Result;
        var table = Of(["Battery", "Part", .. result.Days.Select(day => $"Day {day.Number}, from and to"), "To the rig", "Charged", "Wall"]);
        foreach (var (name, battery) in result.Batteries)
        {
            Row(table, [name, answer.Plan.Batteries[name].Part.Name, .. result.Days.Select(day => $"{Percent(day.ChargeAtStart[name])}, {Percent(day.ChargeAtEnd[name])}"),
                WattHours(battery.Delivered), WattHours(battery.Charged), WattHours(battery.FromWall)]);
        }
        Show(console, "Batteries", table);
    }

    private static void Days(IAnsiConsole console, DayAnswer answer)
    {
        var table = Of("Day", "", "From", "To", "Completes", "From the batteries", "From the wall, the night after it too");
        foreach (var day in answer.Result.Days)
            Row(table, $"{day.Number}", answer.DayTitle(day.Number), DayPlanWords.Clock(day.Start, 1), DayPlanWords.Clock(day.End, 1), day.Completes ? "yes" : "no", WattHours(day.FromPacks), WattHours(day.FromWall));
        Show(console, "Days", table);
        foreach (var day in answer.Result.Days.Skip(1))
        {
            console.WriteLine($"Day {day.Number} starts with {string.Join(", ", day.ChargeAtStart.Select(item => $"{item.Key} {Percent(item.Value)}"))}.");
        }
        console.WriteLine();
    }

    private static void Least(IAnsiConsole console, DayAnswer answer, LeastKitResult least)
    {
        console.MarkupLine("[bold]The least kit[/]");
        console.WriteLine(DayPlanWords.Least(least, answer.Wish));
        var failed = least.Tried.Where(trial => !trial.Survives).ToList();
        if (failed.Count > 0)
        {
            var table = Of("Batteries", "Bays", "Where it fails");
            foreach (var trial in failed)
                Row(table, string.Join(", ", trial.Batteries), $"{trial.BayCount}", trial.Simulated ? trial.Where : $"not run: {trial.Where}");
            console.Write(table);
        }
        console.WriteLine();
    }

    private static void Assumed(IAnsiConsole console, SimulationResult result)
    {
        // Batteries of one part share what is assumed of it.
        var lines = result.Assumed.SelectMany(item => item.Value.Select(value => (Battery: item.Key, Line: $"{value.Name}: {value.Value}"))).GroupBy(item => item.Line).ToList();
        if (lines.Count == 0)
            return;
        console.MarkupLine("[bold]Taken as given, because the files don't say[/] (a figure written into the file replaces one; --json gives fields and sources)");
        foreach (var line in lines)
            console.WriteLine($"  {(line.Count() == result.Batteries.Count ? "all" : string.Join(", ", line.Select(item => item.Battery).Distinct()))}: {line.Key}");
        console.WriteLine();
    }

    private static string Cause(DownTime down)
    {
        var cause = DayPlanWords.CauseInWords(down.Reason, down.Awaits);
        var reason = down.Reason.ToString();
        return reason.Contains(cause, StringComparison.Ordinal) ? reason : $"{cause}: {reason}";
    }

    private static void Show(IAnsiConsole console, string title, Table table)
    {
        console.MarkupLine($"[bold]{Markup.Escape(title)}[/]");
        console.Write(table);
    }

    private static Table Of(params string[] columns) => new Table().Border(TableBorder.Simple).AddColumns([.. columns.Select(Markup.Escape)]);

    private static void Row(Table table, params string[] cells) => table.AddRow(cells.Select(cell => new Text(cell)));

    private static string Percent(Ratio? share) => share is { } known ? $"{known.Percent:0} %" : "";

    private static string WattHours(Energy energy) => $"{energy.WattHours:0} Wh";
}
