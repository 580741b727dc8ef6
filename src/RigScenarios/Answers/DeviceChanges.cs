using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Devices that could stay off: while everybody waits, or altogether where the rig is of use without them.</summary>
internal static class DeviceChanges
{
    private static readonly Duration Worthwhile = Duration.FromMinutes(10);

    public static IEnumerable<RigChange> Of(RigAnswer now)
    {
        var build = now.TheBuild;
        var days = now.Days.Distinct().ToDictionary(name => name, name => now.Scenario.Days[name]);
        foreach (var (name, device) in build.Devices)
        {
            var waiting = Blocks(days, block => block.StateOf(name) == PowerState.Standby && IsWait(now, block)).ToList();
            var length = Duration.FromSeconds(waiting.Sum(item => item.Block.Length.Seconds));
            if (length >= Worthwhile)
            {
                yield return new($"Switch the {LimitSentences.Element(name)} off while nothing is shot "
                    + $"({AnswerTimes.Length(length)} on standby: "
                        + $"{string.Join(", ", waiting.Select(item => $"\"{item.Block.Title ?? item.Name}\""))})",
                    Off(name, waiting), ChangeEffort.Nothing, $"state of {name}");
            }
            var on = Blocks(days, block => block.StateOf(name) != PowerState.Off).ToList();
            if (device.Count > 1 && on.Count > 0)
            {
                yield return new($"Take {device.Count - 1} instead of {device.Count} of the {LimitSentences.Element(name)}",
                    [new($"builds.{now.Build}.devices.{name}.count", $"{device.Count - 1}")], ChangeEffort.GivesUp,
                    $"state of {name}");
            }
            if (!device.Essential && on.Count > 0)
                yield return new($"Leave the {LimitSentences.Element(name)} off altogether", Off(name, on), ChangeEffort.GivesUp,
                    $"state of {name}");
        }
    }

    /// <summary>
    /// Whether a block is a wait: nothing records, and no monitor is on. With a monitor on, somebody looks at a picture; where
    /// the build has no monitor, the
    /// camera's own screen may be what they look at, so that nobody can tell.
    /// </summary>
    private static bool IsWait(RigAnswer now, DayBlock block)
    {
        var monitors = now.TheBuild.Devices.Keys.Where(name => now.Scenario.PartOf(name)?.Kind == PartKind.Monitor).ToList();
        return monitors.Count > 0 && monitors.TrueForAll(name => block.StateOf(name) == PowerState.Off)
            && now.TheBuild.Devices.Keys.All(name => block.StateOf(name) != PowerState.Record);
    }

    private static IEnumerable<(string Day, string Name,
        DayBlock Block)> Blocks(Dictionary<string, ShootingDay> days, Func<DayBlock, bool> wanted) =>
        from day in days
        from block in day.Value.Blocks
        where wanted(block.Value)
        select (day.Key, block.Key, block.Value);

    private static IReadOnlyList<FieldSetting> Off(string device,
        IEnumerable<(string Day, string Name, DayBlock Block)> blocks) =>
        [.. blocks.Select(item => new FieldSetting($"days.{item.Day}.blocks.{item.Name}.states.{device}", "off"))];
}
