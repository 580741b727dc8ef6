using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Fits;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Fits;

/// <summary>Invented notes on an invented battery, for the tests of this folder.</summary>
internal static class Noted
{
    public static Pack Pack { get; } = PackModel.From(
        new Battery { Energy = Energy.FromWattHours(98), Voltage = ElectricPotential.FromVolts(14.4) }, null, null, null).Pack;

    public static FitPriors Priors { get; } = FitPriors.Of(new Age(Ratio.FromPercent(88), 1.2));

    public static BatteryRun Run(double watts, double celsius = 22, double charge = 1, params RunStretch[] before) => new()
    {
        Ambient = Temperature.FromDegreesCelsius(celsius),
        InitialCharge = Ratio.FromDecimalFractions(charge),
        Stretches = [.. before, RunStretch.ToTheEnd(Camera(watts))],
    };

    public static OrderedMap<Power> Camera(double watts) => new([new("camera", Power.FromWatts(watts))]);

    public static FieldNote Note(string id, BatteryRun run, double minutes) =>
        new() { Id = id, Run = run, Runtime = Duration.FromMinutes(minutes) };

    public static FieldNote Still(string id, BatteryRun run, double minutes, double? percent = null) => new()
    {
        Id = id,
        Run = run,
        StillRunning = Duration.FromMinutes(minutes),
        PercentShown = percent is { } shown ? Ratio.FromPercent(shown) : null,
    };

    /// <summary>How long a battery of that capacity and resistance really lasts.</summary>
    public static double Minutes(BatteryRun run, double capacity, double resistance, double load = 1)
    {
        var pack = Pack with { Age = new Age(Ratio.FromDecimalFractions(capacity), resistance) };
        var demand = new Demand(run.Stretches.Select(stretch => new DemandSegment(
            stretch.Length ?? Duration.FromDays(60), Power.FromWatts(load * stretch.States.Sum(state =>
                state.Share.DecimalFractions * state.Devices.Values.Sum(power => (double)power.Watts))),
            ElectricCurrent.Zero, ElectricConductance.Zero)));
        return Discharge.Run(
            pack, run.Ambient, new DischargeStart { StateOfCharge = run.InitialCharge }, demand,
            new DischargeOptions { SeriesPoints = 0 }, TestContext.Current.CancellationToken).EndTime.Minutes;
    }

    /// <summary>Notes of that battery, without any error.</summary>
    public static IReadOnlyList<FieldNote> Exact(double capacity, double resistance, params BatteryRun[] runs) =>
        [.. runs.Select((run, i) => Note($"n{i + 1}", run, Minutes(run, capacity, resistance)))];

    public static FitResult Fit(IReadOnlyList<FieldNote> notes, FitPriors? priors = null, IReadOnlyList<DoneTest>? tests = null,
        bool checks = false) => BatteryFit.Find(
            new FitProblem(Pack, priors ?? Priors, notes, null, tests, FitOptions.Default with { ChecksIntervals = checks }),
            null, TestContext.Current.CancellationToken);
}
