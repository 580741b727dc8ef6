using System.Globalization;
using RigScenarios.Days;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>What the fields allow one by one and together would be simulated for minutes: told before anything is run.</summary>
internal static class PlanBoundsCheck
{
    /// <summary>The longest day.</summary>
    public static Duration LongestDay { get; } = Duration.FromHours(168);

    /// <summary>The greatest number of takes in all days.</summary>
    public const int MostTakes = 10_000;

    /// <summary>Checks a scenario; every problem goes to the log.</summary>
    public static void Run(Scenario scenario, ReadLog log)
    {
        foreach (var (name, day) in scenario.Days)
        {
            if (day.Length > LongestDay)
                log.Error($"days.{name}.blocks", Text($"The blocks of this day take {day.Length.Hours:0.#} h together."),
                    Text($"at most {LongestDay.Hours:0} h; a day of work usually has 8 to 14 h, ")
                        + "and what comes after a night is a day of its own");
        }

        var takes = (from day in scenario.Days
                     from block in day.Value.Blocks
                     where block.Value.Cycle is not null
                     select (Path: $"days.{day.Key}.blocks.{block.Key}.cycle", Block: block.Value, Count: Takes(block.Value)))
            .ToList();
        if (takes.Sum(block => block.Count) <= MostTakes)
            return;
        var most = takes.MaxBy(block => block.Count);
        log.Error(
            most.Path, Text($"{most.Block.Length.Hours:0.#} h of takes of {most.Block.Cycle!.Take.Seconds:0.#} s ")
                + Text($"and resets of {most.Block.Cycle.Reset.Seconds:0.#} s are {most.Count:N0} takes."),
            Text($"at most {MostTakes:N0} takes in all days, such as \"{{take: 4 min, reset: 6 min}}\""));
    }

    private static double Takes(DayBlock block) =>
        Math.Ceiling(block.Length.Seconds / (block.Cycle!.Take.Seconds + block.Cycle.Reset.Seconds));

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
