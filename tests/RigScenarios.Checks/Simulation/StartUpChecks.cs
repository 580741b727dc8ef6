using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Checks.Simulation;

/// <summary>What a start-up does to the voltage, against worked examples of starter motors: a file, its network and the whole
/// run.</summary>
public class StartUpChecks
{
    private const string Text = """
        rigscenarios: scenario 1
        title: By a textbook
        parts:
          flat:
            kind: battery
            name: Battery without a curve
            battery: {energy: 960 Wh, voltage: 12 V, series-groups: 1, capacity: 80 Ah, cutoff-voltage: 1 V,
              maximum-current: 200 A, maximum-temperature: 100 °C, resistance-0: 10 mΩ, resistance-1: 0 mΩ, time-constant-1: 10 s,
              resistance-2: 0 mΩ, time-constant-2: 100 s, lead-resistance: 0 mΩ, activation-energy: 0 kJ/mol, resistance-floor: 0,
              heat-capacity: 10000 J/K, heat-conductance: 0.5 W/K, usable-capacity: [{temperature: 25 °C, usable: 100 %}],
              open-circuit-voltage: [{charge: 0 %, voltage: 12 V}, {charge: 100 %, voltage: 12 V}]}
          starter:
            kind: body
            name: Starter
            power: {off: 0 W, record: 1 W, start-up: {power: 2000 W, time: 1 s}}
            voltage: {minimum: 9 V, maximum: 15 V}
        conditions: {ambient: 25 °C}
        kit: {flat: {part: flat}, starter: {part: starter}}
        builds: {one: {stance: hand, battery: {item: flat}, devices: {starter: {essential: yes}}}}
        days: {day: {blocks: {all: {length: 10 min, others: record}}}}
        """;

    /// <summary>
    /// A starter of 0.0500 Ω on a battery of 12.0 V and 0.0100 Ω takes 200 A and 2.00 kW at 10.0 V. Here it is what the example
    /// finds, 2.00 kW, that a device draws when it is switched on: the lowest voltage and the greatest current of the run are
    /// the example's.
    /// </summary>
    [Fact]
    [Source(SourceKind.Handbook,
        "OpenStax, College Physics, chapter 21, problem on a starter motor, as collegephysicsanswers.com solves "
        + "it; read")]
    public void A_starter_motor_pulls_the_voltage_down_to_ten_volts()
    {
        var (scenario, problems) = ScenarioFile.TryReadText(Text, "text");
        Assert.True(scenario is not null, string.Join('\n', problems));
        var (powered, plan) = ScenarioPlan.Of(scenario, "one", []);

        var result = DaySimulation.Run(powered, plan, cancellation: TestContext.Current.CancellationToken);

        var voltage = Of(result, "starter", LimitKind.LowestVoltage);
        Assert.Equal(10.0, ((ElectricPotential)voltage.Worst).Volts, 0.005);
        Assert.Equal(9.0, ((ElectricPotential)voltage.Allowed!).Volts, 1e-9);
        Assert.Equal(200, ((ElectricCurrent)Of(result, "battery", LimitKind.Current).Worst).Amperes, 0.5);
        Assert.Null(result.FirstStop);
    }

    private static Limit Of(SimulationResult result, string element, LimitKind kind) =>
        Assert.Single(result.Limits, limit => limit.Element == element && limit.Kind == kind && limit.Case == LoadCase.StartUp);
}
