using System.Globalization;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>What must hold between the swaps, the batteries that are swapped and the blocks.</summary>
internal static class SwapPolicyCheck
{
    // Longer than any swap that is planned: common practice, no source, says one to two minutes.
    private const double LongSwapMinutes = 10;

    /// <summary>Checks a scenario; every problem goes to the log.</summary>
    public static void Run(Scenario scenario, ReadLog log)
    {
        Warning(scenario, log);
        Reserve(scenario, log);
        SwapTime(scenario, log);
    }

    private static void Warning(Scenario scenario, ReadLog log)
    {
        if (scenario.Swaps.WarningVoltage is not { } warning)
            return;
        var lowest = Swapped(scenario)
            .Select(battery => (battery.Item, Part: scenario.PartOf(battery.Item)))
            .Where(battery => battery.Part is { Battery: { Energy.Joules: > 0, Voltage.Volts: > 0 } })
            .Select(battery => (battery.Item,
                Full: FullVoltage.TryOf(battery.Part!, out var full, out _, out _) ? full : double.NaN))
            .Where(battery => warning.Volts >= battery.Full)
            .OrderBy(battery => battery.Full).FirstOrDefault();
        if (lowest.Item is not null)
            log.Error(
                "swaps.warning-voltage",
                Text($"A full \"{lowest.Item}\" has {lowest.Full:0.0#} V, so ")
                    + Text($"{warning.Volts:0.0#} V would swap it at once, again and again."),
                "a voltage well below that of every full battery, such as \"13.2 V\" for one of 14.4 V");
    }

    private static void Reserve(Scenario scenario, ReadLog log)
    {
        if (scenario.Swaps.Reserve is not { } reserve)
            return;
        const string Accepted = "a share that the battery has to fall to, such as \"15 %\"";
        // With a bay it waits there until it is full.
        if (scenario.Chargers.Values.Any(charger => charger.Bays > 0))
            return;
        var low = Swapped(scenario).Where(battery => battery.Charge is { } charge && charge <= reserve);
        foreach (var (item, charge) in low.DistinctBy(battery => battery.Item))
        {
            var starts = Text($"\"{item}\" starts with {charge!.Value.Percent:0.#} %");
            log.Error("swaps.reserve", $"{starts}, so it would be swapped at once, and nothing charges it.", Accepted);
        }
    }

    private static void SwapTime(Scenario scenario, ReadLog log)
    {
        var time = scenario.Swaps.SwapTime;
        var shortest = scenario.Days
            .SelectMany(day => day.Value.Blocks, (day, block) => (Day: day.Key, Block: block.Key, block.Value.Length))
            .Where(block => block.Length < time).OrderBy(block => block.Length.Seconds).FirstOrDefault();
        var block = shortest.Block is null
            ? ""
            : Text($" The block \"{shortest.Block}\" of \"{shortest.Day}\" is over before, after {Minutes(shortest.Length)}.");
        if (time.Minutes > LongSwapMinutes)
        {
            log.Warning(
                "swaps.swap-time", $"Each swap takes {Minutes(time)} without a battery; one or two minutes are usual.{block}");
        }
        else if (block.Length > 0 && scenario.Batteries.Count > 0)
            log.Warning("swaps.swap-time", $"Each swap takes {Minutes(time)} without a battery.{block}");
    }

    // The batteries that take turns; without them those that the builds start with.
    private static IEnumerable<(string Item, Ratio? Charge)> Swapped(Scenario scenario) => scenario.Batteries.Count > 0
        ? scenario.Batteries.Values.Select(battery => (battery.Item, battery.Charge))
        : scenario.Builds.Values.Select(build => (build.Battery.Item, build.Battery.Charge));

    private static string Minutes(Duration time) => Text($"{time.Minutes:0.#} min");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
