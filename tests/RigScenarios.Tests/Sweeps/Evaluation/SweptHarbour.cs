using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Tests.Sweeps.Evaluation;

/// <summary>Questions about the demo of the winter harbour.</summary>
internal static class SweptHarbour
{
    public static Scenario Scenario { get; } = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));

    public static SweepAxis Cold { get; } = new("days.day-one.ambient", ["-12 °C", "-2 °C", "8 °C"]);

    public static SweepAxis Energy { get; } = new("parts.brick-190wh.battery.energy", ["150 Wh", "190 Wh"]);

    public static SweepPlan Grid { get; } = new() { Axes = [Cold, Energy] };

    public static SweepPlan Drawn(int samples, long seed = 7) => new()
    {
        Uncertain =
        [
            new("parts.brick-190wh.battery.energy", Spread.Normal(UnitsNet.Energy.FromWattHours(190),
                UnitsNet.Energy.FromWattHours(8))),
            new("days.day-one.ambient", Spread.Uniform(UnitsNet.Temperature.FromDegreesCelsius(-15),
                UnitsNet.Temperature.FromDegreesCelsius(5))),
            new("builds.tripod.battery.load-scale", Spread.Triangular(0.85, 1, 1.2)),
        ],
        Samples = samples, Seed = seed,
    };

    public static SweepQuestion Ask(SweepPlan plan, params string[] columns) => new(Scenario, "tripod", ["day-one"], plan,
        columns.Length == 0 ? SweepColumns.Usual : SweepColumns.Choose(Scenario, columns));
}
