using RigScenarios.Search.Rigs;

namespace RigScenarios.Tests.Search.Rigs;

/// <summary>Questions of the best rig over the scenario that can be worked out by hand: 100 Wh at 10 V without losses.</summary>
internal static class SmallQuestion
{
    /// <summary>Batteries of 50 and 200 Wh, a dear and a thrifty light.</summary>
    public const string Parts = """
          small:
            kind: battery
            name: Small battery
            mass: 600 g
            buy: 60 EUR
            needs: [slot]
            battery:
              {energy: 50 Wh, voltage: 10 V, series-groups: 1, capacity: 5 Ah, cutoff-voltage: 1 V, maximum-current: 100 A,
                maximum-temperature: 100 °C, resistance-0: 0 mΩ, resistance-1: 0 mΩ, time-constant-1: 10 s,
               resistance-2: 0 mΩ, time-constant-2: 100 s, lead-resistance: 0 mΩ, activation-energy: 0 kJ/mol,
               resistance-floor: 0, heat-capacity: 1000 J/K, heat-conductance: 0.5 W/K,
               usable-capacity: [{temperature: 25 °C, usable: 100 %}],
               open-circuit-voltage: [{charge: 0 %, voltage: 10 V}, {charge: 100 %, voltage: 10 V}]}
          large:
            kind: battery
            name: Large battery
            mass: 1800 g
            buy: 250 EUR
            battery:
              {energy: 200 Wh, voltage: 10 V, series-groups: 1, capacity: 20 Ah, cutoff-voltage: 1 V, maximum-current: 100 A,
                maximum-temperature: 100 °C, resistance-0: 0 mΩ, resistance-1: 0 mΩ, time-constant-1: 10 s,
               resistance-2: 0 mΩ, time-constant-2: 100 s, lead-resistance: 0 mΩ, activation-energy: 0 kJ/mol,
               resistance-floor: 0, heat-capacity: 1000 J/K, heat-conductance: 0.5 W/K,
               usable-capacity: [{temperature: 25 °C, usable: 100 %}],
               open-circuit-voltage: [{charge: 0 %, voltage: 10 V}, {charge: 100 %, voltage: 10 V}]}
          thrifty: {kind: monitor, name: Thrifty light, mass: 200 g, buy: 90 EUR, power: {standby: 1 W, record: 2 W}}
          bright: {kind: monitor, name: Bright light, mass: 500 g, buy: 40 EUR, power: {standby: 1 W, record: 30 W}}
          fragile: {kind: monitor, name: Fragile light, mass: 100 g, buy: 10 EUR, power: {standby: 1 W, record: 2 W},
            voltage: {maximum: 9 V}}
          slotted: {kind: plate, name: Slotted plate, mass: 100 g, buy: 45 EUR, gives: [slot], plate: {own-draw: 0 W}}
          railed: {kind: plate, name: Railed plate, mass: 100 g, buy: 60 EUR, gives: [rail, pin], plate: {own-draw: 0 W}}
        """;

    /// <summary>A question over battery, light and plate of the small scenario; the camera draws 20 W, the light 5 W for two
    /// hours.</summary>
    /// <param name="slots">The slots, in braces.</param>
    /// <param name="more">Musts and wishes, as lines of the block.</param>
    /// <param name="devices">The devices of the build, in braces.</param>
    /// <param name="build">More of the build.</param>
    public static BestRigQuestion Of(string slots, string more = "", string devices = "{camera: {essential: yes}, light: {}}",
        string build = "plate: plate") => BestRigQuestion.Of(SmallScenario.Read(Text(slots, more, devices, build)));

    /// <summary>The text of the same.</summary>
    public static string Text(string slots, string more = "", string devices = "{camera: {essential: yes}, light: {}}",
        string build = "plate: plate") => SmallScenario.Text(devices, build, parts: Parts)
            .Replace("light: {part: light, count: 3}", "light: {part: light}, spare: {part: large, had: owned}",
                StringComparison.Ordinal)
            .Replace("name: Flat battery", "name: Flat battery\n    buy: 120 EUR", StringComparison.Ordinal)
            .Replace("name: Light,", "name: Light, mass: 300 g, buy: 70 EUR,", StringComparison.Ordinal)
            .Replace("name: Camera,", "name: Camera, mass: 900 g, buy: 1000 EUR,", StringComparison.Ordinal)
            .Replace("name: Plate,", "name: Plate, mass: 100 g, buy: 30 EUR,", StringComparison.Ordinal)
        + $$"""


            best-rig:
              build: one
              slots: {{slots}}
              {{more}}
            """;
}
