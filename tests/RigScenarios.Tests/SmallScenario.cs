using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;

namespace RigScenarios.Tests;

/// <summary>
/// A scenario whose results can be worked out by hand: a battery of 100 Wh at 10 V without any resistance and with a flat
/// voltage, so that runtime = energy / power.
/// </summary>
internal static class SmallScenario
{
    public const string Battery = """
          flat:
            kind: battery
            name: Flat battery
            mass: 1000 g
            battery:
              {energy: 100 Wh, voltage: 10 V, series-groups: 1, capacity: 10 Ah, cutoff-voltage: 1 V, maximum-current: 100 A,
                maximum-temperature: 100 °C, resistance-0: 0 mΩ, resistance-1: 0 mΩ, time-constant-1: 10 s,
               resistance-2: 0 mΩ, time-constant-2: 100 s, lead-resistance: 0 mΩ, activation-energy: 0 kJ/mol,
               resistance-floor: 0, heat-capacity: 1000 J/K, heat-conductance: 0.5 W/K,
               usable-capacity: [{temperature: 25 °C, usable: 100 %}],
               open-circuit-voltage: [{charge: 0 %, voltage: 10 V}, {charge: 100 %, voltage: 10 V}]}
          camera: {kind: body, name: Camera, power: {off: 0 W, standby: 10 W, record: 20 W}}
          light: {kind: monitor, name: Light, power: {standby: 1 W, record: 5 W}}
          regulator: {kind: regulator, name: Regulator, regulator: {input-minimum: 5 V, input-maximum: 20 V, output-voltage: 8 V,
            efficiency: 80 %, own-draw: 0.5 W, maximum-current: 5 A}}
          plate: {kind: plate, name: Plate, plate: {own-draw: 2 W}}
        """;

    /// <summary>The text of a scenario with one build and one day.</summary>
    public static string Text(
        string devices = "{camera: {essential: yes}}", string build = "",
        string blocks = "{all: {length: 2 h, others: record}}", string battery = "", string parts = "", string day = "") => $$$"""
        rigscenarios: scenario 1
        title: By hand
        parts:
        {{{Battery}}}
        {{{parts}}}
        conditions: {ambient: 25 °C}
        kit: {flat: {part: flat}, camera: {part: camera}, light: {part: light, count: 3}, regulator: {part: regulator},
          plate: {part: plate}}
        builds:
          one:
            stance: hand
            battery: {item: flat{{{battery}}}}
            {{{build}}}
            devices: {{{devices}}}
        days:
          day:
            {{{day}}}
            blocks: {{{blocks}}}
        """;

    public static Scenario Read(string text)
    {
        using var folder = new TemporaryFolder();
        return ScenarioFile.Read(folder.Write("scenario.yaml", text));
    }

    /// <summary>The build on its day.</summary>
    public static SimulationResult Run(string text, SimulationOptions? options = null) =>
        RunOne(Read(text), "one", "day", options);

    /// <summary>A build of a scenario on one of its days.</summary>
    public static SimulationResult RunOne(Scenario scenario, string build, string day, SimulationOptions? options = null)
    {
        var (powered, plan) = ScenarioPlan.Of(scenario, build, [day]);
        return DaySimulation.Run(powered, plan, options, null, TestContext.Current.CancellationToken);
    }
}
