using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Charts.Builds;

/// <summary>Builds as tables, where the parts behind their names are not at hand or not asked for.</summary>
public static class BuildTable
{
    /// <summary>What feeds what in a build.</summary>
    public static ChartTable Of(Build build)
    {
        ArgumentNullException.ThrowIfNull(build);
        var rows = new List<object?[]> { new object?[] { build.Battery.Item, "battery", "" } };
        if (build.Plate is { } plate)
            rows.Add([plate, "plate", Build.BatteryFeed]);
        rows.AddRange(build.Regulators.Select(regulator => new object?[] { regulator.Key, "regulator",
            regulator.Value.FedBy ?? build.StandardFeed }));
        rows.AddRange(build.Devices.Select(device => new object?[] { device.Key,
            device.Value.Essential ? "device, essential" : "device", device.Value.FedBy ?? build.StandardFeed }));
        rows.AddRange(build.Carries.Select(name => new object?[] { name, "carried", "" }));
        return ChartTable.Of(["in the kit", "what it is", "fed by"]).WithRows(rows) with { Caption = build.Title ?? "A build" };
    }

    /// <summary>The builds of a scenario, one a row.</summary>
    public static ChartTable Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return ChartTable.Of(["build", "carried", "battery", "devices"]).WithRows(scenario.Builds.Select(build => new object?[]
        {
            build.Value.Title ?? build.Key, ChoiceFormat<Stance>.Word(build.Value.Stance),
            scenario.PartOf(build.Value.Battery.Item)?.Name ?? build.Value.Battery.Item,
            string.Join(", ", build.Value.Devices.Keys.Select(device => scenario.PartOf(device)?.Name ?? device)),
        })) with { Caption = $"Builds of the scenario; its days: "
            + $"{string.Join(", ", scenario.Days.Select(day => day.Value.Title ?? day.Key))}" };
    }
}
