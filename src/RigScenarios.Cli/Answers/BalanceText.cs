using RigScenarios.Answers;
using RigScenarios.Balance;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using Spectre.Console;
using UnitsNet;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes for people how builds balance: the answer first, then where to set what, then what it rests on.</summary>
internal static class BalanceText
{
    public static void Write(IAnsiConsole console, Scenario scenario, IReadOnlyList<BuildBalance> builds)
    {
        console.MarkupLine($"[bold]{Markup.Escape(scenario.Title)}[/]");
        if (scenario.Note is { } note)
            console.MarkupLine(Markup.Escape(note.Trim()));
        foreach (var balance in builds)
            Detail(console, balance);
        var changes = StanceSteps.All(builds);
        foreach (var steps in changes)
            Steps(console, steps);
        Assumed(console, builds, changes);
        console.MarkupLine("[bold]Cautions[/]");
        foreach (var caution in builds.SelectMany(BalanceWords.Cautions).Distinct())
            console.WriteLine($"  - {caution}");
    }

    private static void Detail(IAnsiConsole console, BuildBalance balance)
    {
        console.WriteLine();
        console.MarkupLine($"[bold]{Markup.Escape(balance.Rig.Build.Title ?? balance.Name)}[/]");
        // Where nothing can be said the line of the question says why.
        if (BalanceWords.Answer(balance) is var answer && !balance.BalanceMissing.Contains(answer))
            console.MarkupLine($"[bold]{Markup.Escape(answer)}[/]");
        foreach (var question in BalanceWords.Questions(balance))
            console.WriteLine(question);
        if (BalanceWords.Setting(balance) is { } setting)
            console.WriteLine(setting);
        if (BalanceWords.AsSet(balance) is { } set)
            console.WriteLine(set);
        console.WriteLine(BalanceWords.Centre(balance));
        foreach (var missing in balance.BalanceMissing.Skip(1).Concat(balance.StandMissing.Skip(1)))
            console.WriteLine(missing);
        var helps = BalanceHelp.Find(balance);
        if (helps.Count > 0)
        {
            console.WriteLine();
            console.MarkupLine("[bold]What to move[/]");
            foreach (var help in helps.Take(4))
                console.WriteLine($"  {help.Words}");
        }
        if (balance.Cases.Count > 0)
        {
            console.WriteLine();
            console.MarkupLine("[bold]When something changes, camera plate and counterbalance left as they are[/]");
            foreach (var happening in balance.Cases)
                console.WriteLine($"  {happening.Part}, {happening.Title}: {HeadCaseWords.Of(happening)}");
        }
        console.WriteLine();
        if (TripodWords.Tipping(balance) is { } tipping)
            console.WriteLine(tipping);
        console.WriteLine(TripodWords.Lifting(balance));
        Limits(console, [.. balance.BalanceLimits, .. balance.StandLimits]);
        var about = balance.Present?.CameraPlate ?? balance.Supports.Shoulder?.Pad ?? balance.Mass.Centre.X;
        var shares = balance.Mass.ForeAftShares(about).Take(5)
            .Select(share => $"{share.Key} {share.Value.NewtonMeters:+0.0;-0.0;0.0} N·m");
        console.WriteLine($"What weighs most, nose down positive: {string.Join(", ", shares)}.");
    }

    /// <summary>The limits that are near or unknown; those with plenty left only by name.</summary>
    private static void Limits(IAnsiConsole console, IEnumerable<Limit> limitsOfBoth)
    {
        var margins = Limit.LeastLeftFirst(limitsOfBoth);
        var plenty = margins.Where(margin => margin.Share > 0.6).ToList();
        var unrated = margins.Where(margin => margin.Share is null).ToList();
        var told = unrated.Where(margin => margin.Worst is not Torque { NewtonMeters: < 0.1 })
            .Select(margin => $"{BalanceLimitWords.Name(margin)}: {BalanceLimitWords.Worst(margin)}");
        var limits = new Table().Border(TableBorder.Simple).AddColumns("Limit", "Worst", "Allowed", "Left", "From");
        foreach (var margin in margins.Except(plenty).Except(unrated))
            limits.AddRow(new[] { BalanceLimitWords.Name(margin), BalanceLimitWords.Worst(margin),
                BalanceLimitWords.Allowed(margin), BalanceLimitWords.Left(margin),
                margin.Basis.Source }.Select(text => new Text(text)));
        console.Write(limits);
        if (unrated.Count > 0)
            console.WriteLine($"No rating known, so no verdict: {string.Join("; ", told)}.");
        if (plenty.Count > 0)
            console.WriteLine($"With more than 60 % left: {string.Join("; ", plenty.Select(BalanceLimitWords.Name))}.");
    }

    private static void Steps(IAnsiConsole console, StanceSteps steps)
    {
        console.WriteLine();
        console.MarkupLine($"[bold]From {Markup.Escape(steps.From.Name)} to {Markup.Escape(steps.To.Name)}: "
            + $"{steps.Change.Steps} steps, about {Markup.Escape(DayWords.Length(steps.Time))}[/]");
        if (steps.Change.Off.Count > 0)
            console.WriteLine($"  comes off: {string.Join(", ", steps.Change.Off)}");
        if (steps.Change.On.Count > 0)
            console.WriteLine($"  goes on: {string.Join(", ", steps.Change.On)}");
        if (steps.Change.Moved.Count > 0)
            console.WriteLine($"  moves: {string.Join(", ", steps.Change.Moved.Select(Moved))}");
        if (steps.CameraPlateShift is { } shift)
            console.WriteLine(Math.Abs(shift.Millimeters) < 0.5 ? "  the camera plate stays where it is"
                : $"  the camera plate moves {shift.Millimeters:+0;-0} mm");
    }

    private static void Assumed(IAnsiConsole console, IReadOnlyList<BuildBalance> builds, IReadOnlyList<StanceSteps> changes)
    {
        var lines = builds.SelectMany(balance => balance.Assumed.Select(value => (balance.Name, Value: value))).ToList();
        if (changes.Count > 0)
            lines.Add(("steps", StanceSteps.UsualTimes));
        console.WriteLine();
        if (lines.Count == 0)
            return;
        console.MarkupLine("[bold]Assumed, because the files don't say[/] (a figure written into the file replaces one; "
            + "--json gives fields and sources)");
        foreach (var (name, value) in lines)
            console.WriteLine($"  {name}: {value.Name}: {value.Value} ({value.Why})");
        console.WriteLine();
    }

    private static string Moved(KeyValuePair<string, RigPoint> moved) =>
        $"{moved.Key} ({moved.Value.X.Millimeters:+0;-0;0} mm along, "
        + $"{moved.Value.Y.Millimeters:+0;-0;0} across, {moved.Value.Z.Millimeters:+0;-0;0} up)";
}
