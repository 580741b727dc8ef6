using RigScenarios.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Search.Compare;

namespace RigScenarios.Tests.Search.Compare;

/// <summary>Rigs of round figures, so that their differences can be worked out by hand: a flat battery of 100 Wh without
/// resistance, so that a runtime is energy over power. Invented.</summary>
internal static class TwoRigs
{
    public const string Parts = """
          grip: {kind: cage, name: Grip, mass: 400 g, buy: 90 EUR}
          heavy-grip: {kind: cage, name: Heavy grip, mass: 700 g, buy: 150 EUR}
          lamp: {kind: monitor, name: Lamp, mass: 200 g, power: {standby: 5 W, record: 5 W}, buy: 60 EUR, rent-per-day: 10 EUR}
          near-lamp: {kind: monitor, name: Near lamp, mass: 202 g, power: {standby: 5 W, record: 5.05 W}}
          big: {kind: monitor, name: Big load, power: {standby: 1 W, record: 200 W}}
          bigger: {kind: monitor, name: Bigger load, power: {standby: 1 W, record: 200 W}}
          store:
            kind: battery
            name: Great store
            mass: 9 kg
            battery:
              {energy: 5000 Wh, voltage: 10 V, series-groups: 1, capacity: 500 Ah, cutoff-voltage: 1 V, maximum-current: 200 A,
                maximum-temperature: 100 °C, resistance-0: 0 mΩ, resistance-1: 0 mΩ, time-constant-1: 10 s,
               resistance-2: 0 mΩ, time-constant-2: 100 s, lead-resistance: 0 mΩ, activation-energy: 0 kJ/mol,
               resistance-floor: 0, heat-capacity: 1000 J/K, heat-conductance: 0.5 W/K,
               usable-capacity: [{temperature: 25 °C, usable: 100 %}],
               open-circuit-voltage: [{charge: 0 %, voltage: 10 V}, {charge: 100 %, voltage: 10 V}]}
        """;

    private const string Kit = "{flat: {part: flat}, camera: {part: camera}, lamp: {part: lamp}, near-lamp: {part: near-lamp}, "
        + "grip: {part: grip}, heavy-grip: {part: heavy-grip}, big: {part: big}, bigger: {part: bigger}, store: {part: store}}";

    /// <summary>A scenario with builds of these parts.</summary>
    /// <param name="builds">The builds, indented by two.</param>
    /// <param name="more">More of the scenario.</param>
    public static Scenario Read(string builds, string more = "") => SmallScenario.Read(Text(builds, more));

    /// <summary>The text of that scenario.</summary>
    public static string Text(string builds, string more = "") => $$$"""
        rigscenarios: scenario 1
        title: By hand
        parts:
        {{{SmallScenario.Battery}}}
        {{{Parts}}}
        conditions: {ambient: 25 °C}
        kit: {{{Kit}}}
        builds:
        {{{builds}}}
        days:
          day: {starts: "09:00", blocks: {all: {title: All day, length: 2 h, others: record} } }
        {{{more}}}
        """;

    /// <summary>A build in a line.</summary>
    public static string Build(string name, string devices = "camera: {essential: yes}", string battery = "item: flat",
        string carries = "grip") =>
        $"  {name}: {{stance: hand, battery: {{{battery}}}, devices: {{{devices}}}, carries: [{carries}]}}\n";

    /// <summary>Builds side by side, the first as the base.</summary>
    public static SideBySide Of(params string[] builds)
    {
        var scenario = Read(string.Concat(builds));
        return SideBySide.Of(scenario, [], [], AnswerOptions.EndOnly, TestContext.Current.CancellationToken);
    }

    /// <summary>A row.</summary>
    public static FigureRow Row(this SideBySide side, FigureKind kind) => side.Figures.Single(row => row.Kind == kind);

    /// <summary>The difference of the second rig to the first.</summary>
    public static FigureDifference Second(this SideBySide side, FigureKind kind) => side.Row(kind).Differences[1]!;
}
