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
            foreach (var line in AgingSentences.Of(battery.Known))
                Paragraph.Write(console, line, "  - ");
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
            console.Profile.Out.Writer.WriteLine($"Tables: {string.Join(", ", YearsTables.Names.Select(name => $"{name}.csv"))} in "
                + ShownText.Of(folder));
        }
    }

    private static void Ahead(IAnsiConsole console, YearsResult result, IReadOnlyList<BatteryOutlook> told)
    {
        Paragraph.Heading(console, "The years ahead (in brackets the published fits)");
        var table = new Table().Border(TableBorder.None);
        var isCold = result.Days[0].Cold is not null;
        var cold = $"At {result.Question.Cold.DegreesCelsius:0} °C";
        foreach (var heading in (string[])["Years", .. told.Select(one => told.Count > 1 ? $"{one.Name}, %" : "Capacity, %"),
            "Left after wrap", .. isCold ? [cold] : Array.Empty<string>()])
            table.AddColumn(new TableColumn(Markup.Escape(heading)).NoWrap());
        foreach (var row in result.Days)
            table.AddRow([.. ((IEnumerable<string>)
            [
                $"{row.Years:0.#}", .. told.Select(one => Share(At(one, row))),
                YearsSentences.Left(row.Days, row.Least, row.Greatest),
                .. isCold ? [YearsSentences.Left(row.Cold!, row.ColdLeast!, row.ColdGreatest!)] : Array.Empty<string>(),
            ]).Select(Markup.Escape)]);
        console.Write(table);
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
            Paragraph.Write(console, YearsSentences.Of(way), "  - ");
    }
}
