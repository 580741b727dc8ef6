using System.Globalization;
using RigScenarios.Answers;
using RigScenarios.Answers.Years;
using RigScenarios.Scenarios;
using Spectre.Console;
using UnitsNet;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes the years ahead for people: when to replace, what the days still do, how to keep, what it costs; then what it
/// rests on, and the cautions.</summary>
internal static class AgingText
{
    /// <summary>Writes it.</summary>
    /// <param name="console">The console.</param>
    /// <param name="result">The years.</param>
    /// <param name="others">Which build was taken; null where there is only one.</param>
    /// <param name="folder">Where the tables are; null where nobody wanted them.</param>
    public static void Write(IAnsiConsole console, YearsResult result, string? others, string? folder)
    {
        var told = YearsSentences.Told(result);
        var answer = result.Now;
        Paragraph.Write(console, $"{answer.Scenario.Title}. {AnswerText.Title(answer)}. From "
            + $"{result.From.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}.");
        foreach (var battery in told)
            Paragraph.Write(console, YearsSentences.Replace(result, battery), bold: true);
        Paragraph.Write(console, YearsSentences.Lasting(result), bold: true);
        if (others is not null)
            Paragraph.Write(console, others);
        foreach (var battery in told)
        {
            Paragraph.Heading(console, told.Count > 1 ? $"Age now, {battery.Name}" : "Age now");
            foreach (var line in AgingSentences.HowOld(battery.Known))
                Paragraph.Write(console, line, "  - ");
            if (!battery.Known.IsMeasured)
                Paragraph.Write(console, AgingSentences.Measure, "  - ");
        }
        Ahead(console, result, told);
        Keeping(console, result);
        Paragraph.Heading(console, "Cost");
        foreach (var battery in told)
            Paragraph.Write(console, (told.Count > 1 ? $"{battery.Name}: " : "") + YearsSentences.Cost(battery), "  - ");
        Paragraph.Heading(console, "Rests on");
        foreach (var line in YearsSentences.RestsOn(result).Distinct())
            Paragraph.Write(console, line, "  - ");
        AnswerText.Cautions(console, YearsSentences.Cautions(result));
        if (folder is not null)
        {
            console.WriteLine();
            console.Profile.Out.Writer
                .WriteLine($"Tables: {string.Join(", ", YearsTables.Names.Select(name => $"{name}.csv"))} in "
                + ShownText.Of(folder));
        }
    }

    private static void Ahead(IAnsiConsole console, YearsResult result, IReadOnlyList<BatteryOutlook> told)
    {
        Paragraph.Heading(console, "The years ahead (in brackets the spread of the published fits)");
        var isCold = result.Days[0].Cold is not null;
        List<IReadOnlyList<string>> rows =
        [
            [
                "years", .. told.Select(one => told.Count > 1 ? $"{one.Name}, %" : "capacity left, %"), "left after wrap, h:min",
                .. isCold ? [$"at {result.Question.Cold.DegreesCelsius:0} °C".Replace('-', '−')] : Array.Empty<string>(),
            ],
            .. result.Days.Select(row => (IReadOnlyList<string>)
            [
                row.Years.ToString("0.#", CultureInfo.InvariantCulture), .. told.Select(one => Share(At(one, row))),
                YearsSentences.Clock(row.Days, row.Least, row.Greatest),
                .. isCold ? [YearsSentences.Clock(row.Cold!, row.ColdLeast!, row.ColdGreatest!)] : Array.Empty<string>(),
            ]),
        ];
        var widths = Enumerable.Range(0, rows[0].Count).Select(column => rows.Max(row => row[column].Length)).ToList();
        foreach (var row in rows)
            console.Profile.Out.Writer
                .WriteLine($"  {string.Join("   ", row.Select((cell, i) => cell.PadRight(widths[i])))}".TrimEnd());
    }

    private static AgeOnDate At(BatteryOutlook battery, DaysOnDate row) =>
        battery.Ages.MinBy(age => Math.Abs(age.Years - row.Years))!;

    private static string Share(AgeOnDate age) =>
        $"{Percent(age.Age.CapacityLeft)} ({Percent(age.Least.CapacityLeft)} to {Percent(age.Greatest.CapacityLeft)})";

    private static string Percent(Ratio share) => share.Percent.ToString("0", CultureInfo.InvariantCulture);

    private static void Keeping(IAnsiConsole console, YearsResult result)
    {
        Paragraph.Heading(console, "How to keep them");
        Paragraph.Write(console, YearsSentences.Keeping(result), "  ");
        foreach (var way in result.Storage)
            Paragraph.Write(console, YearsSentences.Of(result, way), "  - ");
    }
}
