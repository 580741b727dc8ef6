using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Answers;

/// <summary>A rig of round figures, so that its balance can be worked out by hand. Invented.</summary>
internal static class ByHandRig
{
    private const string Battery = "{on: rods, forward: -150 mm, slides-from: -200 mm, slides-to: -60 mm}";

    private const string Parts = """
          body: {kind: body, name: Body, mass: 1000 g, size: {length: 100 mm, width: 100 mm, height: 100 mm},
                 power: {standby: 5 W, record: 10 W}}
          lens: {kind: lens, name: Lens, mass: 1000 g, size: {length: 100 mm, width: 80 mm, height: 80 mm}, centre-moves: 20 mm}
          weight: {kind: battery, name: Battery, mass: 1000 g, size: {length: 60 mm, width: 80 mm, height: 100 mm},
                   battery: {energy: 100 Wh, voltage: 14.4 V}}
          rods: {kind: rods, name: Rods, mass: 100 g, size: {length: 400 mm, width: 75 mm, height: 15 mm},
                 rods: {diameter: 15 mm, material: aluminium}, rated-load: 2 kg}
          head: {kind: head, name: Head, mass: 2 kg, size: {length: 100 mm, width: 100 mm, height: 100 mm}, rated-load: 5 kg,
                 head: {slide: 60 mm, axis-below-plate: 50 mm, counterbalance-from: 0 N·m, counterbalance-to: 20 N·m,
                        friction: 0.4 N·m, drag: 2 N·m, tilt-lock: 8 N·m, tilt-up: 45 °, tilt-down: 60 °}}
          legs: {kind: tripod, name: Legs, mass: 4 kg, size: {length: 700 mm, width: 120 mm, height: 120 mm},
                 legs: {height: 1300 mm, foot-radius: 600 mm}}
        """;

    public static string Text(string battery = Battery, string more = "", string stance = "tripod") => $$$"""
        rigscenarios: scenario 1
        title: By hand
        parts:
        {{{Parts}}}
        conditions: {ambient: 20 °C}
        kit:
          {body: {part: body}, lens: {part: lens}, weight: {part: weight}, rods: {part: rods}, head: {part: head},
          legs: {part: legs}}
        builds:
          one:
            stance: {{{stance}}}
            battery: {item: weight}
            devices: {body: {essential: yes}}
            carries: [lens, rods, head, legs]
            places:
              body: {}
              lens: {on: body, forward: 50 mm, up: 50 mm}
              rods: {on: body}
              weight: {{{battery}}}
            on-head: {base-depth: 0 mm}
            {{{more}}}
        days:
          day:
            blocks: {all: {length: 1 h, others: record}}
        """;

    public static Scenario Read(string text)
    {
        var (scenario, problems) = ScenarioFile.TryReadText(text, Path.Combine(Repository.Root, "by-hand.yaml"));
        Assert.True(scenario is not null, string.Join(Environment.NewLine, problems));
        return scenario;
    }
}
