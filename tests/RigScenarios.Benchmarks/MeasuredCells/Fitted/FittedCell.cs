using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Fits;
using RigScenarios.Fits.Bench;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.MeasuredCells.Fitted;

/// <summary>
/// The measured cell as its owner would have it: the label's 3 Ah and the project's NMC defaults, and what tests at 25 °C say of
/// it. Nothing of the other temperatures is used.
/// </summary>
/// <param name="Name">What was measured of it.</param>
/// <param name="Pack">The cell with what was found.</param>
/// <param name="Fit">What was found; null where nothing was fitted.</param>
internal sealed record FittedCell(string Name, Pack Pack, FitResult? Fit)
{
    /// <summary>Temperature of the chamber of all tests, °C.</summary>
    public const double TestCelsius = 25;

    private const double LabelAmpereHours = 3;
    private const double LabelVolts = 3.6;
    private static readonly NormalPrior BenchCapacity = new(0, 0.015);
    private static readonly ElectricPotential BenchTableDeviation = ElectricPotential.FromVolts(0.005);

    /// <summary>The ways in which the cell is known, from nothing to most.</summary>
    public static IReadOnlyList<FittedCell> All(string folder)
    {
        var measured = MeasuredDischarge.Read(folder);
        var air = Temperature.FromDegreesCelsius(measured
            .First(one => one is { ChamberCelsius: TestCelsius, Rate: "C/20" }).StartCelsius);
        var label = Label();
        var priors = FitPriors.Of(Age.New) with { Load = null };
        PowerLog Log(string rate) => new()
        {
            Id = rate,
            Rows = MeasuredLog.Of(folder, TestCelsius, rate),
            Ambient = air,
        };
        return
        [
            new("nothing: its label", label, null),
            Of("run-time of C/2", label, priors, [Note(measured, "C/2", air)], []),
            Of("logs of C/2 and 1C", label, priors, [], [Log("C/2"), Log("1C")]),
            Of("logs of C/20, C/2, 1C and 2C", label, priors, [], [Log("C/20"), Log("C/2"), Log("1C"), Log("2C")]),
            OnBench("own table from C/20, logs of C/2 and 1C", label, folder, priors, [Log("C/2"), Log("1C")]),
        ];
    }

    /// <summary>The cell by its label, in a chamber with a fan: 47 J/K and 0.54 W/K, from the temperatures at the ends of the
    /// same discharges.</summary>
    private static Pack Label() => PackModel.From(
        new Battery
        {
            Energy = Energy.FromWattHours(LabelVolts * LabelAmpereHours),
            Voltage = ElectricPotential.FromVolts(LabelVolts),
            Chemistry = "nmc",
            LeadResistance = ElectricResistance.Zero,
            HeatCapacity = Entropy.FromJoulesPerKelvin(47),
            HeatConductance = ThermalConductance.FromWattsPerKelvin(0.54),
            CutoffVoltage = ElectricPotential.FromVolts(2.8),
            MaximumCurrent = ElectricCurrent.FromAmperes(20),
        },
        Mass.FromGrams(47), size: null, Age.New).Pack;

    private static FittedCell OnBench(string name, Pack label, string folder, FitPriors priors, IReadOnlyList<PowerLog> logs)
    {
        var sustained = label.Resistance0 + label.Resistance1 + label.Resistance2;
        var table = BenchTest.Find(MeasuredLog.Of(folder, TestCelsius, "C/20"), 1, sustained, label.CutoffVoltage);
        return Of(name, label with { Capacity = table.Capacity, OpenCircuitVoltage = table.Table },
            priors with { Capacity = BenchCapacity, OpenCircuitDeviation = BenchTableDeviation }, [], logs);
    }

    private static FittedCell Of(string name, Pack pack, FitPriors priors, IReadOnlyList<FieldNote> notes,
        IReadOnlyList<PowerLog> logs)
    {
        var fit = BatteryFit.Find(new FitProblem(pack, priors, notes, logs));
        return new(name, pack with { Age = fit.Age }, fit);
    }

    /// <summary>The discharge as somebody with a watch would have noted it: a steady load of its mean power.</summary>
    private static FieldNote Note(IReadOnlyList<MeasuredDischarge> measured, string rate, Temperature air)
    {
        var one = measured.First(discharge => discharge.ChamberCelsius == TestCelsius && discharge.Rate == rate);
        var length = Duration.FromHours(one.AmpereHours / one.Amperes);
        return new()
        {
            Id = rate,
            Runtime = length,
            Run = new()
            {
                Ambient = air,
                Steady = true,
                Stretches = [RunStretch.ToTheEnd(OrderedMap<Power>.Empty.With("load",
                    Power.FromWatts(one.WattHours / length.Hours)))],
            },
        };
    }
}
