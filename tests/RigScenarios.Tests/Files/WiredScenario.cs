namespace RigScenarios.Tests.Files;

/// <summary>
/// An invented wiring whose voltages can be worked out by hand: a battery of flat 14 V without resistance, a plate, a lead of AWG
/// 22, a splitter, a camera of
/// 20 W, and a light on an outlet of its own.
/// </summary>
internal static class WiredScenario
{
    public static string Text(string camera = "", string length = "3 m",
        string blocks = "{all: {length: 2 h, others: record}}") => $$$"""
        rigscenarios: scenario 1
        title: By hand
        parts:
          flat:
            kind: battery
            name: Flat battery
            mass: 1000 g
            battery:
              {energy: 140 Wh, voltage: 14 V, series-groups: 1, capacity: 10 Ah, cutoff-voltage: 1 V, maximum-current: 100 A,
                maximum-temperature: 100 °C, resistance-0: 0 mΩ, resistance-1: 0 mΩ, time-constant-1: 10 s,
               resistance-2: 0 mΩ, time-constant-2: 100 s, lead-resistance: 0 mΩ, activation-energy: 0 kJ/mol,
               resistance-floor: 0, heat-capacity: 1000 J/K, heat-conductance: 0.5 W/K,
               usable-capacity: [{temperature: 25 °C, usable: 100 %}],
               open-circuit-voltage: [{charge: 0 %, voltage: 10.5 V}, {charge: 10 %, voltage: 12.8 V}, {charge: 100 %,
                 voltage: 14 V}]}
          camera: {kind: body, name: Camera, power: {standby: 10 W, record: 20 W, peak: 30 W, start-up: {power: 28 W,
            time: 50 ms}}, voltage: {minimum: 10 V, maximum: 18 V}}
          light: {kind: monitor, name: Light, power: {standby: 1 W, record: 5 W}, voltage: {minimum: 9 V, maximum: 18 V}}
          lead: {kind: cable, name: Lead, cable: {gauge: AWG 22, length: {{{length}}}, connector-resistance: 0 mΩ,
            rated-current: 3 A}}
          short: {kind: cable, name: Short, cable: {gauge: 2.5 mm², length: 100 mm, connector-resistance: 0 mΩ}}
          box: {kind: splitter, name: Box, splitter: {outlets: {one: {maximum-current: 2 A, fuse: {rating: 4 A}},
            two: {maximum-current: 8 A} } } }
          plate:
            kind: plate
            name: Plate
            plate: {maximum-current: 10 A, outlets: {a: {maximum-current: 5 A}, b: {maximum-current: 5 A}, usb: {voltage: 5 V} } }
        conditions: {ambient: 20 °C}
        kit: {flat: {part: flat}, camera: {part: camera}, light: {part: light}, lead: {part: lead}, short: {part: short},
          box: {part: box}, plate: {part: plate}}
        builds:
          one:
            stance: hand
            battery: {item: flat}
            plate: plate
            splitters: {box: {outlet: a, cable: lead}}
            devices:
              camera: {fed-by: box, outlet: one, cable: short, essential: yes{{{camera}}}}
              light: {outlet: b}
        days:
          day:
            starts: "08:00"
            blocks: {{{blocks}}}
        """;
}
