using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Benchmarks.InventedNotes;

/// <summary>The battery and the rig behind the invented notes: what the notes don't tell, and the fit has to find.
/// docs/field-notes.md
/// gives it away at its end.</summary>
internal sealed class HiddenBattery(string scenarioFile)
{
    public const double CapacityLeftPercent = 91;
    public const double ResistanceGrowth = 1.4;
    public const double LoadScale = 1.04;

    private static readonly Duration Period = Duration.FromMinutes(10);

    private readonly Scenario scenario = ScenarioFile.Read(scenarioFile);

    /// <summary>Runs a build until its camera stops, takes and resets one after the other.</summary>
    /// <param name="run">What is run.</param>
    /// <param name="points">The number of points of the course, about.</param>
    public SimulationResult Run(InventedRun run, int points = 0)
    {
        var build = scenario.Builds[run.Build];
        var worn = build with
        {
            Battery = build.Battery with
            {
                Charge = Ratio.FromPercent(run.ChargePercent), CapacityLeft = Ratio.FromPercent(CapacityLeftPercent),
                ResistanceGrowth = ResistanceGrowth, LoadScale = LoadScale,
                StartTemperature = Temperature.FromDegreesCelsius(run.StartCelsius),
            },
        };
        var cycle = new TakeCycle(Period * run.RecordShare, Period * (1 - run.RecordShare))
        {
            ResetStates = new(run.Others.Select(device => KeyValuePair.Create(device, PowerState.Record))),
        };
        var block = new DayBlock
        {
            Length = Duration.FromHours(40), Cycle = cycle,
            States = new(run.Others.Prepend("camera").Select(device => KeyValuePair.Create(device, PowerState.Record))),
        };
        var day = new ShootingDay { Ambient = Temperature.FromDegreesCelsius(run.AirCelsius), Blocks = new([new("all", block)]) };
        var changed = scenario with { Builds = scenario.Builds.With(run.Build, worn), Days = new([new("day", day)]) };
        var (powered, plan) = ScenarioPlan.Of(changed, run.Build, ["day"]);
        return DaySimulation.Run(powered, plan, new SimulationOptions(points, KeepsLimits: false, FindsReserve: false));
    }
}

/// <summary>A run that somebody noted.</summary>
/// <param name="Name">Name of its note.</param>
/// <param name="Build">The build.</param>
/// <param name="AirCelsius">The air, °C.</param>
/// <param name="StartCelsius">The battery at the start, °C.</param>
/// <param name="RecordShare">Share of the time in which the camera records; standby the rest.</param>
/// <param name="Others">The other devices, which are on all the time.</param>
internal sealed record InventedRun(
    string Name, string Build, double AirCelsius, double StartCelsius, double RecordShare, params string[] Others)
{
    /// <summary>Charge at the start, which the note does not tell.</summary>
    public double ChargePercent { get; init; } = 100;
}
