using System.Globalization;
using RigScenarios.Days;

namespace RigScenarios.Answers;

/// <summary>When batteries are swapped, and how they are charged by day: only where several take turns.</summary>
internal static class SwapChanges
{
    public static IEnumerable<RigChange> Of(RigAnswer now)
    {
        if (now.Plan.Batteries.Count < 2)
            return [];
        return [.. Policy(now.Scenario.Swaps),
            .. now.Scenario.Chargers.SelectMany(charger => Charging(now, charger.Key, charger.Value)), .. Added(now)];
    }

    private static IEnumerable<RigChange> Policy(SwapPolicy swaps)
    {
        foreach (var percent in (int[])[10, 15, 20, 30])
        {
            if (swaps.Reserve is not { } reserve || reserve.Percent < percent - 1)
                yield return new($"Swap when a battery is down to {percent} %", [new("swaps.reserve", $"{percent} %")],
                    ChangeEffort.Nothing, "swap");
        }
        foreach (var more in swaps.WarningVoltage is null ? [] : (double[])[0.2, 0.4, 0.8])
        {
            var volts = Math.Round(swaps.WarningVoltage!.Value.Volts + more, 2);
            yield return new($"Swap earlier, at {volts:0.0} V", [new("swaps.warning-voltage", BatteryChanges.Text(volts, "V"))],
                ChangeEffort.Nothing, "swap");
        }
        if (!swaps.AtBlockEnds)
            yield return new("Swap at the end of each block as well, where a fuller battery is there",
                [new("swaps.at-block-ends", "yes")], ChangeEffort.Nothing, "swap at block ends");
        if (swaps.Next != NextBattery.FullestFirst)
            yield return new("Take the fullest battery next", [new("swaps.next", "fullest-first")], ChangeEffort.Nothing,
                "next battery");
        if (swaps.Allowed == SwapMoments.BetweenBlocks)
            yield return new("Swap between takes, not only between blocks", [new("swaps.allowed", "not-while-rolling")],
                ChangeEffort.Nothing, "swap moments");
    }

    private static IEnumerable<RigChange> Charging(RigAnswer now, string name, DayCharger charger)
    {
        var path = $"chargers.{name}";
        yield return new($"Take a charger with {charger.Bays + 1} bays for \"{name}\"",
            [new($"{path}.bays", (charger.Bays + 1).ToString(CultureInfo.InvariantCulture))], ChangeEffort.Buy, $"bays of {name}")
        {
            Price = now.Scenario.PartIds.Select(now.Scenario.FindPart).Where(part => part!.Charger is { } data
                && data.Bays > charger.Bays && data.Current >= charger.Current).Select(part => part!.Buy).FirstOrDefault(),
        };
        if (charger.PowerHours.Count > 0)
        {
            foreach (var hours in (int[])[1, 2])
            {
                var longer = charger.PowerHours.Select(range =>
                    $"\"{range.From.AddHours(-hours):HH:mm}-{range.To.AddHours(hours):HH:mm}\"");
                yield return new($"Have power at \"{name}\" {hours} h earlier and later",
                    [new($"{path}.power-hours", $"[{string.Join(", ", longer)}]")], ChangeEffort.Nothing, $"power of {name}");
            }
        }
        if (charger.Ambient is { DegreesCelsius: < 15 }
            || (charger.Ambient is null && now.Plan.Days.Any(day => day.Ambient is { DegreesCelsius: < 15 })))
            yield return new($"Put \"{name}\" into a room or vehicle at 20 °C", [new($"{path}.ambient", "20 °C")],
                ChangeEffort.Nothing, $"warmth of {name}");
    }

    private static IEnumerable<RigChange> Added(RigAnswer now)
    {
        if (now.Scenario.Chargers.Count > 0)
            yield break;
        foreach (var part in now.Scenario.PartIds.Select(id => now.Scenario.FindPart(id)!)
            .Where(part => part.Charger is { Current: not null }))
        {
            yield return new($"Take a {part.Name.ToLowerInvariant()}, with power all day",
                [new("chargers.charger", BatteryChanges.Group(("bays", part.Charger!.Bays.ToString(CultureInfo.InvariantCulture)),
                    ("current", BatteryChanges.Text(part.Charger.Current!.Value.Amperes, "A"))))], ChangeEffort.Buy,
                    "charger") { Price = part.Buy };
        }
    }
}
